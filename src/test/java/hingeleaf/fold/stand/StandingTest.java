package hingeleaf.fold.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.Label;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Piece;
import hingeleaf.card.Rest;
import hingeleaf.card.Score;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.FoldForward;
import hingeleaf.fold.contact.Designs;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.stock.Grain;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Standing cards against textbook statics: a body tips when its weight leaves its support. */
class StandingTest {
  @Test
  void stackOnTwoSides_standsButLeans_andTipsAtTheTextbookAngle() {
    // Two sheets of W x H at z = 0 and d, tabs of t at z = 0, sides of d between: by moments
    // z = (W H d + 2 d H d / 2) / (2 W H + 2 d H + 2 t H); half as high as the card.
    MadeCard made = SampleStacks.plain(150, 100, 12, 10, 1, 0.356);
    Stand s = Standing.of(made, FlatStates.of(made, 1).states().get(0));
    double z = (150 * 12 + 12 * 12.0) / (2 * 150 + 2 * 12 + 2 * 10);
    assertThat(s.centre().z()).isCloseTo(z, within(1e-9));
    assertThat(s.height()).isCloseTo(50, within(1e-9));
    assertThat(s.backwards()).isCloseTo(Math.atan(z / 50), within(1e-12));
    assertThat(s.forwards()).isCloseTo(Math.atan((12 - z) / 50), within(1e-12));
    assertThat(s.mass()).isCloseTo(made.card().mass(), within(1e-9));
    assertThat(s.verdict()).isEqualTo(Stand.Verdict.LEANS);
    assertThat(s.loose()).containsExactly(new Stand.Lean("far", false));
  }

  /**
   * Composite areas (the moment of a whole is the sum of the moments of its parts): N panels and a
   * back of W x H at k d, sides of d x H midway, tabs of t x H on the layers behind. The body tips
   * about the edge of its support when the vertical through its centre of mass passes it.
   */
  @ParameterizedTest
  @CsvSource({
    "150, 150, 12, 12, 3",
    "150, 100, 15, 10, 2",
    "100, 180, 8, 10, 1",
    "210, 148, 20, 8, 3",
    "90, 60, 6, 6, 3",
    "300, 200, 25, 15, 2"
  })
  void stacksTip_whereTheMomentsOfTheirSheetsSay(
      double w, double h, double d, double t, int frames) {
    MadeCard made = SampleStacks.plain(w, h, d, t, frames, 0.3);
    double area = w * h;
    double moment = 0;
    for (int k = 1; k <= frames; k++) {
      area += w * h + 2 * d * h + 2 * t * h;
      moment += w * h * k * d + 2 * d * h * (k - 0.5) * d + 2 * t * h * (k - 1) * d;
    }
    double z = moment / area;
    Stand s = Standing.of(made, null);
    assertThat(s.centre().z()).isCloseTo(z, within(1e-9));
    assertThat(s.height()).isCloseTo(h / 2, within(1e-9));
    assertThat(s.forwards()).isCloseTo(Math.atan2(frames * d - z, h / 2), within(1e-12));
    assertThat(s.backwards()).isCloseTo(Math.atan2(z, h / 2), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"100, 40", "100, 150", "60, 25", "148, 105"})
  void sheetWithAFoot_standsAndTipsBackwardsFirst(double high, double foot) {
    // Two strips of equal width: z = (foot foot / 2) / (high + foot), y = (high high / 2) / (same).
    MadeCard made = footed(high, foot);
    Stand s = Standing.of(made, null);
    double z = foot * foot / 2 / (high + foot);
    double y = high * high / 2 / (high + foot);
    assertThat(s.verdict()).isEqualTo(Stand.Verdict.STANDS);
    assertThat(s.backwards()).isCloseTo(Math.atan2(z, y), within(1e-12));
    assertThat(s.forwards()).isCloseTo(Math.atan2(foot - z, y), within(1e-12));
  }

  /** A sheet whose lower part is folded forwards to lie on the shelf. */
  private static MadeCard footed(double high, double foot) {
    Piece sheet =
        new Piece(
            "sheet",
            "sheet",
            SampleStacks.card(0.3),
            Grain.ANY,
            Region.of(Ring.rectangle(0, 0, 80, high + foot)),
            List.of(),
            List.of(new Score("edge", Segment.of(0, foot, 80, foot), Math.PI / 2)),
            List.of(
                new Label("back", new Vec2(40, foot + high / 2)),
                new Label("foot", new Vec2(40, foot / 2))),
            List.of(),
            "sheet");
    Rigid pose = Rigid.translation(new Vec3(-40, -foot, 0));
    return FoldForward.of(
        new Card("t", List.of(new Card.Root("sheet", "back", pose)), List.of(sheet), List.of()));
  }

  @Test
  void singleSheet_tips() {
    MadeCard made = tent(0);
    assertThat(Standing.of(made, null).verdict()).isEqualTo(Stand.Verdict.TIPS);
  }

  @Test
  void leafThatHangsShort_leavesOneEdgeToStandOn_soItTips() {
    // One sheet folded over at the top, its front leaf half a right angle from the back one.
    MadeCard made = tent(Math.PI * 3 / 4);
    Stand s = Standing.of(made, FlatStates.of(made, 8).states().get(0));
    // leaves of 60 high: centre of each at half; the front one reaches 60 sin 45 forwards
    assertThat(s.centre().z()).isCloseTo(60 * Math.sin(Math.PI / 4) / 4, within(1e-9));
    // the front leaf hangs 60 cos 45 down, the back one 60: only the back one touches the shelf
    assertThat(s.verdict()).isEqualTo(Stand.Verdict.TIPS);
  }

  @Test
  void sidesAtTopAndBottom_sinkUnderTheirOwnWeight() {
    String yaml =
        Designs.stage(150, 100, 12, "plain: yes", "")
            .replace("    side: ", "    sides: top-bottom\n    side: ");
    MadeCard made = Designs.card(yaml);
    Rest down =
        FlatStates.of(made, 8).states().stream()
            .filter(r -> r.leans().equals(List.of(-1)))
            .findFirst()
            .orElseThrow();
    Stand s = Standing.of(made, down);
    assertThat(s.verdict()).isEqualTo(Stand.Verdict.SINKS);
    assertThat(s.loose()).containsExactly(new Stand.Lean("far", true));
  }

  /** A sheet of 100 x 120 scored across the middle; the upper half comes down in front. */
  private static MadeCard tent(double fold) {
    Piece sheet =
        new Piece(
            "sheet",
            "sheet",
            SampleStacks.card(0.3),
            Grain.ANY,
            Region.of(Ring.rectangle(0, 0, 100, 120)),
            List.of(),
            List.of(new Score("ridge", Segment.of(0, 60, 100, 60), fold)),
            List.of(new Label("back", new Vec2(50, 30)), new Label("front", new Vec2(50, 90))),
            List.of(),
            "sheet");
    Rigid pose = Rigid.translation(new Vec3(-50, 0, 0));
    return FoldForward.of(
        new Card("t", List.of(new Card.Root("sheet", "back", pose)), List.of(sheet), List.of()));
  }
}
