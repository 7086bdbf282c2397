package hingeleaf.sight;

import hingeleaf.geom.Tolerance;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Which of two surfaces is in front where their pictures overlap. A closed family.
 *
 * <p>The difference of two nearnesses is affine, so each is in front on a half-plane of the view.
 * Where the pictures can overlap at all the difference is bounded by its values at the corners of
 * the common box and at the vertices of either picture (the test of planes that depth sorting uses:
 * Newell, Newell &amp; Sancha 1972); only where these leave both signs must the surfaces be cut
 * along the line on which they cross.
 */
sealed interface Order {
  /** The first hides the second. */
  record FirstOver() implements Order {}

  /** The second hides the first. */
  record SecondOver() implements Order {}

  /**
   * Each hides the other on one side of the line on which they cross.
   *
   * @param second above 0 where the second is in front
   */
  record Crossing(Camera.Slope second) implements Order {}

  /** The order of two surfaces, neither seen edge-on; null where their pictures cannot overlap. */
  static @Nullable Order of(Surface first, Surface second) {
    Envelope box = first.box().intersection(second.box());
    if (box.isNull() || box.getWidth() <= 0 || box.getHeight() <= 0) {
      return null;
    }
    Camera.Slope f = second.plane().minus(first.plane());
    double[] range = corners(f, box);
    if (undecided(range)) {
      narrow(range, f, first.shape());
      if (undecided(range)) {
        narrow(range, f, second.shape());
      }
    }
    return decide(range, f, first, second);
  }

  private static boolean undecided(double[] range) {
    return range[0] < -Tolerance.TOUCH_MM && range[1] > Tolerance.TOUCH_MM;
  }

  private static @Nullable Order decide(
      double[] range, Camera.Slope f, Surface first, Surface second) {
    if (range[0] >= -Tolerance.TOUCH_MM && range[1] <= Tolerance.TOUCH_MM) {
      return tie(first, second);
    }
    if (range[0] > range[1]) {
      return null;
    }
    if (range[0] >= -Tolerance.TOUCH_MM) {
      return new SecondOver();
    }
    return range[1] <= Tolerance.TOUCH_MM ? new FirstOver() : new Crossing(f);
  }

  /** Panels in one plane: the layer decides, seen from the side on which layers count upwards. */
  private static Order tie(Surface first, Surface second) {
    boolean seenFromAbove = Layers.upward(first.part().pose().normal()) == first.facing() > 0;
    int higher = Integer.compare(second.part().layer(), first.part().layer());
    if (higher == 0) {
      higher = Integer.compare(second.index(), first.index());
    }
    return higher > 0 == seenFromAbove ? new SecondOver() : new FirstOver();
  }

  private static double[] corners(Camera.Slope f, Envelope b) {
    double x = Math.abs(f.a()) * b.getWidth() / 2 + Math.abs(f.b()) * b.getHeight() / 2;
    double middle = f.at((b.getMinX() + b.getMaxX()) / 2, (b.getMinY() + b.getMaxY()) / 2);
    return new double[] {middle - x, middle + x};
  }

  private static void narrow(double[] range, Camera.Slope f, Geometry shape) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      for (Coordinate c : shape.getGeometryN(i).getCoordinates()) {
        double value = f.at(c.x, c.y);
        least = Math.min(least, value);
        most = Math.max(most, value);
      }
    }
    range[0] = Math.max(range[0], least);
    range[1] = Math.min(range[1], most);
  }
}
