package hingeleaf.web;

import hingeleaf.pack.Stopped;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Runs the reckoning of cards on a few threads, and lets no request wait for ever. */
final class Reckoner implements AutoCloseable {
  private static final int MOST_WAITING = 400;
  private static final long SECONDS = 60;

  private final ThreadPoolExecutor threads;
  private final long seconds;
  private final Map<String, Running> asks = new ConcurrentHashMap<>();

  /** The threads for what a hand is waiting for. */
  static Reckoner quick() {
    return new Reckoner(Math.max(2, Runtime.getRuntime().availableProcessors()), SECONDS);
  }

  /** One thread for pictures, chapters and packs, so that they never stand in the way of a hand. */
  static Reckoner patient() {
    return new Reckoner(1, SECONDS);
  }

  /** So many threads, and seconds that anybody waits. */
  Reckoner(int n, long seconds) {
    this.seconds = seconds;
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
    return run("", work);
  }

  /**
   * The same for work that can be stopped from outside.
   *
   * @param name by which {@link #stop} finds it; empty for none
   */
  <T> T run(String name, Callable<T> work) {
    Ask ask = new Ask();
    FutureTask<T> future = new FutureTask<>(() -> ask.during(work));
    Running running = new Running(ask, future);
    if (!name.isEmpty()) {
      asks.put(name, running); // before it can begin, or a quick stop would not find it
    }
    try {
      submit(future);
      return future.get(seconds, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      running.stop();
      throw new Refusal(
          503, "this card takes too long to reckon; make it simpler, or use the command line");
    } catch (CancellationException e) {
      throw stopped();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Refusal(503, "the server is ending");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Stopped) {
        throw stopped();
      }
      if (e.getCause() instanceof RuntimeException r) {
        throw r;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      asks.remove(name, running);
    }
  }

  private static Refusal stopped() {
    return new Refusal(503, "stopped, as you asked");
  }

  /** What is on its way, and how it is ended: work that has not begun never does. */
  private record Running(Ask ask, Future<?> future) {
    void stop() {
      future.cancel(false);
      ask.stop();
    }
  }

  /** Stops the work of that name, if it is on its way here. */
  void stop(String name) {
    Running running = asks.remove(name);
    if (running != null) {
      running.stop();
    }
  }

  private void submit(Runnable work) {
    try {
      threads.execute(work);
    } catch (RejectedExecutionException e) {
      throw new Refusal(503, "too much is asked at once; try again in a moment");
    }
  }

  /** How much is being worked on just now. */
  int busy() {
    return threads.getActiveCount();
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
