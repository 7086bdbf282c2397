package hingeleaf.cli;

import static java.nio.file.StandardCopyOption.ATOMIC_MOVE;
import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** One file of results, written beside and renamed, so that it is whole or not there. */
final class OutputFile {
  private OutputFile() {}

  /**
   * Writes a file that the user has named; one that is there is replaced.
   *
   * @throws DoorException if it cannot be written; then nothing has changed
   */
  static void write(Path file, byte[] bytes) {
    write(Map.of(file, bytes));
  }

  /**
   * Writes files that belong together: none is put in place before all of them are whole.
   *
   * @throws DoorException if one cannot be written
   */
  static void write(Map<Path, byte[]> files) {
    Map<Path, Path> staged = new LinkedHashMap<>();
    Path now = Path.of("");
    try {
      for (Map.Entry<Path, byte[]> e : files.entrySet()) {
        now = e.getKey();
        Path whole = now.toAbsolutePath();
        Path stage = whole.resolveSibling("." + whole.getFileName() + ".new");
        staged.put(whole, stage);
        Files.write(stage, e.getValue());
      }
      for (Map.Entry<Path, Path> e : staged.entrySet()) {
        now = e.getKey();
        Files.move(e.getValue(), now, ATOMIC_MOVE, REPLACE_EXISTING);
      }
    } catch (IOException e) {
      staged.values().forEach(stage -> gone(stage, e));
      throw new DoorException(Exit.FILES, now + " cannot be written: " + e.getMessage());
    }
  }

  private static void gone(Path stage, IOException fault) {
    try {
      Files.deleteIfExists(stage);
    } catch (IOException left) {
      fault.addSuppressed(left);
    }
  }
}
