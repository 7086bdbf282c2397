package hingeleaf.sheet.search;

import hingeleaf.sheet.bound.ColumnLp;
import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Part;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Covers the demand with sheets seen before. The linear program over the pool prices every piece; a
 * cover at or below the target can only spend the difference between target and program on reduced
 * costs and on covering twice, which leaves few sheets and a short search.
 */
final class Recombination {
  private static final double EPS = 1e-6;
  private final Task task;
  private final List<Pool> pools;
  private final int[] taken;
  private final ColumnLp lp;
  private final double unit;
  private final List<Layout> layouts = new ArrayList<>();
  private final List<ColumnLp.Column> columns = new ArrayList<>();
  private final int[] limitRow;
  private final BooleanSupplier stop;
  private double[] dual = new double[0];
  private double[] reduced = new double[0];
  private double slack;
  private int[][] with = new int[0][];
  private int[] order = new int[0];
  private final int[] rest;
  private final int[] used;
  private final List<Integer> chosen = new ArrayList<>();
  private int nodes;

  Recombination(Task task, List<Pool> pools, BooleanSupplier stop) {
    this.task = task;
    this.pools = pools;
    this.stop = stop;
    taken = new int[pools.size()];
    rest = task.demand.clone();
    used = new int[task.stocks];
    limitRow = new int[task.stocks];
    long top = 1;
    int n = 0;
    int[] rows = new int[task.stocks];
    for (int s = 0; s < task.stocks; s++) {
      limitRow[s] = task.limit[s] < task.count ? n : -1;
      if (limitRow[s] >= 0) {
        rows[n++] = task.limit[s];
      }
      top = Math.max(top, task.price[s]);
    }
    unit = top;
    lp = new ColumnLp(task.demand, Arrays.copyOf(rows, n), 50);
  }

  /** Takes in what the pools have gathered since the last time. */
  private void absorb() {
    for (int p = 0; p < taken.length; p++) {
      Pool pool = pools.get(p);
      for (; taken[p] < pool.size(); taken[p]++) {
        layouts.add(pool.layouts().get(taken[p]));
        columns.add(column(pool.layouts().get(taken[p]).stock(), pool.contents().get(taken[p])));
      }
    }
  }

  /**
   * Prices the pieces by the program over the pools.
   *
   * @return false when it was stopped before the optimum
   */
  boolean price() {
    absorb();
    for (int i = 0; i < 20 * (task.types + 10); i++) {
      lp.settle(1000);
      ColumnLp.Column best = null;
      double least = -EPS;
      for (ColumnLp.Column c : columns) {
        double r = lp.reducedCost(c);
        if (r < least) {
          least = r;
          best = c;
        }
      }
      if (best == null) {
        return true;
      }
      if (stop.getAsBoolean()) {
        return false;
      }
      lp.enter(best);
    }
    return false;
  }

  /** What each type is worth at the present prices, a sheet's price being about one. */
  double[] worths() {
    double[] result = new double[task.types];
    for (int t = 0; t < result.length; t++) {
      result[t] = Math.max(0, lp.dual(t));
    }
    return result;
  }

  /** What a sheet of each stock costs at the present prices, its limit considered. */
  double[] sheetCosts() {
    double[] result = new double[task.stocks];
    for (int s = 0; s < result.length; s++) {
      double limit = limitRow[s] < 0 ? 0 : lp.limitDual(limitRow[s]);
      result[s] = task.price[s] / unit - Math.min(0, limit);
    }
    return result;
  }

  /** How far the program lies below the target; negative when no cover can exist in the pools. */
  double slack(long target) {
    return target / unit - lp.value() + EPS;
  }

  /** A cover at or below the target from the pools; empty when none was found. */
  List<Layout> cover(long target, int mostNodes) {
    slack = slack(target);
    if (slack < 0) {
      return List.of();
    }
    dual = worths();
    reduced = new double[columns.size()];
    for (int c = 0; c < reduced.length; c++) {
      reduced[c] = Math.max(0, lp.reducedCost(columns.get(c)));
    }
    select();
    System.arraycopy(task.demand, 0, rest, 0, rest.length);
    Arrays.fill(used, 0);
    chosen.clear();
    nodes = mostNodes;
    return cover(slack) ? result() : List.of();
  }

