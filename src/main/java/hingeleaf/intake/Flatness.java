package hingeleaf.intake;

import hingeleaf.geom.Vec3;
import java.util.List;

/** Whether points lie in one plane, and how far a line lies from a panel. Lengths in mm. */
final class Flatness {
  /**
   * Files are written with three decimals or more; a point may be off by the rounding of three
   * coordinates, doubled for the plane it is compared with.
   */
  static final double TOLERANCE_MM = 2e-3;

  private Flatness() {}

  /** Twice the area of a ring as a vector along its normal (Newell's formula). */
  static Vec3 normal(List<Vec3> ring) {
    Vec3 sum = Vec3.ZERO;
    Vec3 o = ring.get(0);
    for (int i = 1; i + 1 < ring.size(); i++) {
      sum = sum.plus(ring.get(i).minus(o).cross(ring.get(i + 1).minus(o)));
    }
    return sum;
  }

  /** Largest distance of any point from a plane. */
  static double off(List<Vec3> points, Vec3 at, Vec3 unitNormal) {
    double worst = 0;
    for (Vec3 p : points) {
      worst = Math.max(worst, Math.abs(p.minus(at).dot(unitNormal)));
    }
    return worst;
  }

  /**
   * How far a segment in the plane of a ring stays away from the area in it: 0 where they touch.
   */
  static double gap(List<Vec3> ring, Vec3 unitNormal, Vec3 from, Vec3 to) {
    if (inside(ring, unitNormal, from) || inside(ring, unitNormal, to)) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ring.size(); i++) {
      Vec3 a = ring.get(i);
      Vec3 b = ring.get((i + 1) % ring.size());
      least = Math.min(least, apart(a, b, from, to));
    }
    return least;
  }

  private static boolean inside(List<Vec3> ring, Vec3 n, Vec3 p) {
    double turn = 0;
    for (int i = 0; i < ring.size(); i++) {
      Vec3 a = ring.get(i).minus(p);
      Vec3 b = ring.get((i + 1) % ring.size()).minus(p);
      turn += Math.atan2(n.dot(a.cross(b)), a.dot(b));
    }
    return Math.abs(turn) > Math.PI;
  }

  /** Distance between two segments (C. Ericson, Real-Time Collision Detection, 2005, 5.1.9). */
  static double apart(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
    Vec3 u = b.minus(a);
    Vec3 v = d.minus(c);
    Vec3 w = a.minus(c);
    double uu = u.dot(u);
    double vv = v.dot(v);
    double uv = u.dot(v);
    double den = uu * vv - uv * uv;
    double s = den > 1e-12 * uu * vv ? clamp((uv * v.dot(w) - vv * u.dot(w)) / den) : 0;
    double t = vv > 0 ? (uv * s + v.dot(w)) / vv : 0;
    if (t < 0 || t > 1) {
      t = clamp(t);
      s = uu > 0 ? clamp((uv * t - u.dot(w)) / uu) : 0;
    }
    return a.plus(u.times(s)).distance(c.plus(v.times(t)));
  }

  private static double clamp(double x) {
    return Math.max(0, Math.min(1, x));
  }
}
