package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * The ways out of a singular state, such as a sheet that lies flat.
 *
 * <p>To first order the loops allow the whole kernel N of the Jacobian. To second order a motion
 * along N z needs W^T H(N z) = 0, where W spans the left kernel and H sums, for each loop, the Lie
 * brackets of its screws in order, sum over i before j of [S_i, S_j] a_i a_j (C. Rico Martinez and
 * J. Gallardo, Mechanism and Machine Theory; J. M. Selig, Geometric Fundamentals of Robotics; A.
 * Mueller, J. Mechanisms Robotics: cited from memory). That is necessary, not sufficient, so each
 * line found is stepped along and closed.
 */
final class Branches {
  /** How far a branch is followed to prove that it exists, rad in its most moving joint. */
  static final double STEP = 0.1;

  /** Larger parts are followed along fewer branches. */
  private static final int SMALL = 40;

  private final Part part;
  private final double[] from;
  private final Budget budget;
  private final double[][] kernel;
  private final List<double[][]> forms = new ArrayList<>();

  /**
   * One way out and its opposite.
   *
   * @param tangent for each joint of the part, largest entry 1
   * @param ahead all values a step along the tangent, closed; null if that way does not exist
   * @param back the same the opposite way
   */
  record Branch(double[] tangent, double @Nullable [] ahead, double @Nullable [] back) {
    /** A pose on it. */
    double[] any() {
      return ahead != null ? ahead : Objects.requireNonNull(back);
    }
  }

  private Branches(Part part, double[] from, Budget budget) {
    this.part = part;
    this.from = from;
    this.budget = budget;
    Svd svd = Jacobians.at(part, from, 1e-6);
    kernel = svd.kernel();
    double[][] left = svd.leftKernel();
    if (kernel.length > 0 && left.length > 0) {
      independentForms(left);
    }
  }

  /** All ways out found, strongest participation first in no order; empty if it is rigid. */
  static List<Branch> of(Part part, double[] from, Budget budget) {
    Branches b = new Branches(part, from, budget);
    List<Branch> out = new ArrayList<>();
    for (double[] z : b.lines()) {
      Branch branch = b.follow(b.combine(z));
      if (branch != null) {
        out.add(branch);
      }
    }
    return out;
  }

  /** Second-order terms as symmetric matrices over the kernel, one for each left-kernel vector. */
  private void independentForms(double[][] left) {
    int k = kernel.length;
    int pairs = k * (k + 1) / 2;
    double[][] stack = new double[left.length][pairs];
    int at = 0;
    for (int x = 0; x < k; x++) {
      for (int y = x; y < k; y++) {
        double[] h = brackets(kernel[x], kernel[y]);
        for (int w = 0; w < left.length; w++) {
          stack[w][at] = dot(left[w], h) * (x == y ? 1 : Math.sqrt(2));
        }
        at++;
      }
    }
    double largest = 0;
    for (double[] row : stack) {
      largest = Math.max(largest, Math.sqrt(dot(row, row)));
    }
    if (largest < 1e-7) {
      return;
    }
    Svd svd = new Svd(transpose(stack), 1e-6);
    for (int f = 0; f < svd.rank(); f++) {
      forms.add(unpack(svd.left(f), k));
    }
  }

