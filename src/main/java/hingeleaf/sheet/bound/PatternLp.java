package hingeleaf.sheet.bound;

import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The linear program of Gilmore and Gomory over guillotine patterns, by column generation. The
 * bound is taken from whole-number prices and the exact best pattern at those prices (Farley, Op.
 * Res. 38 (1990) 922-923), so it holds even when the program is stopped early.
 */
public final class PatternLp {
  private static final int MOST_POINTS = 640;
  private static final double FINE = 1e9;
  private final Task task;
  private final List<PatternPrice> patterns = new ArrayList<>();
  private final int[] limitRow;
  private final double unit;
  private final ColumnLp lp;
  private Bound best = new Bound(0, "pattern program");

  private PatternLp(Task task) {
    this.task = task;
    limitRow = new int[task.stocks];
    List<Integer> limits = new ArrayList<>();
    long top = 1;
    for (int s = 0; s < task.stocks; s++) {
      limitRow[s] = -1;
      if (task.limit[s] < task.count) {
        limitRow[s] = limits.size();
        limits.add(task.limit[s]);
      }
      top = Math.max(top, task.price[s]);
    }
    unit = top;
    lp = new ColumnLp(task.demand, limits.stream().mapToInt(i -> i).toArray(), 50);
  }

  /**
   * Runs column generation within so much work (elementary steps); the answer is a valid bound, 0
   * if nothing could be shown.
   */
  public static Bound solve(Task task, long work, long enough, BooleanSupplier stop) {
    Bound none = new Bound(0, "pattern program");
    if (task.types > 400) {
      return none;
    }
    PatternLp lp = new PatternLp(task);
    long each = 0;
    for (int s = 0; s < task.stocks; s++) {
      PatternPrice price = PatternPrice.of(task, s, MOST_POINTS);
      if (price == null) {
        return none;
      }
      lp.patterns.add(price);
      each += price.work() + (long) task.types * task.types;
    }
    for (long left = work; left > 0 && lp.best.cost() < enough; left -= each) {
      if (stop.getAsBoolean() || !lp.round()) {
        break;
      }
    }
    return lp.best;
  }

  private boolean round() {
    lp.settle(10_000);
    long[] values = new long[task.types];
    double need = 0;
    for (int t = 0; t < task.types; t++) {
      values[t] = Math.max(0, (long) Math.floor(lp.dual(t) * FINE));
      need += (double) values[t] * task.demand[t];
    }
    double[] capacity = new double[task.stocks];
    ColumnLp.Column[] found = new ColumnLp.Column[task.stocks];
    for (int s = 0; s < task.stocks; s++) {
      capacity[s] = patterns.get(s).solve(values);
      found[s] = column(s, patterns.get(s).pattern(values));
    }
    long cost = CostCover.least(task, capacity, need * (1 - 1e-12));
    best = best.higher(new Bound(cost, "pattern program"));
    boolean entered = false;
    for (ColumnLp.Column c : found) {
      if (lp.reducedCost(c) < -1e-7) {
        lp.enter(c);
        entered = true;
      }
    }
    return entered;
  }

  private ColumnLp.Column column(int stock, int[] counts) {
    int n = 0;
    for (int k : counts) {
      n += k > 0 ? 1 : 0;
    }
    int[] rows = new int[n];
    int[] times = new int[n];
    n = 0;
    for (int t = 0; t < counts.length; t++) {
      if (counts[t] > 0) {
        rows[n] = t;
        times[n++] = counts[t];
      }
    }
    return new ColumnLp.Column(task.price[stock] / unit, limitRow[stock], rows, times);
  }
}
