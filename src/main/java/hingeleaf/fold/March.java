package hingeleaf.fold;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Follows one part along a straight line in its driven joints, from a pose that closes.
 *
 * <p>Each step is predicted by a polynomial through the last poses, closed by Newton's method with
 * the driven joints exactly on the line, and refused if the closing moved it much more than the
 * prediction may err: so the path does not hop onto another branch, and passes through singular
 * states (where branches meet) on its own. An end that is itself singular is interpolated from
 * poses on both sides of it and then set exactly flat.
 */
final class March {
  /** Longest step, rad of the most driven joint, and of any joint. */
  private static final double STEP = 0.1;

  private static final double FIRST = 0.004;
  private static final double LEAST = 1e-9;

  /** Rough inverse condition below which a pose is too near a singular one to lean on. */
  private static final double SINGULAR = 1e-3;

  /** However ill-conditioned the start, worse than this is singular: some 1e-4 rad off flat. */
  private static final double LEAST_FIRM = 1e-5;

  /** A prediction that misses by less is exact to rounding, rad. */
  private static final double STRAIGHT_RAD = 1e-9;

  private final Part part;
  private final Axes axes;
  private final int[] drivers;
  private final double[] start;
  private final double[] target;
  private final boolean[] held;
  private final Solver solver;
  private final Budget budget;
  private final Trail trail = new Trail();
  private final double span;
  private double firm = SINGULAR;
  private int misses;

  /** Whether the last pose lay where it was predicted: then longer steps are as safe. */
  private boolean straight;

  /** The last pose that was reached; the end of the line if {@link #run} says so. */
  double[] q;

  /**
   * @param start values of all joints, at which the part closes
   * @param drivers joints that follow the line; they must be able to move independently
   * @param target value for each driver
   * @param loose whether the part has more freedoms than drivers; the others then move least
   */
  March(
      Part part,
      Axes axes,
      double[] start,
      int[] drivers,
      double[] target,
      boolean loose,
      Budget budget) {
    this.part = part;
    this.axes = axes;
    this.drivers = drivers.clone();
    this.start = start.clone();
    this.target = target.clone();
    this.budget = budget;
    held = new boolean[start.length];
    double far = 0;
    for (int i = 0; i < drivers.length; i++) {
      held[drivers[i]] = true;
      double weight = axes.slides[drivers[i]] ? 1 / part.scale() : 1;
      far = Math.max(far, weight * Math.abs(target[i] - start[drivers[i]]));
    }
    span = far;
    solver = new Solver(part, held, start, loose);
    q = start.clone();
  }

  /** Walks to the end of the line; returns whether it was reached and closed. */
  boolean run() {
    trail.add(0, start);
    if (span == 0) {
      return true;
    }
    double first = firstStep();
    double s = 0;
    double h = first;
    while (true) {
      budget.spend(part.loops().size());
      boolean last = s + 1.1 * h >= 1;
      double next = last ? 1 : s + h;
      double[] p = at(next);
      if (good(p, next)) {
        s = next;
        q = p;
        if (last) {
          return true;
        }
        trail.add(s, q);
        misses = 0;
        h = Math.min((straight ? 4 : 1.6) * h, STEP / span);
        continue;
      }
      misses++;
      boolean close = (1 - s) * span < 1.2 * STEP;
      if (close && (last || misses % 4 == 2) && bridge()) {
        return true;
      }
      if (trail.size() == 2 && first * span > LEAST) {
        // The first step may have hopped onto a branch close by: begin again, shorter.
        first /= 8;
        trail.cut(1);
        s = 0;
        h = first;
        continue;
      }
      double over = jumped(s);
      if (over > s) {
        s = over;
        h = STEP / span / 4;
        continue;
      }
      h = Math.min(h, 1 - s) / 2;
      if (h * span < LEAST) {
        return (1 - s) * span < 1e-6 && touch();
      }
    }
  }

  /** Shorter the nearer the start is to a singular state, where branches lie close together. */
  private double firstStep() {
    double[] p = start.clone();
    solver.solve(p);
    firm = Math.max(LEAST_FIRM, Math.min(SINGULAR, solver.ratio / 10));
    double step = Math.max(1e-6, Math.min(FIRST, 0.3 * solver.ratio));
    return Math.min(1, step / span);
  }