  private ColumnLp.Column column(int stock, int[] content) {
    int[] rows = new int[content.length];
    int[] times = new int[content.length];
    int n = 0;
    for (int t : content) {
      if (n > 0 && rows[n - 1] == t) {
        times[n - 1]++;
      } else {
        rows[n] = t;
        times[n++] = 1;
      }
    }
    return new ColumnLp.Column(
        task.price[stock] / unit, limitRow[stock], Arrays.copyOf(rows, n), Arrays.copyOf(times, n));
  }

  /** For each type the columns that hold it and can be afforded, cheapest first. */
  private void select() {
    List<List<Integer>> lists = new ArrayList<>();
    for (int t = 0; t < task.types; t++) {
      lists.add(new ArrayList<>());
    }
    for (int c = 0; c < reduced.length; c++) {
      if (reduced[c] <= slack) {
        for (int row : columns.get(c).rows()) {
          lists.get(row).add(c);
        }
      }
    }
    with = new int[task.types][];
    for (int t = 0; t < task.types; t++) {
      lists.get(t).sort(Comparator.comparingDouble(c -> reduced[c]));
      with[t] = lists.get(t).stream().mapToInt(Integer::intValue).toArray();
    }
    order =
        java.util.stream.IntStream.range(0, task.types)
            .boxed()
            .sorted(Comparator.comparingInt(t -> with[t].length))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  private boolean cover(double left) {
    int pivot = -1;
    for (int t : order) {
      if (rest[t] > 0) {
        pivot = t;
        break;
      }
    }
    if (pivot < 0) {
      return true;
    }
    for (int c : with[pivot]) {
      if (reduced[c] > left || nodes <= 0) {
        return false;
      }
      int stock = layouts.get(c).stock();
      double spent = reduced[c] + twice(columns.get(c));
      if (spent > left || used[stock] >= task.limit[stock]) {
        continue;
      }
      nodes--;
      int[] took = take(columns.get(c));
      used[stock]++;
      chosen.add(c);
      if (cover(left - spent)) {
        return true;
      }
      chosen.remove(chosen.size() - 1);
      used[stock]--;
      give(columns.get(c), took);
      if ((nodes & 1023) == 0 && stop.getAsBoolean()) {
        nodes = 0;
      }
    }
    return false;
  }

  private double twice(ColumnLp.Column c) {
    double sum = 0;
    for (int k = 0; k < c.rows().length; k++) {
      int over = c.times()[k] - rest[c.rows()[k]];
      if (over > 0) {
        sum += over * dual[c.rows()[k]];
      }
    }
    return sum;
  }

  private int[] take(ColumnLp.Column c) {
    int[] taken = new int[c.rows().length];
    for (int k = 0; k < taken.length; k++) {
      taken[k] = Math.min(rest[c.rows()[k]], c.times()[k]);
      rest[c.rows()[k]] -= taken[k];
    }
    return taken;
  }

  private void give(ColumnLp.Column c, int[] taken) {
    for (int k = 0; k < taken.length; k++) {
      rest[c.rows()[k]] += taken[k];
    }
  }

  private List<Layout> result() {
    int[] wanted = task.demand.clone();
    List<Layout> result = new ArrayList<>();
    for (int c : chosen) {
      Part root = without(layouts.get(c).root(), wanted);
      if (!(root instanceof Part.Free)) {
        result.add(new Layout(layouts.get(c).stock(), root));
      }
    }
    return result;
  }

  /** The same sheet without the pieces that are not wanted any more. */
  private static Part without(Part part, int[] wanted) {
    if (part instanceof Part.Laid laid) {
      if (wanted[laid.type()] == 0) {
        return new Part.Free(laid.w(), laid.h());
      }
      wanted[laid.type()]--;
      return part;
    }
    if (!(part instanceof Part.Split split)) {
      return part;
    }
    List<Part> kept = new ArrayList<>();
    int free = 0;
    for (Part p : split.parts()) {
      Part q = without(p, wanted);
      if (q instanceof Part.Free) {
        free += split.across() ? q.w() : q.h();
      } else {
        kept.add(q);
      }
    }
    if (kept.isEmpty()) {
      return new Part.Free(split.w(), split.h());
    }
    if (free > 0) {
      kept.add(split.across() ? new Part.Free(free, split.h()) : new Part.Free(split.w(), free));
    }
    return new Part.Split(split.across(), split.w(), split.h(), kept);
  }
}
