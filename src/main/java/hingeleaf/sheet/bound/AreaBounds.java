package hingeleaf.sheet.bound;

import hingeleaf.sheet.task.Task;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The area bound and its images under pairs of dual feasible functions. With several stocks the
 * function of the longest sheet serves all: what is superadditive bounds a shorter sheet by the
 * image of its own length.
 */
public final class AreaBounds {
  private static final int MOST_FUNCTIONS = 120;

  private AreaBounds() {}

  /** Area alone. */
  public static Bound area(Task task) {
    double need = 0;
    for (int t = 0; t < task.types; t++) {
      need += (double) task.area(t) * task.demand[t];
    }
    double[] capacity = new double[task.stocks];
    for (int s = 0; s < task.stocks; s++) {
      capacity[s] = task.sheetArea(s);
    }
    return new Bound(CostCover.least(task, capacity, need * (1 - 1e-14)), "area");
  }

  /** The best pair of dual feasible functions. */
  public static Bound dualFeasible(Task task) {
    int width = Arrays.stream(task.sheetW).max().orElse(1);
    int height = Arrays.stream(task.sheetH).max().orElse(1);
    boolean turns = anyTurned(task);
    List<DualFeasible> fs = DualFeasible.choices(width, sizes(task, true, turns), MOST_FUNCTIONS);
    List<DualFeasible> gs = DualFeasible.choices(height, sizes(task, false, turns), MOST_FUNCTIONS);
    long[][] fw = images(fs, task.w, width);
    long[][] fh = images(fs, task.h, width);
    long[][] gw = images(gs, task.w, height);
    long[][] gh = images(gs, task.h, height);
    boolean[] plain = ways(task, true);
    boolean[] turned = ways(task, false);
    Bound best = new Bound(0, "nothing");
    Map<List<Double>, Double> seen = new HashMap<>();
    for (int i = 0; i < fs.size(); i++) {
      for (int j = 0; j < gs.size(); j++) {
        double need = 0;
        for (int t = 0; t < task.types; t++) {
          double a = plain[t] ? (double) fw[i][t] * gh[j][t] : Double.MAX_VALUE;
          double b = turned[t] ? (double) fh[i][t] * gw[j][t] : Double.MAX_VALUE;
          need += Math.min(a, b) * task.demand[t];
        }
        best = best.higher(bound(task, fs.get(i), gs.get(j), need, seen));
      }
    }
    return best;
  }

  private static Bound bound(
      Task task, DualFeasible f, DualFeasible g, double need, Map<List<Double>, Double> seen) {
    double[] capacity = new double[task.stocks];
    for (int s = 0; s < task.stocks; s++) {
      capacity[s] = (double) f.of(task.sheetW[s]) * g.of(task.sheetH[s]);
    }
    if (task.stocks > 1) {
      List<Double> key = Arrays.stream(capacity).boxed().toList();
      if (need <= seen.getOrDefault(key, -1.0)) {
        return new Bound(0, "");
      }
      seen.put(key, need);
    }
    String name = "dual feasible functions (" + f.name() + " by " + g.name() + ")";
    return new Bound(CostCover.least(task, capacity, need * (1 - 1e-14)), name);
  }

  private static boolean anyTurned(Task task) {
    for (boolean[] row : task.turned) {
      for (boolean b : row) {
        if (b) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean[] ways(Task task, boolean upright) {
    boolean[] result = new boolean[task.types];
    for (int s = 0; s < task.stocks; s++) {
      for (int t = 0; t < task.types; t++) {
        result[t] |= upright ? task.upright[s][t] : task.turned[s][t];
      }
    }
    return result;
  }

  private static int[] sizes(Task task, boolean widths, boolean both) {
    int[] own = widths ? task.w : task.h;
    if (!both) {
      return own;
    }
    int[] other = widths ? task.h : task.w;
    int[] result = Arrays.copyOf(own, own.length * 2);
    System.arraycopy(other, 0, result, own.length, other.length);
    return result;
  }

  private static long[][] images(List<DualFeasible> fs, int[] sizes, int length) {
    long[][] result = new long[fs.size()][sizes.length];
    for (int i = 0; i < fs.size(); i++) {
      for (int t = 0; t < sizes.length; t++) {
        result[i][t] = sizes[t] > length ? 0 : fs.get(i).of(sizes[t]);
      }
    }
    return result;
  }
}
