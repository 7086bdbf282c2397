package hingeleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
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
 * maker's own notes in the folder are safe.
 */
final class OutputFolder {
  static final String MANIFEST = ".hingeleaf-files";

  private OutputFolder() {}

  /**
   * Writes the files.
   *
   * @param files by name, with {@code /} between folders
   * @throws DoorException if the folder cannot be written, or a file stands in the way that was not
   *     made here; then nothing has changed
   */
  static void write(Path folder, Map<String, byte[]> files) {
    Path stage = null;
    try {
      Set<String> ours = manifest(folder);
      refuseStrangers(folder, files.keySet(), ours);
      Path parent = folder.toAbsolutePath().getParent();
      boolean fresh = parent != null && Files.notExists(folder);
      Files.createDirectories(fresh ? parent : folder);
      stage = Files.createTempDirectory(fresh ? parent : folder, ".hingeleaf-new-");
      Path pack = Files.createDirectory(stage.resolve("pack"));
      fill(pack, files);
      if (fresh) {
        Files.move(pack, folder, StandardCopyOption.ATOMIC_MOVE);
      } else {
        moveIn(folder, pack, files.keySet(), ours);
      }
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
    } finally {
      remove(stage);
    }
  }

  /** A whole pack with its manifest in an empty folder. */
  private static void fill(Path pack, Map<String, byte[]> files) throws IOException {
    makeParents(pack, files.keySet());
    for (Map.Entry<String, byte[]> f : files.entrySet()) {
      Files.write(pack.resolve(f.getKey()), f.getValue());
    }
    Files.write(
        pack.resolve(MANIFEST), List.copyOf(new TreeSet<>(files.keySet())), StandardCharsets.UTF_8);
  }

  private static void makeParents(Path folder, Set<String> names) throws IOException {
    Set<Path> parents = new LinkedHashSet<>();
    for (String name : names) {
      Path target = folder.resolve(name);
      Path parent = target.getParent();
      parents.add(parent == null ? target : parent);
    }
    for (Path parent : parents) {
      Files.createDirectories(parent);
    }
  }

  private static Set<String> manifest(Path folder) throws IOException {
    Path list = folder.resolve(MANIFEST);
    return Files.isRegularFile(list)
        ? new TreeSet<>(Files.readAllLines(list, StandardCharsets.UTF_8))
        : new TreeSet<>();
  }

  private static void refuseStrangers(Path folder, Set<String> names, Set<String> ours) {
    for (String name : names) {
      if (Files.exists(folder.resolve(name)) && !ours.contains(name)) {
        throw new DoorException(
            Exit.FILES,
            folder.resolve(name)
                + " was not made by hingeleaf and is left alone - move it, or name another folder");
      }
    }
  }

  private static void moveIn(Path folder, Path stage, Set<String> names, Set<String> old)
      throws IOException {
    makeParents(folder, names);
    for (String name : names) {
      Files.move(
          stage.resolve(name),
          folder.resolve(name),
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
    }
    Files.move(
        stage.resolve(MANIFEST),
        folder.resolve(MANIFEST),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
    for (String name : old) {
      if (!names.contains(name) && inside(folder, name)) {
        Files.deleteIfExists(folder.resolve(name));
      }
    }
  }

  private static boolean inside(Path folder, String name) {
    return folder.resolve(name).normalize().startsWith(folder.normalize());
  }

  private static void remove(@org.jspecify.annotations.Nullable Path stage) {
    if (stage == null) {
      return;
    }
    try (Stream<Path> all = Files.walk(stage)) {
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