  /** The predicted pose with the drivers on the line. */
  private double[] at(double s) {
    double[] p = trail.ahead(s, 5);
    place(p, s);
    return p;
  }

  private void place(double[] p, double s) {
    for (int i = 0; i < drivers.length; i++) {
      double a = start[drivers[i]];
      p[drivers[i]] = s == 1 ? target[i] : a + s * (target[i] - a);
    }
  }

  /** Closes a predicted pose and judges it: closed, not far from predicted, not singular. */
  private boolean good(double[] p, double s) {
    double[] aim = p.clone();
    if (!solver.solve(p)) {
      return false;
    }
    double moved = apart(p, trail.last());
    double missed = apart(p, aim);
    int known = trail.size();
    straight = known > 1 && missed < STRAIGHT_RAD;
    boolean near =
        known == 1 ? moved < 0.2 : missed < (known < 4 ? 0.3 : 0.05) * moved + 1e-7 && moved < 0.4;
    return near && solver.ratio >= firm && s > 0;
  }

  private double apart(double[] a, double[] b) {
    double most = 0;
    for (int j : part.joints()) {
      double weight = axes.slides[j] ? 1 / part.scale() : 1;
      most = Math.max(most, weight * Math.abs(a[j] - b[j]));
    }
    return most;
  }

  /** After some misses in a row, steps over what may be a singular state; returns where to. */
  private double jumped(double s) {
    double to = s + 1.2 * STEP / span;
    if (misses != 6 || trail.size() < 5 || to >= 1) {
      return s;
    }
    double[] p = across(to);
    if (p == null) {
      return s;
    }
    trail.add(to, p);
    q = p;
    misses = 0;
    return to;
  }

  /** A pose on the far side of a singular one, or null. */
  private double @Nullable [] across(double s) {
    budget.spend(part.loops().size());
    double[] p = trail.ahead(s, 5);
    place(p, s);
    double[] aim = p.clone();
    boolean closed = solver.solve(p);
    return closed && apart(p, aim) < 0.02 && solver.ratio >= firm ? p : null;
  }

  /** Reaches a singular end from poses on both sides of it. */
  private boolean bridge() {
    double unit = Math.min(0.02 / span, 0.2);
    int marched = trail.size();
    for (int k = 5; k >= 2; k--) {
      double s = 1 - k * unit;
      double[] p = s > trail.lastAt() + 0.2 * unit ? across(s) : null;
      if (p != null) {
        trail.add(s, p);
      }
    }
    int before = trail.size();
    for (int k = 2; k <= 5; k++) {
      double[] p = across(1 + k * unit);
      if (p != null) {
        trail.add(1 + k * unit, p);
      }
    }
    boolean done = land(before);
    if (!done) {
      trail.cut(marched);
    }
    return done;
  }

  /** Interpolates the end from the poses on both sides, or extrapolates from those before it. */
  private boolean land(int before) {
    boolean both = trail.size() >= before + 3 && before >= 3;
    if (!both && before < 3) {
      return touch();
    }
    double[] p = both ? trail.around(1, 8) : trail.ahead(1, 4);
    place(p, 1);
    return land(p, both ? 1e-4 : 0.05, both ? 1e-5 : 0.01);
  }

  /** Ends at what is almost there: sets it flat, else closes it as it is. */
  private boolean touch() {
    double[] p = trail.last().clone();
    place(p, 1);
    return land(p, 0.05, 0.05);
  }

  private boolean land(double[] p, double reach, double trust) {
    double[] flat = Snap.of(part, axes, p, held, reach);
    if (flat != null && apart(flat, p) < 2 * reach) {
      q = flat;
      return true;
    }
    double[] closed = p.clone();
    boolean fine = solver.solve(closed) && apart(closed, p) < trust;
    if (fine && solver.ratio > 1e-7) {
      q = closed;
      return true;
    }
    if (part.residual(p) <= Solver.CLOSED) {
      q = p;
      return true;
    }
    q = fine ? closed : q;
    return fine;
  }

  @Override
  public String toString() {
    return "March of " + Arrays.toString(drivers) + " to " + Arrays.toString(target);
  }
}
