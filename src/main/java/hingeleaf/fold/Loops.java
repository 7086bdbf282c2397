package hingeleaf.fold;

import hingeleaf.geom.Vec3;
import org.jspecify.annotations.Nullable;

/** Tells planar from spherical from general loops, once, from the reference pose. */
final class Loops {
  /**
   * Points that are meant to be one, or to lie on one line, may differ by this much, in mm: files
   * are written with three decimals, and paper is not made closer. From {@link
   * hingeleaf.geom.Tolerance#LENGTH_MM} times 2000. How far a pose then misses is told as its gap.
   */
  static final double ROUNDED_MM = 2e-3;

  /** Meeting points farther than this many loop sizes away say little: such loops are general. */
  private static final double FAR = 100;

  private Loops() {}

  /**
   * @param joints once round
   * @param sign 1 where the loop runs through the joint from a to b, else -1
   */
  static Loop of(int[] joints, double[] sign, Axes axes) {
    Vec3 centre = centre(joints, axes);
    double size = size(joints, axes, centre);
    Vec3 u = parallel(joints, axes);
    if (u != null) {
      return new PlanarLoop(joints, sign, axes, u, centre, size);
    }
    Vec3 meet = meeting(joints, axes, centre);
    if (meet != null && meet.distance(centre) <= FAR * size) {
      return new SphericalLoop(joints, sign, axes, size);
    }
    return new GeneralLoop(joints, sign, axes, centre, size);
  }

  private static Vec3 centre(int[] joints, Axes axes) {
    Vec3 sum = Vec3.ZERO;
    for (int j : joints) {
      sum = sum.plus(axes.at[j]);
    }
    return sum.times(1.0 / joints.length);
  }

  private static double size(int[] joints, Axes axes, Vec3 centre) {
    double most = 0;
    for (int j : joints) {
      most = Math.max(most, axes.at[j].distance(centre));
    }
    return most > 1e-3 ? most : Math.max(1, axes.from[joints[0]].distance(axes.to[joints[0]]));
  }

  /** The common direction of all folds, or null. */
  private static @Nullable Vec3 parallel(int[] joints, Axes axes) {
    Vec3 u = null;
    for (int j : joints) {
      if (!axes.slides[j]) {
        u = u == null ? axes.along[j] : u;
        double length = axes.from[j].distance(axes.to[j]);
        if (axes.along[j].cross(u).length() * length > ROUNDED_MM) {
          return null;
        }
      }
    }
    for (int j : joints) {
      if (u == null || (axes.slides[j] && Math.abs(axes.along[j].dot(u)) > 1e-9)) {
        return null;
      }
    }
    return u;
  }

  /**
   * The point nearest to all axes in the least-squares sense, or null if one of them passes it by.
   */
  private static @Nullable Vec3 meeting(int[] joints, Axes axes, Vec3 centre) {
    double[] a = new double[9];
    double[] b = new double[3];
    for (int j : joints) {
      if (axes.slides[j]) {
        return null;
      }
      addAcross(axes.along[j], axes.at[j].minus(centre), a, b);
    }
    Vec3 x = solve3(a, b).plus(centre);
    for (int j : joints) {
      Vec3 d = x.minus(axes.at[j]);
      if (!(d.cross(axes.along[j]).length() <= ROUNDED_MM)) {
        return null;
      }
    }
    return x;
  }

  private static void addAcross(Vec3 u, Vec3 p, double[] a, double[] b) {
    double[] v = {u.x(), u.y(), u.z()};
    Vec3 w = p.minus(u.times(u.dot(p)));
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        a[3 * i + k] += (i == k ? 1 : 0) - v[i] * v[k];
      }
    }
    b[0] += w.x();
    b[1] += w.y();
    b[2] += w.z();
  }

  private static Vec3 solve3(double[] a, double[] b) {
    Vec3 c0 = new Vec3(a[0], a[3], a[6]);
    Vec3 c1 = new Vec3(a[1], a[4], a[7]);
    Vec3 c2 = new Vec3(a[2], a[5], a[8]);
    Vec3 r = new Vec3(b[0], b[1], b[2]);
    double det = c0.dot(c1.cross(c2));
    return new Vec3(r.dot(c1.cross(c2)), c0.dot(r.cross(c2)), c0.dot(c1.cross(r))).times(1 / det);
  }

  /** Some unit vector across {@code u}. */
  static Vec3 across(Vec3 u) {
    Vec3 least =
        Math.abs(u.x()) <= Math.abs(u.y()) && Math.abs(u.x()) <= Math.abs(u.z())
            ? new Vec3(1, 0, 0)
            : Math.abs(u.y()) <= Math.abs(u.z()) ? new Vec3(0, 1, 0) : new Vec3(0, 0, 1);
    return u.cross(least).unit();
  }
}
