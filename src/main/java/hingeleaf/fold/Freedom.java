package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How freely a part can move from a pose.
 *
 * @param count its freedoms at a regular pose near by: the most of any branch
 * @param regular whether the pose itself is regular, so that the kernel is what can move
 * @param branches the ways out where it is not; empty where it is, or where nothing moves
 */
record Freedom(int count, boolean regular, List<Branches.Branch> branches) {
  /** Singular values under this fraction of the largest count as zero, away from flat. */
  static final double CUT = 1e-5;

  private static final double TRIAL = 0.02;

  static Freedom of(Part part, double[] q, Budget budget) {
    if (part.size() > Coupled.DENSE) {
      return new Freedom(Tangents.of(part, q, budget).kernel().length, true, List.of());
    }
    budget.spend(part.size());
    Svd svd = Jacobians.at(part, q, CUT);
    int kernel = part.size() - svd.rank();
    if (kernel == 0) {
      return new Freedom(0, true, List.of());
    }
    if (isRegular(part, q, svd.kernel(), budget)) {
      return new Freedom(kernel, true, List.of());
    }
    List<Branches.Branch> branches = Branches.of(part, q, budget);
    int most = 0;
    for (Branches.Branch b : branches) {
      most = Math.max(most, Jacobians.freedoms(part, b.any(), CUT));
    }
    return new Freedom(most, false, List.copyOf(branches));
  }

  /** Moves a little along random directions of the kernel: at a regular pose every one goes. */
  private static boolean isRegular(Part part, double[] q, double[][] kernel, Budget budget) {
    SplittableRandom random = new SplittableRandom(7);
    for (int trial = 0; trial < 3; trial++) {
      double[] t = new double[part.size()];
      for (double[] k : kernel) {
        double f = random.nextDouble() * 2 - 1;
        for (int i = 0; i < t.length; i++) {
          t[i] += f * k[i];
        }
      }
      if (!goes(part, q, t, budget, kernel.length)) {
        return false;
      }
    }
    return true;
  }

  private static boolean goes(Part part, double[] q, double[] t, Budget budget, int kernel) {
    budget.spend(part.size());
    double most = Arrays.stream(t).map(Math::abs).max().orElse(1);
    double[] p = q.clone();
    for (int i = 0; i < t.length; i++) {
      p[part.joints()[i]] += TRIAL * t[i] / most;
    }
    double[] aim = p.clone();
    if (!new Solver(part, new boolean[q.length], p, true).solve(p)) {
      return false;
    }
    double off = 0;
    for (int j : part.joints()) {
      off = Math.max(off, Math.abs(p[j] - aim[j]));
    }
    return off < 0.2 * TRIAL && Jacobians.freedoms(part, p, CUT) == kernel;
  }

  /** The joints among those wanted that can be driven independently at {@code q}. */
  static int[] independent(Part part, double[] q, int[] wanted, Budget budget) {
    double[][] kernel =
        part.size() > Coupled.DENSE
            ? Tangents.of(part, q, budget).kernel()
            : Jacobians.at(part, q, CUT).kernel();
    List<double[]> columns = new ArrayList<>();
    for (int j : wanted) {
      int col = Jacobians.local(part, j);
      columns.add(Arrays.stream(kernel).mapToDouble(k -> k[col]).toArray());
    }
    return pick(wanted, columns);
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
        double dot = 0;
        for (int i = 0; i < u.length; i++) {
          dot += c[i] * u[i] / (length * length);
        }
        for (int i = 0; i < u.length; i++) {
          c[i] -= dot * u[i];
        }
      }
    }
  }
}
