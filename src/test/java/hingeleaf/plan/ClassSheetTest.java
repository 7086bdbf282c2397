package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Glue;
import hingeleaf.stock.SampleBenches;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A class by sums done by hand. That learners take 2.5 times a maker's minutes, that a tape leaves
 * 2 mm of a tab free, and that nobody waits longer than 5 minutes for glue: common practice, no
 * source.
 *
 * <p>The card has three frames on tabs; its plan: cut frames (1), cut the back (2), score (3), fold
 * (4), for each frame a first and a second tab (5 to 10), try it (11). A maker's minutes in class
 * with tape: score 3 x 4 x 0.4 = 4.8, fold 3 x 4 x 0.25 = 3, six tabs at 1.25, trial 3: 18.3.
 */
class ClassSheetTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static Glue tape(double width) {
    return new Glue("tape-" + width, "tape " + width, Glue.Kind.TAPE, width, 0.25, 0, 90, 90, 0, 0);
  }

  private static Glue wet(double dryMinutes) {
    return new Glue("pva", "glue", Glue.Kind.GLUE, 6, 1, dryMinutes, 30, 60, 0, 0);
  }

  private static Bench bench(Glue... glues) {
    return SampleBenches.gluing(List.of(glues));
  }

  private static Card card(double tab) {
    return SampleStacks.plain(150, 150, 12, tab, 3, 0.356).card();
  }

  private static ClassSheet sheet(Card card, Bench bench, int minutes) {
    CutList cuts = CutList.of(card.pieces(), bench);
    return ClassSheet.of(
        TapedCard.of(card, bench),
        cuts,
        ScoreChart.of(cuts, bench),
        bench,
        MakerUnits.of(Unit.MM),
        12,
        minutes);
  }

  private static WorkPlan plan(Card card, Bench bench) {
    CutList cuts = CutList.of(card.pieces(), bench);
    return WorkPlan.of(card, cuts, ScoreChart.of(cuts, bench), bench, MakerUnits.of(Unit.MM));
  }

  private static ClassSheet taped(int minutes) {
    return sheet(card(12), bench(wet(30), tape(6)), minutes);
  }

  @ParameterizedTest
  @CsvSource({
    // tab, tapes on the bench, what is taken: the widest that leaves 2 mm free; by hand
    "12, 6, 6",
    "12, 6 9, 9",
    "12, 3 6 9 12, 9", // 12 would leave nothing
    "11, 6 9, 9", // just
    "10.9, 6 9, 6",
    "8, 6 9, 6", // just
    "7.9, 3 6 9, 3",
    "5, 3 6, 3", // just
  })
  void theWidestTapeThatLeavesTheTabsEdgesFree(double tab, String tapes, String taken) {
    Glue[] glues =
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of(wet(30)),
                java.util.Arrays.stream(tapes.split(" ")).map(w -> tape(Double.parseDouble(w))))
            .toArray(Glue[]::new);
    TapedCard taped = TapedCard.of(card(tab), bench(glues));
    assertThat(taped.wet()).isEmpty();
    assertThat(taped.taped()).hasSize(6);
    assertThat(taped.card().joins())
        .allSatisfy(
            j -> assertThat(((Join.Glue) j).glue()).isEqualTo("tape-" + Double.parseDouble(taken)));
  }

  @Test
  void nothingDriesInClass_andEveryStepKeepsItsNumber() {
    ClassSheet sheet = taped(120);
    List<Step> plan = plan(card(12), bench(wet(30), tape(6))).steps();
    assertThat(plan).extracting(Step::dries).contains(30.0, 60.0);
    assertThat(sheet.work().steps()).extracting(Step::dries).containsOnly(0.0);
    assertThat(sheet.work().steps()).extracting(Step::kind).isEqualTo(kinds(plan));
    assertThat(sheet.work().steps().subList(0, 10))
        .extracting(Step::title)
        .isEqualTo(plan.subList(0, 10).stream().map(Step::title).toList());
    assertThat(sheet.work().steps().get(10).title()).isEqualTo("Try it");
    assertThat(sheet.waits()).isZero();
  }

  private static List<Step.Kind> kinds(List<Step> steps) {
    return steps.stream().map(Step::kind).toList();
  }

  @Test
  void stepsSayTape_andNeitherGlueNorWeightNorMinutes() {
    ClassSheet sheet = taped(120);
    assertThat(sheet.taught())
        .filteredOn(s -> s.kind() == Step.Kind.GLUE_TAB || s.kind() == Step.Kind.CLOSE_FLAT)
        .hasSize(6)
        .allSatisfy(
            s -> {
              assertThat(s.whole()).contains("Put tape 6.0 along the middle");
              assertThat(s.whole()).doesNotContain("Spread", "weight", "oozing");
              assertThat(s.tools()).contains("tape 6.0").doesNotContain("glue", "weight");
            });
    assertThat(sheet.tools()).extracting(ClassSheet.Tool::name).contains("tape 6.0");
    assertThat(sheet.tools()).extracting(ClassSheet.Tool::name).doesNotContain("glue");
  }

  @Test
  void learnersNeedTwoAndAHalfTimesAsLong() {
    ClassSheet sheet = taped(120);
    assertThat(sheet.home())
        .containsExactly(
            new ClassSheet.Home(1, ClassSheet.Why.CUTTING),
            new ClassSheet.Home(2, ClassSheet.Why.CUTTING));
    assertThat(sheet.hands()).isEqualTo(18.3, EXACT);
    assertThat(sheet.needed()).isEqualTo(15 + 2.5 * 18.3, EXACT); // 60.75
    assertThat(sheet.bags()).isEqualTo(13);
    // Cut the frames 4.5 and the back 1.5, half of each a setting: 3 + 13 x 3.
    assertThat(sheet.homeHands()).isEqualTo(42, EXACT);
  }

  @ParameterizedTest
  @CsvSource({
    // minutes, first step in class, minutes needed; by hand from 18.3 of a maker's own
    "61, 3, 60.75",
    "60, 4, 48.75", // scored at home: 13.5 x 2.5 + 15
    "48, 5, 41.25", // folded at home too: 10.5
    "41, 6, 38.125", // 9.25
    "38, 7, 35", // 8
    "35, 7, 35", // just
    "34, 8, 31.875", // 6.75
    "31, 9, 28.75", // 5.5: three steps are left
    "20, 9, 28.75", // no fewer are a lesson, so it does not fit
  })
  void moreIsDoneAtHomeUntilItFits(int minutes, int first, double needed) {
    ClassSheet sheet = taped(minutes);
    assertThat(sheet.lesson().get(0).step()).isEqualTo(first);
    assertThat(sheet.needed()).isEqualTo(needed, EXACT);
    assertThat(sheet.fits()).isEqualTo(needed <= minutes);
    assertThat(sheet.home())
        .filteredOn(h -> h.step() > 2)
        .hasSize(first - 3)
        .allMatch(h -> h.why() == ClassSheet.Why.TIME);
  }

  @ParameterizedTest
  @ValueSource(ints = {30, 45, 60, 90, 120, 240})
  void whatIsDoneAtHomeNeedsNothingFromTheClass(int minutes) {
    ClassSheet sheet = taped(minutes);
    List<Integer> home = sheet.home().stream().map(ClassSheet.Home::step).toList();
    for (int n : home) {
      assertThat(home).containsAll(sheet.work().steps().get(n - 1).after());
    }
    assertThat(home).hasSize(sheet.work().steps().size() - sheet.lesson().size());
    assertThat(sheet.taught()).noneMatch(s -> s.kind() == Step.Kind.CUT, "no blades in class");
    double end = sheet.lesson().get(sheet.lesson().size() - 1).to();
    assertThat(end).isEqualTo(sheet.needed() - 5, EXACT); // a third of 15 to tidy up
  }

  @Test
  void whereNoTapeHasRoomTheJoinsAreMadeAtHome() {
    // Tabs of 7 leave 5 for a tape; the bench has 6.
    ClassSheet sheet = sheet(card(7), bench(wet(30), tape(6)), 120);
    assertThat(sheet.taped()).isEmpty();
    assertThat(sheet.home())
        .filteredOn(h -> h.step() > 2)
        .containsExactly(
            new ClassSheet.Home(3, ClassSheet.Why.NEEDED),
            new ClassSheet.Home(4, ClassSheet.Why.NEEDED),
            new ClassSheet.Home(5, ClassSheet.Why.NEEDED),
            new ClassSheet.Home(6, ClassSheet.Why.DRYING),
            new ClassSheet.Home(7, ClassSheet.Why.NEEDED),
            new ClassSheet.Home(8, ClassSheet.Why.DRYING),
            new ClassSheet.Home(9, ClassSheet.Why.NEEDED),
            new ClassSheet.Home(10, ClassSheet.Why.DRYING));
    // What dried at home need not dry again.
    assertThat(sheet.lesson()).extracting(ClassSheet.Period::title).containsExactly("Try it");
  }

  @ParameterizedTest
  @CsvSource({
    // dries, waited for in class; tape 6 is there
    "5, 15", // three second tabs
    "3, 9",
    "5.1, 0", // taped
  })
  void quickGlueIsWaitedFor(double dries, double waits) {
    ClassSheet sheet = sheet(card(12), bench(wet(dries), tape(6)), 240);
    assertThat(sheet.waits()).isEqualTo(waits, EXACT);
    assertThat(sheet.taped()).hasSize(waits > 0 ? 0 : 6);
    // Wet glue is pressed for a minute and tape for a quarter of one.
    double hands = waits > 0 ? 4.8 + 3 + 6 * 2 + 3 : 18.3;
    assertThat(sheet.needed()).isEqualTo(15 + 2.5 * hands + waits, EXACT);
  }

  @Test
  void tapeIsBoughtForTheTabsOfTheClass() {
    Card taped = TapedCard.of(card(12), bench(wet(30), tape(6))).card();
    double length = 0;
    for (Join j : taped.joins()) {
      length += GlueUse.of((Join.Glue) j, bench(wet(30), tape(6))).length();
    }
    assertThat(length).isEqualTo(6 * 150, EXACT);
  }

  @Test
  void tapeTooWideForATabGivesWayWhereItIsCountedToo() {
    Bench bench = bench(wet(30), tape(9), tape(6), tape(3));
    Join.Glue g = (Join.Glue) card(8).joins().get(0);
    Join.Glue wide = new Join.Glue(g.id(), g.a(), g.b(), g.raisedBy(), "tape-9.0", g.origin());
    assertThat(GlueUse.of(wide, bench).glue()).contains(tape(6));
    assertThat(GlueUse.of(wide, bench).covered()).isEqualTo(6 * 150, EXACT);
  }
}
