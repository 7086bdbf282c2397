package hingeleaf.cli;

import hingeleaf.paper.SheetJson;
import hingeleaf.sheet.Progress;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import java.io.PrintStream;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;

/** Searches by the clock, tells how it goes, and on Ctrl-C lets the best plan be printed first. */
final class SheetSearch {
  private final PrintStream err;
  private final double seconds;
  private final AtomicBoolean stopped = new AtomicBoolean();

  SheetSearch(double seconds, PrintStream err) {
    this.seconds = seconds;
    this.err = err;
  }

  /** What came of one job, and how long it took. */
  record Found(Outcome outcome, double seconds) {}

  /** Runs work that searches and prints; returns its code, or that of a stop. */
  int run(Function<SheetSearch, Integer> work) {
    CountDownLatch printed = new CountDownLatch(1);
    Thread hook = new Thread(() -> waitFor(printed), "stop");
    Runtime.getRuntime().addShutdownHook(hook);
    try {
      int code = work.apply(this);
      return stopped.get() ? Exit.STOPPED : code;
    } finally {
      printed.countDown();
      if (!stopped.get()) {
        Runtime.getRuntime().removeShutdownHook(hook);
      }
    }
  }

  Found plan(SheetJob job) {
    long begin = System.nanoTime();
    long end = begin + (long) (seconds * 1e9);
    Effort effort = new Effort(1, Long.MAX_VALUE / 4, Runtime.getRuntime().availableProcessors());
    Outcome outcome =
        SheetPlanner.plan(job, effort, () -> stopped.get() || System.nanoTime() > end, this::tell);
    return new Found(outcome, (System.nanoTime() - begin) * 1e-9);
  }

  /** On Ctrl-C: lets the planner print its best, then leaves with the code for it. */
  private void waitFor(CountDownLatch printed) {
    stopped.set(true);
    try {
      if (printed.await(20, TimeUnit.SECONDS)) {
        Runtime.getRuntime().halt(Exit.STOPPED);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void tell(Progress p) {
    err.printf(
        Locale.ROOT,
        "cost %s, no plan below %s, gap %.1f %% (%s)%n",
        SheetJson.money(p.cost()).toPlainString(),
        SheetJson.money(p.lowerBound()).toPlainString(),
        100 * p.gap(),
        p.doing());
  }
}
