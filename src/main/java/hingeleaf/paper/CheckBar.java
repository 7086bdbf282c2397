package hingeleaf.paper;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import java.util.ArrayList;
import java.util.List;

/** Two rules to lay one's own ruler on: 100 mm above, 4 in below. A wrong scale shows at once. */
public final class CheckBar {
  public static final double WIDTH = 101.6;
  public static final double HEIGHT = 17;

  private static final Pen PEN = Pen.solid(0.25, Look.INK);

  private CheckBar() {}

  /** Both rules as a drawing of their own. */
  public static Drawing figure() {
    return Drawing.plain(WIDTH + 0.5, HEIGHT, "check bar", at(new Vec2(0.25, 0)));
  }

  /** Its marks, with its lower left corner at {@code at}. */
  public static List<Mark> at(Vec2 at) {
    List<Mark> marks = new ArrayList<>();
    rule(marks, at.plus(new Vec2(0, 10.5)), 10, 10, 5, "100 mm");
    rule(marks, at.plus(new Vec2(0, 0.5)), 25.4 / 4, 16, 4, "4 in");
    return marks;
  }

  /** A bar of {@code count} fields, every other one toned, longer ticks each {@code major}. */
  private static void rule(
      List<Mark> marks, Vec2 at, double field, int count, int major, String name) {
    double high = 2.4;
    for (int i = 0; i < count; i += 2) {
      double x = at.x() + i * field;
      marks.add(new Mark.Fill(Path.rectangle(x, at.y(), x + field, at.y() + high), Look.HAIR));
    }
    double end = at.x() + count * field;
    marks.add(new Mark.Stroke(Path.rectangle(at.x(), at.y(), end, at.y() + high), PEN));
    for (int i = 0; i <= count; i++) {
      double x = at.x() + i * field;
      double up = i % major == 0 ? 1.6 : 0.7;
      marks.add(
          new Mark.Stroke(
              Path.line(new Vec2(x, at.y() + high), new Vec2(x, at.y() + high + up)), PEN));
    }
    Vec2 words = new Vec2(end - 1.2, at.y() + high + 1.1);
    marks.add(new Mark.Words(name, words, Look.SMALL, Weight.SEMIBOLD, Anchor.END, Look.INK, 0));
  }
}
