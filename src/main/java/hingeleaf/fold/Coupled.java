package hingeleaf.fold;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Newton corrections for loops that must be solved together: normal equations with a sparse factor
 * where the equations fix every unknown, else the shortest correction by singular values.
 *
 * <p>The normal equations square the condition of the Jacobian; that costs an iteration, never
 * accuracy, because the residual is always taken from the loops themselves.
 */
final class Coupled {
  /** Up to this many unknowns a lost pivot is looked into with singular values. */
  static final int DENSE = 130;

  private final List<Loop> loops;
  private final int[] unknowns;
  private final boolean loose;
  private final int rows;
  private final double[] r;
  private final double[][] jac;

  /** For each loop and each of its joints the place of the unknown, or -1 where it is held. */
  private final int[][] place;

  /** For each loop and pair of its joints the slot of the normal matrix, or -1. */
  private final int[][] slot;

  private final SparseLdl ldl;
  private final double[] values;
  private final double[] rhs;

  /**
   * @param unknowns joints that may move, ascending
   * @param loose whether they are more than the loops can fix
   */
  Coupled(List<Loop> loops, int[] unknowns, int jointCount, boolean loose) {
    this.loops = loops;
    this.unknowns = unknowns.clone();
    this.loose = loose;
    rows = loops.stream().mapToInt(Loop::rows).sum();
    r = new double[rows];
    rhs = new double[unknowns.length];
    jac = new double[loops.size()][];
    place = new int[loops.size()][];
    slot = new int[loops.size()][];
    int[] where = new int[jointCount];
    java.util.Arrays.fill(where, -1);
    List<TreeSet<Integer>> graph = graph(where);
    int[][] lists =
        graph.stream()
            .map(s -> s.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
    int[] order = loose && lists.length <= DENSE ? identity(lists.length) : FillOrder.of(lists);
    int[] rank = new int[order.length];
    for (int k = 0; k < order.length; k++) {
      rank[order[k]] = k;
      this.unknowns[k] = unknowns[order[k]];
    }
    int[] start = new int[order.length + 1];
    int[] rowOf = pattern(lists, order, rank, start);
    locate(rank, start, rowOf);
    ldl = new SparseLdl(order.length, start, rowOf);
    values = new double[rowOf.length];
  }

  private static int[] identity(int n) {
    int[] out = new int[n];
    java.util.Arrays.setAll(out, i -> i);
    return out;
  }

  private List<TreeSet<Integer>> graph(int[] where) {
    List<TreeSet<Integer>> graph = new ArrayList<>();
    for (int i = 0; i < unknowns.length; i++) {
      where[unknowns[i]] = i;
      graph.add(new TreeSet<>());
    }
    for (int l = 0; l < loops.size(); l++) {
      int[] js = loops.get(l).joints();
      jac[l] = new double[js.length * loops.get(l).rows()];
      place[l] = java.util.Arrays.stream(js).map(j -> where[j]).toArray();
      for (int x : place[l]) {
        for (int y : place[l]) {
          if (x >= 0 && y >= 0 && x != y) {
            graph.get(x).add(y);
          }
        }
      }
    }
    return graph;
  }

  private static int[] pattern(int[][] graph, int[] order, int[] rank, int[] start) {
    List<Integer> out = new ArrayList<>();
    for (int k = 0; k < order.length; k++) {
      int at = k;
      java.util.Arrays.stream(graph[order[k]])
          .map(x -> rank[x])
          .filter(i -> i < at)
          .sorted()
          .forEach(out::add);
      out.add(k);
      start[k + 1] = out.size();
    }
    return out.stream().mapToInt(Integer::intValue).toArray();
  }

  private void locate(int[] rank, int[] start, int[] rowOf) {
    for (int l = 0; l < place.length; l++) {
      int n = place[l].length;
      for (int x = 0; x < n; x++) {
        place[l][x] = place[l][x] < 0 ? -1 : rank[place[l][x]];
      }
      slot[l] = new int[n * n];
      for (int x = 0; x < n; x++) {
        for (int y = 0; y < n; y++) {
          int i = place[l][x];
          int k = place[l][y];
          slot[l][x * n + y] =
              i < 0 || k < i ? -1 : java.util.Arrays.binarySearch(rowOf, start[k], start[k + 1], i);
        }
      }
    }
  }

  int rows() {
    return rows;
  }

  /** Whether a correction of nothing means that nothing is left: no more rows than unknowns. */
  boolean square() {
    return !loose && rows <= unknowns.length && ratio > 1e-6;
  }

  /** Residual and Jacobian at {@code q}; returns the largest residual. */
  double evaluate(double[] q) {
    int at = 0;
    double worst = 0;
    for (int l = 0; l < jac.length; l++) {
      loops.get(l).linearize(q, r, at, jac[l]);
      at += loops.get(l).rows();
    }
    for (double x : r) {
      worst = Math.max(worst, Math.abs(x));
    }
    return worst;
  }

  /** Smallest over largest pivot of the last step, a rough inverse condition. */
  double ratio = 1;

  /** One Newton correction after {@link #evaluate}; returns the largest change. */
  double step(double[] q) {
    double[] dq = loose && unknowns.length <= DENSE ? shortest() : normal();
    if (!loose && ratio < 1e-7 && unknowns.length <= DENSE) {
      dq = shortest();
    }
    double most = 0;
    for (int k = 0; k < unknowns.length; k++) {
      q[unknowns[k]] += dq[k];
      most = Math.max(most, Math.abs(dq[k]));
    }
    return most;
  }

  private double[] normal() {
    java.util.Arrays.fill(values, 0);
    java.util.Arrays.fill(rhs, 0);
    int at = 0;
    for (int l = 0; l < jac.length; l++) {
      int m = loops.get(l).rows();
      accumulate(l, m, at);
      at += m;
    }
    ratio = ldl.factor(values);
    ldl.solve(rhs);
    return rhs;
  }

  private void accumulate(int l, int m, int at) {
    int[] p = place[l];
    double[] j = jac[l];
    for (int x = 0; x < p.length; x++) {
      if (p[x] < 0) {
        continue;
      }
      double g = 0;
      for (int i = 0; i < m; i++) {
        g += j[x * m + i] * r[at + i];
      }
      rhs[p[x]] -= g;
      for (int y = 0; y < p.length; y++) {
        int s = slot[l][x * p.length + y];
        if (s >= 0) {
          double dot = 0;
          for (int i = 0; i < m; i++) {
            dot += j[x * m + i] * j[y * m + i];
          }
          values[s] += dot;
        }
      }
    }
  }

  private double[] shortest() {
    Svd svd = new Svd(dense(), 1e-8);
    double[] b = new double[rows];
    for (int i = 0; i < rows; i++) {
      b[i] = -r[i];
    }
    ratio =
        loose || svd.rank() < unknowns.length
            ? svd.value(svd.rank() - 1) / Math.max(svd.value(0), 1e-300)
            : svd.value(unknowns.length - 1) / svd.value(0);
    return svd.solve(b);
  }

  /** The Jacobian of the unknowns, in this block's order of them. */
  private double[][] dense() {
    double[][] a = new double[rows][unknowns.length];
    int at = 0;
    for (int l = 0; l < jac.length; l++) {
      int m = loops.get(l).rows();
      for (int x = 0; x < place[l].length; x++) {
        for (int i = 0; i < m && place[l][x] >= 0; i++) {
          a[at + i][place[l][x]] = jac[l][x * m + i];
        }
      }
      at += m;
    }
    return a;
  }
}
