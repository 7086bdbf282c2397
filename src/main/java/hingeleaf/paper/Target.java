package hingeleaf.paper;

import hingeleaf.geom.Vec2;
import java.util.List;

/** A cross in a ring, to lay sheets upon each other. */
public final class Target {
  private static final Pen PEN = Pen.solid(0.18, Look.INK);

  private Target() {}

  /** Its marks; {@code reach} from the middle to an end of the cross, mm. */
  public static List<Mark> at(Vec2 c, double reach) {
    return List.of(
        new Mark.Stroke(Path.circle(c, reach / 2), PEN),
        new Mark.Stroke(Path.line(c.plus(new Vec2(-reach, 0)), c.plus(new Vec2(reach, 0))), PEN),
        new Mark.Stroke(Path.line(c.plus(new Vec2(0, -reach)), c.plus(new Vec2(0, reach))), PEN));
  }
}
