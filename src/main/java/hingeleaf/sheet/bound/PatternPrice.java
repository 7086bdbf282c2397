package hingeleaf.sheet.bound;

import hingeleaf.sheet.task.Task;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The most valuable guillotine pattern of one stock, pieces repeated at will, by the recursion of
 * Gilmore and Gomory (Operations Research 14 (1966) 1045-1074) over normal points. Values are whole
 * numbers, so the result is exact.
 */
final class PatternPrice {
  private final Task task;
  private final int stock;
  private final NormalPoints xs;
  private final NormalPoints ys;
  private final int[][] cutsX;
  private final int[][] cutsY;
  private final long[][] best;

  private PatternPrice(Task task, int stock, NormalPoints xs, NormalPoints ys) {
    this.task = task;
    this.stock = stock;
    this.xs = xs;
    this.ys = ys;
    cutsX = xs.cuts();
    cutsY = ys.cuts();
    best = new long[xs.size()][ys.size()];
  }

  static @Nullable PatternPrice of(Task task, int stock, int mostPoints) {
    int[] sizesX = new int[2 * task.types];
    int[] sizesY = new int[2 * task.types];
    for (int t = 0; t < task.types; t++) {
      sizesX[2 * t] = task.upright[stock][t] ? task.w[t] : 0;
      sizesX[2 * t + 1] = task.turned[stock][t] ? task.h[t] : 0;
      sizesY[2 * t] = task.upright[stock][t] ? task.h[t] : 0;
      sizesY[2 * t + 1] = task.turned[stock][t] ? task.w[t] : 0;
    }
    int[] often = new int[2 * task.types];
    Arrays.fill(often, Integer.MAX_VALUE);
    NormalPoints xs = NormalPoints.of(task.sheetW[stock], sizesX, often, mostPoints);
    NormalPoints ys = NormalPoints.of(task.sheetH[stock], sizesY, often, mostPoints);
    return xs == null || ys == null ? null : new PatternPrice(task, stock, xs, ys);
  }

  /** How many elementary steps one solution takes, about. */
  long work() {
    return (long) xs.size() * ys.size() * (xs.size() + ys.size()) / 4;
  }

  /** Value of the best pattern for these values of the types. */
  long solve(long[] values) {
    for (long[] column : best) {
      Arrays.fill(column, 0);
    }
    for (int t = 0; t < task.types; t++) {
      if (task.upright[stock][t]) {
        seed(task.w[t], task.h[t], values[t]);
      }
      if (task.turned[stock][t]) {
        seed(task.h[t], task.w[t], values[t]);
      }
    }
    for (int i = 1; i < xs.size(); i++) {
      long[] column = best[i];
      long[] before = best[i - 1];
      int[] acrossCuts = cutsX[i];
      for (int j = 1; j < ys.size(); j++) {
        column[j] = Math.max(column[j], Math.max(before[j], column[j - 1]));
      }
      for (int c = 0; c < acrossCuts.length; c += 2) {
        long[] a = best[acrossCuts[c]];
        long[] b = best[acrossCuts[c + 1]];
        for (int j = 1; j < ys.size(); j++) {
          column[j] = Math.max(column[j], a[j] + b[j]);
        }
      }
      for (int j = 1; j < ys.size(); j++) {
        long v = Math.max(column[j], column[j - 1]);
        int[] stackCuts = cutsY[j];
        for (int c = 0; c < stackCuts.length; c += 2) {
          v = Math.max(v, column[stackCuts[c]] + column[stackCuts[c + 1]]);
        }
        column[j] = v;
      }
    }
    return best[xs.size() - 1][ys.size() - 1];
  }

  private void seed(int w, int h, long value) {
    int i = xs.floor(w);
    int j = ys.floor(h);
    best[i][j] = Math.max(best[i][j], value);
  }

  /** What the best pattern holds, by type; after {@link #solve}. */
  int[] pattern(long[] values) {
    int[] counts = new int[task.types];
    trace(xs.size() - 1, ys.size() - 1, values, counts);
    return counts;
  }

  private void trace(int i, int j, long[] values, int[] counts) {
    long v = best[i][j];
    if (v == 0) {
      return;
    }
    if (best[i - 1][j] == v) {
      trace(i - 1, j, values, counts);
      return;
    }
    if (best[i][j - 1] == v) {
      trace(i, j - 1, values, counts);
      return;
    }
    for (int t = 0; t < task.types; t++) {
      if (values[t] == v && isAt(t, xs.at(i), ys.at(j))) {
        counts[t]++;
        return;
      }
    }
    for (int c = 0; c < cutsX[i].length; c += 2) {
      if (best[cutsX[i][c]][j] + best[cutsX[i][c + 1]][j] == v) {
        trace(cutsX[i][c], j, values, counts);
        trace(cutsX[i][c + 1], j, values, counts);
        return;
      }
    }
    for (int c = 0; c < cutsY[j].length; c += 2) {
      if (best[i][cutsY[j][c]] + best[i][cutsY[j][c + 1]] == v) {
        trace(i, cutsY[j][c], values, counts);
        trace(i, cutsY[j][c + 1], values, counts);
        return;
      }
    }
  }

  private boolean isAt(int t, int x, int y) {
    return (task.upright[stock][t] && task.w[t] == x && task.h[t] == y)
        || (task.turned[stock][t] && task.h[t] == x && task.w[t] == y);
  }
}
