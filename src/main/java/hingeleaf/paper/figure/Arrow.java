package hingeleaf.paper.figure;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import java.util.ArrayList;
import java.util.List;

/** Arrows that say: move this there. */
public final class Arrow {
  private static final double HEAD = 3;
  private static final int CHORDS = 24;

  private Arrow() {}

  /**
   * An arrow along an arc.
   *
   * @param bulge height of the arc over its chord as a part of the chord's length; positive to the
   *     left of the way, 0 for a straight arrow; between -1 and 1
   * @throws IllegalArgumentException where both ends are one point
   */
  public static List<Mark> of(Vec2 from, Vec2 to, double bulge, Pen pen) {
    double chord = from.distance(to);
    if (!(chord > 1e-6)) {
      throw new IllegalArgumentException("an arrow must lead somewhere");
    }
    List<Vec2> points = arc(from, to, Math.max(-1, Math.min(1, bulge)));
    Vec2 before = points.get(points.size() - 2);
    Vec2 u = to.minus(before).unit();
    double head = Math.min(HEAD, chord / 2);
    Vec2 back = to.minus(u.times(head));
    Vec2 side = u.left().times(head * 0.32);
    Path tip = new Path(List.of(List.of(to, back.plus(side), back.minus(side))), true);
    List<Vec2> shaft = new ArrayList<>();
    for (Vec2 p : points) {
      if (p.distance(to) > head * 0.8) {
        shaft.add(p);
      }
    }
    shaft.add(back.plus(u.times(head * 0.2)));
    return List.of(
        new Mark.Stroke(new Path(List.of(shaft), false), pen), new Mark.Fill(tip, pen.colour()));
  }

  /** Points of the circular arc, both ends among them. */
  private static List<Vec2> arc(Vec2 from, Vec2 to, double bulge) {
    if (Math.abs(bulge) < 1e-9) {
      return List.of(from, from.plus(to).times(0.5), to);
    }
    Vec2 half = to.minus(from).times(0.5);
    // Sagitta h over half a chord of length 1: tan(quarter of the arc) = h (circle geometry).
    double quarter = Math.atan(2 * bulge);
    double sweep = -4 * quarter;
    Vec2 middle = from.plus(to).times(0.5);
    Vec2 centre = middle.minus(half.left().times(1 / Math.tan(2 * quarter)));
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i <= CHORDS; i++) {
      double a = sweep * i / CHORDS;
      Vec2 r = from.minus(centre);
      double c = Math.cos(a);
      double s = Math.sin(a);
      points.add(centre.plus(new Vec2(c * r.x() - s * r.y(), s * r.x() + c * r.y())));
    }
    points.set(CHORDS, to);
    return points;
  }
}
