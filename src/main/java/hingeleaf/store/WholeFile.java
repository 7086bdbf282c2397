package hingeleaf.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** Reads and writes single files: whole or not at all, and never through a link. */
final class WholeFile {
  private WholeFile() {}

  /**
   * The bytes of a plain file; empty where there is none, or a link or a folder stands there.
   *
   * @param most longest file that is read, bytes
   */
  static Optional<byte[]> read(Path file, int most) {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
      byte[] bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        throw new StoreException(
            StoreException.Kind.NAME, file.getFileName() + " is longer than " + most + " bytes");
      }
      return Optional.of(bytes);
    } catch (IOException e) {
      throw trouble(file, "read", e);
    }
  }

  /**
   * Writes beside, flushes to the disk, then renames: a reader sees the old file or the new one.
   */
  static void write(Path file, byte[] bytes) {
    Path folder = file.toAbsolutePath().getParent();
    Path beside = null;
    try {
      if (folder == null) {
        throw new IOException("it has no folder");
      }
      Files.createDirectories(folder);
      beside = Files.createTempFile(folder, ".hingeleaf-", ".part");
      try (FileChannel out = FileChannel.open(beside, StandardOpenOption.WRITE)) {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
          out.write(rest);
        }
        out.force(true);
      }
      Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      discard(beside);
      throw trouble(file, "written", e);
    }
  }

  private static void discard(@org.jspecify.annotations.Nullable Path beside) {
    if (beside == null) {
      return;
    }
    try {
      Files.deleteIfExists(beside);
    } catch (IOException e) {
      return; // a leftover beside the card harms nobody, and the true fault is on its way
    }
  }

  static StoreException trouble(Path file, String what, IOException e) {
    return new StoreException(
        StoreException.Kind.DISK,
        file.getFileName() + " cannot be " + what + ": " + e.getClass().getSimpleName());
  }
}
