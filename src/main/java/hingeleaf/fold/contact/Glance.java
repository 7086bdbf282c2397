package hingeleaf.fold.contact;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.function.Function;

/**
 * Two sheets that touch but never go through each other: one laid flat reaches out over a fold of
 * the other's layer, whose side then turns away below it. Sheets here have no thickness, so the
 * edge that lies in the other's plane counts as touched.
 *
 * <p>Two plane sheets cross only where each has points on both sides of the other's plane; as long
 * as one of them stays on the side on which it is, to within its paper, they do not.
 */
final class Glance {
  /** Poses looked at on the rest of the course. */
  private static final int POSES = 48;

  private Glance() {}

  /**
   * @param chain from the first part's body to the second's
   * @param o where they first touch
   */
  static boolean only(Course course, Chain chain, Solid a, Solid b, Advance.Outcome o) {
    double first = o.leg() + o.share();
    double paper = (a.thickness() + b.thickness()) / 2;
    return stays(course, first, paper, q -> span(b, chain.pose(q), a.at(), a.normal()))
        || stays(course, first, paper, q -> span(a, chain.pose(q).inverse(), b.at(), b.normal()));
  }

  /** Whether a sheet that begins on one side of the other's plane is there to the end. */
  private static boolean stays(
      Course course, double first, double paper, Function<double[], double[]> span) {
    double[] start = span.apply(course.nodes.get(0));
    boolean above = start[0] >= -paper;
    boolean below = start[1] <= paper;
    for (int i = 0; i <= POSES && (above || below); i++) {
      double at = first + (course.legs() - first) * i / POSES;
      int leg = Math.min(course.legs() - 1, (int) at);
      double[] now = span.apply(course.at(leg, at - leg));
      above &= now[0] >= -paper;
      below &= now[1] <= paper;
    }
    return above || below;
  }

  /** Least and most height of a sheet over a plane, mm. */
  private static double[] span(Solid s, Rigid pose, Vec3 at, Vec3 normal) {
    double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    double[] corners = s.shell().corners;
    for (int i = 0; i < corners.length; i += 3) {
      Vec3 p = pose.apply(new Vec3(corners[i], corners[i + 1], corners[i + 2]));
      double d = p.minus(at).dot(normal);
      span[0] = Math.min(span[0], d);
      span[1] = Math.max(span[1], d);
    }
    return span;
  }
}
