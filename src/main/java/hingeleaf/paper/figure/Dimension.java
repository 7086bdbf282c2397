package hingeleaf.paper.figure;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import java.util.ArrayList;
import java.util.List;

/** Dimension lines with extension lines and arrowheads (manner of ISO 129-1). */
public final class Dimension {
  static final double SIZE = Look.SMALL;
  private static final double ARROW = 2;
  private static final double PAST = 1.2;
  private static final double CLEAR = 0.8;

  private Dimension() {}

  /**
   * A distance between two points, measured along x or y.
   *
   * @param a first point of the thing
   * @param b second point of the thing
   * @param at where the dimension line lies: y for a distance along x, x for one along y
   * @param alongX which distance
   */
  public static List<Mark> between(
      Vec2 a, Vec2 b, double at, boolean alongX, String words, Fonts fonts) {
    Vec2 p = alongX ? new Vec2(a.x(), at) : new Vec2(at, a.y());
    Vec2 q = alongX ? new Vec2(b.x(), at) : new Vec2(at, b.y());
    List<Mark> marks = new ArrayList<>();
    extension(marks, a, p);
    extension(marks, b, q);
    double length = p.distance(q);
    double text = fonts.width(words, Weight.REGULAR, SIZE);
    Vec2 u = length > 0 ? q.minus(p).unit() : new Vec2(1, 0);
    double turn = alongX ? 0 : Math.PI / 2;
    Vec2 up = alongX ? new Vec2(0, CLEAR) : new Vec2(-CLEAR, 0);
    if (length >= text + 1 && length >= 2 * ARROW + 1) {
      line(marks, p, q);
      arrow(marks, p, u.times(-1));
      arrow(marks, q, u);
      Vec2 middle = p.plus(q).times(0.5).plus(up);
      marks.add(words(words, middle, Anchor.MIDDLE, turn));
      return marks;
    }
    // Too short: arrows from outside, the number after the second.
    line(marks, p.minus(u.times(ARROW + 2)), q.plus(u.times(ARROW + 2 + text)));
    arrow(marks, p, u);
    arrow(marks, q, u.times(-1));
    marks.add(words(words, q.plus(u.times(ARROW + 1.5)).plus(up), Anchor.START, turn));
    return marks;
  }

  static void extension(List<Mark> marks, Vec2 from, Vec2 to) {
    double length = from.distance(to);
    if (length < 2 * CLEAR) {
      return;
    }
    Vec2 u = to.minus(from).unit();
    line(marks, from.plus(u.times(CLEAR)), to.plus(u.times(PAST)));
  }

  static void line(List<Mark> marks, Vec2 a, Vec2 b) {
    marks.add(new Mark.Stroke(Path.line(a, b), Pen.DIMENSION));
  }

  /** A filled head with its tip at {@code tip}, pointing along a unit direction. */
  static void arrow(List<Mark> marks, Vec2 tip, Vec2 direction) {
    Vec2 back = tip.minus(direction.times(ARROW));
    Vec2 side = direction.left().times(ARROW * 0.17);
    Path head = new Path(List.of(List.of(tip, back.plus(side), back.minus(side))), true);
    marks.add(new Mark.Fill(head, Look.QUIET));
  }

  static Mark words(String text, Vec2 at, Anchor anchor, double turn) {
    return new Mark.Words(text, at, SIZE, Weight.REGULAR, anchor, Look.INK, turn);
  }
}
