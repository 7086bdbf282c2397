package hingeleaf.fold;

import java.util.Arrays;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Moves one part as far as it goes: always led by the joint that turns fastest, until some joint
 * meets its limit or every fold is flat.
 */
final class Sweep {
  /** Rad of the leading joint between looks at the limits. */
  private static final double CHUNK = 0.35;

  /** Rad of path before an end. */
  private static final double ROOM = 0.25;

  /** Twice round: what has not come to rest by then turns for ever. */
  private static final int CHUNKS = 80;

  private final Part part;
  private final Axes axes;
  private final boolean[] stopped;
  private final Predicate<double[]> crosses;
  private final Budget budget;

  /**
   * @param stopped joints that are at rest already and stay where they are
   * @param crosses whether panels pass through each other at some values
   */
  Sweep(Part part, Axes axes, boolean[] stopped, Predicate<double[]> crosses, Budget budget) {
    this.part = part;
    this.axes = axes;
    this.stopped = stopped.clone();
    this.crosses = crosses;
    this.budget = budget;
  }

  /**
   * Where it ends.
   *
   * @param q values of all joints
   * @param limit the joint at its limit, or -1 where the part came to lie flat first
   * @param crossed whether panels were seen crossing on the way
   */
  record End(double[] q, int limit, boolean crossed) {}

  /**
   * @param start a pose that closes, at which motion along the tangent is possible
   * @param tangent which way, over the part's joints
   * @return null if it turns for ever or the path is lost
   */
  @Nullable End run(double[] start, double[] tangent) {
    double[] q = start;
    double[] earlier = start;
    double[] t = tangent.clone();
    boolean crossed = crosses.test(start);
    for (int i = 0; i < CHUNKS; i++) {
      int lead = fastest(t);
      if (lead < 0) {
        return null;
      }
      double way = Math.signum(t[Jacobians.local(part, lead)]);
      double to = q[lead] + way * CHUNK;
      March march = march(q, lead, Math.max(axes.least[lead], Math.min(axes.most[lead], to)));
      boolean whole = march.run();
      End end = event(earlier, q, march.q);
      if (end != null) {
        crossed |= end.crossed();
        return new End(end.q(), end.limit(), crossed);
      }
      crossed |= crosses.test(march.q);
      if (!whole && apart(q, march.q) < 1e-6) {
        return null;
      }
      t = onward(q, march.q);
      earlier = q;
      q = march.q;
    }
    return null;
  }

  private March march(double[] from, int lead, double to) {
    int[] held =
        java.util.stream.IntStream.concat(
                Arrays.stream(part.joints()).filter(j -> stopped[j] && j != lead),
                java.util.stream.IntStream.of(lead))
            .toArray();
    double[] target = Arrays.stream(held).mapToDouble(j -> j == lead ? to : from[j]).toArray();
    boolean loose = freedoms(from) > 1;
    return new March(part, axes, from, held, target, loose, budget);
  }

  /** How many freedoms are left beside the stopped joints. */
  int freedoms(double[] q) {
    return tangents(q).length;
  }

  /** What can still move to first order, over the part's joints. */
  double[][] tangents(double[] q) {
    double[][] a = Jacobians.dense(part, q);
    int extra = (int) Arrays.stream(part.joints()).filter(j -> stopped[j]).count();
    double[][] b = Arrays.copyOf(a, a.length + extra);
    int at = a.length;
    for (int i = 0; i < part.size(); i++) {
      if (stopped[part.joints()[i]]) {
        b[at] = new double[part.size()];
        b[at++][i] = 1;
      }
    }
    budget.spend((long) part.size() * part.size() / 4);
    return new Svd(b, Freedom.CUT).kernel();
  }

  private int fastest(double[] t) {
    int best = -1;
    for (int i = 0; i < t.length; i++) {
      int j = part.joints()[i];
      boolean more = best < 0 || Math.abs(t[i]) > 1.0001 * Math.abs(t[Jacobians.local(part, best)]);
      if (!stopped[j] && more && Math.abs(t[i]) > 1e-9) {
        best = j;
      }
    }
    return best;
  }

