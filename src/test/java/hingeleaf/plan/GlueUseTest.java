package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Patch;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.BuiltInBench;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Glue and tape by sums done by hand; where tape is put is common practice, no source. */
class GlueUseTest {
  private static Join.Glue join(String panel, Region area, String glue) {
    Patch a = new Patch("far", panel, Face.FRONT, area, Vec2.ZERO, new Vec2(1, 0));
    Patch b = new Patch("back", "panel", Face.FRONT, area, Vec2.ZERO, new Vec2(1, 0));
    return new Join.Glue("far/" + panel, a, b, 0, glue, "");
  }

  @ParameterizedTest
  @CsvSource({
    // panel, width, height, glue, length of tape, mm2 covered, g that stay
    "tab-left, 12, 150, pva, 0, 1800, 0.054", // 30 g/m2 dry
    "tab-top, 150, 12, pva, 0, 1800, 0.054",
    "panel, 124, 148, pva, 0, 18352, 0.55056",
    "panel, 10, 10, pva, 0, 100, 0.003",
    "tab-left, 12, 150, tape-6, 150, 900, 0.081", // one strip of 6 mm, 90 g/m2
    "tab-bottom, 150, 8, tape-6, 150, 900, 0.081",
    "tab-left, 5, 100, tape-6, 100, 500, 0.045", // no more than the tab holds
    "panel, 124, 148, tape-6, 520, 3120, 0.2808", // 2 (124 + 148) less four corners of 6
    "panel, 50, 30, tape-6, 136, 816, 0.07344",
    "panel, 8, 8, tape-6, 8, 48, 0.00432",
  })
  void wetGlueAllOver_tapeInStrips(
      String panel, double w, double h, String glue, double length, double covered, double grams) {
    GlueUse use =
        GlueUse.of(join(panel, Region.of(Ring.rectangle(0, 0, w, h)), glue), BuiltInBench.metric());
    assertThat(use.length()).isEqualTo(length, Offset.offset(1e-9));
    assertThat(use.covered()).isEqualTo(covered, Offset.offset(1e-9));
    assertThat(use.grams()).isEqualTo(grams, Offset.offset(1e-9));
  }

  @Test
  void aWindowIsTapedRoundItsOpening() {
    // 80 x 60 with an opening of 70 x 50: the lap of 5 mm is narrower than the tape of 6.
    Region lap =
        new Region(Ring.rectangle(0, 0, 80, 60), List.of(Ring.rectangle(5, 5, 75, 55).reversed()));
    GlueUse use = GlueUse.of(join("panel", lap, "tape-6"), BuiltInBench.metric());
    assertThat(use.length()).isEqualTo(256, Offset.offset(1e-9));
    assertThat(use.covered()).isEqualTo(80 * 60 - 70 * 50, Offset.offset(1e-9));
  }

  @Test
  void aGlueThatTheBenchHasNotWeighsNothing() {
    Region tab = Region.of(Ring.rectangle(0, 0, 12, 150));
    assertThat(GlueUse.of(join("tab-left", tab, "paste"), BuiltInBench.metric()).grams()).isZero();
  }
}
