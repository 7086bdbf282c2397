package hingeleaf.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShapesTest {
  /**
   * Archimedes, Measurement of a Circle, prop. 1: area pi r2. Inscribed chords lose at most the
   * chord error all round: no more than circumference x 0.01 mm.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 3, 20, 90, 90.5, 297, 1000})
  void circle_areaIsPiRSquaredLessAtMostTheChordError(double d) {
    double exact = Math.PI * d * d / 4;
    double drawn = Shapes.circle(d).area();
    assertThat(drawn).isLessThan(exact).isGreaterThan(exact - Math.PI * d * 0.01);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 20, 90, 297})
  void circle_cornersLieOnItAndChordsWithinATolerance(double d) {
    Ring ring = Shapes.circle(d);
    int n = ring.points().size();
    for (int i = 0; i < n; i++) {
      Vec2 a = ring.points().get(i);
      Vec2 b = ring.points().get((i + 1) % n);
      assertThat(a.length()).isCloseTo(d / 2, within(1e-9));
      assertThat(d / 2 - a.plus(b).times(0.5).length()).isBetween(0.0, 0.01);
    }
    assertThat(ring.box()).isEqualTo(new Box(-d / 2, -d / 2, d / 2, d / 2));
  }

  /** Area of an ellipse: pi a b (Archimedes, On Conoids and Spheroids, prop. 4). */
  @Test
  void ellipse_areaIsPiAB() {
    double exact = Math.PI * 45 * 30;
    assertThat(Shapes.ellipse(90, 60).area()).isLessThan(exact).isGreaterThan(exact - 240 * 0.01);
    assertThat(Shapes.ellipse(90, 60).box()).isEqualTo(new Box(-45, -30, 45, 30));
  }

  @Test
  void arch_isARectangleUnderHalfACircle() {
    Ring arch = Shapes.arch(60, 100);
    double exact = 60 * 70 + Math.PI * 30 * 30 / 2;
    assertThat(arch.area()).isLessThan(exact).isGreaterThan(exact - Math.PI * 30 * 0.01);
    assertThat(arch.box()).isEqualTo(new Box(-30, -50, 30, 50));
    assertThat(arch.contains(new Vec2(-29.9, -49.9))).isTrue();
    assertThat(arch.contains(new Vec2(-29.9, 49.9))).isFalse();
  }

  @Test
  void arch_tooLowForHalfACircle_isHalfAnEllipse() {
    Ring arch = Shapes.arch(60, 20);
    double exact = Math.PI * 30 * 20 / 2;
    assertThat(arch.area()).isLessThan(exact).isGreaterThan(exact - 85 * 0.01);
    assertThat(arch.box()).isEqualTo(new Box(-30, -10, 30, 10));
  }

  @Test
  void rounded_losesFourMinusPiRSquared() {
    double exact = 80 * 60 - (4 - Math.PI) * 25;
    assertThat(Shapes.rounded(80, 60, 5).area())
        .isLessThan(exact)
        .isGreaterThan(exact - 2 * Math.PI * 5 * 0.01);
    assertThat(Shapes.rounded(80, 60, 0)).isEqualTo(Shapes.rectangle(80, 60));
  }

  @Test
  void rounded_atHalfTheSizeIsACircle() {
    assertThat(Shapes.rounded(50, 50, 25)).isEqualTo(Shapes.circle(50));
  }

  @Test
  void everyShape_isValidAnticlockwiseAndMirrored() {
    for (Ring r :
        new Ring[] {
          Shapes.circle(90),
          Shapes.square(130),
          Shapes.ellipse(90, 60),
          Shapes.arch(60, 100),
          Shapes.arch(60, 30),
          Shapes.rounded(80, 60, 5),
          Shapes.rounded(80, 60, 30)
        }) {
      assertThat(r.area()).isPositive();
      assertThat(Overlay.valid(Region.of(r))).isTrue();
      assertThat(r.points()).doesNotHaveDuplicates();
      assertThat(r.points()).contains(r.map(p -> new Vec2(-p.x() + 0.0, p.y())).points().get(3));
    }
  }

  @Test
  void nonsense_isRefused() {
    assertThatThrownBy(() -> Shapes.circle(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Shapes.circle(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Shapes.arch(-1, 5)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Shapes.rounded(80, 60, 31))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Reference: the centroid of the JTS Topology Suite, a library for general use. */
  @Test
  void centroid_agreesWithTheLibrarys() {
    Region pierced =
        new Region(
            Ring.rectangle(3, 5, 90, 60),
            java.util.List.of(
                Shapes.circle(20).moved(new Vec2(30, 30)), Ring.rectangle(60, 10, 80, 50)));
    var factory = new org.locationtech.jts.geom.GeometryFactory();
    var polygon =
        factory.createPolygon(
            factory.createLinearRing(corners(pierced.outer())),
            pierced.holes().stream()
                .map(h -> factory.createLinearRing(corners(h)))
                .toArray(org.locationtech.jts.geom.LinearRing[]::new));
    var expected = polygon.getCentroid();
    assertThat(pierced.centroid().x()).isCloseTo(expected.getX(), within(1e-9));
    assertThat(pierced.centroid().y()).isCloseTo(expected.getY(), within(1e-9));
  }

  private static org.locationtech.jts.geom.Coordinate[] corners(Ring ring) {
    var c = new java.util.ArrayList<org.locationtech.jts.geom.Coordinate>();
    ring.points().forEach(p -> c.add(new org.locationtech.jts.geom.Coordinate(p.x(), p.y())));
    c.add(c.get(0).copy());
    return c.toArray(org.locationtech.jts.geom.Coordinate[]::new);
  }
}
