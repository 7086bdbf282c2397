package hingeleaf.cli;

import hingeleaf.intake.SheetJobReader;
import hingeleaf.intake.UnreadableJobException;
import hingeleaf.paper.SheetJson;
import hingeleaf.sheet.Progress;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hingeleaf sheets JOB.json}: the cheapest plan that a hand trimmer can cut. */
@Command(
    name = "sheets",
    description = "Lay pieces on the cheapest sheets that a hand trimmer can cut.",
    mixinStandardHelpOptions = true)
public final class SheetsCommand implements Callable<Integer> {
  static final int FINE = 0;
  static final int BLOCKED = 1;
  static final int USAGE = 2;
  static final int UNREADABLE = 3;
  static final int STOPPED = 130;
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(paramLabel = "JOB", description = "a sheet job (JSON)")
  @Nullable Path job;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description = "how long to search at most (default: ${DEFAULT-VALUE})")
  double seconds = 10;

  @Option(names = "--json", description = "print the plan as JSON")
  boolean json;

  public SheetsCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  /** Runs the command with its own arguments; returns the exit code. */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return new CommandLine(new SheetsCommand(out, err))
        .setOut(new java.io.PrintWriter(out, true, StandardCharsets.UTF_8))
        .setErr(new java.io.PrintWriter(err, true, StandardCharsets.UTF_8))
        .execute(args);
  }

  @Override
  public Integer call() {
    if (!(seconds > 0 && seconds <= 1_000_000)) {
      err.println("--seconds is a number above 0, found " + seconds);
      return USAGE;
    }
    Path file = java.util.Objects.requireNonNull(job);
    String text;
    try {
      text = Files.readString(file);
    } catch (CharacterCodingException e) {
      err.println(file + ": this is not text in UTF-8");
      return BLOCKED;
    } catch (IOException e) {
      err.println(
          file + ": cannot be read" + (Files.exists(file) ? "" : ", there is no such file"));
      return UNREADABLE;
    }
    try {
      return plan(file, SheetJobReader.read(text));
    } catch (UnreadableJobException e) {
      err.println(file + ": " + e.getMessage());
      return BLOCKED;
    }
  }

  private int plan(Path file, SheetJob sheetJob) {
    long begin = System.nanoTime();
    long end = begin + (long) (seconds * 1e9);
    AtomicBoolean stopped = new AtomicBoolean();
    CountDownLatch printed = new CountDownLatch(1);
    Thread hook = new Thread(() -> waitFor(stopped, printed), "stop");
    Runtime.getRuntime().addShutdownHook(hook);
    int code;
    try {
      Effort effort = new Effort(1, Long.MAX_VALUE / 4, Runtime.getRuntime().availableProcessors());
      Outcome outcome =
          SheetPlanner.plan(
              sheetJob, effort, () -> stopped.get() || System.nanoTime() > end, this::tell);
      double took = (System.nanoTime() - begin) * 1e-9;
      code = print(file, sheetJob, outcome, took);
    } finally {
      printed.countDown();
    }
    if (stopped.get()) {
      return STOPPED;
    }
    Runtime.getRuntime().removeShutdownHook(hook);
    return code;
  }

  /** On Ctrl-C: lets the planner print its best, then leaves with the code for it. */
  private static void waitFor(AtomicBoolean stopped, CountDownLatch printed) {
    stopped.set(true);
    try {
      if (printed.await(20, TimeUnit.SECONDS)) {
        Runtime.getRuntime().halt(STOPPED);
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

  private int print(Path file, SheetJob sheetJob, Outcome outcome, double took) {
    if (outcome instanceof Outcome.Planned planned) {
      out.print(
          json
              ? SheetJson.write(sheetJob, planned.plan(), took) + "\n"
              : CuttingList.write(sheetJob, planned.plan()));
      out.flush();
      return FINE;
    }
    ((Outcome.Blocked) outcome).sentences().forEach(s -> err.println(file + ": " + s));
    return BLOCKED;
  }
}
