package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The order of work: what the trade's rules demand of it. */
class WorkPlanTest {
  private static WorkPlan plan() {
    Card card = SampleStacks.plain(150, 150, 12, 12, 3, 0.356).card();
    Bench bench = BuiltInBench.metric();
    CutList cuts = CutList.of(card.pieces(), bench);
    return WorkPlan.of(card, cuts, ScoreChart.of(cuts, bench), bench, MakerUnits.of(Unit.MM));
  }

  @Test
  void everyStepComesAfterAllThatItNeeds() {
    List<Step> steps = plan().steps();
    for (Step s : steps) {
      assertThat(s.after()).allMatch(before -> before < s.number());
    }
    assertThat(steps)
        .extracting(Step::number)
        .containsExactlyElementsOf(IntStream.rangeClosed(1, steps.size()).boxed().toList());
  }

  @Test
  void builtFromTheBackForwards_secondTabClosedFlat() {
    // common practice, no source: the tab is not pressed over empty air; it is glued where it falls
    List<String> joins = plan().steps().stream().flatMap(s -> s.joins().stream()).toList();
    assertThat(joins)
        .containsExactly(
            "far/tab-left",
            "far/tab-right",
            "middle/tab-left",
            "middle/tab-right",
            "near/tab-left",
            "near/tab-right");
    assertThat(plan().steps().stream().filter(s -> s.kind() == Step.Kind.CLOSE_FLAT))
        .hasSize(3)
        .allMatch(s -> s.whole().contains("where it falls"));
  }

  @Test
  void everyStepSaysANumber() {
    assertThat(plan().steps()).isNotEmpty().allMatch(s -> s.whole().matches("(?s).*\\d.*"));
    assertThat(plan().steps())
        .filteredOn(
            s ->
                Set.of(
                        Step.Kind.CUT,
                        Step.Kind.SCORE,
                        Step.Kind.GLUE_TAB,
                        Step.Kind.CLOSE_FLAT,
                        Step.Kind.CHECK)
                    .contains(s.kind()))
        .allMatch(s -> s.whole().matches("(?s).*\\d+ mm.*"), "names a length");
  }

  @Test
  void likeWorkIsOneStep() {
    List<Step> steps = plan().steps();
    assertThat(steps).filteredOn(s -> s.kind() == Step.Kind.SCORE).hasSize(1);
    assertThat(steps).filteredOn(s -> s.kind() == Step.Kind.FOLD).hasSize(1);
    Step cut = steps.get(0);
    // By hand: two tabs and two sides of 12 beside a panel of 150, three times.
    assertThat(cut.whole()).contains("3 pieces 198 x 150 mm").contains("measures 198 x 150 mm");
    // 2 cuts, score, fold, two for each of three stages, and the trial
    assertThat(steps).hasSize(2 + 1 + 1 + 2 * 3 + 1);
  }

  @Test
  void everyStepNamesItsPieces_andEveryGlueStepItsFaceAndEdge() {
    for (Step s : plan().steps()) {
      if (s.kind() == Step.Kind.GLUE_TAB || s.kind() == Step.Kind.CLOSE_FLAT) {
        assertThat(s.pieces()).hasSize(1);
        assertThat(s.title()).contains(s.pieces().get(0));
        assertThat(s.whole()).contains("good face of the").contains(" edge");
        assertThat(s.check()).isNotBlank();
      }
    }
  }

  @Test
  void tapeIsAtLeastTwoMillimetresNarrowerThanItsTab() {
    // common practice, no source: 12 mm tabs take 10 mm, 6 mm tabs take 4 mm of tape
    Card card = SampleStacks.plain(150, 150, 12, 6, 1, 0.356).card();
    Bench bench = BuiltInBench.metric();
    Card taped =
        new Card(
            card.title(),
            card.roots(),
            card.pieces(),
            card.joins().stream()
                .map(j -> (Join.Glue) j)
                .<Join>map(g -> new Join.Glue(g.id(), g.a(), g.b(), 0, "tape-6", g.origin()))
                .toList());
    CutList cuts = CutList.of(taped.pieces(), bench);
    WorkPlan plan =
        WorkPlan.of(taped, cuts, ScoreChart.of(cuts, bench), bench, MakerUnits.of(Unit.MM));
    assertThat(plan.steps())
        .filteredOn(s -> s.kind() == Step.Kind.GLUE_TAB)
        .hasSize(1)
        .allMatch(s -> s.whole().contains("cut down to 4 mm wide"));
    assertThat(plan.steps()).allMatch(s -> s.dries() == 0, "tape need not dry");
  }

  @Test
  void whatCanBeDoneMeanwhileNeedsNothingThatDries() {
    for (Step s : plan().steps()) {
      for (int free : s.meanwhile()) {
        Step later = plan().steps().get(free - 1);
        assertThat(later.after()).doesNotContain(s.number());
        assertThat(later.number()).isGreaterThan(s.number());
      }
    }
    // Only gluing is left when the first stage dries, and all of it needs that stage.
    Step far =
        plan().steps().stream()
            .filter(s -> s.kind() == Step.Kind.CLOSE_FLAT)
            .findFirst()
            .orElseThrow();
    assertThat(far.meanwhile()).isEmpty();
  }

  @Test
  void elapsedTimeHoldsWorkAndDrying() {
    WorkPlan plan = plan();
    assertThat(plan.elapsed()).isGreaterThan(plan.hands());
    double drying = plan.steps().stream().mapToDouble(Step::dries).sum();
    assertThat(plan.elapsed()).isLessThanOrEqualTo(plan.hands() + drying);
  }

  @Test
  void tasksThatNeedEachOther_areRefused() {
    Step s =
        Step.loose(Step.Kind.CUT, List.of(), List.of(), "", "", List.of(), "", List.of(), 0, 0);
    Task a = new Task("a", s, Set.of("b"));
    Task b = new Task("b", s, Set.of("a"));
    assertThatThrownBy(() -> Task.order(List.of(a, b))).hasMessageContaining("[a, b]");
  }
}
