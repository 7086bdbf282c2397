package hingeleaf.cli;

import hingeleaf.pack.Pack;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.pack.PackFiles;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * The files of a pack on their way: begun on the other cores while problems are still looked for,
 * and written by this thread as they come once it is known that they may be.
 */
final class Making {
  private record File(String name, byte[] bytes) {}

  private final BlockingQueue<Optional<File>> files = new LinkedBlockingQueue<>();
  private final CompletableFuture<?> work;

  private Making(Pack pack, Fonts fonts) {
    this.work =
        CompletableFuture.runAsync(
                () ->
                    PackFiles.of(
                        pack,
                        fonts,
                        (name, bytes) -> files.add(Optional.of(new File(name, bytes)))))
            .whenComplete((nothing, fault) -> files.add(Optional.empty()));
  }

  static Making of(Pack pack, Fonts fonts) {
    return new Making(pack, fonts);
  }

  /**
   * Lays each file ready as soon as it is made.
   *
   * @return how many there were
   * @throws DoorException if one cannot be written
   */
  int into(OutputFolder folder) {
    int count = 0;
    try {
      for (Optional<File> f = files.take(); f.isPresent(); f = files.take()) {
        folder.put(f.get().name(), f.get().bytes());
        count++;
      }
      work.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException fault ? fault : e;
    }
    return count;
  }
}
