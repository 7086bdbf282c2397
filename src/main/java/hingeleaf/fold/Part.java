package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Loops that share joints, directly or through other loops, and so must be solved together. Parts
 * do not influence each other: the stages of a stacked card are one part each.
 *
 * @param joints indices of the mechanism's joints, ascending
 * @param loops all loops over these joints
 */
record Part(int[] joints, List<Loop> loops) {
  /** Splits by union-find over the loops; joints that are in no loop belong to no part. */
  static List<Part> split(int jointCount, List<Loop> loops) {
    int[] up = new int[jointCount];
    Arrays.setAll(up, i -> i);
    for (Loop loop : loops) {
      for (int j : loop.joints()) {
        up[root(up, j)] = root(up, loop.joints()[0]);
      }
    }
    List<List<Loop>> grouped = new ArrayList<>();
    List<List<Integer>> members = new ArrayList<>();
    int[] group = new int[jointCount];
    Arrays.fill(group, -1);
    boolean[] looped = new boolean[jointCount];
    loops.forEach(l -> Arrays.stream(l.joints()).forEach(j -> looped[j] = true));
    for (int j = 0; j < jointCount; j++) {
      if (looped[j]) {
        int r = root(up, j);
        if (group[r] < 0) {
          group[r] = members.size();
          members.add(new ArrayList<>());
          grouped.add(new ArrayList<>());
        }
        members.get(group[r]).add(j);
      }
    }
    loops.forEach(l -> grouped.get(group[root(up, l.joints()[0])]).add(l));
    List<Part> parts = new ArrayList<>();
    for (int g = 0; g < members.size(); g++) {
      int[] js = members.get(g).stream().mapToInt(Integer::intValue).toArray();
      parts.add(new Part(js, List.copyOf(grouped.get(g))));
    }
    return parts;
  }

  private static int root(int[] up, int i) {
    int r = i;
    while (up[r] != r) {
      up[r] = up[up[r]];
      r = up[r];
    }
    return r;
  }

  int rows() {
    return loops.stream().mapToInt(Loop::rows).sum();
  }

  int size() {
    return joints.length;
  }

  /** Largest residual of any loop at {@code q}. */
  double residual(double[] q) {
    double worst = 0;
    double[] r = new double[6];
    for (Loop loop : loops) {
      double[] jac = new double[loop.rows() * loop.joints().length];
      loop.linearize(q, r, 0, jac);
      for (int i = 0; i < loop.rows(); i++) {
        worst = Math.max(worst, Math.abs(r[i]));
      }
    }
    return worst;
  }

  /** Largest loop size, mm per unit of residual. */
  double scale() {
    return loops.stream().mapToDouble(Loop::size).max().orElse(1);
  }
}
