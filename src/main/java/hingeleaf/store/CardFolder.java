package hingeleaf.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder with design files, the drawings beside them, and a hidden folder for versions and
 * settings.
 *
 * <p>Names that come in are names of files right in the folder: letters, digits, spaces, dots,
 * hyphens, an ending. Anything else is refused before the disk is asked.
 */
public final class CardFolder {
  /** The longest design or drawing, bytes. */
  public static final int MOST_BYTES = 1_000_000;

  private static final String HIDDEN = ".hingeleaf";
  private static final int MOST_CARDS = 500;
  private static final Pattern CARD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,79}");
  private static final List<String> ENDINGS = List.of(".yaml", ".yml");

  private final Path root;

  private CardFolder(Path root) {
    this.root = root;
  }

  /**
   * Opens a folder, making it where there is none.
   *
   * @throws StoreException if it cannot be had
   */
  public static CardFolder open(Path folder) {
    try {
      Files.createDirectories(folder);
      return new CardFolder(folder.toRealPath());
    } catch (IOException e) {
      throw WholeFile.trouble(folder, "opened as a folder", e);
    }
  }

  /** Where it is. */
  public Path root() {
    return root;
  }

  /** The design files, the one changed last first. */
  public List<String> cards() {
    try (Stream<Path> all = Files.list(root)) {
      return all.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
          .filter(p -> ENDINGS.stream().anyMatch(e -> nameOf(p).endsWith(e)))
          .filter(p -> good(nameOf(p)))
          .sorted((a, b) -> Long.compare(changed(b), changed(a)))
          .map(CardFolder::nameOf)
          .limit(MOST_CARDS)
          .toList();
    } catch (IOException e) {
      throw WholeFile.trouble(root, "listed", e);
    }
  }

  private static String nameOf(Path p) {
    return String.valueOf(p.getFileName());
  }

  private static long changed(Path p) {
    try {
      return Files.getLastModifiedTime(p, LinkOption.NOFOLLOW_LINKS).toMillis();
    } catch (IOException e) {
      return 0; // gone while listing: it sorts last
    }
  }

  private static boolean good(String name) {
    return CARD.matcher(name).matches() && !name.contains("..");
  }

  /**
   * The place of a file right in this folder.
   *
   * @throws StoreException if the name is anything but a plain file name with that ending
   */
  private Path place(String name, List<String> endings) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (!good(name) || endings.stream().noneMatch(lower::endsWith)) {
      throw new StoreException(
          StoreException.Kind.NAME,
          "a file here has a plain name that ends in " + endings.get(0) + ", without folders");
    }
    try {
      Path file = root.resolve(name);
      if (!root.equals(file.normalize().getParent())) {
        throw new StoreException(StoreException.Kind.NAME, "this lies outside the folder");
      }
      return file;
    } catch (InvalidPathException e) {
      throw new StoreException(StoreException.Kind.NAME, "this is no name of a file");
    }
  }

  /** The place of a design file; it need not be there. */
  Path card(String name) {
    return place(name, ENDINGS);
  }

  /** Where the versions of a card are kept. */
  Path versions(String name) {
    return unlinked(root.resolve(HIDDEN).resolve("versions").resolve(card(name).getFileName()));
  }

  /** A place below the root with no link on the way to it, or a refusal. */
  private Path unlinked(Path below) {
    Path at = root;
    for (Path part : root.relativize(below)) {
      at = at.resolve(part);
      if (Files.isSymbolicLink(at)) {
        throw new StoreException(
            StoreException.Kind.NAME, part + " is a link; the page follows none");
      }
    }
    return below;
  }

  /** The bytes of a design file; empty where there is none, or only a link. */
  public Optional<byte[]> readCard(String name) {
    return WholeFile.read(card(name), MOST_BYTES);
  }

  /** The bytes of a drawing beside the designs; empty where there is none, or only a link. */
  public Optional<byte[]> readDrawing(String name) {
    return WholeFile.read(place(name, List.of(".svg")), MOST_BYTES);
  }

  /** The drawings in the folder, by name. */
  public List<String> drawings() {
    try (Stream<Path> all = Files.list(root)) {
      return all.filter(p -> Files.isRegularFile(p, LinkOption.NOFOLLOW_LINKS))
          .map(CardFolder::nameOf)
          .filter(n -> n.endsWith(".svg") && good(n))
          .sorted()
          .limit(MOST_CARDS)
          .toList();
    } catch (IOException e) {
      throw WholeFile.trouble(root, "listed", e);
    }
  }

  /**
   * Writes a new design under this name, or the next free one: "card.yaml", "card 2.yaml".
   *
   * @return the name that it got
   */
  public String addCard(String wanted, byte[] bytes) {
    String stem = wanted.replaceFirst("\\.ya?ml$", "");
    for (int i = 1; i < MOST_CARDS; i++) {
      String name = stem + (i == 1 ? "" : " " + i) + ".yaml";
      Path file = card(name);
      if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        WholeFile.write(file, bytes);
        return name;
      }
    }
    throw new StoreException(StoreException.Kind.NAME, "there are too many cards named " + stem);
  }

  /** Writes a drawing; one with other bytes under this name is left alone and refused. */
  public void addDrawing(String name, byte[] bytes) {
    Path file = place(name, List.of(".svg"));
    Optional<byte[]> there = WholeFile.read(file, MOST_BYTES);
    if (there.isPresent() && java.util.Arrays.equals(there.get(), bytes)) {
      return;
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new StoreException(
          StoreException.Kind.NAME, "there is another drawing named " + name + " already");
    }
    WholeFile.write(file, bytes);
  }

  /** The maker's own bench, {@code bench.yaml}; empty where there is none. */
  public Optional<byte[]> bench() {
    return WholeFile.read(root.resolve("bench.yaml"), MOST_BYTES);
  }

  /** A setting of the page that was kept; empty where it was not. */
  public String setting(String key) {
    return WholeFile.read(settingFile(key), 1000)
        .map(b -> new String(b, java.nio.charset.StandardCharsets.UTF_8))
        .orElse("");
  }

  /** Keeps a setting of the page. */
  public void keep(String key, String value) {
    WholeFile.write(settingFile(key), value.getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  private Path settingFile(String key) {
    if (!key.matches("[a-z]{1,20}")) {
      throw new StoreException(StoreException.Kind.NAME, "there is no setting of this name");
    }
    return unlinked(root.resolve(HIDDEN).resolve(key));
  }
}
