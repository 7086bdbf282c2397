package hingeleaf.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** One file of results, written beside and renamed, so that it is whole or not there. */
final class OutputFile {
  private OutputFile() {}

  /**
   * Writes a file that the user has named; one that is there is replaced.
   *
   * @throws DoorException if it cannot be written; then nothing has changed
   */
  static void write(Path file, byte[] bytes) {
    Path whole = file.toAbsolutePath();
    Path stage = whole.resolveSibling("." + whole.getFileName() + ".new");
    try {
      Files.write(stage, bytes);
      Files.move(stage, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      try {
        Files.deleteIfExists(stage);
      } catch (IOException left) {
        e.addSuppressed(left);
      }
      throw new DoorException(Exit.FILES, file + " cannot be written: " + e.getMessage());
    }
  }
}
