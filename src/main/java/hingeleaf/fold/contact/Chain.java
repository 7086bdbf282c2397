package hingeleaf.fold.contact;

import hingeleaf.card.Joint;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The joints between two bodies, and how fast they can move the second one's points as seen from
 * the first.
 *
 * <p>The bound: joint k turns about a point c_k that the joints before it carry; if Omega_k bounds
 * how fast the body after joint k turns, c_(k+1) moves at most Omega_k |c_(k+1) - c_k| faster than
 * c_k, and a point at distance r of the last axis Omega_n r faster than c_n. Distances within a
 * body never change, so this holds along the whole leg (elementary kinematics of a chain). Where
 * all axes are parallel turns add with their signs, so frames on parallel sides do not turn at all.
 */
final class Chain {
  private final int[] joints;
  private final double[] sign;
  private final Vec3[] at;
  private final Vec3[] along;
  private final boolean[] slides;
  private final boolean parallel;
  private final double[] apart;

  /**
   * @param path joint indices from the first body to the second
   * @param forwards whether each is passed from its a to its b
   */
  Chain(List<Joint> all, int[] path, boolean[] forwards) {
    int n = path.length;
    joints = path.clone();
    sign = new double[n];
    at = new Vec3[n];
    along = new Vec3[n];
    slides = new boolean[n];
    apart = new double[n];
    for (int k = 0; k < n; k++) {
      sign[k] = forwards[k] ? 1 : -1;
      axis(k, all.get(path[k]));
    }
    boolean same = true;
    for (int k = 1; k < n; k++) {
      same &= slides[k] || along[k].cross(along[0]).length() < 1e-9;
    }
    parallel = same;
    for (int k = 1; k < n; k++) {
      if (!slides[k]) {
        Vec3 d = at[k - 1].minus(at[k]);
        at[k] = at[k].plus(along[k].times(d.dot(along[k])));
      } else {
        at[k] = at[k - 1];
      }
      apart[k] = at[k].distance(at[k - 1]);
    }
  }

  private void axis(int k, Joint joint) {
    if (joint instanceof Joint.Hinge h) {
      at[k] = h.from().plus(h.to()).times(0.5);
      along[k] = h.to().minus(h.from()).unit();
    } else if (joint instanceof Joint.Pivot p) {
      at[k] = p.at();
      along[k] = p.axis().unit();
    } else if (joint instanceof Joint.Slider s) {
      at[k] = Vec3.ZERO;
      along[k] = s.along().unit();
      slides[k] = true;
    }
  }

  /** Whether all its joints are such. */
  boolean only(IntPredicate such) {
    return Arrays.stream(joints).allMatch(such);
  }

  int length() {
    return joints.length;
  }

  /** From the second body's made-pose coordinates to the first's, at these joint values. */
  Rigid pose(double[] q) {
    return pose(q, q, 0);
  }

  /** The same at a share of the way from some joint values to others. */
  Rigid pose(double[] from, double[] to, double share) {
    Motion motion = new Motion();
    for (int k = joints.length - 1; k >= 0; k--) {
      int j = joints[k];
      double value = sign[k] * (from[j] + share * (to[j] - from[j]));
      if (value == 0) {
        continue;
      }
      if (slides[k]) {
        motion.slide(along[k], value);
      } else {
        motion.turn(at[k], along[k], value);
      }
    }
    return motion.rigid();
  }

  /**
   * No point of the shell, carried by the second body, moves faster than this, in mm for the whole
   * leg.
   *
   * @param rate of each joint of the mechanism over the leg
   */
  double speed(Shell shell, double[] rate) {
    int end = joints.length - 1;
    if (!slides[end] && stand(end, rate)) {
      return Math.abs(rate[joints[end]]) * aboutLast(shell);
    }
    double turning = 0;
    double moving = 0;
    double signed = 0;
    for (int k = 0; k < joints.length; k++) {
      moving += turning * apart[k];
      double r = rate[joints[k]];
      if (slides[k]) {
        moving += Math.abs(r);
      } else if (parallel) {
        signed += sign[k] * r * Math.signum(along[k].dot(along[0]));
        turning = Math.abs(signed) < 1e-12 ? 0 : Math.abs(signed);
      } else {
        turning += Math.abs(r);
      }
    }
    return turning == 0 ? moving : moving + turning * reach(shell);
  }

  /** Whether the first joints stand still, so that points go round the next one's line. */
  private boolean stand(int first, double[] rate) {
    for (int k = 0; k < first; k++) {
      if (rate[joints[k]] != 0) {
        return false;
      }
    }
    return true;
  }

  /** From the last joint's line, or from its point where the chain turns every way. */
  private double reach(Shell shell) {
    int last = joints.length - 1;
    if (parallel && !slides[last]) {
      return aboutLast(shell);
    }
    Vec3 c = at[last];
    return shell.reach(new double[] {c.x(), c.y(), c.z()}, new double[3]);
  }

  private double aboutLast(Shell shell) {
    int last = joints.length - 1;
    return shell.reach(joints[last], at[last], along[last]);
  }

  /** Whether all joints turn about one line, on which both bodies' sheets may meet. */
  boolean oneLine() {
    for (int k = 0; k < joints.length; k++) {
      if (slides[k] || k > 0 && (!parallel || apart[k] > 1e-6)) {
        return false;
      }
    }
    return joints.length > 0;
  }

  /** Distance of the line of the first joint from a plane, at its farther end near the joint. */
  boolean lineIn(Solid sheet) {
    double off = at[0].minus(sheet.at()).dot(sheet.normal());
    return Math.abs(off) < 1e-6 && Math.abs(along[0].dot(sheet.normal())) < 1e-9;
  }
}
