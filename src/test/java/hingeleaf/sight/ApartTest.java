package hingeleaf.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.locationtech.jts.geom.prep.PreparedGeometryFactory.prepare;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** By hand, and against the JTS library's own answer for polygons strewn about. */
class ApartTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  private static Polygon box(double x, double y, double width, double height) {
    return (Polygon) JTS.toGeometry(new Envelope(x, x + width, y, y + height));
  }

  private static Polygon frame(double x, double y, double side, double border) {
    Polygon hole = box(x + border, y + border, side - 2 * border, side - 2 * border);
    return JTS.createPolygon(
        box(x, y, side, side).getExteriorRing(), new LinearRing[] {hole.getExteriorRing()});
  }

  private static void sure(Polygon a, Polygon b, boolean expected) {
    assertThat(Apart.sure(a, b)).isEqualTo(expected);
    assertThat(Apart.sure(b, a)).isEqualTo(expected);
  }

  @Test
  void boxesBesideEachOther() {
    sure(box(0, 0, 2, 2), box(3, 0, 2, 2), true);
    sure(box(0, 0, 2, 2), box(1, 1, 2, 2), false);
  }

  @Test
  void whatOnlyTouches_isNotSure() {
    sure(box(0, 0, 2, 2), box(2, 0, 2, 2), false);
    sure(box(0, 0, 2, 2), box(2, 2, 1, 1), false);
    sure(frame(0, 0, 10, 2), box(2, 4, 1, 1), false);
  }

  @Test
  void seenThroughAnOpening() {
    sure(frame(0, 0, 10, 2), box(3, 3, 4, 4), true);
    sure(frame(0, 0, 10, 2), box(3, 3, 8, 2), false);
  }

  @Test
  void oneInsideTheOther() {
    sure(box(0, 0, 9, 9), box(2, 2, 1, 1), false);
    sure(frame(0, 0, 20, 6), box(1, 1, 2, 2), false);
    sure(box(-1, -1, 12, 12), frame(0, 0, 10, 2), false);
    sure(frame(0, 0, 20, 2), frame(5, 5, 10, 2), true);
  }

  @Test
  void alike() {
    sure(frame(0, 0, 10, 2), frame(0, 0, 10, 2), false);
  }

  /** A star about a point, with an opening of the same shape in every other one. */
  private static Polygon star(Random random) {
    int n = 3 + random.nextInt(40);
    double x = 60 * random.nextDouble();
    double y = 60 * random.nextDouble();
    double size = 3 + 20 * random.nextDouble();
    Coordinate[] outer = new Coordinate[n + 1];
    Coordinate[] inner = new Coordinate[n + 1];
    for (int i = 0; i < n; i++) {
      double r = size * (0.5 + random.nextDouble());
      double turn = 2 * Math.PI * i / n;
      outer[i] = new Coordinate(x + r * Math.cos(turn), y + r * Math.sin(turn));
      double in = 0.8 * r;
      inner[i] = new Coordinate(x + in * Math.cos(turn), y + in * Math.sin(turn));
    }
    outer[n] = outer[0];
    inner[n] = inner[0];
    LinearRing hole = JTS.createLinearRing(inner);
    boolean open = random.nextBoolean();
    return JTS.createPolygon(
        JTS.createLinearRing(outer), open ? new LinearRing[] {hole} : new LinearRing[0]);
  }

  @Test
  void wellInside() {
    assertThat(Apart.inside(box(2, 2, 1, 1), box(0, 0, 9, 9))).isTrue();
    assertThat(Apart.inside(box(0, 2, 1, 1), box(0, 0, 9, 9))).isFalse();
    assertThat(Apart.inside(box(0, 0, 9, 9), box(2, 2, 1, 1))).isFalse();
    assertThat(Apart.inside(box(4, 4, 2, 2), frame(0, 0, 10, 2))).isFalse();
    assertThat(Apart.inside(frame(3, 3, 8, 1), frame(0, 0, 20, 9.5))).isFalse();
    assertThat(Apart.inside(box(8, 8, 4, 4), frame(0, 0, 20, 9.5))).isFalse();
    assertThat(Apart.inside(frame(8, 8, 4, 1), frame(0, 0, 20, 9.5))).isTrue();
  }

  @Test
  void agreesWithTheReference() {
    Random random = new Random(7);
    int apart = 0;
    int boxesMeet = 0;
    int within = 0;
    for (int i = 0; i < 20_000; i++) {
      Polygon a = star(random);
      Polygon b = star(random);
      boolean sure = Apart.sure(a, b);
      assertThat(sure).as("pair " + i).isEqualTo(!a.intersects(b));
      boolean inside = Apart.inside(a, b);
      assertThat(inside).as("pair " + i).isEqualTo(prepare(b).containsProperly(a));
      within += inside ? 1 : 0;
      apart += sure ? 1 : 0;
      boxesMeet += sure && a.getEnvelopeInternal().intersects(b.getEnvelopeInternal()) ? 1 : 0;
    }
    assertThat(apart).isBetween(2_000, 18_000);
    assertThat(boxesMeet).isGreaterThan(300);
    assertThat(within).isGreaterThan(50);
  }
}
