package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Drives one part: chooses where to start (the reference pose, rough angles, or a branch out of a
 * singular reference) and which of the driven joints can lead.
 */
final class PartDrive {
  /** A driven joint counts as met within this, rad or mm over the part's size. */
  static final double MET = 1e-9;

  /** Rough angles that are within this of a pose that closes mean that pose, rad. */
  private static final double ROUGH = 0.2;

  private final Part part;
  private final Axes axes;
  private final double[] reference;
  private final double[] target;
  private final double[] near;
  private final int[] driven;
  private final boolean roughAll;
  private final boolean roughAny;
  private final Freedom freedom;
  private final Predicate<double[]> crossed;
  private final Budget budget;

  /**
   * @param reached whether every driven joint of the part has its value and the part closes
   * @param q values of all joints; the nearest pose found where it is not reached
   * @param blocked a driven joint that has not got its value, or -1
   */
  record Outcome(boolean reached, double[] q, int blocked) {}

  /**
   * @param target for each joint of the mechanism its value, NaN where it is not driven
   * @param near rough values, NaN where not given
   * @param crossed whether panels pass through each other at some values
   */
  PartDrive(
      Part part,
      Axes axes,
      double[] reference,
      double[] target,
      double[] near,
      Freedom freedom,
      Predicate<double[]> crossed,
      Budget budget) {
    this.part = part;
    this.axes = axes;
    this.reference = reference;
    this.target = target;
    this.near = near;
    this.freedom = freedom;
    this.crossed = crossed;
    this.budget = budget;
    driven = Arrays.stream(part.joints()).filter(j -> !Double.isNaN(target[j])).toArray();
    roughAny = Arrays.stream(part.joints()).anyMatch(j -> !Double.isNaN(near[j]));
    roughAll =
        Arrays.stream(part.joints())
            .allMatch(j -> !Double.isNaN(near[j]) || !Double.isNaN(target[j]));
  }

  Outcome run() {
    if (driven.length == 0 && !roughAny) {
      return new Outcome(true, reference, -1);
    }
    Outcome rough = roughAll ? fromNear() : null;
    if (rough != null && off(rough.q()) <= ROUGH) {
      return rough;
    }
    List<Outcome> found = new ArrayList<>(paths());
    if (rough != null) {
      found.add(rough);
    }
    return best(found);
  }

  private Outcome best(List<Outcome> found) {
    List<Outcome> reached = found.stream().filter(Outcome::reached).toList();
    if (!reached.isEmpty()) {
      return roughAny
          ? reached.stream().min(Comparator.comparingDouble(o -> off(o.q()))).orElseThrow()
          : reached.get(0);
    }
    return found.stream()
        .min(Comparator.comparingDouble(o -> missed(o.q())))
        .orElse(new Outcome(false, reference, firstMissed(reference)));
  }

  /** How far a pose is from the rough angles. */
  private double off(double[] q) {
    double most = 0;
    for (int j : part.joints()) {
      if (!Double.isNaN(near[j])) {
        most = Math.max(most, Math.abs(q[j] - near[j]));
      }
    }
    return most;
  }

  private double missed(double[] q) {
    double most = 0;
    for (int j : driven) {
      double weight = axes.slides[j] ? 1 / part.scale() : 1;
      most = Math.max(most, weight * Math.abs(q[j] - target[j]));
    }
    return most;
  }

  private int firstMissed(double[] q) {
    double most = missed(q);
    for (int j : driven) {
      double weight = axes.slides[j] ? 1 / part.scale() : 1;
      if (weight * Math.abs(q[j] - target[j]) >= most) {
        return j;
      }
    }
    return -1;
  }

  private Outcome judged(boolean closed, double[] q) {
    if (closed && missed(q) <= MET && part.residual(q) <= Solver.CLOSED) {
      return new Outcome(true, q, -1);
    }
    return new Outcome(false, q, firstMissed(q));
  }

