package hingeleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads what a user names, never more of it than anything here needs. */
final class InputFile {
  /** The longest file that is read, bytes; a design is a few thousand. */
  static final int MOST_BYTES = 2_000_000;

  private InputFile() {}

  /**
   * The bytes of a file.
   *
   * @throws DoorException if it is not there, cannot be read, or is longer than {@link #MOST_BYTES}
   */
  static byte[] read(Path file) {
    return read(file, MOST_BYTES);
  }

  static byte[] read(Path file, int most) {
    byte[] bytes = beginning(file, most + 1);
    if (bytes.length > most) {
      throw new DoorException(
          Exit.CONTENT,
          file + " is longer than " + most / 1_000_000 + " MB - this is not a file made for this");
    }
    return bytes;
  }

  /** A file's first bytes, or all where it has no more. */
  private static byte[] beginning(Path file, int most) {
    if (Files.isDirectory(file)) {
      throw new DoorException(Exit.FILES, file + " is a folder, not a file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(most);
    } catch (NoSuchFileException e) {
      throw new DoorException(Exit.FILES, "there is no file " + file);
    } catch (AccessDeniedException e) {
      throw new DoorException(Exit.FILES, file + " may not be read");
    } catch (IOException e) {
      throw new DoorException(Exit.FILES, file + " cannot be read: " + e.getMessage());
    }
  }

  /**
   * A file that a design names, which must lie in the design's folder or below. Of one that is too
   * long only so much as shows it: whoever reads the drawing tells so at its place in the design.
   *
   * @throws DoorException if the name leads elsewhere, or the file cannot be read
   */
  static byte[] beside(Path design, String name) {
    Path folder = design.toAbsolutePath().normalize().getParent();
    try {
      Path file = folder == null ? Path.of(name) : folder.resolve(name).normalize();
      if (Path.of(name).isAbsolute() || (folder != null && !file.startsWith(folder))) {
        throw new DoorException(
            Exit.CONTENT, design + ": " + name + " lies outside the folder of the design");
      }
      return beginning(file, MOST_BYTES + 1);
    } catch (InvalidPathException e) {
      throw new DoorException(Exit.CONTENT, design + ": " + name + " is no name of a file");
    }
  }
}
