package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Patch;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Shapes;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Foam as it is cut, by sums done by hand. The rule (strips of 6 mm, gaps no wider than they, 2 mm
 * inside the edge) is common practice, no source.
 */
class FoamPadsTest {
  private static final Bench BENCH = BuiltInBench.metric();

  private static FoamPads pads(Region area, double raisedBy, Bench bench) {
    Patch a = new Patch("boat", "panel", Face.BACK, area, Vec2.ZERO, new Vec2(1, 0));
    Patch b = new Patch("back", "panel", Face.FRONT, area, Vec2.ZERO, new Vec2(1, 0));
    return FoamPads.of(new Join.Glue("boat/glue", a, b, raisedBy, "pva", ""), bench);
  }

  private static Region rectangle(double w, double h) {
    return Region.of(Ring.rectangle(0, 0, w, h));
  }

  @ParameterizedTest
  @CsvSource({
    // width, height, how many, what they cover in mm2
    "40, 30, 3, 648", // 26 across take 3 strips of 36
    "30, 40, 3, 648", // the same, turned
    "20, 20, 2, 192", // 16 across: 2 strips of 16 with 4 between
    "103, 53, 5, 2970", // 49 across: 5 strips of 99
    "150, 100, 9, 7884", // 96 across: 9 strips of 146
    "50, 13, 1, 414", // 9 across is less than two strips: one pad of 46 x 9
    "12, 12, 1, 64", // one pad of 8 x 8
    "8, 8, 1, 16", // one pad of 4 x 4
    "6, 6, 1, 36", // 2 x 2 would not hold: up to the edge
    "30, 4, 1, 120", // nothing lies 2 mm inside: up to the edge
  })
  void stripsAndPadsOfRectangles(double w, double h, int many, double covered) {
    FoamPads foam = pads(rectangle(w, h), 2, BENCH);
    assertThat(foam.pads()).hasSize(many);
    assertThat(Overlay.area(foam.pads())).isEqualTo(covered, Offset.offset(1e-6));
    assertThat(foam.used()).isEqualTo(covered, Offset.offset(1e-6));
    assertThat(foam.inside()).isEqualTo(covered == w * h ? 0 : 2);
    assertThat(foam.length()).isEqualTo(many > 1 ? covered / 6 : 0, Offset.offset(1e-6));
    // The bench's foam of 2 mm: 60 + 60 x 2 g/m2 (from memory).
    assertThat(foam.grams()).isEqualTo(covered * 180e-6, Offset.offset(1e-9));
  }

  @Test
  void stripsOfADiscAreChords() {
    // Radius 20, so 18 inside the edge; 36 across take 4 strips: 12 to 18 and 2 to 8 either way.
    double half = chord(18, 18) - chord(18, 12) + chord(18, 8) - chord(18, 2);
    FoamPads foam = pads(Region.of(Shapes.ellipse(40, 40)), 2, BENCH);
    assertThat(foam.pads()).hasSize(4);
    assertThat(Overlay.area(foam.pads())).isEqualTo(2 * half, Offset.offset(1.0));
  }

  /** Area of a disc's strip from its middle line to y: the integral of the chord's length. */
  private static double chord(double r, double y) {
    return y * Math.sqrt(r * r - y * y) + r * r * Math.asin(y / r);
  }

  @Test
  void foamLiesInsideThePart() {
    Region disc = Region.of(Shapes.ellipse(70, 40));
    for (Region pad : pads(disc, 1, BENCH).pads()) {
      assertThat(Overlay.within(java.util.List.of(pad), Overlay.grown(disc, -1.99))).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1, foam-1, 1, 120", // 60 + 60
    "2, foam-2, 1, 180", // 60 + 120
    "3, foam-3, 1, 240", // 60 + 180
    "4, foam-2, 2, 360", // two of 2 mm
    "6, foam-3, 2, 480", // two of 3 mm
    "5, -, 1, 360", // none, single or double: 60 + 300
    "0.5, -, 1, 90", // none: 60 + 30
    "2.04, foam-2, 1, 180", // foam gives so much under a thumb
  })
  void foamOfTheBenchSingleOrDouble(double raisedBy, String name, int layers, double perM2) {
    FoamPads foam = pads(rectangle(12, 12), raisedBy, BENCH);
    assertThat(foam.foam().map(f -> f.name()).orElse("-")).isEqualTo(name);
    assertThat(foam.layers()).isEqualTo(layers);
    assertThat(foam.grams()).isEqualTo(64 * perM2 * 1e-6, Offset.offset(1e-9));
    assertThat(foam.used()).isEqualTo(64 * layers, Offset.offset(1e-6));
  }

  @Test
  void inInchesTheTapeIsAQuarterOfAnInchWide() {
    FoamPads foam = pads(rectangle(50.8, 50.8), 1.5875, BuiltInBench.inches());
    assertThat(foam.width()).isEqualTo(6.35);
    // 46.8 across: gaps no wider than 6.35 need (46.8 + 6.35) / 12.7 = 4.19 strips.
    assertThat(foam.pads()).hasSize(5);
    assertThat(foam.length()).isEqualTo(5 * 46.8, Offset.offset(1e-6));
  }
}