  /** Newton's method from the rough angles themselves; null if it leads nowhere. */
  private @Nullable Outcome fromNear() {
    budget.spend(10L * part.loops().size());
    double[] q = reference.clone();
    boolean[] held = new boolean[q.length];
    for (int j : part.joints()) {
      q[j] = Double.isNaN(target[j]) ? near[j] : target[j];
      held[j] = !Double.isNaN(target[j]);
    }
    double[] flat = Snap.of(part, axes, q, held, 0.1);
    if (flat != null && Snap.isFlat(part, axes, flat, 1e-9)) {
      return judged(true, flat);
    }
    double[] rough = q.clone();
    boolean loose = freedom.regular() && driven.length < freedom.count(budget);
    Solver solver = new Solver(part, held, q, loose);
    boolean closed = solver.solve(q);
    if (closed && solver.ratio > 1e-5) {
      return judged(true, loose ? relaxed(q) : q);
    }
    double[] snapped = Snap.of(part, axes, closed ? q : rough, held, 0.1);
    if (snapped != null) {
      return judged(true, snapped);
    }
    return closed ? judged(true, relaxed(q)) : null;
  }

  private double[] relaxed(double[] q) {
    return new Relax(part, axes, budget).toward(anchor(), q, held(driven));
  }

  /** Continuous paths from the reference pose, most natural first. */
  private List<Outcome> paths() {
    if (missed(reference) == 0 && !roughAny) {
      return List.of(new Outcome(true, reference, -1));
    }
    List<Outcome> out = new ArrayList<>();
    if (freedom.regular()) {
      out.add(walk(reference));
      return out;
    }
    if (missed(reference) == 0) {
      out.add(new Outcome(true, reference, -1));
    }
    for (double[] start : starts()) {
      Outcome o = walk(start);
      out.add(o);
      if (o.reached() && !roughAny) {
        return out;
      }
    }
    return out;
  }

  /**
   * Poses a step out of a singular reference, on each branch the way that the drives point; first
   * those without crossing panels, of them the one on which the driven joints turn most for what
   * all others turn.
   */
  private List<double[]> starts() {
    List<double[]> poses = new ArrayList<>();
    List<Double> share = new ArrayList<>();
    for (Branches.Branch b : freedom.branches(budget)) {
      double toward = 0;
      double own = 0;
      double all = 0;
      for (int i = 0; i < part.size(); i++) {
        int j = part.joints()[i];
        double t = b.tangent()[i];
        double wish = Double.isNaN(target[j]) ? near[j] : target[j];
        double aim =
            Double.isNaN(wish) || Double.isNaN(target[j]) && driven.length > 0
                ? 0
                : wish - reference[j];
        toward += t * aim;
        own += Double.isNaN(target[j]) ? 0 : t * t;
        all += t * t;
      }
      double[] pose = toward >= 0 ? b.ahead() : b.back();
      double part = Math.abs(toward) < 1e-12 ? 0 : own / all;
      if (pose != null && part > 1e-12) {
        poses.add(pose);
        share.add(crossed.test(pose) ? part - 1 : part);
      }
    }
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < poses.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> -share.get(i)));
    return order.stream().map(poses::get).toList();
  }

  private Outcome walk(double[] start) {
    int[] leaders = Freedom.independent(part, start, driven, budget);
    if (leaders.length == 0) {
      return judged(true, start == reference ? reference : start);
    }
    int free =
        freedom.regular() ? freedom.count(budget) : Freedom.kernel(part, start, budget).length;
    double[] to = Arrays.stream(leaders).mapToDouble(j -> target[j]).toArray();
    boolean loose = leaders.length < free;
    if (loose && part.size() > Coupled.DENSE) {
      leaders = Freedom.settling(part, start, leaders, budget);
      to = Arrays.stream(leaders).mapToDouble(j -> wanted(j, start)).toArray();
      loose = false;
    }
    March march = new March(part, axes, start, leaders, to, loose, budget);
    boolean closed = march.run();
    Relax relax = new Relax(part, axes, budget);
    if (closed && loose) {
      return judged(true, relax.toward(anchor(), march.q, held(leaders)));
    }
    if (!closed && leaders.length == 1 && part.size() <= Coupled.DENSE) {
      double[] turned = relax.turningPoint(axes, march.q, leaders[0], target[leaders[0]]);
      return judged(false, turned);
    }
    return judged(closed, march.q);
  }

  /** Driven joints go to their value, others that lead stay. */
  private double wanted(int joint, double[] start) {
    return Double.isNaN(target[joint]) ? start[joint] : target[joint];
  }

  private boolean[] held(int[] joints) {
    boolean[] held = new boolean[reference.length];
    for (int j : joints) {
      held[j] = true;
    }
    return held;
  }

  /** What joints that no drive settles keep near to: rough values, else the reference pose. */
  private double[] anchor() {
    double[] a = reference.clone();
    for (int j : part.joints()) {
      a[j] = Double.isNaN(near[j]) ? a[j] : near[j];
    }
    return a;
  }
}