  private static double[][] transpose(double[][] a) {
    double[][] t = new double[a[0].length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < a[0].length; j++) {
        t[j][i] = a[i][j];
      }
    }
    return t;
  }

  private static double[][] unpack(double[] v, int k) {
    double[][] m = new double[k][k];
    int at = 0;
    for (int x = 0; x < k; x++) {
      for (int y = x; y < k; y++) {
        m[x][y] = v[at] / (x == y ? 1 : Math.sqrt(2));
        m[y][x] = m[x][y];
        at++;
      }
    }
    return m;
  }

  /** The symmetric bilinear form whose square is the second-order residual. */
  private double[] brackets(double[] a, double[] b) {
    double[] h = new double[part.rows()];
    double[] r = new double[6];
    int at = 0;
    for (Loop loop : part.loops()) {
      int m = loop.rows();
      int[] js = loop.joints();
      double[] jac = new double[m * js.length];
      loop.linearize(from, r, 0, jac);
      for (int j = 1; j < js.length; j++) {
        for (int i = 0; i < j; i++) {
          int x = Jacobians.local(part, js[i]);
          int y = Jacobians.local(part, js[j]);
          loop.bracket(jac, i * m, jac, j * m, (a[x] * b[y] + b[x] * a[y]) / 2, h, at);
        }
      }
      at += m;
    }
    return h;
  }

  private List<double[]> lines() {
    int k = kernel.length;
    if (k == 0) {
      return List.of();
    }
    if (k == 1) {
      return forms.isEmpty() ? List.of(new double[] {1}) : List.of();
    }
    if (k == 2 && !forms.isEmpty()) {
      return plane();
    }
    return search();
  }

  /** Common real lines of binary quadratic forms: the roots of the first that suit all. */
  private List<double[]> plane() {
    double[][] f = forms.get(0);
    double a = f[0][0];
    double b = f[0][1];
    double c = f[1][1];
    double disc = b * b - a * c;
    if (disc < -1e-9) {
      return List.of();
    }
    double root = Math.sqrt(Math.max(0, disc));
    List<double[]> out = new ArrayList<>();
    for (double s : new double[] {-root, root}) {
      double[] z = Math.abs(a) >= Math.abs(c) ? unit(-b + s, a) : unit(c, -b + s);
      if (forms.stream().allMatch(g -> Math.abs(value(g, z)) < 1e-5)) {
        addLine(out, z);
      }
    }
    return out;
  }

  private static double[] unit(double x, double y) {
    double n = Math.hypot(x, y);
    return new double[] {x / n, y / n};
  }

  /** Gauss-Newton on the unit sphere from seeded starts. */
  private List<double[]> search() {
    int k = kernel.length;
    SplittableRandom random = new SplittableRandom(20260101);
    List<double[]> out = new ArrayList<>();
    int most = part.size() <= SMALL ? 64 : 12;
    int starts = forms.isEmpty() ? 4 * k : Math.min(60 * k, 240);
    for (int i = 0; i < starts && out.size() < most; i++) {
      budget.spend(1);
      int place = i;
      boolean axis = i < k;
      double[] z = new double[k];
      Arrays.setAll(z, x -> axis ? (x == place ? 1 : 1e-3 * x) : random.nextDouble() * 2 - 1);
      if (forms.isEmpty() || settle(z)) {
        normalise(z);
        addLine(out, z);
      }
    }
    return out;
  }

  private boolean settle(double[] z) {
    int k = z.length;
    budget.spend((long) k * k);
    for (int round = 0; round < 25; round++) {
      normalise(z);
      double[][] a = new double[forms.size() + 1][k];
      double[] b = new double[forms.size() + 1];
      double worst = 0;
      for (int f = 0; f < forms.size(); f++) {
        for (int x = 0; x < k; x++) {
          a[f][x] = 2 * dot(forms.get(f)[x], z);
        }
        b[f] = -value(forms.get(f), z);
        worst = Math.max(worst, Math.abs(b[f]));
      }
      a[forms.size()] = z.clone();
      if (worst < 1e-12) {
        return true;
      }
      double[] dz = new Svd(a, 1e-9).solve(b);
      for (int x = 0; x < k; x++) {
        z[x] += dz[x];
      }
    }
    return false;
  }

  private static void normalise(double[] z) {
    double n = Math.sqrt(dot(z, z));
    for (int i = 0; i < z.length; i++) {
      z[i] /= n;
    }
  }

  private static void addLine(List<double[]> lines, double[] z) {
    if (lines.stream().noneMatch(o -> Math.abs(dot(o, z)) > 1 - 1e-8)) {
      lines.add(z);
    }
  }

  private static double value(double[][] form, double[] z) {
    double sum = 0;
    for (int i = 0; i < z.length; i++) {
      sum += z[i] * dot(form[i], z);
    }
    return sum;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private double[] combine(double[] z) {
    double[] t = new double[part.size()];
    for (int i = 0; i < z.length; i++) {
      for (int j = 0; j < t.length; j++) {
        t[j] += z[i] * kernel[i][j];
      }
    }
    double most = Arrays.stream(t).map(Math::abs).max().orElse(1);
    for (int j = 0; j < t.length; j++) {
      t[j] /= most;
    }
    return t;
  }

  private @Nullable Branch follow(double[] tangent) {
    double[] ahead = step(tangent, STEP);
    double[] back = step(tangent, -STEP);
    return ahead == null && back == null ? null : new Branch(tangent, ahead, back);
  }

  /** A step along a tangent, closed by the shortest corrections; null if it falls back. */
  private double @Nullable [] step(double[] tangent, double length) {
    budget.spend(2);
    double[] q = from.clone();
    int[] js = part.joints();
    for (int i = 0; i < js.length; i++) {
      q[js[i]] += length * tangent[i];
    }
    double[] aim = q.clone();
    Solver solver = new Solver(part, new boolean[q.length], q, true);
    if (!solver.solve(q)) {
      return null;
    }
    double off = 0;
    for (int j : js) {
      off = Math.max(off, Math.abs(q[j] - aim[j]));
    }
    return off < 0.4 * Math.abs(length) ? q : null;
  }
}
