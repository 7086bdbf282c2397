package hingeleaf.sheet.solve;

import hingeleaf.sheet.JobFaults;
import hingeleaf.sheet.PlanChecker;
import hingeleaf.sheet.Progress;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPlan;
import hingeleaf.sheet.bound.AreaBounds;
import hingeleaf.sheet.bound.Bound;
import hingeleaf.sheet.bound.CostCover;
import hingeleaf.sheet.bound.PatternLp;
import hingeleaf.sheet.exact.ExactSearch;
import hingeleaf.sheet.order.CutOrder;
import hingeleaf.sheet.search.Search;
import hingeleaf.sheet.search.Tidy;
import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Task;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * From a job to a plan, at any time: bounds first, a greedy plan, a little search, the pattern
 * program and complete search where they are affordable, then search until proven or out of steps.
 */
public final class SheetPlanner {
  private static final int ROUND = 2_000;
  private static final int MOST_TIDY = 300;
  private static final long MOST_TRIALS = 2_000;

  /** Tidying takes a like share of small and of large efforts. */
  private static final long STEPS_PER_TRIAL = 200;

  private static final long RECOMBINE = 16_000;
  private static final long FIRST = 6_000;
  private static final long WORK = 60_000_000L;
  private static final long WORK_PER_STEP = 3_000;
  private final SheetJob job;
  private final Task task;
  private final Effort effort;
  private final BooleanSupplier stop;
  private final Consumer<Progress> progress;
  private long recombineAt = RECOMBINE;
  private Bound bound = new Bound(0, "nothing");

  private SheetPlanner(
      SheetJob job, Effort effort, BooleanSupplier stop, Consumer<Progress> progress) {
    this.job = job;
    this.task = Task.of(job);
    this.effort = effort;
    this.stop = stop;
    this.progress = progress;
  }

  /**
   * Plans a job.
   *
   * @param stop asked often; once true the best plan so far is returned soon
   * @param progress told whenever the best plan or the bound changes
   */
  public static Outcome plan(
      SheetJob job, Effort effort, BooleanSupplier stop, Consumer<Progress> progress) {
    List<String> faults = JobFaults.of(job);
    if (!faults.isEmpty()) {
      return new Outcome.Blocked(faults);
    }
    return new SheetPlanner(job, effort, stop, progress).run();
  }

  private Outcome run() {
    try (Search search = new Search(task, effort.seed(), effort.threads())) {
      raise(AreaBounds.area(task));
      search.construct(stop);
      tell(search, "laying");
      if (bound.cost() < search.bestCost()) {
        raise(AreaBounds.dualFeasible(task));
      }
      if (bound.cost() == CostCover.IMPOSSIBLE) {
        return tooShort();
      }
      improve(search);
      if (!search.complete()) {
        return tooShort();
      }
      return finish(search);
    }
  }

  private Outcome tooShort() {
    return new Outcome.Blocked(
        List.of(
            "the stock does not suffice: no way was found to lay all the pieces; add a sheet, or"
                + " lift a limit of the trimmer"));
  }

  private void raise(Bound other) {
    bound = bound.higher(other);
  }

  private void tell(Search search, String doing) {
    if (search.complete()) {
      progress.accept(new Progress(search.bestCost(), bound.cost(), doing));
    }
  }

  private boolean open(Search search) {
    return search.bestCost() > bound.cost() && !stop.getAsBoolean();
  }

  private void improve(Search search) {
    long done = rounds(search, 0, Math.min(effort.steps(), FIRST));
    long work = WORK;
    if (open(search) && search.complete()) {
      raise(PatternLp.solve(task, 400_000_000L, search.bestCost(), stop));
      tell(search, "pattern program");
      work = exact(search, work);
    }
    while (open(search) && done < effort.steps()) {
      done = rounds(search, done, Math.min(effort.steps(), Math.max(done * 2, 40_000)));
      if (search.complete() && work > 0 && work <= done * WORK_PER_STEP) {
        work = exact(search, work);
      }
    }
  }

  /** Complete search below the best cost; returns the work to allow next time, 0 for never. */
  private long exact(Search search, long work) {
    boolean limits = task.leastStrip > 0 || task.longest != Integer.MAX_VALUE;
    while (open(search)) {
      long below = search.bestCost() - task.costStep();
      ExactSearch.Answer answer = ExactSearch.solve(task, below, work, stop);
      if (answer instanceof ExactSearch.Answer.Found found && !limits) {
        search.offer(found.layouts());
        tell(search, "complete search");
      } else if (answer instanceof ExactSearch.Answer.None) {
        raise(new Bound(search.bestCost(), "complete search"));
        tell(search, "complete search");
        return 0;
      } else {
        return limits || work > 1_000_000_000L ? 0 : work * 4;
      }
    }
    return 0;
  }

  private long rounds(Search search, long done, long until) {
    long at = done;
    while (at < until && open(search)) {
      long before = search.bestCost();
      search.round(ROUND, bound.cost(), stop);
      at += ROUND;
      if (at >= recombineAt && open(search)) {
        recombineAt = at + Math.max(RECOMBINE, at / 4);
        search.recombine(100_000, stop);
      }
      if (search.bestCost() < before) {
        tell(search, "search");
      }
    }
    return at;
  }

  private Outcome finish(Search search) {
    List<Layout> best = search.best();
    if (task.count <= MOST_TIDY) {
      long worth = Math.min(MOST_TRIALS, effort.steps() / STEPS_PER_TRIAL);
      int trials = stop.getAsBoolean() ? 200 : (int) worth;
      BooleanSupplier still = stop.getAsBoolean() ? () -> false : stop;
      best =
          Tidy.improve(task, effort.seed(), best, l -> CutOrder.of(l, 1).settings(), trials, still);
    }
    CutOrder.Result order = CutOrder.of(best, 12);
    SheetPlan plan = PlanWriter.write(job, task, best, order, bound);
    List<String> faults = PlanChecker.check(job, plan);
    if (!faults.isEmpty()) {
      throw new IllegalStateException("the plan does not pass its check: " + faults.get(0));
    }
    return new Outcome.Planned(plan);
  }
}
