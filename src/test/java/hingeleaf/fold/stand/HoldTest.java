package hingeleaf.fold.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.Flats;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Rest;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.FoldForward;
import hingeleaf.fold.contact.Contact;
import hingeleaf.fold.contact.Designs;
import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Stays: set, nothing in the stack moves; let go, the stack is free as without them.
 *
 * <p>A stage is a planar four-bar linkage, which has one freedom (Kutzbach and Gruebler, 3(n - 1) -
 * 2j = 3(4 - 1) - 2 * 4 = 1), and none once its two long bars are joined; a stack of N stages has
 * N. Laid flat by turns to left and right it is W + d wide, since the signed depths never add up to
 * more than d.
 */
class HoldTest {
  private static final double W = 150;
  private static final double D = 12;

  /** Stays that hold every frame by themselves, for 1 to 3 frames, both ways round. */
  static Stream<Arguments> whole() {
    List<Arguments> all = new ArrayList<>();
    for (String sort : List.of("base-tab", "belly-strip", "slot-lock")) {
      for (int frames = 1; frames <= 3; frames++) {
        all.add(Arguments.of(sort, frames, true));
        all.add(Arguments.of(sort, frames, false));
      }
    }
    return all.stream();
  }

  private static String stay(String sort, String more) {
    return "  - " + sort + ": {name: stay, stock: white-300" + more + "}\n";
  }

  private static MadeCard stack(int frames, boolean upright, String mechanisms) {
    StringBuilder f = new StringBuilder();
    for (int i = 1; i <= frames; i++) {
      f.append("    - {name: f" + i + ", aperture: {circle: " + (60 + 10 * i) + "}}\n");
    }
    String more = mechanisms.isEmpty() ? "" : "mechanisms:\n" + mechanisms;
    String yaml = Designs.stack(W, W, D, f.toString(), more);
    return Designs.card(
        upright ? yaml : yaml.replace("    side: ", "    sides: top-bottom\n    side: "));
  }

  @ParameterizedTest
  @MethodSource("whole")
  void setItHoldsEveryStage_letGoTheCardIsAsWithoutIt(String sort, int frames, boolean upright) {
    MadeCard made = stack(frames, upright, stay(sort, ""));
    Hold hold = Hold.of(made);
    assertThat(hold.set()).isZero();
    assertThat(hold.moving()).isEmpty();
    assertThat(hold.released()).isEqualTo(frames);
    assertThat(hold.without()).isEqualTo(Hold.of(stack(frames, upright, "")).set());
    assertThat(hold.frees()).isTrue();
    // Only a hook over layers that it does not touch holds these taut and not firmly.
    assertThat(hold.firm()).isEqualTo(!sort.equals("belly-strip") || frames == 1);
    Flats flats = FlatStates.of(made, 8);
    assertThat(flats.count()).isEqualTo(1L << frames);
    Rest best = flats.states().get(0);
    assertThat(upright ? best.width() : best.height()).isCloseTo(W + D, within(1e-9));
    assertThat(upright ? best.height() : best.width()).isCloseTo(W, within(1e-9));
    assertThat(best.leans()).hasSize(frames);
    assertThat(Standing.of(made, best).verdict()).isEqualTo(Stand.Verdict.STANDS);
    assertThat(Contact.way(made, best, 0.1).faults()).isEmpty();
  }

  @Test
  void withoutStay_everyStageLeans_andNothingIsHeld() {
    MadeCard made = stack(3, true, "");
    Hold hold = Hold.of(made);
    assertThat(hold.set()).isEqualTo(3);
    assertThat(hold.released()).isEqualTo(3);
    assertThat(hold.folds()).isZero();
    assertThat(Standing.of(made, FlatStates.of(made, 8).states().get(0)).loose()).hasSize(3);
  }

  @Test
  void braceHoldsItsOwnStage_andOneInEachHoldsAll() {
    MadeCard one = stack(3, true, stay("fold-down-brace", ""));
    Hold first = Hold.of(one);
    assertThat(first.set()).isEqualTo(2);
    assertThat(first.released()).isEqualTo(3);
    assertThat(first.without()).isEqualTo(Hold.of(stack(3, true, "")).set());
    assertThat(first.frees()).isTrue();
    Stand s = Standing.of(one, FlatStates.of(one, 8).states().get(0));
    assertThat(s.verdict()).isEqualTo(Stand.Verdict.LEANS);
    assertThat(s.loose().stream().map(Stand.Lean::piece)).containsExactly("f2", "f3");
    MadeCard all =
        stack(
            3,
            true,
            stay("fold-down-brace", "")
                + "  - fold-down-brace: {name: second, on: f1, stock: white-300}\n"
                + "  - fold-down-brace: {name: third, on: f2, stock: white-300}\n");
    Hold hold = Hold.of(all);
    assertThat(hold.set()).isZero();
    assertThat(hold.firm()).isTrue();
    assertThat(hold.released()).isEqualTo(3);
    assertThat(hold.folds()).isEqualTo(3);
    assertThat(hold.frees()).isTrue();
  }

