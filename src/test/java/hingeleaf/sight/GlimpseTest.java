package hingeleaf.sight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** By hand, and against what the JTS library leaves of polygons strewn about. */
class GlimpseTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  private static Polygon box(double x, double y, double width, double height) {
    return (Polygon) JTS.toGeometry(new Envelope(x, x + width, y, y + height));
  }

  @Test
  void nothingBefore_theLargestSpotAboutTheMiddle() {
    Polygon square = box(0, 0, 2, 2);
    assertThat(Glimpse.sure(square, List.of(), Math.PI * 0.99)).isTrue();
    assertThat(Glimpse.sure(square, List.of(), Math.PI * 1.01)).isFalse();
  }

  @Test
  void behindAnother_nothing() {
    assertThat(Glimpse.sure(box(2, 2, 4, 4), List.of(box(0, 0, 9, 9)), 1e-3)).isFalse();
    assertThat(Glimpse.sure(box(2, 2, 4, 4), List.of(box(2, 2, 4, 4)), 1e-3)).isFalse();
  }

  @Test
  void throughAnOpening_theSpotIsAsWideAsThat() {
    Polygon hole = box(3, 3, 2, 2);
    Polygon frame =
        JTS.createPolygon(
            box(-9, -9, 26, 26).getExteriorRing(), new LinearRing[] {hole.getExteriorRing()});
    assertThat(Glimpse.sure(box(2, 2, 4, 4), List.of(frame), Math.PI * 0.99)).isTrue();
    assertThat(Glimpse.sure(box(2, 2, 4, 4), List.of(frame), Math.PI * 1.01)).isFalse();
  }

  @Test
  void aCornerThatLooksOut_isFound() {
    Polygon hider = box(-1, -1, 8, 12);
    assertThat(Glimpse.sure(box(0, 0, 10, 10), List.of(hider), Math.PI * 0.2)).isTrue();
  }

  private static Polygon star(Random random, double spread, double size) {
    int n = 3 + random.nextInt(20);
    double x = spread * random.nextDouble();
    double y = spread * random.nextDouble();
    Coordinate[] ring = new Coordinate[n + 1];
    for (int i = 0; i < n; i++) {
      double r = size * (0.5 + random.nextDouble());
      double turn = 2 * Math.PI * i / n;
      ring[i] = new Coordinate(x + r * Math.cos(turn), y + r * Math.sin(turn));
    }
    ring[n] = ring[0];
    return JTS.createPolygon(ring);
  }

  @Test
  void whereItIsSure_theLibraryLeavesAsMuch() {
    Random random = new Random(20);
    int sure = 0;
    int shows = 0;
    for (int i = 0; i < 4000; i++) {
      Polygon shape = star(random, 20, 8);
      List<Polygon> hiders = new ArrayList<>();
      Geometry left = shape;
      for (int k = random.nextInt(6); k > 0; k--) {
        Polygon hider = star(random, 30, 10);
        hiders.add(hider);
        left = left.difference(hider);
      }
      double area = shape.getArea() * (0.002 + 0.05 * random.nextDouble());
      shows += left.getArea() >= area ? 1 : 0;
      if (Glimpse.sure(shape, hiders, area)) {
        sure++;
        assertThat(left.getArea()).as("case %d", i).isGreaterThanOrEqualTo(area);
      }
    }
    // It need not find every spot, but it must be worth asking.
    assertThat(sure).isGreaterThan(shows / 2).isLessThan(4000);
  }
}
