package hingeleaf.sight;

import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Whether two polygons have nothing in common, or one lies well inside the other, told without
 * building anything: most surfaces of a card hide nothing of most others, though their boxes meet,
 * for one is seen through an opening of the other.
 */
final class Apart {
  /** Lines nearer than this, mm, are taken to touch: far below what joins vertices. */
  private static final double NEAR = 1e-9;

  private double[] lines = new double[64];
  private int count;

  private Apart() {}

  /** True only if they do not even touch; where that is in doubt, false. */
  static boolean sure(Polygon a, Polygon b) {
    return !touch(a, b)
        && !holds(b, a.getExteriorRing().getCoordinateN(0))
        && !holds(a, b.getExteriorRing().getCoordinateN(0));
  }

  /** True only if the first lies in the second without touching its edge; in doubt, false. */
  static boolean inside(Polygon a, Polygon b) {
    return b.getEnvelopeInternal().covers(a.getEnvelopeInternal())
        && !touch(a, b)
        && holds(b, a.getExteriorRing().getCoordinateN(0))
        && !coversHole(a, b);
  }

  /** Whether the first lies over a hole of the second; their edges do not touch. */
  private static boolean coversHole(Polygon a, Polygon b) {
    for (int k = 0; k < b.getNumInteriorRing(); k++) {
      if (holds(a, b.getInteriorRingN(k).getCoordinateN(0))) {
        return true;
      }
    }
    return false;
  }

  /** Whether any of their edges touch. */
  private static boolean touch(Polygon a, Polygon b) {
    Envelope common = a.getEnvelopeInternal().intersection(b.getEnvelopeInternal());
    if (common.isNull()) {
      return false;
    }
    common.expandBy(NEAR);
    Apart ofB = new Apart();
    ofB.gather(b, common);
    return ofB.touched(a, common);
  }

  /** Keeps the edges of a polygon that come near a box. */
  private void gather(Polygon p, Envelope box) {
    for (int k = -1; k < p.getNumInteriorRing(); k++) {
      Coordinate[] c = ring(p, k).getCoordinates();
      for (int i = 0; i + 1 < c.length; i++) {
        if (meets(c[i], c[i + 1], box)) {
          add(c[i], c[i + 1]);
        }
      }
    }
  }

  private static LinearRing ring(Polygon p, int k) {
    return k < 0 ? p.getExteriorRing() : p.getInteriorRingN(k);
  }

  private static boolean meets(Coordinate from, Coordinate to, Envelope box) {
    return Math.max(from.x, to.x) >= box.getMinX()
        && Math.min(from.x, to.x) <= box.getMaxX()
        && Math.max(from.y, to.y) >= box.getMinY()
        && Math.min(from.y, to.y) <= box.getMaxY();
  }

  private void add(Coordinate from, Coordinate to) {
    if (count == lines.length) {
      lines = java.util.Arrays.copyOf(lines, 2 * count);
    }
    lines[count++] = from.x;
    lines[count++] = from.y;
    lines[count++] = to.x;
    lines[count++] = to.y;
  }

  /** Whether any edge of a polygon touches one of those kept. */
  private boolean touched(Polygon p, Envelope box) {
    for (int k = -1; k < p.getNumInteriorRing(); k++) {
      Coordinate[] c = ring(p, k).getCoordinates();
      for (int i = 0; i + 1 < c.length; i++) {
        if (meets(c[i], c[i + 1], box) && touched(c[i].x, c[i].y, c[i + 1].x, c[i + 1].y)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean touched(double ax, double ay, double bx, double by) {
    double x0 = Math.min(ax, bx) - NEAR;
    double x1 = Math.max(ax, bx) + NEAR;
    double y0 = Math.min(ay, by) - NEAR;
    double y1 = Math.max(ay, by) + NEAR;
    double[] l = lines;
    for (int i = 0; i < count; i += 4) {
      double cx = l[i];
      double dx = l[i + 2];
      if (cx < x0 && dx < x0 || cx > x1 && dx > x1) {
        continue;
      }
      double cy = l[i + 1];
      double dy = l[i + 3];
      if (cy < y0 && dy < y0 || cy > y1 && dy > y1) {
        continue;
      }
      if (!beside(ax, ay, bx, by, cx, cy, dx, dy) && !beside(cx, cy, dx, dy, ax, ay, bx, by)) {
        return true;
      }
    }
    return false;
  }

  /** Whether both ends of the second line lie clearly on one side of the first. */
  private static boolean beside(
      double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy) {
    double ux = bx - ax;
    double uy = by - ay;
    double near = NEAR * (Math.abs(ux) + Math.abs(uy));
    double c = ux * (cy - ay) - uy * (cx - ax);
    double d = ux * (dy - ay) - uy * (dx - ax);
    return c > near && d > near || c < -near && d < -near;
  }

  /** Whether a point that lies on no edge lies inside. */
  static boolean holds(Polygon p, Coordinate at) {
    if (!p.getEnvelopeInternal().covers(at)
        || !PointLocation.isInRing(at, p.getExteriorRing().getCoordinates())) {
      return false;
    }
    for (int k = 0; k < p.getNumInteriorRing(); k++) {
      if (PointLocation.isInRing(at, p.getInteriorRingN(k).getCoordinates())) {
        return false;
      }
    }
    return true;
  }
}
