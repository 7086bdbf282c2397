package hingeleaf.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Reference: the snapping noder of the JTS Topology Suite 1.20, a library for general use. */
class SnapNoderTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double SNAP = 1e-6;

  private static Polygon star(Random r, double size) {
    int n = 3 + r.nextInt(60);
    Coordinate[] c = new Coordinate[n + 1];
    double x = 60 * r.nextDouble() - 30;
    double y = 60 * r.nextDouble() - 30;
    for (int i = 0; i < n; i++) {
      double out = size * (0.3 + 0.7 * r.nextDouble());
      double turn = 2 * Math.PI * i / n;
      c[i] = new Coordinate(x + out * Math.cos(turn), y + out * Math.sin(turn));
    }
    c[n] = c[0].copy();
    return FACTORY.createPolygon(c);
  }

  /** The same with every vertex moved by less than the tolerance. */
  private static Polygon shaken(Polygon p, Random r) {
    Polygon copy = (Polygon) p.copy();
    Coordinate[] c = copy.getExteriorRing().getCoordinates();
    for (int i = 0; i + 1 < c.length; i++) {
      c[i].x += (r.nextDouble() - 0.5) * SNAP;
      c[i].y += (r.nextDouble() - 0.5) * SNAP;
    }
    c[c.length - 1].setCoordinate(c[0]);
    return FACTORY.createPolygon(c);
  }

  @Test
  void overlaysHaveTheAreasThatTheLibrarysNoderGives() {
    Random r = new Random(11);
    for (int i = 0; i < 300; i++) {
      Polygon a = star(r, 20 + 40 * r.nextDouble());
      Polygon b = star(r, 20 + 40 * r.nextDouble());
      for (int op : new int[] {OverlayNG.DIFFERENCE, OverlayNG.INTERSECTION, OverlayNG.UNION}) {
        Geometry ours = OverlayNG.overlay(a, b, op, new SnapNoder(SNAP));
        Geometry theirs = OverlayNG.overlay(a, b, op, new SnappingNoder(SNAP));
        assertThat(ours.getArea()).as("case %d", i).isCloseTo(theirs.getArea(), within(1e-4));
        assertThat(ours.getNumGeometries()).isEqualTo(theirs.getNumGeometries());
        assertThat(ours.isValid()).isTrue();
      }
    }
  }

  @Test
  void edgesThatShouldBeOneAreOne() {
    Random r = new Random(12);
    for (int i = 0; i < 100; i++) {
      Polygon a = star(r, 50);
      Geometry left =
          OverlayNG.overlay(a, shaken(a, r), OverlayNG.DIFFERENCE, new SnapNoder(2 * SNAP));
      assertThat(left.isEmpty()).as("case %d", i).isTrue();
    }
  }

  /** Points on both sides of the lines between the squares of the table find each other. */
  @Test
  void neighboursAcrossASquaresEdgeAreOne() {
    Polygon left = box(-3, -3, -4e-7, 4);
    Polygon right = box(4e-7, -3, 5, 4);
    Geometry both = OverlayNG.overlay(left, right, OverlayNG.UNION, new SnapNoder(SNAP));
    assertThat(both.getNumGeometries()).isEqualTo(1);
    assertThat(both.getArea()).isCloseTo(8 * 7, within(1e-5));
  }

  /** More points than the table first has room for. */
  @Test
  void manyPoints() {
    Polygon wide = (Polygon) FACTORY.createPoint(new Coordinate(0, 0)).buffer(80, 900);
    Polygon narrow = (Polygon) FACTORY.createPoint(new Coordinate(0, 0)).buffer(79, 800);
    Geometry rim = OverlayNG.overlay(wide, narrow, OverlayNG.DIFFERENCE, new SnapNoder(SNAP));
    assertThat(rim.getArea()).isCloseTo(wide.getArea() - narrow.getArea(), within(1e-6));
  }

  private static Polygon box(double x0, double y0, double x1, double y1) {
    return FACTORY.createPolygon(
        new Coordinate[] {
          new Coordinate(x0, y0),
          new Coordinate(x1, y0),
          new Coordinate(x1, y1),
          new Coordinate(x0, y1),
          new Coordinate(x0, y0)
        });
  }
}
