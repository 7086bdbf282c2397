package hingeleaf.fold;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.geom.Vec3;
import java.util.List;

/**
 * The joints of a mechanism as bare lines and limits, in the reference pose.
 *
 * <p>For a hinge that lies in both its panels, {@code total} is the fold angle of the reference
 * pose: 0 where the two panels lie flat side by side, plus or minus pi where they lie on each
 * other. It is read from the panels, so it needs no word about valley and mountain; its sign goes
 * with the axis. Where a panel reaches round the fold, as that about a leaf that is cut into it
 * does, the joint's own word is taken. {@code NaN} where the axis lies off the plane of a panel.
 */
final class Axes {
  final int count;
  final boolean[] slides;
  final Vec3[] along;
  final Vec3[] at;

  /** Two points on the axis whose images tell how well a pose closes. */
  final Vec3[] from;

  final Vec3[] to;
  final double[] total;

  /** Least and most value of each joint, from what paper and guides allow. */
  final double[] least;

  final double[] most;

  /** How far the joints spread, mm; at least a tenth. */
  final double size;

  Axes(Mechanism mechanism) {
    List<Joint> joints = mechanism.joints();
    count = joints.size();
    slides = new boolean[count];
    along = new Vec3[count];
    at = new Vec3[count];
    from = new Vec3[count];
    to = new Vec3[count];
    total = new double[count];
    least = new double[count];
    most = new double[count];
    for (int j = 0; j < count; j++) {
      read(j, joints.get(j), mechanism);
    }
    size = spread();
  }

  private void read(int j, Joint joint, Mechanism mechanism) {
    Mechanism.Facet a = mechanism.facets().get(joint.a());
    Mechanism.Facet b = mechanism.facets().get(joint.b());
    if (joint instanceof Joint.Hinge h) {
      line(j, h.from(), h.to());
      boolean ends = oneSided(a, h.from(), along[j]) && oneSided(b, h.from(), along[j]);
      boolean told = !ends && !Double.isNaN(h.made());
      total[j] = told ? h.made() : totalAngle(a, b, h.from(), along[j]);
      if (ends) {
        foldLimits(j);
      } else {
        limit(j, Double.NaN, Double.NaN);
      }
    } else if (joint instanceof Joint.Pivot p) {
      line(j, p.at(), p.at().plus(p.axis().unit().times(10)));
      total[j] = Double.NaN;
      limit(j, p.least(), p.most());
    } else if (joint instanceof Joint.Slider s) {
      Vec3 p = middle(a.outline());
      line(j, p, p.plus(s.along().unit().times(10)));
      slides[j] = true;
      total[j] = Double.NaN;
      limit(j, s.least(), s.most());
    }
  }

  /** A fold closes at pi either way; one that is closed already may open to either side. */
  private void foldLimits(int j) {
    boolean closed = Math.PI - Math.abs(total[j]) < 1e-6;
    double room = closed ? 2 * Math.PI : Math.PI;
    double zero = closed ? 0 : total[j];
    limit(j, -room - zero, room - zero);
  }

  private void line(int j, Vec3 p, Vec3 q) {
    from[j] = p;
    to[j] = q;
    along[j] = q.minus(p).unit();
    at[j] = p.plus(q).times(0.5);
  }

  private void limit(int j, double lo, double hi) {
    least[j] = Double.isNaN(lo) ? Double.NEGATIVE_INFINITY : lo;
    most[j] = Double.isNaN(hi) ? Double.POSITIVE_INFINITY : hi;
  }

  private double spread() {
    double most = 0.1;
    for (int j = 0; j < count; j++) {
      most = Math.max(most, from[j].distance(to[j]));
      most = Math.max(most, at[j].distance(at[0]));
    }
    return most;
  }

  private static double totalAngle(Mechanism.Facet a, Mechanism.Facet b, Vec3 p, Vec3 u) {
    Vec3 da = reach(a, p, u);
    Vec3 db = reach(b, p, u);
    if (!inPlane(a, p, u, da) || !inPlane(b, p, u, db)) {
      return Double.NaN;
    }
    return Math.atan2(u.dot(da.times(-1).cross(db)), -da.dot(db));
  }

  /** From the axis to the panel's farthest corner, across the axis. */
  private static Vec3 reach(Mechanism.Facet f, Vec3 p, Vec3 u) {
    Vec3 best = Vec3.ZERO;
    for (Vec3 c : f.outline()) {
      Vec3 d = across(c, p, u);
      if (d.length() > best.length()) {
        best = d;
      }
    }
    return best;
  }

  private static Vec3 across(Vec3 c, Vec3 p, Vec3 u) {
    Vec3 d = c.minus(p);
    return d.minus(u.times(d.dot(u)));
  }

  private static boolean inPlane(Mechanism.Facet f, Vec3 p, Vec3 u, Vec3 reach) {
    if (!(reach.length() > 0)) {
      return false;
    }
    Vec3 n = u.cross(reach.unit());
    return f.outline().stream().allMatch(c -> Math.abs(c.minus(p).dot(n)) <= Loops.ROUNDED_MM);
  }

  /** Whether the panel lies wholly on one side of the axis, so that its fold has an end. */
  private static boolean oneSided(Mechanism.Facet f, Vec3 p, Vec3 u) {
    Vec3 r = reach(f, p, u);
    return f.outline().stream()
        .allMatch(c -> across(c, p, u).dot(r) >= -Loops.ROUNDED_MM * r.length());
  }

  private static Vec3 middle(List<Vec3> points) {
    Vec3 sum = Vec3.ZERO;
    for (Vec3 p : points) {
      sum = sum.plus(p);
    }
    return sum.times(1.0 / points.size());
  }
}
