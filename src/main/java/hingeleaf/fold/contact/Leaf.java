package hingeleaf.fold.contact;

import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.fold.Stays;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;

/** A door leaf in the made card, shut: where it hangs and how far it goes. */
final class Leaf {
  /** An edge along the fold that is at least this share of it is the leaf's own, not a tongue's. */
  private static final double EDGE = 0.25;

  private static final double PARALLEL = 1e-6;

  final String door;
  private final MadeCard made;
  private final Panel panel;
  private final double thickness;
  private final Vec3 from;
  private final Vec3 along;
  private final double length;
  private final Vec3 out;

  Leaf(MadeCard made, String door, int facet, Joint.Hinge h) {
    this.made = made;
    this.door = door;
    this.panel = made.panels().get(facet);
    this.thickness = made.mechanism().facets().get(facet).thickness();
    this.from = h.from();
    this.length = h.to().minus(h.from()).length();
    this.along = h.to().minus(h.from()).unit();
    Vec3 middle = panel.made().apply(panel.region().box().centre()).minus(from);
    this.out = middle.minus(along.times(middle.dot(along))).unit();
  }

  private double outwards(Vec2 p) {
    return panel.made().apply(p).minus(from).dot(out);
  }

  /** From the fold to the farthest point, mm. */
  double reach() {
    return panel.region().outer().points().stream().mapToDouble(this::outwards).max().orElse(0);
  }

  /** From the fold to the leaf's own free edge, mm. */
  double edge() {
    Ring ring = panel.region().outer();
    double far = 0;
    for (int i = 0; i < ring.points().size(); i++) {
      Vec2 p = ring.points().get(i);
      Vec2 q = ring.points().get((i + 1) % ring.points().size());
      boolean level = Math.abs(outwards(p) - outwards(q)) < PARALLEL;
      if (level && p.distance(q) >= EDGE * length) {
        far = Math.max(far, outwards(p));
      }
    }
    return far > PARALLEL ? far : reach();
  }

  /** Frames whose opening it goes through when it is opened so far, nearest first. */
  List<String> passes(double opens) {
    List<String> all = new ArrayList<>();
    for (Panel p : made.panels()) {
      double gap = gap(p);
      boolean frame = !p.region().holes().isEmpty() && gap > PARALLEL && gap < reach();
      if (frame && opens > Math.asin(gap / reach()) + 1e-3) {
        all.add(p.id());
      }
    }
    return all;
  }

  /** How far before the shut leaf a panel stands that is parallel to it; negative for others. */
  private double gap(Panel p) {
    Vec3 n = panel.made().normal();
    boolean level = p.made().normal().cross(n).length() < PARALLEL;
    return level ? p.made().apply(p.region().outer().points().get(0)).minus(from).dot(n) : -1;
  }

  /** How far it can stand open behind a lid that lies on the card's foremost layer, rad. */
  double ajar(double opens) {
    Stays stays = Stays.of(made);
    double before = 0;
    for (int i = 0; i < made.panels().size(); i++) {
      if (!stays.has(i)) {
        before = Math.max(before, gap(made.panels().get(i)));
      }
    }
    return before >= reach() ? opens : Math.min(opens, Math.asin(before / reach()));
  }

  /** How it meets another; empty where they are not hung facing each other on one plane. */
  java.util.Optional<Meeting> meets(Leaf other) {
    Vec3 between = other.from.minus(from);
    boolean facing = out.dot(other.out) < PARALLEL - 1 && Math.abs(between.dot(out)) > PARALLEL;
    boolean level = Math.abs(between.dot(panel.made().normal())) < thickness + other.thickness;
    double apart = between.dot(out) - edge() - other.edge();
    boolean beside = between.dot(out) > 0 && apart < BESIDE_MM && shared(other) > 0;
    if (!facing || !level || !beside) {
      return java.util.Optional.empty();
    }
    double need =
        new Corner(edge(), thickness, 0).clearance()
            + new Corner(other.edge(), other.thickness, 0).clearance();
    boolean laps = reach() - edge() > apart;
    boolean lapped = other.reach() - other.edge() > apart;
    String first = laps && apart >= 0 ? door : lapped && apart >= 0 ? other.door : "";
    return java.util.Optional.of(new Meeting(door, other.door, apart, need, first));
  }

  /** Leaves farther apart than this do not meet, mm. */
  private static final double BESIDE_MM = 10;

  /** The stretch of their folds that lies side by side. */
  private double shared(Leaf other) {
    double a = other.from.minus(from).dot(along);
    double b = other.from.plus(other.along.times(other.length)).minus(from).dot(along);
    return Math.min(length, Math.max(a, b)) - Math.max(0, Math.min(a, b));
  }
}
