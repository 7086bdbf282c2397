package hingeleaf.card;

import hingeleaf.geom.Vec3;
import java.util.function.Function;

/**
 * A freedom between two panels of a mechanism, in the reference pose. A closed family.
 *
 * <p>A hinge's value is the right-handed rotation of panel {@code b} relative to panel {@code a}
 * about {@code from -> to}, 0 in the reference pose.
 */
public sealed interface Joint {
  String id();

  /** Index of the first panel. */
  int a();

  /** Index of the second panel, which moves relative to the first. */
  int b();

  /** Calls the function for the kind that this is; a new kind stops every use from compiling. */
  default <T> T match(
      Function<Hinge, T> hinge, Function<Slider, T> slider, Function<Pivot, T> pivot) {
    if (this instanceof Hinge h) {
      return hinge.apply(h);
    } else if (this instanceof Slider s) {
      return slider.apply(s);
    }
    return pivot.apply((Pivot) this);
  }

  /**
   * A fold: rotation of b relative to a about the line.
   *
   * @param made total fold angle in the reference pose, rad, valley positive; {@code NaN} where the
   *     reader of a mechanism did not tell and geometry decides
   */
  record Hinge(String id, int a, int b, Vec3 from, Vec3 to, double made) implements Joint {}

  /**
   * A strip in a guide: translation of b relative to a along a unit direction.
   *
   * @param least mm
   * @param most mm
   */
  record Slider(String id, int a, int b, Vec3 along, double least, double most) implements Joint {}

  /**
   * A wheel on its seat: rotation of b relative to a about a line across both.
   *
   * @param least rad
   * @param most rad
   */
  record Pivot(String id, int a, int b, Vec3 at, Vec3 axis, double least, double most)
      implements Joint {}
}
