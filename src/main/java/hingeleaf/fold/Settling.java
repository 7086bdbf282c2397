package hingeleaf.fold;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Posed;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Closes the loops of a card whose glue does not quite meet at the nominal angles.
 *
 * <p>Each glue that misses is let go along the screw that brings its faces together (Chasles: any
 * rigid motion is a turn about a line and a slide along it), as a hinge and a slider that are
 * driven from nothing to the whole misfit while all loops stay closed. What freedoms remain keep as
 * near to the nominal angles as can be.
 */
public final class Settling {
  /** Faces that miss by less than this, mm or rad over the card's size, meet already. */
  private static final double MEETS = 1e-12;

  private final Mechanism from;
  private final List<Mechanism.Facet> facets;
  private final List<Joint> joints;
  private final List<Mechanism.Bond> bonds = new ArrayList<>();
  private final Map<String, Double> targets = new HashMap<>();

  /**
   * Where a glue wants its second panel.
   *
   * @param bond index of the glue in the mechanism
   * @param motion from where the panel stands in the reference pose to where its patch meets the
   *     first panel's, the first panel staying
   */
  public record Seat(int bond, Rigid motion) {}

  /**
   * @param closed whether every glue meets and every loop closes
   * @param mechanism the mechanism in the settled pose, as its new reference; the nearest pose
   *     found where it does not close
   * @param posed where the panels came to lie, seen from the old reference
   * @param missing how far joints or glues still are apart, mm; 0 or rounding where closed
   */
  public record Settled(boolean closed, Mechanism mechanism, Posed posed, double missing) {}

  private Settling(Mechanism from) {
    this.from = from;
    facets = new ArrayList<>(from.facets());
    joints = new ArrayList<>(from.joints());
  }

  /**
   * @param seats glues that miss; those not named meet in the reference pose
   */
  public static Settled settle(Mechanism mechanism, List<Seat> seats, Budget budget) {
    Settling s = new Settling(mechanism);
    Map<Integer, Rigid> wanted = new HashMap<>();
    seats.forEach(seat -> wanted.put(seat.bond(), seat.motion()));
    for (int b = 0; b < mechanism.bonds().size(); b++) {
      Rigid motion = wanted.get(b);
      if (motion == null || !s.loosen(b, motion)) {
        s.bonds.add(mechanism.bonds().get(b));
      }
    }
    return s.run(budget);
  }

  private Settled run(Budget budget) {
    Mechanism loose = new Mechanism(facets, joints, bonds, from.fixed());
    Linkage linkage = Linkage.of(loose, budget);
    Drive drive = linkage.drive(targets, Map.of(), budget);
    Posed posed =
        drive.reached() ? drive.posed() : linkage.at(linkage.nearestClosing(targets, budget));
    List<Rigid> motions = posed.motions().subList(0, from.facets().size());
    List<Double> values = posed.values().subList(0, from.joints().size());
    Posed own = new Posed(motions, values, posed.gap());
    return new Settled(drive.reached(), moved(own), own, posed.gap());
  }

  /** Replaces a glue by the hinge and slider of its misfit; false if it meets already. */
  private boolean loosen(int bond, Rigid m) {
    Mechanism.Bond b = from.bonds().get(bond);
    double[] turn = turn(m);
    Vec3 axis = new Vec3(turn[0], turn[1], turn[2]);
    double angle = axis.length();
    boolean turns = angle > MEETS;
    if (!turns && m.shift().length() < MEETS) {
      return false;
    }
    Vec3 u = turns ? axis.times(1 / angle) : m.shift().unit();
    double along = m.shift().dot(u);
    int free = facets.size();
    facets.add(ghost(bond, facets.get(b.a())));
    Vec3 at = turns ? centre(u, angle, m.shift().minus(u.times(along))) : Vec3.ZERO;
    if (turns) {
      String id = "turn " + bond;
      joints.add(new Joint.Hinge(id, b.a(), free, at, at.plus(u.times(10)), Double.NaN));
      targets.put(id, angle);
    } else {
      bonds.add(new Mechanism.Bond(b.a(), free));
    }
    if (Math.abs(along) < MEETS) {
      bonds.add(new Mechanism.Bond(free, b.b()));
    } else {
      String id = "slide " + bond;
      joints.add(new Joint.Slider(id, free, b.b(), u, -1e9, 1e9));
      targets.put(id, along);
    }
    return true;
  }

  private static Mechanism.Facet ghost(int bond, Mechanism.Facet like) {
    return new Mechanism.Facet("glue " + bond, like.outline(), List.of(), 0);
  }

  /** The rotation vector of a motion, rad. */
  private static double[] turn(Rigid m) {
    double w = Math.sqrt(Math.max(0, 1 + m.xx() + m.yy() + m.zz())) / 2;
    double[] r = new double[3];
    double k = 4 * Math.max(w, 1e-9);
    SphericalLoop.rotationVector(
        w, (m.zy() - m.yz()) / k, (m.xz() - m.zx()) / k, (m.yx() - m.xy()) / k, r, 0);
    return r;
  }

  /** The point nearest the origin that a turn with a shift across its axis leaves in place. */
  private static Vec3 centre(Vec3 u, double angle, Vec3 across) {
    return across.times(0.5).plus(u.cross(across).times(0.5 / Math.tan(angle / 2)));
  }

  /** The mechanism with every panel and axis where the pose has it. */
  private Mechanism moved(Posed pose) {
    List<Mechanism.Facet> out = new ArrayList<>();
    for (int f = 0; f < from.facets().size(); f++) {
      Mechanism.Facet p = from.facets().get(f);
      Rigid m = pose.motions().get(f);
      List<List<Vec3>> holes =
          p.holes().stream().map(h -> h.stream().map(m::apply).toList()).toList();
      out.add(
          new Mechanism.Facet(
              p.id(), p.outline().stream().map(m::apply).toList(), holes, p.thickness()));
    }
    List<Joint> carried = new ArrayList<>();
    for (int j = 0; j < from.joints().size(); j++) {
      Joint joint = from.joints().get(j);
      carried.add(moved(joint, pose.motions().get(joint.a()), pose.values().get(j)));
    }
    return new Mechanism(out, carried, from.bonds(), from.fixed());
  }

  private static Joint moved(Joint joint, Rigid m, double value) {
    if (joint instanceof Joint.Hinge h) {
      return new Joint.Hinge(
          h.id(), h.a(), h.b(), m.apply(h.from()), m.apply(h.to()), madeAfter(h.made(), value));
    }
    if (joint instanceof Joint.Slider s) {
      return new Joint.Slider(
          s.id(), s.a(), s.b(), m.turn(s.along()), s.least() - value, s.most() - value);
    }
    Joint.Pivot p = (Joint.Pivot) joint;
    return new Joint.Pivot(
        p.id(),
        p.a(),
        p.b(),
        m.apply(p.at()),
        m.turn(p.axis()),
        p.least() - value,
        p.most() - value);
  }

  /** The made angle counts valley positive whichever way the axis points; only its size is sure. */
  private static double madeAfter(double made, double value) {
    return Math.abs(value) < 1e-12 ? made : Double.NaN;
  }

  @Override
  public String toString() {
    return "Settling " + targets + " of " + Arrays.toString(joints.toArray());
  }
}
