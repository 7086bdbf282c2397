package hingeleaf.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The standard shapes of openings and ornaments as rings, in mm: anticlockwise, the middle of their
 * box at the origin, y up.
 *
 * <p>Curves become chords whose corners lie on the curve, so a drawn curve is never larger than the
 * true one and nowhere further from it than {@link Tolerance#CHORD_MM}. Every shape is mirrored
 * from one half or quarter, so left and right are equal to the last bit.
 */
public final class Shapes {
  private Shapes() {}

  /** A circle of this diameter, which must be more than 0. */
  public static Ring circle(double diameter) {
    return ellipse(diameter, diameter);
  }

  /** A square of this side, which must be more than 0. */
  public static Ring square(double side) {
    return rectangle(side, side);
  }

  /** A rectangle; both sizes must be more than 0. */
  public static Ring rectangle(double width, double height) {
    positive("width", width);
    positive("height", height);
    return Ring.rectangle(-width / 2, -height / 2, width / 2, height / 2);
  }

  /** An ellipse with upright axes; both sizes, edge to edge, must be more than 0. */
  public static Ring ellipse(double width, double height) {
    positive("width", width);
    positive("height", height);
    return fourTimes(quarter(width / 2, height / 2));
  }

  /**
   * A rectangle with a rounded top: half a circle over its whole width, or half an ellipse of the
   * whole height where it is too low for that. Both sizes must be more than 0.
   */
  public static Ring arch(double width, double height) {
    positive("width", width);
    positive("height", height);
    double rise = Math.min(width / 2, height);
    Vec2 up = new Vec2(0, height / 2 - rise);
    List<Vec2> right = quarter(width / 2, rise);
    List<Vec2> ring = new ArrayList<>();
    if (rise < height) {
      ring.add(new Vec2(-width / 2, -height / 2));
      ring.add(new Vec2(width / 2, -height / 2));
    }
    right.forEach(p -> ring.add(p.plus(up)));
    mirrored(right, -1, 1).forEach(p -> ring.add(p.plus(up)));
    return new Ring(withoutRepeats(ring));
  }

  /**
   * A rectangle with its four corners rounded.
   *
   * @param radius of the corners, from 0 (sharp) to half the shorter size
   */
  public static Ring rounded(double width, double height, double radius) {
    Ring sharp = rectangle(width, height);
    if (!(radius >= 0) || radius > Math.min(width, height) / 2) {
      throw new IllegalArgumentException(
          "a corner radius of " + radius + " does not fit " + width + " x " + height);
    }
    if (radius == 0) {
      return sharp;
    }
    Vec2 inset = new Vec2(width / 2 - radius, height / 2 - radius);
    return fourTimes(quarter(radius, radius).stream().map(p -> p.plus(inset)).toList());
  }

  /**
   * How many equal chords of a full circle keep within {@link Tolerance#CHORD_MM} of it, a multiple
   * of 4 and at least 8: the rise of an arc over its chord is r (1 - cos(pi / n)).
   */
  public static int chords(double radius) {
    double ratio = 1 - Tolerance.CHORD_MM / Math.max(radius, Tolerance.CHORD_MM);
    double n = Math.PI / Math.acos(ratio);
    return 4 * Math.max(2, (int) Math.ceil(n / 4));
  }

  /** From (a, 0) up to (0, b), both included; evenly spaced in the ellipse's parameter. */
  private static List<Vec2> quarter(double a, double b) {
    int steps = chords(Math.max(a, b)) / 4;
    List<Vec2> points = new ArrayList<>();
    points.add(new Vec2(a, 0));
    for (int i = 1; i < steps; i++) {
      double t = Math.PI / 2 * i / steps;
      points.add(new Vec2(a * Math.cos(t), b * Math.sin(t)));
    }
    points.add(new Vec2(0, b));
    return points;
  }

  /** A quarter mirrored, backwards where that keeps it anticlockwise. */
  private static List<Vec2> mirrored(List<Vec2> quarter, int sx, int sy) {
    List<Vec2> out = new ArrayList<>(quarter.stream().map(p -> mirrored(p, sx, sy)).toList());
    if (sx * sy < 0) {
      Collections.reverse(out);
    }
    return out;
  }

  private static Vec2 mirrored(Vec2 p, int sx, int sy) {
    return new Vec2(sx * p.x() + 0.0, sy * p.y() + 0.0); // + 0.0 turns -0 into 0
  }

  private static Ring fourTimes(List<Vec2> quarter) {
    List<Vec2> ring = new ArrayList<>(quarter);
    ring.addAll(mirrored(quarter, -1, 1));
    ring.addAll(mirrored(quarter, -1, -1));
    ring.addAll(mirrored(quarter, 1, -1));
    return new Ring(withoutRepeats(ring));
  }

  private static List<Vec2> withoutRepeats(List<Vec2> ring) {
    List<Vec2> out = new ArrayList<>();
    for (Vec2 p : ring) {
      if (out.isEmpty() || !out.get(out.size() - 1).equals(p)) {
        out.add(p);
      }
    }
    while (out.size() > 1 && out.get(0).equals(out.get(out.size() - 1))) {
      out.remove(out.size() - 1);
    }
    return out;
  }

  private static void positive(String what, double mm) {
    if (!(mm > 0) || mm == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("the " + what + " must be more than 0, it is " + mm);
    }
  }
}
