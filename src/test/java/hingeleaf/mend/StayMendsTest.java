package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.fold.stand.Stand;
import hingeleaf.pack.GoodToKnow;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.stock.BuiltInBench;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each finding about stays and pairs of leaves, provoked by a design of our own and mended by its
 * own advice. Invented designs.
 */
class StayMendsTest {
  private static Pack pack(String yaml) {
    return SamplePacks.of(yaml, BuiltInBench.metric(), 1);
  }

  private static String stack(String sides, String frames, String more) {
    return "# of our own\nhingeleaf: 1\ntitle: t\nbase:\n  stacked-frames:\n    width: 150\n"
        + "    height: 150\n    stock: white-300\n    side: 15\n    tab: 10\n    sides: "
        + sides
        + "\n    frames:\n"
        + frames
        + more;
  }

  private static final String TWO =
      "      - {name: far, aperture: {circle: 90}}\n"
          + "      - {name: near, aperture: {circle: 110}}\n";

  private static Problem only(Pack pack, String kind) {
    List<Problem> all = pack.problems().stream().filter(p -> p.kind().equals(kind)).toList();
    assertThat(all).as("%s among %s", kind, pack.problems()).hasSize(1);
    return all.get(0);
  }

  private static List<String> kinds(Pack pack) {
    return pack.problems().stream().map(Problem::kind).toList();
  }

  private static Pack mended(Pack pack, Mend mend) {
    Trial trial = Trial.of(pack.inputs().design().tree(), mend.changes());
    return Trial.pack(pack, ((Trial.Read) trial).design());
  }

  @Test
  void cardThatLeans_isGivenABaseTab_andKeepsItsText() {
    Pack pack = pack(stack("left-right", TWO, "# the end\n"));
    Problem leans = only(pack, "needs-a-stay");
    assertThat(leans.level()).isEqualTo(Level.NOTES);
    assertThat(leans.message()).contains("its stages are free - give it a stay");
    List<Mend> mends = Mends.of(pack, leans);
    assertThat(mends).hasSize(1);
    assertThat(mends.get(0).words()).isEqualTo("add a base tab");
    Trial trial = Trial.of(pack.inputs().design().tree(), mends.get(0).changes());
    assertThat(((Trial.Read) trial).text())
        .startsWith("# of our own\n")
        .contains("# the end")
        .contains("mechanisms: [{base-tab: {name: stay, stock: white-300}}]");
    Pack after = mended(pack, mends.get(0));
    assertThat(kinds(after)).doesNotContain("needs-a-stay");
    assertThat(after.stand().verdict()).isEqualTo(Stand.Verdict.STANDS);
    assertThat(GoodToKnow.of(after))
        .anyMatch(s -> s.startsWith("With stay set it stands by itself"));
  }

  @Test
  void sidesAtTopAndBottom_sink_andTheStayHoldsThem() {
    Pack pack = pack(stack("top-bottom", TWO, ""));
    Problem sinks = only(pack, "needs-a-stay");
    assertThat(sinks.level()).isEqualTo(Level.WARNS);
    Pack after = mended(pack, Mends.of(pack, sinks).get(0));
    assertThat(after.stand().verdict()).isEqualTo(Stand.Verdict.STANDS);
  }

  @Test
  void narrowBorders_takeTheStayThatNeedsNone() {
    // Borders of 10 below and above: the tongue's 8 fit, at 6 only a brace does.
    Pack pack =
        pack(stack("left-right", "      - {name: near, aperture: {rect: [120, 138]}}\n", ""));
    Mend mend = Mends.of(pack, only(pack, "needs-a-stay")).get(0);
    assertThat(mend.words()).isEqualTo("add a fold-down brace to each stage");
    assertThat(mended(pack, mend).stand().verdict()).isEqualTo(Stand.Verdict.STANDS);
  }

  @Test
  void braceOnOneStage_doesNotHoldTheOther_andAnotherStayDoes() {
    Pack pack =
        pack(
            stack(
                "left-right",
                TWO,
                "mechanisms:\n  - fold-down-brace: {name: brace, stock: white-300}\n"));
    Problem half = only(pack, "stay-does-not-hold");
    assertThat(half.message()).contains("near can still lean");
    Mend mend = Mends.of(pack, half).get(0);
    Pack after = mended(pack, mend);
    assertThat(kinds(after)).doesNotContain("stay-does-not-hold", "needs-a-stay");
    // As it also says: a brace for that stage.
    Pack braced =
        pack(
            stack(
                "left-right",
                TWO,
                "mechanisms:\n  - fold-down-brace: {name: brace, stock: white-300}\n"
                    + "  - fold-down-brace: {name: second, on: far, stock: white-300}\n"));
    assertThat(kinds(braced)).doesNotContain("stay-does-not-hold");
  }

  @Test
  void bellyStripOverTwoStages_holdsTaut_andABaseTabFirmly() {
    String belly = "mechanisms:\n  - belly-strip: {name: belly, stock: white-300}\n";
    Problem taut = only(pack(stack("left-right", TWO, belly)), "stay-holds-taut");
    // A chain of two links of 15 that is 0.5 too long: sqrt(2 * 0.5 / (1/15 + 1/15)) = 2.74 aside;
    // exactly, sqrt(15^2 - 14.75^2) = 2.73 (Pythagoras).
    assertThat(taut.numbers().get("gives"))
        .isCloseTo(
            Math.sqrt(15 * 15 - 14.75 * 14.75), org.assertj.core.api.Assertions.within(0.02));
    String base = "mechanisms:\n  - base-tab: {name: belly, stock: white-300}\n";
    assertThat(kinds(pack(stack("left-right", TWO, base)))).doesNotContain("stay-holds-taut");
  }

