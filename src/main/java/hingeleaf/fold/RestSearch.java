package hingeleaf.fold;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;

/** Finds the ways in which one part can lie. */
final class RestSearch {
  private static final int MOST_WAYS = 64;
  private static final int EXACT = 4;

  /** Larger parts are not searched: that takes dense algebra at every step. */
  private static final int MOST_JOINTS = 120;

  private final Part part;
  private final Axes axes;
  private final Freedom freedom;
  private final boolean beyond;
  private final Predicate<double[]> crossed;
  private final Budget budget;
  private final List<double[]> poses = new ArrayList<>();
  private final List<RestState> ways = new ArrayList<>();
  private boolean complete = true;

  /**
   * @param beyond whether to go on from the states found, and past crossing panels, where no card
   *     can go
   * @param crossed whether panels pass through each other at some values
   */
  RestSearch(
      Part part,
      Axes axes,
      Freedom freedom,
      boolean beyond,
      Predicate<double[]> crossed,
      Budget budget) {
    this.part = part;
    this.axes = axes;
    this.freedom = freedom;
    this.beyond = beyond;
    this.crossed = crossed;
    this.budget = budget;
  }

  /**
   * @param ways none where the part is held fast
   */
  record Found(List<RestState> ways, boolean complete) {}

  /** Spent budgets end the search early, and the result says that it is not complete. */
  Found run(int jointCount) {
    double[] reference = new double[jointCount];
    if (freedom.rigid(budget)) {
      return new Found(List.of(), true);
    }
    try {
      if (part.size() > MOST_JOINTS) {
        throw new Budget.Spent();
      }
      if (!freedom.regular() || Snap.isFlat(part, axes, reference, 1e-9)) {
        add(reference, 0, false, false);
      }
      if (freedom.regular() && freedom.count(budget) > 1) {
        several(reference);
      } else {
        single(reference);
      }
    } catch (Budget.Spent e) {
      complete = false;
    }
    if (ways.isEmpty()) {
      complete = false;
      add(reference, 0, false, false);
    }
    return new Found(List.copyOf(ways), complete);
  }

  /** One freedom at a time, from the reference and, if asked, on from every flat state found. */
  private void single(double[] reference) {
    Deque<double[]> open = new ArrayDeque<>();
    open.add(reference);
    boolean first = true;
    while (!open.isEmpty()) {
      double[] from = open.remove();
      for (double[] start : outOf(from)) {
        double[] tangent = difference(start, from);
        Sweep sweep = new Sweep(part, axes, new boolean[from.length], crossed, budget);
        Sweep.End end = sweep.run(start, tangent);
        if (end == null) {
          complete = false;
        } else if ((beyond || !end.crossed())
            && add(end.q(), direction(tangent), !first, end.crossed())
            && beyond) {
          open.add(end.q());
        }
      }
      first = false;
    }
  }

  private double[] difference(double[] to, double[] from) {
    return Arrays.stream(part.joints()).mapToDouble(j -> to[j] - from[j]).toArray();
  }

  /** Poses a little way out along every branch, both ways. */
  private List<double[]> outOf(double[] q) {
    Freedom here = Arrays.stream(q).allMatch(x -> x == 0) ? freedom : Freedom.of(part, q, budget);
    List<double[]> out = new ArrayList<>();
    for (Branches.Branch b : here.branches(budget)) {
      complete &= here.branches(budget).size() < 64;
      if (b.ahead() != null) {
        out.add(b.ahead());
      }
      if (b.back() != null) {
        out.add(b.back());
      }
    }
    if (here.regular() && here.count(budget) > 0) {
      for (double[] t : Jacobians.at(part, q, Freedom.CUT).kernel()) {
        for (double way : new double[] {-1, 1}) {
          double[] p = q.clone();
          for (int i = 0; i < t.length; i++) {
            p[part.joints()[i]] += way * 0.02 * t[i] * Math.signum(oriented(t));
          }
          if (new Solver(part, new boolean[q.length], p, true).solve(p)) {
            out.add(p);
          }
        }
      }
      complete &= here.count(budget) == 1;
    }
    return out;
  }

