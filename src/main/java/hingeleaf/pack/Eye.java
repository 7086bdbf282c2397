package hingeleaf.pack;

import hingeleaf.geom.Vec3;
import hingeleaf.sight.Look;

/**
 * Where somebody looks at a card from: at the middle of its front.
 *
 * @param right rad from straight on to the viewer's right, less than a quarter turn either way
 * @param above rad upwards, less than a quarter turn either way
 * @param distance from the middle of the front to the eye, mm; infinite for lines of sight side by
 *     side, as from very far away
 */
public record Eye(double right, double above, double distance) {
  /** As far as a card is held from the eye, mm: common practice, no source. */
  public static final double HELD_MM = 400;

  public Eye {
    double quarter = Math.PI / 2 - 1e-6;
    if (!(Math.abs(right) < quarter && Math.abs(above) < quarter && distance > 0)) {
      throw new IllegalArgumentException("no eye looks at the front from there");
    }
  }

  /** Whether it looks along parallel lines. */
  public boolean far() {
    return Double.isInfinite(distance);
  }

  Look look(Vec3 middle) {
    return far() ? Look.turned(right, above) : Look.fromEye(middle, distance, right, above);
  }
}
