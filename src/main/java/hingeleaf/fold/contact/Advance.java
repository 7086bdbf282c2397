package hingeleaf.fold.contact;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Follows one pair of parts along a course until they touch, become layers, or are through. */
final class Advance {
  /** Nearer than this is touching, mm: far below what paper feels, far above rounding. */
  static final double TOUCH_MM = 1e-3;

  /** Boxes nearer than this are not enough: triangles are asked, mm. */
  private static final double NEAR_MM = 0.05;

  /** Sheets that lie within this angle and nearer than their paper are layers, rad. */
  private static final double LAYER_RAD = 0.4;

  /** Sheets within this angle are layers by their boxes alone: a side of 12 mm rises 0.2 mm. */
  private static final double LAID_RAD = 0.02;

  /** Distances asked for one pair; what glides along all the way needs more and is told. */
  private static final int STEPS = 600;

  /** How it ended. */
  enum End {
    CLEAR,
    LAYERS,
    TOUCH,
    /** They run along each other so closely that the budget did not suffice. */
    UNDECIDED
  }

  /**
   * Where it ended.
   *
   * @param leg of the course
   * @param share of that leg
   * @param on nearest point of the first part, in the made pose's coordinates of the first
   * @param rel from the second's made-pose coordinates to the first's
   */
  record Outcome(End end, int leg, double share, Vec3 on, Rigid rel) {}

  private final Course course;
  private final double clearance;
  private final boolean layers;
  private final ShellGap gap = new ShellGap();

  /** Joint rates of each leg. */
  private final double[][] rates;

  /**
   * @param layers whether sheets that come nearly parallel lie on each other from then on, as in a
   *     card that is laid flat; otherwise they touch, as a leaf that opens does
   */
  Advance(Course course, double clearance, boolean layers) {
    this.course = course;
    this.clearance = clearance;
    this.layers = layers;
    rates = new double[course.legs()][];
    for (int i = 0; i < rates.length; i++) {
      double[] from = course.nodes.get(i);
      double[] to = course.nodes.get(i + 1);
      double[] rate = new double[from.length];
      Arrays.setAll(rate, j -> to[j] - from[j]);
      rates[i] = rate;
    }
  }

  /**
   * @param chain from the first part's body to the second's
   * @param back the same the other way
   * @param until share of the whole course after which nothing is asked any more
   */
  Outcome run(Solid a, Solid b, Chain chain, Chain back, double until) {
    boolean resting = distance(a, b, chain.pose(course.nodes.get(0)), TOUCH_MM * 2) <= TOUCH_MM;
    if (resting && (a.prism() || b.prism())) {
      return outcome(End.TOUCH, 0, 0, chain.pose(course.nodes.get(0)));
    }
    int steps = 0;
    double paper = paper(a, b);
    for (int leg = 0; leg < rates.length; leg++) {
      double speed =
          Math.min(chain.speed(b.shell(), rates[leg]), back.speed(a.shell(), rates[leg]));
      if (speed < 1e-9) {
        continue;
      }
      double share = 0;
      double end = Math.min(1, until * rates.length - leg);
      while (share < end) {
        if (++steps > STEPS) {
          return outcome(End.UNDECIDED, leg, share, pose(chain, leg, share));
        }
        Rigid rel = pose(chain, leg, share);
        double left = speed * (end - share);
        double boxes = gap.boxes(a.shell(), b.shell(), rel);
        if (!resting && boxes <= paper && parallel(a, b, rel, LAID_RAD)) {
          return outcome(End.LAYERS, leg, share, rel);
        }
        double below = left + 2 * clearance + 2;
        // A box's distance is no more than a bound: what makes layers must be asked of the
        // triangles.
        double d =
            boxes <= paper || near(boxes, below) ? gap.of(a.shell(), b.shell(), rel, below) : boxes;
        if (resting) {
          resting = d <= 0.1;
          share += resting ? Math.max(0.002 * rates.length, 0.05 / speed) : 0;
          continue;
        }
        End met = judge(a, b, rel, d);
        if (met != null) {
          return outcome(met, leg, share, rel);
        }
        share += (d * (1 - ShellGap.SLACK) - TOUCH_MM / 2) / speed;
      }
    }
    return new Outcome(End.CLEAR, rates.length - 1, 1, Vec3.ZERO, Rigid.IDENTITY);
  }

  private Rigid pose(Chain chain, int leg, double share) {
    return chain.pose(course.nodes.get(leg), course.nodes.get(leg + 1), share);
  }

  private double distance(Solid a, Solid b, Rigid rel, double below) {
    double boxes = gap.boxes(a.shell(), b.shell(), rel);
    return near(boxes, below) ? gap.of(a.shell(), b.shell(), rel, below) : boxes;
  }

  private static boolean near(double boxes, double below) {
    return boxes <= NEAR_MM && boxes < below;
  }

  /** How near two sheets lie as layers, mm; what stands on a face never becomes one: negative. */
  private double paper(Solid a, Solid b) {
    boolean sheets = layers && !a.prism() && !b.prism();
    return sheets ? (a.thickness() + b.thickness()) / 2 + clearance : -1;
  }

  private @Nullable End judge(Solid a, Solid b, Rigid rel, double d) {
    if (d <= TOUCH_MM) {
      boolean sheets = layers && !a.prism() && !b.prism();
      return sheets && parallel(a, b, rel, LAYER_RAD) ? End.LAYERS : End.TOUCH;
    }
    return d <= paper(a, b) && parallel(a, b, rel, LAYER_RAD) ? End.LAYERS : null;
  }

  static boolean parallel(Solid a, Solid b, Rigid rel, double within) {
    return a.normal().cross(rel.turn(b.normal())).length() <= Math.sin(within);
  }

  private Outcome outcome(End end, int leg, double share, Rigid rel) {
    return new Outcome(end, leg, share, new Vec3(gap.on[0], gap.on[1], gap.on[2]), rel);
  }
}
