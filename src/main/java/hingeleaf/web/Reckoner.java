package hingeleaf.web;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Runs the reckoning of cards on a few threads, and lets no request wait for ever. */
final class Reckoner implements AutoCloseable {
  private static final int MOST_WAITING = 400;
  private static final long SECONDS = 60;

  private final ExecutorService threads;

  /** The threads for what a hand is waiting for. */
  static Reckoner quick() {
    return new Reckoner(Math.max(2, Runtime.getRuntime().availableProcessors()));
  }

  /** One thread for pictures, chapters and packs, so that they never stand in the way of a hand. */
  static Reckoner patient() {
    return new Reckoner(1);
  }

  private Reckoner(int n) {
    this.threads =
        new ThreadPoolExecutor(
            n,
            n,
            1,
            TimeUnit.MINUTES,
            new LinkedBlockingQueue<>(MOST_WAITING),
            r -> {
              Thread t = new Thread(r, "reckoning");
              t.setDaemon(true);
              return t;
            });
  }

  /** Does the work, or refuses when it takes too long or too much is waiting already. */
  <T> T run(Callable<T> work) {
    Future<T> future = submit(work);
    try {
      return future.get(SECONDS, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      future.cancel(true);
      throw new Refusal(
          503, "this card takes too long to reckon; make it simpler, or use the" + " command line");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Refusal(503, "the server is ending");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException r) {
        throw r;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private <T> Future<T> submit(Callable<T> work) {
    try {
      return threads.submit(work);
    } catch (RejectedExecutionException e) {
      throw new Refusal(503, "too much is asked at once; try again in a moment");
    }
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