  /** The first entry that matters, so that -1 and 1 mean the same whatever the solver's sign. */
  private static double oriented(double[] t) {
    for (double x : t) {
      if (Math.abs(x) > 1e-6) {
        return x;
      }
    }
    return 1;
  }

  private static int direction(double[] tangent) {
    return oriented(tangent) > 0 ? 1 : -1;
  }

  /** Several freedoms: flat states by their folds, else limit after limit from seeded starts. */
  private void several(double[] reference) {
    ShutFolds flats = new ShutFolds(part, axes, reference, budget);
    if (flats.possible()) {
      for (double[] q : flats.closed()) {
        double[] target = new double[q.length];
        double[] none = new double[q.length];
        Arrays.fill(target, Double.NaN);
        Arrays.fill(none, Double.NaN);
        Arrays.stream(part.joints()).forEach(j -> target[j] = q[j]);
        PartDrive.Outcome o =
            new PartDrive(part, axes, reference, target, none, freedom, crossed, budget).run();
        boolean through = !o.reached() || crossed.test(halfway(reference, q));
        if (beyond || !through) {
          add(q, direction(difference(q, reference)), !o.reached(), through);
        }
      }
      complete &= flats.exhaustive();
    }
    if (ways.isEmpty()) {
      complete = false;
      seeded(reference);
    }
    complete &= freedom.count(budget) <= EXACT;
  }

  /** Nine tenths of the way to a flat state, closed; crossing panels show there. */
  private double[] halfway(double[] reference, double[] q) {
    double[] target = new double[q.length];
    double[] none = new double[q.length];
    Arrays.fill(target, Double.NaN);
    Arrays.fill(none, Double.NaN);
    for (int j : Freedom.independent(part, reference, part.joints(), budget)) {
      target[j] = reference[j] + 0.9 * (q[j] - reference[j]);
    }
    return new PartDrive(part, axes, reference, target, none, freedom, crossed, budget).run().q();
  }

  private void seeded(double[] reference) {
    SplittableRandom random = new SplittableRandom(41);
    int k = freedom.count(budget);
    for (int trial = 0; trial < 8 * k && ways.size() < MOST_WAYS; trial++) {
      boolean[] stopped = new boolean[reference.length];
      double[] q = reference;
      boolean moved = false;
      boolean through = false;
      for (int round = 0; round < k; round++) {
        Sweep sweep = new Sweep(part, axes, stopped, crossed, budget);
        double[][] t = sweep.tangents(q);
        if (t.length == 0) {
          break;
        }
        Sweep.End end = sweep.run(q, mixed(t, random));
        if (end == null) {
          break;
        }
        q = end.q();
        moved = true;
        through |= end.crossed();
        if (end.limit() < 0) {
          break;
        }
        stopped[end.limit()] = true;
      }
      if (moved && (beyond || !through)) {
        add(q, direction(difference(q, reference)), false, through);
      }
    }
  }

  private static double[] mixed(double[][] basis, SplittableRandom random) {
    double[] t = new double[basis[0].length];
    for (double[] b : basis) {
      double f = random.nextDouble() * 2 - 1;
      for (int i = 0; i < t.length; i++) {
        t[i] += f * b[i];
      }
    }
    return t;
  }

  private boolean add(double[] q, int direction, boolean past, boolean through) {
    for (double[] p : poses) {
      if (same(p, q)) {
        return false;
      }
    }
    if (ways.size() >= MOST_WAYS) {
      complete = false;
      return false;
    }
    poses.add(q);
    List<Double> values = Arrays.stream(part.joints()).mapToObj(j -> q[j]).toList();
    ways.add(new RestState(values, direction, Snap.isFlat(part, axes, q, 1e-9), past, through));
    return true;
  }

  /** Two poses are one if every joint differs by whole turns only. */
  private boolean same(double[] p, double[] q) {
    for (int j : part.joints()) {
      double d = p[j] - q[j];
      double off = axes.slides[j] ? d : Math.IEEEremainder(d, 2 * Math.PI);
      if (Math.abs(off) > 1e-6) {
        return false;
      }
    }
    return true;
  }
}