  /** The tangent at {@code q} that goes on from {@code before}, among those that can move. */
  private double[] onward(double[] before, double[] q) {
    double[] went = new double[part.size()];
    for (int i = 0; i < went.length; i++) {
      went[i] = q[part.joints()[i]] - before[part.joints()[i]];
    }
    double[] t = new double[part.size()];
    for (double[] k : tangents(q)) {
      double dot = 0;
      for (int i = 0; i < went.length; i++) {
        dot += k[i] * went[i];
      }
      for (int i = 0; i < went.length; i++) {
        t[i] += dot * k[i];
      }
    }
    return t;
  }

  private double apart(double[] a, double[] b) {
    return Arrays.stream(part.joints()).mapToDouble(j -> Math.abs(a[j] - b[j])).max().orElse(0);
  }

  /** The first limit or flat state between two poses on the path, exactly; null if none. */
  private @Nullable End event(double[] earlier, double[] before, double[] after) {
    int first = -1;
    double soonest = Double.POSITIVE_INFINITY;
    double value = 0;
    for (int j : part.joints()) {
      double step = after[j] - before[j];
      if (stopped[j] || Math.abs(step) < 1e-9) {
        continue;
      }
      double stop = step > 0 ? axes.most[j] : axes.least[j];
      double share = (stop - before[j]) / step;
      if (share <= 1 + 1e-6 && share < soonest) {
        soonest = share;
        first = j;
        value = stop;
      }
    }
    End flat = flatBetween(earlier, before, after, Math.min(soonest, 1));
    if (flat != null || first < 0) {
      return flat;
    }
    return limit(runUp(earlier, before, first, value), first, value);
  }

  /** An end that may be singular wants a path that is long enough to extrapolate from. */
  private static double[] runUp(double[] earlier, double[] before, int joint, double value) {
    return Math.abs(value - before[joint]) < ROOM ? earlier : before;
  }

  private @Nullable End limit(double[] before, int joint, double value) {
    March march = march(before, joint, value);
    if (!march.run()) {
      return null;
    }
    for (int j : part.joints()) {
      boolean past = march.q[j] > axes.most[j] + 1e-7 || march.q[j] < axes.least[j] - 1e-7;
      if (past && !stopped[j] && j != joint) {
        return event(before, before, march.q);
      }
    }
    return new End(march.q, joint, nearly(before, march.q));
  }

  /** An all-flat state that the path passes through before {@code most} of the way. */
  private @Nullable End flatBetween(
      double[] earlier, double[] before, double[] after, double most) {
    for (int j : part.joints()) {
      double a = Snap.offFlat(axes, j, before[j]);
      double step = after[j] - before[j];
      double share = -a / step;
      if (stopped[j] || !(Math.abs(a) > 1e-6) || !(share > 0 && share <= most + 1e-9)) {
        continue;
      }
      double[] from = runUp(earlier, before, j, before[j] - a);
      March march = march(from, j, before[j] - a);
      if (march.run() && Snap.isFlat(part, axes, march.q, 1e-7)) {
        return new End(march.q, atLimit(march.q), nearly(before, march.q));
      }
      return null;
    }
    return null;
  }

  /** Whether panels cross shortly before an end, where they would lie on each other. */
  private boolean nearly(double[] before, double[] end) {
    int lead = -1;
    for (int j : part.joints()) {
      if (lead < 0 || Math.abs(end[j] - before[j]) > Math.abs(end[lead] - before[lead])) {
        lead = stopped[j] ? lead : j;
      }
    }
    if (lead < 0) {
      return false;
    }
    March march = march(before, lead, end[lead] + 0.2 * (before[lead] - end[lead]));
    return march.run() && crosses.test(march.q);
  }

  private int atLimit(double[] q) {
    for (int j : part.joints()) {
      if (q[j] >= axes.most[j] - 1e-7 || q[j] <= axes.least[j] + 1e-7) {
        return j;
      }
    }
    return -1;
  }
}