  @Test
  void stayThatIsGluedToTheFrameToo_holdsOnWhenItIsLetGo() {
    // A belly strip whose hook a careless hand glued into its slit: its stage is free no more.
    MadeCard made = stack(1, true, stay("belly-strip", ""));
    Card card = made.card();
    List<Join> joins = new ArrayList<>(card.joins());
    for (Join j : card.joins()) {
      if (j instanceof Join.Passage p) {
        joins.add(new Join.Glue("careless", p.tab(), p.slit(), 0, "pva", ""));
      }
    }
    Card glued = new Card("glued", card.roots(), card.pieces(), joins, card.stays());
    Hold hold = Hold.of(FoldForward.of(glued));
    assertThat(hold.without()).isEqualTo(1);
    assertThat(hold.frees()).isFalse();
  }

  @Test
  void topAndBottomSides_sinkNoMoreOnceAStayIsSet() {
    MadeCard made = stack(2, false, stay("base-tab", ""));
    assertThat(Standing.of(made, FlatStates.of(made, 8).states().get(0)).verdict())
        .isEqualTo(Stand.Verdict.STANDS);
  }

  /** Where a panel lies in the made card. */
  private static List<Vec3> corners(MadeCard made, String panel) {
    Panel p = made.panels().stream().filter(x -> x.id().equals(panel)).findFirst().orElseThrow();
    Box b = p.region().box();
    return List.of(
        p.made().apply(new Vec2(b.minX(), b.minY())), p.made().apply(new Vec2(b.maxX(), b.maxY())));
  }

  private static void spans(
      List<Vec3> corners, double[] x, double[] y, double[] z, double tolerance) {
    Vec3 a = corners.get(0);
    Vec3 b = corners.get(1);
    assertThat(new double[] {Math.min(a.x(), b.x()), Math.max(a.x(), b.x())})
        .containsExactly(x, within(tolerance));
    assertThat(new double[] {Math.min(a.y(), b.y()), Math.max(a.y(), b.y())})
        .containsExactly(y, within(tolerance));
    assertThat(new double[] {Math.min(a.z(), b.z()), Math.max(a.z(), b.z())})
        .containsExactly(z, within(tolerance));
  }

  @Test
  void baseTab_runsUnderTheFrames_itsTonguesStandInFrontOfThem() {
    MadeCard made = stack(2, true, stay("base-tab", ""));
    // Two sides of 12, papers of 0.356: to the second frame 24 + 2 * 0.356 + 0.356, on the mark 25.
    spans(corners(made, "stay/base"), at(-20, 20), at(-75, -75), at(0, 25), 1e-9);
    spans(corners(made, "stay/tab"), at(-20, 20), at(-75, -63), at(0, 0), 1e-9);
    spans(corners(made, "stay/tongue"), at(-20, 20), at(-75, -67), at(25, 25), 1e-9);
    // Cut out of the strip with the least border of this card, 4, left at both sides.
    spans(corners(made, "stay/tongue-f1"), at(-16, 16), at(-75, -67), at(13, 13), 1e-9);
    // Its good face shows inside the card.
    Panel base = made.panels().stream().filter(p -> p.id().equals("stay/base")).findFirst().get();
    assertThat(base.made().normal().y()).isCloseTo(1, within(1e-9));
  }

  @Test
  void bellyStrip_liesOverTheFrames_goodFaceOut() {
    MadeCard made = stack(2, true, stay("belly-strip", ", at: 30"));
    spans(corners(made, "stay/strip"), at(20, 40), at(75, 75), at(0, 25), 1e-9);
    spans(corners(made, "stay/hook"), at(20, 40), at(65, 75), at(25, 25), 1e-9);
    Panel strip = made.panels().stream().filter(p -> p.id().equals("stay/strip")).findFirst().get();
    assertThat(strip.made().normal().y()).isCloseTo(1, within(1e-9));
  }

  @Test
  void brace_fillsTheStageFromSideToSide() {
    MadeCard made = stack(1, true, stay("fold-down-brace", ""));
    // 150 less a paper and 0.3 to slip, on a tenth: 149.3; 1 short of the side.
    spans(corners(made, "stay/flap"), at(-74.65, 74.65), at(-75, -75), at(0, 11), 1e-9);
    spans(corners(made, "stay/tab"), at(-64, 64), at(-75, -65), at(0, 0), 1e-9);
  }

  @Test
  void slotLock_standsOnEdgeAcrossAllLayers() {
    MadeCard made = stack(2, true, stay("slot-lock", ""));
    // 24 + 2 * 0.356 between the outer layers, and 5 past both: 34.7, on the mark 35.
    spans(corners(made, "stay/strip"), at(0, 0), at(65, 75), at(-5, 30), 1e-9);
    Rest best = FlatStates.of(made, 8).states().get(0);
    int strip =
        java.util.stream.IntStream.range(0, made.panels().size())
            .filter(i -> made.panels().get(i).id().equals("stay/strip"))
            .findFirst()
            .orElseThrow();
    Vec3 up = best.posed().motions().get(strip).turn(made.panels().get(strip).made().normal());
    assertThat(Math.abs(up.z())).as("it lies flat for the post").isCloseTo(1, within(1e-9));
  }

  private static double[] at(double from, double to) {
    return new double[] {from, to};
  }
}
