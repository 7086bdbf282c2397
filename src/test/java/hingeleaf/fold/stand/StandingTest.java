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