  @Test
  void flapUnderSomethingRaised_cannotBePutAway_untilThatIsMoved() {
    // 5.356 high with its lower edge 3 above the fold: the flap stops at atan(3 / 5.36) = 29
    // degrees.
    Pack pack =
        pack(
            stack(
                "left-right",
                "      - {name: near, aperture: {circle: 100}}\n",
                "mechanisms:\n  - fold-down-brace: {name: brace, stock: white-300}\n"
                    + "cut-outs:\n  - {name: stone, on: back, at: [0, -66], outline: {square: 12},"
                    + " stock: white-300, raised-by: 5, seen: any}\n"));
    Problem blocked = only(pack, "stay-blocked");
    assertThat(Math.toDegrees(blocked.numbers().get("turned")))
        .isCloseTo(
            Math.toDegrees(Math.atan2(3, 5.356)), org.assertj.core.api.Assertions.within(0.2));
    Mend mend = Mends.of(pack, blocked).get(0);
    assertThat(mend.words()).isEqualTo("move it 12 mm up");
    assertThat(kinds(mended(pack, mend))).doesNotContain("stay-blocked");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "base-tab: {name: stay, stock: white-300, edge: left} | sides of this card stand at its left",
        "base-tab: {name: stay, stock: white-300, tongue: 30} | would come into an opening",
        "base-tab: {name: stay, stock: white-300, at: 70} | past the edge",
        "base-tab: {name: stay, stock: white-300, width: 20, tongue: 4} | it is fine",
        "belly-strip: {name: stay, stock: white-300, hook: 40} | would come into an opening",
        "slot-lock: {name: stay, stock: white-300, height: 40} | would come into an opening",
        "fold-down-brace: {name: stay, stock: white-300, on: near} | there is no stage to hold",
        "fold-down-brace: {name: stay, stock: white-300, on: nowhere} | there is no panel or part",
        "fold-down-brace: {name: stay, stock: white-300, on: far, tab: 40} | come into an opening",
        "base-tab: {name: stay, stock: velvet} | unknown stock `velvet`"
      })
  void stayThatCannotBeMade_isRefusedInASentence(String stay, String says) {
    Pack pack = pack(stack("left-right", TWO, "mechanisms:\n  - " + stay.strip() + "\n"));
    if (says.strip().equals("it is fine")) {
      assertThat(pack.blocked()).as(pack.problems().toString()).isFalse();
      return;
    }
    assertThat(pack.blocked()).isTrue();
    assertThat(pack.problems())
        .anySatisfy(
            p -> {
              assertThat(p.message()).contains(says.strip());
              assertThat(p.place()).isNotNull();
            });
  }

  @Test
  void shallowStage_hasNoRoomForTonguesOrBraces() {
    for (String stay : List.of("base-tab", "fold-down-brace")) {
      Pack pack =
          pack(
              stack(
                      "left-right",
                      TWO,
                      "mechanisms:\n  - " + stay + ": {name: stay, stock: white-300}\n")
                  .replace("side: 15", "side: 4"));
      assertThat(kinds(pack)).contains("stay-too-small");
    }
  }

  private static String leaves(double half, String more) {
    return stack(
        "left-right",
        "      - {name: far, aperture: {circle: 60}}\n"
            + "      - {name: near, aperture: {rect: [56, 80]}}\n",
        "mechanisms:\n"
            + "  - base-tab: {name: stay, stock: white-300}\n"
            + "  - door: {name: one, on: near, hinge: left, width: 30, height: 84, at: [-"
            + half
            + ", 0], stock: navy-220"
            + more
            + "}\n"
            + "  - door: {name: two, on: near, hinge: right, width: 30, height: 84, at: ["
            + half
            + ", 0], stock: navy-220}\n");
  }

  @Test
  void leavesThatOverlap_bind_untilOneIsCutNarrower() {
    // Middles 14 from the card's: each reaches 1 past it, so they overlap by 2.
    Pack pack = pack(leaves(14, ""));
    Problem bind = only(pack, "leaves-bind");
    assertThat(bind.numbers().get("gap"))
        .isCloseTo(-2, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(bind.message()).contains("they overlap by 2 mm");
    List<Mend> mends = Mends.of(pack, bind);
    assertThat(mends).isNotEmpty();
    for (Mend m : mends) {
      assertThat(kinds(mended(pack, m))).doesNotContain("leaves-bind");
    }
  }

  @Test
  void leavesWithAGap_swing_andTheTongueOpensFirst() {
    Pack pack = pack(leaves(15.25, ", handle: 6"));
    assertThat(kinds(pack)).doesNotContain("leaves-bind");
    assertThat(GoodToKnow.of(pack))
        .contains(
            "one and two meet with 0.5 mm between them, and both swing; open one first, its tongue"
                + " laps over the other.");
  }

  @Test
  void leavesCutThroughEachOther_areRefused() {
    Pack pack =
        pack(
            stack(
                "left-right",
                "      - {name: near, plain: yes}\n",
                "mechanisms:\n  - door: {name: one, on: near, width: 40, height: 60}\n"
                    + "  - door: {name: two, on: near, width: 40, height: 60, at: [20, 0]}\n"));
    assertThat(pack.problems()).anyMatch(p -> p.kind().equals("doors-overlap"));
  }
}
