package hingeleaf.fold.stand;

import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import hingeleaf.fold.Budget;
import hingeleaf.fold.Linkage;
import hingeleaf.fold.Stays;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Works out how a made card stands: centre of mass over the edges that touch the shelf (a rigid
 * body stands while the vertical through its centre of mass meets its support; textbook statics).
 */
public final class Standing {
  /** Edges within this of the lowest touch the shelf: card gives that much, mm. */
  private static final double TOUCHES_MM = 0.2;

  /** A first part of the way to a rest, by which a freedom's fall is told. */
  private static final double STEP = 0.02;

  /** Less of a fall than this over that part is none, mm. */
  private static final double FALL_MM = 1e-4;

  private static final long STEPS = 4_000_000;

  private final MadeCard made;
  private final double[] mass;
  private final Vec3[] centre;

  private Standing(MadeCard made) {
    this.made = made;
    int n = made.panels().size();
    mass = new double[n];
    centre = new Vec3[n];
    for (int i = 0; i < n; i++) {
      Panel p = made.panels().get(i);
      double grammage = made.card().piece(p.piece()).stock().grammage();
      mass[i] = p.region().area() * grammage * 1e-6;
      centre[i] = p.made().apply(p.region().centroid());
    }
  }

  /**
   * @param rest where its freedoms lead; null where it has none
   */
  public static Stand of(MadeCard made, @Nullable Rest rest) {
    return new Standing(made).stand(rest);
  }

  private Vec3 centre(@Nullable Posed posed) {
    Vec3 sum = Vec3.ZERO;
    double all = 0;
    for (int i = 0; i < mass.length; i++) {
      Vec3 at = posed == null ? centre[i] : posed.motions().get(i).apply(centre[i]);
      sum = sum.plus(at.times(mass[i]));
      all += mass[i];
    }
    return sum.times(1 / all);
  }

  private Stand stand(@Nullable Rest rest) {
    double low = Double.POSITIVE_INFINITY;
    for (Vec3 p : corners()) {
      low = Math.min(low, p.y());
    }
    double nearest = Double.NEGATIVE_INFINITY;
    double farthest = Double.POSITIVE_INFINITY;
    for (Vec3 p : corners()) {
      if (p.y() <= low + TOUCHES_MM) {
        nearest = Math.max(nearest, p.z());
        farthest = Math.min(farthest, p.z());
      }
    }
    Vec3 c = centre(null);
    double height = c.y() - low;
    double front = nearest - c.z();
    double back = c.z() - farthest;
    List<Stand.Lean> loose = rest == null ? List.of() : loose(rest, c);
    return new Stand(
        verdict(front, back, loose),
        java.util.Arrays.stream(mass).sum(),
        c,
        height,
        front,
        back,
        Math.atan2(front, height),
        Math.atan2(back, height),
        loose);
  }

  private List<Vec3> corners() {
    List<Vec3> all = new ArrayList<>();
    for (Panel p : made.panels()) {
      Rigid pose = p.made();
      p.region().outer().points().forEach(q -> all.add(pose.apply(q)));
    }
    return all;
  }

  private static Stand.Verdict verdict(double front, double back, List<Stand.Lean> loose) {
    if (Math.min(front, back) <= 0) {
      return Stand.Verdict.TIPS;
    }
    if (loose.stream().anyMatch(Stand.Lean::falls)) {
      return Stand.Verdict.SINKS;
    }
    return loose.isEmpty() ? Stand.Verdict.STANDS : Stand.Verdict.LEANS;
  }

  /**
   * Each freedom that no stay holds a little way towards the rest, alone: does the centre of mass
   * sink?
   */
  private List<Stand.Lean> loose(Rest rest, Vec3 upright) {
    Linkage linkage = Linkage.of(made.mechanism(), Budget.of(STEPS));
    Stays stays = Stays.of(made);
    Set<Integer> moving = Hold.of(made).moving();
    List<Stand.Lean> all = new ArrayList<>();
    for (List<Integer> together : linkage.movers()) {
      if (together.stream().noneMatch(moving::contains) || stays.folds(together.get(0))) {
        continue;
      }
      double[] q = new double[rest.posed().values().size()];
      boolean moves = false;
      for (int j : together) {
        q[j] = STEP * rest.posed().values().get(j);
        moves |= q[j] != 0;
      }
      if (moves) {
        boolean falls = sinks(linkage, q, upright);
        all.add(new Stand.Lean(piece(linkage.joint(together.get(0))), falls));
      }
    }
    return all;
  }

  /** This way or the opposite one. */
  private boolean sinks(Linkage linkage, double[] q, Vec3 upright) {
    double[] other = java.util.Arrays.stream(q).map(v -> -v).toArray();
    double low = Math.min(centre(linkage.at(q)).y(), centre(linkage.at(other)).y());
    return low < upright.y() - FALL_MM;
  }

  private static String piece(Joint joint) {
    int cut = joint.id().lastIndexOf('/');
    return cut < 0 ? joint.id() : joint.id().substring(0, cut);
  }
}
