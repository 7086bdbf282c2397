package hingeleaf.sight;

import hingeleaf.geom.Box;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.Optional;

/**
 * From where a card is looked at. A closed family.
 *
 * <p>View coordinates are mm: x to the viewer's right, y up, the origin at the picture of the
 * target. A parallel view keeps sizes across the line of sight; a view from an eye keeps them in
 * the plane through the target across the line of sight.
 */
public sealed interface Look {
  /** How far to the right of straight on a three-quarter view is taken, rad. */
  double THREE_QUARTER_TURN = Math.toRadians(32);

  /** How far above straight on a three-quarter view is taken, rad. */
  double THREE_QUARTER_RISE = Math.toRadians(24);

  /** The point of the world in the middle of the picture. */
  Vec3 target();

  /** The direction of the world that is up in the picture. */
  Vec3 up();

  /** Unit direction from the target towards the viewer. */
  Vec3 towards();

  /**
   * Lines of sight side by side, as from very far away.
   *
   * @param target the point in the middle
   * @param towards from the card to the viewer; any length above 0, kept as a unit vector
   * @param up not along {@code towards}
   */
  record Parallel(Vec3 target, Vec3 towards, Vec3 up) implements Look {
    public Parallel {
      towards = towards.unit();
      mustCross(towards, up);
    }
  }

  /**
   * Lines of sight that meet in an eye.
   *
   * @param eye where it is
   * @param target the point that it looks at, elsewhere than the eye
   * @param up not along the line of sight
   */
  record FromEye(Vec3 eye, Vec3 target, Vec3 up) implements Look {
    public FromEye {
      mustCross(eye.minus(target).unit(), up);
    }

    @Override
    public Vec3 towards() {
      return eye.minus(target).unit();
    }

    /** From the eye to the target, mm. */
    public double distance() {
      return eye.distance(target);
    }
  }

  /**
   * Where a point of the world is in the picture, seen or hidden: for dimensions and arrows.
   *
   * @return view coordinates, mm; empty where the point is beside or behind the eye
   */
  default Optional<Vec2> picture(Vec3 world) {
    Camera camera = Camera.of(this);
    return camera.room(world) < 0 ? Optional.empty() : Optional.of(camera.project(world).at());
  }

  /** The world as it stands: x right, y up, from the front; view x and y are world x and y. */
  static Look straightOn() {
    return new Parallel(Vec3.ZERO, new Vec3(0, 0, 1), new Vec3(0, 1, 0));
  }

  /**
   * A parallel view from the front, turned.
   *
   * @param right rad from straight on to the viewer's right
   * @param above rad upwards, less than a quarter turn either way
   */
  static Look turned(double right, double above) {
    return new Parallel(Vec3.ZERO, direction(right, above), new Vec3(0, 1, 0));
  }

  /** A parallel view from above on the right, in which all three directions of the card show. */
  static Look threeQuarter() {
    return turned(THREE_QUARTER_TURN, THREE_QUARTER_RISE);
  }

  /** The same from above on the left. */
  static Look threeQuarterLeft() {
    return turned(-THREE_QUARTER_TURN, THREE_QUARTER_RISE);
  }

  /** A parallel view from behind, as the card is seen turned over. */
  static Look fromBehind() {
    return turned(Math.PI, 0);
  }

  /**
   * An eye at a distance from a point, in front of it.
   *
   * @param at the point looked at, such as the middle of the foremost opening
   * @param distance from it to the eye, mm, above 0
   * @param right rad from straight on to the viewer's right
   * @param above rad upwards, less than a quarter turn either way
   */
  static Look fromEye(Vec3 at, double distance, double right, double above) {
    return new FromEye(at.plus(direction(right, above).times(distance)), at, new Vec3(0, 1, 0));
  }

  /** An eye straight in front of the middle of a card whose front fills a box at a height z. */
  static Look fromEye(Box front, double z, double distance) {
    Vec3 at = new Vec3(front.centre().x(), front.centre().y(), z);
    return fromEye(at, distance, 0, 0);
  }

  private static Vec3 direction(double right, double above) {
    double c = Math.cos(above);
    return new Vec3(c * Math.sin(right), Math.sin(above), c * Math.cos(right));
  }

  private static void mustCross(Vec3 towards, Vec3 up) {
    if (!(up.cross(towards).length() > Tolerance.LENGTH_MM * up.length())) {
      throw new IllegalArgumentException("up must not run along the line of sight");
    }
  }
}
