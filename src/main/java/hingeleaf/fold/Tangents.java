package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The first-order motions of a large part, without a dense Jacobian: joints are freed one by one
 * where nothing else is fixed yet, what follows from them is carried from loop to loop, and the
 * loops that are left over then sort out which combinations may really move.
 */
final class Tangents {
  /** More free joints than this make too large a dense rest; fewer in the largest parts. */
  private static final int MOST = 600;

  private static final int MOST_ENTRIES = 2_000_000;

  private final Part part;
  private final double[] q;
  private final Budget budget;
  private final double[][] motion;
  private final int[] unknown;
  private int freed;

  private Tangents(Part part, double[] q, Budget budget) {
    this.part = part;
    this.q = q;
    this.budget = budget;
    motion = new double[part.size()][];
    unknown = part.loops().stream().mapToInt(l -> l.joints().length).toArray();
  }

  static Tangents of(Part part, double[] q, Budget budget) {
    Tangents t = new Tangents(part, q, budget);
    t.carry();
    return t;
  }

  private void carry() {
    List<List<Integer>> loopsOf = new ArrayList<>();
    for (int i = 0; i < part.size(); i++) {
      loopsOf.add(new ArrayList<>());
    }
    for (int l = 0; l < unknown.length; l++) {
      for (int j : part.loops().get(l).joints()) {
        loopsOf.get(Jacobians.local(part, j)).add(l);
      }
    }
    java.util.ArrayDeque<Integer> ready = new java.util.ArrayDeque<>();
    for (int l = 0; l < unknown.length; l++) {
      ready.add(l);
    }
    while (true) {
      while (!ready.isEmpty()) {
        int l = ready.remove();
        for (int i : solve(part.loops().get(l))) {
          tell(i, loopsOf, ready);
        }
      }
      budget.spend(1 + unknown.length / 8);
      int free = next();
      if (free < 0) {
        return;
      }
      motion[free] = new double[freed + 1];
      motion[free][freed++] = 1;
      if (freed > Math.min(MOST, Math.max(60, MOST_ENTRIES / part.size()))) {
        throw new Budget.Spent();
      }
      tell(free, loopsOf, ready);
    }
  }

  private void tell(int i, List<List<Integer>> loopsOf, java.util.ArrayDeque<Integer> ready) {
    for (int l : loopsOf.get(i)) {
      unknown[l]--;
      ready.add(l);
    }
  }

  /** The joint to free next: of the loop with fewest unknowns the one that leaves it firmest. */
  private int next() {
    int best = -1;
    for (int l = 0; l < unknown.length; l++) {
      if (unknown[l] > 0 && (best < 0 || unknown[l] < unknown[best])) {
        best = l;
      }
    }
    if (best < 0) {
      return -1;
    }
    Loop loop = part.loops().get(best);
    boolean many = unknown[best] > loop.rows() + 1;
    int pick = -1;
    double firmest = -1;
    for (int j : loop.joints()) {
      int i = Jacobians.local(part, j);
      if (motion[i] == null && many) {
        return i;
      }
      if (motion[i] == null) {
        double firm = firmness(loop, i);
        if (firm > firmest) {
          firmest = firm;
          pick = i;
        }
      }
    }
    return pick;
  }

  private double firmness(Loop loop, int left) {
    int m = loop.rows();
    double[] jac = new double[m * loop.joints().length];
    loop.linearize(q, new double[6], 0, jac);
    double[] a = new double[jac.length];
    int n = 0;
    for (int k = 0; k < loop.joints().length; k++) {
      int i = Jacobians.local(part, loop.joints()[k]);
      if (motion[i] == null && i != left) {
        System.arraycopy(jac, k * m, a, m * n++, m);
      }
    }
    return n > m ? 0 : n == 0 ? 1 : SmallQr.solve(a, new double[m], m, n, new double[6]);
  }

  /** Solves a loop whose unknowns are few and firm; returns the joints it settled. */
  private int[] solve(Loop loop) {
    int m = loop.rows();
    int[] js = loop.joints();
    int[] open = Arrays.stream(js).map(j -> Jacobians.local(part, j)).toArray();
    int[] ks =
        java.util.stream.IntStream.range(0, js.length)
            .filter(k -> motion[open[k]] == null)
            .toArray();
    if (ks.length == 0 || ks.length > m) {
      return new int[0];
    }
    budget.spend(1 + freed / 16);
    double[] jac = new double[m * js.length];
    loop.linearize(q, new double[6], 0, jac);
    double[][] rhs = new double[freed][m];
    for (int k = 0; k < js.length; k++) {
      double[] t = motion[open[k]];
      for (int f = 0; t != null && f < t.length; f++) {
        for (int i = 0; i < m; i++) {
          rhs[f][i] -= jac[k * m + i] * t[f];
        }
      }
    }
    double[][] x = new double[ks.length][freed];
    double[] a = new double[m * ks.length];
    double[] y = new double[6];
    for (int f = -1; f < freed; f++) {
      for (int k = 0; k < ks.length; k++) {
        System.arraycopy(jac, ks[k] * m, a, k * m, m);
      }
      double[] b = f < 0 ? new double[m] : rhs[f];
      if (SmallQr.solve(a, b, m, ks.length, y) < 1e-3) {
        return new int[0];
      }
      for (int k = 0; f >= 0 && k < ks.length; k++) {
        x[k][f] = y[k];
      }
    }
    for (int k = 0; k < ks.length; k++) {
      motion[open[ks[k]]] = x[k];
    }
    return Arrays.stream(ks).map(k -> open[k]).toArray();
  }

  /** The motions that every loop allows, as vectors over the part's joints. */
  double[][] kernel() {
    double[][] gram = new double[freed][freed];
    for (Loop loop : part.loops()) {
      addMisfit(loop, gram);
    }
    if (freed == 0) {
      return new double[0][];
    }
    double scale = 0;
    for (int f = 0; f < freed; f++) {
      scale = Math.max(scale, gram[f][f]);
    }
    double[][] z =
        scale < 1e-16 ? identity(freed) : new Svd(gram, Freedom.CUT * Freedom.CUT).kernel();
    double[][] out = new double[z.length][part.size()];
    for (int v = 0; v < z.length; v++) {
      for (int i = 0; i < part.size(); i++) {
        double[] t = motion[i];
        for (int f = 0; t != null && f < t.length; f++) {
          out[v][i] += z[v][f] * t[f];
        }
      }
    }
    return out;
  }

  private static double[][] identity(int n) {
    double[][] a = new double[n][n];
    for (int i = 0; i < n; i++) {
      a[i][i] = 1;
    }
    return a;
  }

  private void addMisfit(Loop loop, double[][] gram) {
    int m = loop.rows();
    int[] js = loop.joints();
    double[] jac = new double[m * js.length];
    loop.linearize(q, new double[6], 0, jac);
    double[][] c = new double[m][freed];
    for (int k = 0; k < js.length; k++) {
      double[] t = motion[Jacobians.local(part, js[k])];
      for (int f = 0; t != null && f < t.length; f++) {
        for (int i = 0; i < m; i++) {
          c[i][f] += jac[k * m + i] * t[f];
        }
      }
    }
    for (double[] row : c) {
      for (int x = 0; x < freed; x++) {
        for (int y = 0; row[x] != 0 && y < freed; y++) {
          gram[x][y] += row[x] * row[y];
        }
      }
    }
  }
}
