package hingeleaf.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The versions that one design file went through, on disk.
 *
 * <p>Each change is saved at once: first the version, then the file itself, then which version it
 * is. A server that dies between two of these steps loses nothing: when the card is opened again,
 * the file is the truth, and it is found among the versions or becomes a new one. The last {@value
 * #MOST} versions are kept.
 */
public final class History {
  /** How many versions are kept. */
  public static final int MOST = 50;

  private static final String NOW = "now";

  private final CardFolder folder;
  private final String name;
  private final Path versions;

  private History(CardFolder folder, String name) {
    this.folder = folder;
    this.name = name;
    this.versions = folder.versions(name);
  }

  /**
   * A version of a card.
   *
   * @param number grows with every change
   * @param undo whether there is one before it
   * @param redo whether there is one that was undone after it
   */
  public record Version(int number, byte[] bytes, boolean undo, boolean redo) {}

  /**
   * Opens the history of a card.
   *
   * @throws StoreException if there is no such card
   */
  public static History of(CardFolder folder, String name) {
    return new History(folder, name);
  }

  /** What the file is now; a change that was made by hand becomes a version. */
  public synchronized Version now() {
    byte[] bytes = file();
    List<Integer> all = numbers();
    int at = current(all, bytes);
    if (at < 0) {
      at = append(all, bytes);
      all = numbers();
    }
    return version(at, bytes, all);
  }

  private byte[] file() {
    return folder
        .readCard(name)
        .orElseThrow(
            () -> new StoreException(StoreException.Kind.MISSING, "there is no card " + name));
  }

  /** The version whose bytes the file has, the one last worked on first; -1 where there is none. */
  private int current(List<Integer> all, byte[] bytes) {
    int kept = kept();
    if (all.contains(kept) && same(kept, bytes)) {
      return kept;
    }
    for (int i = all.size() - 1; i >= 0; i--) {
      if (same(all.get(i), bytes)) {
        return all.get(i);
      }
    }
    return -1;
  }

  private boolean same(int number, byte[] bytes) {
    return WholeFile.read(file(number), CardFolder.MOST_BYTES)
        .map(b -> Arrays.equals(b, bytes))
        .orElse(false);
  }

  private int kept() {
    Optional<byte[]> bytes = WholeFile.read(versions.resolve(NOW), 20);
    String text = bytes.map(b -> new String(b, StandardCharsets.UTF_8).strip()).orElse("");
    return text.matches("\\d{1,8}") ? Integer.parseInt(text) : -1;
  }

  private Path file(int number) {
    return versions.resolve(String.format("%08d.yaml", number));
  }

  private List<Integer> numbers() {
    if (!Files.isDirectory(versions, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(versions)) {
      return all.map(p -> String.valueOf(p.getFileName()))
          .filter(n -> n.matches("\\d{8}\\.yaml"))
          .map(n -> Integer.parseInt(n.substring(0, 8)))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw WholeFile.trouble(versions, "listed", e);
    }
  }

  private int append(List<Integer> all, byte[] bytes) {
    int number = all.isEmpty() ? 1 : all.get(all.size() - 1) + 1;
    WholeFile.write(file(number), bytes);
    point(number);
    for (int i = 0; i < all.size() + 1 - MOST; i++) {
      delete(all.get(i));
    }
    return number;
  }

  private void point(int number) {
    WholeFile.write(versions.resolve(NOW), String.valueOf(number).getBytes(StandardCharsets.UTF_8));
  }

  private void delete(int number) {
    try {
      Files.deleteIfExists(file(number));
    } catch (IOException e) {
      throw WholeFile.trouble(file(number), "removed", e);
    }
  }

  private static Version version(int at, byte[] bytes, List<Integer> all) {
    int i = all.indexOf(at);
    return new Version(at, bytes, i > 0, i >= 0 && i < all.size() - 1);
  }

  /** Saves a change; what had been undone before it is forgotten. */
  public synchronized Version save(byte[] bytes) {
    Version before = now();
    if (Arrays.equals(before.bytes(), bytes)) {
      return before;
    }
    for (int number : numbers()) {
      if (number > before.number()) {
        delete(number);
      }
    }
    int number = before.number() + 1;
    WholeFile.write(file(number), bytes);
    WholeFile.write(folder.card(name), bytes);
    point(number);
    List<Integer> all = numbers();
    for (int i = 0; i < all.size() - MOST; i++) {
      delete(all.get(i));
    }
    return version(number, bytes, numbers());
  }

  /** Goes back one version, or stays where there is none. */
  public synchronized Version undo() {
    return go(-1);
  }

  /** Goes forward one version that was undone, or stays where there is none. */
  public synchronized Version redo() {
    return go(1);
  }

  private Version go(int by) {
    Version now = now();
    List<Integer> all = numbers();
    int i = all.indexOf(now.number()) + by;
    if (i < 0 || i >= all.size()) {
      return now;
    }
    int to = all.get(i);
    byte[] bytes =
        WholeFile.read(file(to), CardFolder.MOST_BYTES)
            .orElseThrow(
                () -> new StoreException(StoreException.Kind.MISSING, "this version is gone"));
    WholeFile.write(folder.card(name), bytes);
    point(to);
    return version(to, bytes, all);
  }
}
