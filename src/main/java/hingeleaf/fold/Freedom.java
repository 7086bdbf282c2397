package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * How freely a part can move from a pose. Branches out of a singular pose are sought when first
 * asked for.
 */
final class Freedom {
  /** Singular values under this fraction of the largest count as zero, away from flat. */
  static final double CUT = 1e-5;

  /** Up to this many joints dense singular values are quick enough. */
  private static final int DENSE = 100;

  /** Ways out of a singular pose are sought with dense algebra, up to this many joints. */
  private static final int MOST_SOUGHT = 300;

  private static final double TRIAL = 0.02;

  private final Part part;
  private final double[] q;
  private final double[][] kernel;
  private final boolean regular;
  private @Nullable List<Branches.Branch> branches;

  private Freedom(Part part, double[] q, double[][] kernel, boolean regular) {
    this.part = part;
    this.q = q;
    this.kernel = kernel;
    this.regular = regular;
  }

  static Freedom of(Part part, double[] q, Budget budget) {
    double[][] kernel = kernel(part, q, budget);
    return new Freedom(part, q, kernel, isRegular(part, q, kernel, budget));
  }

  /** The first-order motions at a pose, as vectors over the part's joints. */
  static double[][] kernel(Part part, double[] q, Budget budget) {
    if (part.size() > DENSE) {
      return Tangents.of(part, q, budget).kernel();
    }
    budget.spend(part.size());
    return Jacobians.at(part, q, CUT).kernel();
  }

  /** Whether the pose is regular: all that moves to first order moves. */
  boolean regular() {
    return regular;
  }

  /** Its freedoms at a regular pose near by: the most of any branch where this one is singular. */
  int count(Budget budget) {
    if (regular) {
      return kernel.length;
    }
    int most = 0;
    for (Branches.Branch b : branches(budget)) {
      most = Math.max(most, kernel(part, b.any(), budget).length);
    }
    return most;
  }

  /** Whether nothing moves, as far as we know. */
  boolean rigid(Budget budget) {
    return regular ? kernel.length == 0 : !unsought() && branches(budget).isEmpty();
  }

  /** Whether the pose is singular and the part too large to seek the ways out of it. */
  boolean unsought() {
    return !regular && part.size() > MOST_SOUGHT;
  }

  /** The ways out of a singular pose; empty where it is regular or, for all we found, rigid. */
  List<Branches.Branch> branches(Budget budget) {
    List<Branches.Branch> known = branches;
    if (known == null) {
      known = regular || unsought() ? List.of() : Branches.of(part, q, budget);
      branches = known;
    }
    return known;
  }

  /**
   * Moves a little along random directions of the kernel: at a regular pose every one goes. Leaders
   * are moved and the rest follows, so a large part costs no dense algebra.
   */
  private static boolean isRegular(Part part, double[] q, double[][] kernel, Budget budget) {
    if (kernel.length == 0) {
      return true;
    }
    int[] leaders = pick(part.joints(), columns(part, part.joints(), kernel));
    SplittableRandom random = new SplittableRandom(7);
    for (int trial = 0; trial < 3; trial++) {
      double[] t = new double[part.size()];
      for (double[] k : kernel) {
        double f = random.nextDouble() * 2 - 1;
        for (int i = 0; i < t.length; i++) {
          t[i] += f * k[i];
        }
      }
      if (leaders.length < kernel.length || !goes(part, q, t, leaders, budget)) {
        return false;
      }
    }
    return true;
  }

  private static boolean goes(Part part, double[] q, double[] t, int[] leaders, Budget budget) {
    budget.spend(part.size());
    double most = Arrays.stream(t).map(Math::abs).max().orElse(1);
    double[] p = q.clone();
    for (int i = 0; i < t.length; i++) {
      p[part.joints()[i]] += TRIAL * t[i] / most;
    }
    double[] aim = p.clone();
    boolean[] held = new boolean[q.length];
    for (int j : leaders) {
      held[j] = true;
    }
    Solver solver = new Solver(part, held, p, false);
    if (!solver.solve(p)) {
      return false;
    }
    double off = 0;
    for (int j : part.joints()) {
      off = Math.max(off, Math.abs(p[j] - aim[j]));
    }
    return off < 0.2 * TRIAL && kernel(part, p, budget).length == leaders.length;
  }

  /** The joints among those wanted that can be driven independently at {@code q}. */
  static int[] independent(Part part, double[] q, int[] wanted, Budget budget) {
    return pick(wanted, columns(part, wanted, kernel(part, q, budget)));
  }

  /**
   * The leaders, and after them other joints that together with them settle the part: for parts in
   * which the shortest correction costs too much, so that all other freedoms are held instead.
   */
  static int[] settling(Part part, double[] q, int[] leaders, Budget budget) {
    double[][] kernel = kernel(part, q, budget);
    int[] all =
        java.util.stream.IntStream.concat(
                Arrays.stream(leaders),
                Arrays.stream(part.joints())
                    .filter(j -> Arrays.stream(leaders).noneMatch(x -> x == j)))
            .toArray();
    List<double[]> columns = columns(part, all, kernel);
    List<Integer> out = new ArrayList<>();
    for (int i = 0; i < leaders.length; i++) {
      double[] u = columns.get(i).clone();
      double n = Math.sqrt(Arrays.stream(u).map(x -> x * x).sum());
      out.add(leaders[i]);
      columns.forEach(c -> deflate(c, u, n));
    }
    Arrays.stream(pick(all, columns)).forEach(out::add);
    return out.stream().mapToInt(Integer::intValue).toArray();
  }

  private static void deflate(double[] c, double[] u, double length) {
    double dot = 0;
    for (int i = 0; i < u.length; i++) {
      dot += c[i] * u[i] / (length * length);
    }
    for (int i = 0; i < u.length; i++) {
      c[i] -= dot * u[i];
    }
  }

  private static List<double[]> columns(Part part, int[] wanted, double[][] kernel) {
    List<double[]> columns = new ArrayList<>();
    for (int j : wanted) {
      int col = Jacobians.local(part, j);
      columns.add(Arrays.stream(kernel).mapToDouble(k -> k[col]).toArray());
    }
    return columns;
  }

  /** Gram-Schmidt with pivoting; keeps the order of the longest. */
  private static int[] pick(int[] wanted, List<double[]> columns) {
    List<Integer> out = new ArrayList<>();
    while (true) {
      int best = -1;
      double length = 1e-6;
      for (int i = 0; i < columns.size(); i++) {
        double n = Math.sqrt(Arrays.stream(columns.get(i)).map(x -> x * x).sum());
        if (n > length * (1 + 1e-9)) {
          length = n;
          best = i;
        }
      }
      if (best < 0) {
        return out.stream().mapToInt(Integer::intValue).toArray();
      }
      out.add(wanted[best]);
      double[] u = columns.get(best).clone();
      for (double[] c : columns) {
        deflate(c, u, length);
      }
    }
  }
}
