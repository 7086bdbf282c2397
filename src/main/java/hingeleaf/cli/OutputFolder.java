package hingeleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A folder of results, written whole or not at all.
 *
 * <p>Everything is first written to a folder beside, then renamed into place. A list of what was
 * written stays in the folder; only files on the last such list are ever replaced or removed, so a
 * maker's own notes in the folder are safe. A file that would not change is left as it stands, so
 * that its date tells which sheets must be printed anew. Closed before it is {@link #finish
 * finished}, or stopped by the user, it leaves everything as it was.
 */
final class OutputFolder implements AutoCloseable {
  static final String MANIFEST = ".hingeleaf-files";

  private final Path folder;
  private final boolean fresh;
  private final Set<String> ours;
  private final Path stage;
  private final Path pack;
  private final Set<String> names = new LinkedHashSet<>();
  private final Set<String> unchanged = new HashSet<>();
  private final Set<Path> parents = new LinkedHashSet<>();
  private final Thread whenStopped = new Thread(this::clear);
  private boolean cleared;

  private OutputFolder(Path folder) throws IOException {
    this.folder = folder;
    this.ours = manifest(folder);
    Path parent = folder.toAbsolutePath().getParent();
    this.fresh = parent != null && Files.notExists(folder);
    Path beside = fresh ? parent : folder;
    Files.createDirectories(beside);
    this.stage = Files.createTempDirectory(beside, ".hingeleaf-new-");
    this.pack = Files.createDirectory(stage.resolve("pack"));
  }

  /**
   * Begins a folder; what stands in it is not touched yet.
   *
   * @throws DoorException if it cannot be written
   */
  static OutputFolder open(Path folder) {
    OutputFolder out = trying(folder, () -> new OutputFolder(folder));
    Runtime.getRuntime().addShutdownHook(out.whenStopped);
    return out;
  }

  /**
   * Writes all files, and all at once.
   *
   * @param files by name, with {@code /} between folders
   * @throws DoorException if the folder cannot be written, or a file stands in the way that was not
   *     made here; then nothing has changed
   */
  static void write(Path folder, Map<String, byte[]> files) {
    try (OutputFolder out = open(folder)) {
      files.forEach(out::put);
      out.finish();
    }
  }

  /**
   * Lays one file ready beside, unless it stands in the folder already.
   *
   * @param name with {@code /} between folders
   * @throws DoorException if it cannot be written
   */
  synchronized void put(String name, byte[] bytes) {
    goOn();
    trying(
        folder,
        () -> {
          names.add(name);
          return stands(name, bytes) ? unchanged.add(name) : lay(name, bytes);
        });
  }

  private boolean stands(String name, byte[] bytes) {
    Path file = folder.resolve(name);
    try {
      return ours.contains(name)
          && Files.isRegularFile(file)
          && Files.size(file) == bytes.length
          && Arrays.equals(Files.readAllBytes(file), bytes);
    } catch (IOException e) {
      return false; // what cannot be read can still be replaced
    }
  }

  private boolean lay(String name, byte[] bytes) throws IOException {
    Path target = pack.resolve(name);
    Path parent = target.getParent();
    if (parent != null && parents.add(parent)) {
      Files.createDirectories(parent);
    }
    Files.write(target, bytes);
    return true;
  }

  /**
   * Puts all files into place.
   *
   * @throws DoorException if the folder cannot be written, or a file stands in the way that was not
   *     made here; then nothing has changed
   */
  synchronized void finish() {
    goOn();
    refuseStrangers();
    trying(
        folder,
        () -> {
          Files.write(
              pack.resolve(MANIFEST), List.copyOf(new TreeSet<>(names)), StandardCharsets.UTF_8);
          if (fresh) {
            return Files.move(pack, folder, StandardCopyOption.ATOMIC_MOVE);
          }
          return moveIn();
        });
  }

  private void goOn() {
    if (cleared) {
      throw new DoorException(Exit.STOPPED, "stopped; nothing was written");
    }
  }

  private interface Disk<T> {
    T work() throws IOException;
  }

  private static <T> T trying(Path folder, Disk<T> disk) {
    try {
      return disk.work();
    } catch (FileAlreadyExistsException e) {
      throw new DoorException(Exit.FILES, e.getFile() + " is in the way: it is no folder");
    } catch (AccessDeniedException e) {
      throw new DoorException(Exit.FILES, "the folder " + folder + " may not be written");
    } catch (FileSystemException e) {
      String why = e.getReason() == null ? "no file can be made there" : e.getReason();
      throw new DoorException(Exit.FILES, "the folder " + folder + " cannot be written: " + why);
    } catch (IOException e) {
      throw new DoorException(
          Exit.FILES, "the folder " + folder + " cannot be written: " + e.getMessage());
    }
  }

  private static Set<String> manifest(Path folder) throws IOException {
    Path list = folder.resolve(MANIFEST);
    return Files.isRegularFile(list)
        ? new TreeSet<>(Files.readAllLines(list, StandardCharsets.UTF_8))
        : new TreeSet<>();
  }

  private void refuseStrangers() {
    for (String name : names) {
      if (Files.exists(folder.resolve(name)) && !ours.contains(name)) {
        throw new DoorException(
            Exit.FILES,
            folder.resolve(name)
                + " was not made by hingeleaf and is left alone - move it, or name another folder");
      }
    }
  }

  private Path moveIn() throws IOException {
    for (Path parent : parents) {
      Files.createDirectories(folder.resolve(pack.relativize(parent)));
    }
    for (String name : names) {
      if (!unchanged.contains(name)) {
        replace(name);
      }
    }
    replace(MANIFEST);
    for (String name : ours) {
      if (!names.contains(name) && inside(name)) {
        Files.deleteIfExists(folder.resolve(name));
      }
    }
    return folder;
  }

  private void replace(String name) throws IOException {
    Files.move(
        pack.resolve(name),
        folder.resolve(name),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  private boolean inside(String name) {
    return folder.resolve(name).normalize().startsWith(folder.normalize());
  }

  /** Takes away what was laid ready and not put into place. */
  @Override
  public void close() {
    clear();
    try {
      Runtime.getRuntime().removeShutdownHook(whenStopped);
    } catch (IllegalStateException e) {
      return; // the user has stopped us and it runs already
    }
  }

  private synchronized void clear() {
    cleared = true;
    try (Stream<Path> all = Files.exists(stage) ? Files.walk(stage) : Stream.empty()) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(p);
      }
    } catch (IOException e) {
      // The results are in place or the fault is already on its way; a leftover folder harms
      // nobody.
      return;
    }
  }
}
