package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingeleaf.card.Card;
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
        .allMatch(s -> s.text().contains("where it falls"));
  }

  @Test
  void everyStepThatMeasuresSaysItsNumber() {
    assertThat(plan().steps())
        .filteredOn(
            s -> Set.of(Step.Kind.CUT, Step.Kind.SCORE, Step.Kind.GLUE_TAB).contains(s.kind()))
        .isNotEmpty()
        .allMatch(s -> s.text().matches(".*\\d+ mm.*"), "names a length");
    assertThat(plan().steps().get(1).text()).contains("198 mm").contains("3 pieces");
    assertThat(plan().steps().get(1).check()).contains("198 x 150 mm");
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
        new Step(0, Step.Kind.CUT, List.of(), "", "", "", List.of(), 0, 0, List.of(), List.of());
    Task a = new Task("a", s, Set.of("b"));
    Task b = new Task("b", s, Set.of("a"));
    assertThatThrownBy(() -> Task.order(List.of(a, b))).hasMessageContaining("[a, b]");
  }
}
