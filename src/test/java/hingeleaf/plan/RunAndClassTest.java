package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Card;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A batch and a class, by sums done by hand (shares and factors: common practice, no source). */
class RunAndClassTest {
  private final Card card = SampleStacks.plain(150, 150, 12, 12, 3, 0.356).card();
  private final Bench bench = BuiltInBench.metric();
  private final CutList cuts = CutList.of(card.pieces(), bench);
  private final ScoreChart scores = ScoreChart.of(cuts, bench);
  private final WorkPlan work = WorkPlan.of(card, cuts, scores, bench, MakerUnits.of(Unit.MM));

  private RunSheet run(int copies) {
    return RunSheet.of(cuts, scores, work, MakerUnits.of(Unit.MM), copies);
  }

  @Test
  void oneInTwentyGoesWrong() {
    assertThat(run(1).made()).isEqualTo(2);
    assertThat(run(20).made()).isEqualTo(21);
    assertThat(run(50).made()).isEqualTo(53);
    assertThat(run(100).made()).isEqualTo(105);
  }

  @Test
  void commonSizesComeFirst() {
    List<RunSheet.Cutting> cutting = run(20).cutting();
    assertThat(cutting.get(0).size()).isEqualTo("198 x 150 mm");
    assertThat(cutting.get(0).pieces()).isEqualTo(3 * 21);
    assertThat(cutting.get(1).size()).isEqualTo("150 x 150 mm");
    assertThat(cutting.get(1).pieces()).isEqualTo(21);
  }

  @Test
  void oneJigForOneSetting() {
    assertThat(run(20).jigs())
        .containsExactly(new RunSheet.Jig("score", "12 mm, 24 mm, 174 mm, 186 mm", 63));
  }

  @Test
  void placesUnderWeightsHoldWhatDriesWhileTheNextIsMade() {
    // 30 minutes to dry, 2 minutes of hands for each card: 15 lie at once.
    RunSheet.Round close =
        run(50).rounds().stream().filter(r -> r.dries() == 30).findFirst().orElseThrow();
    assertThat(close.hands()).isEqualTo(2 * 53);
    assertThat(close.lying()).isEqualTo(15);
    // No more can lie than are made.
    assertThat(run(1).rounds()).allMatch(r -> r.lying() <= 2);
  }

  @Test
  void learnersNeedTwoAndAHalfTimesAsLong() {
    ClassSheet sheet = ClassSheet.of(work, 12, 600);
    double hands =
        work.steps().stream()
            .filter(s -> !sheet.home().contains(s.number()))
            .mapToDouble(Step::hands)
            .sum();
    assertThat(sheet.needed()).isEqualTo(15 + 2.5 * hands);
    assertThat(sheet.bags()).isEqualTo(13);
  }

  @ParameterizedTest
  @ValueSource(ints = {30, 45, 60, 90, 120, 240})
  void whatIsDoneAtHomeNeedsNothingFromTheClass(int minutes) {
    ClassSheet sheet = ClassSheet.of(work, 12, minutes);
    for (int n : sheet.home()) {
      assertThat(sheet.home()).containsAll(work.steps().get(n - 1).after());
    }
    assertThat(sheet.home()).hasSize(work.steps().size() - sheet.lesson().size());
    assertThat(work.steps())
        .filteredOn(s -> s.kind() == Step.Kind.CUT)
        .allMatch(s -> sheet.home().contains(s.number()), "no blades in class");
    double end = sheet.lesson().get(sheet.lesson().size() - 1).to();
    assertThat(end).isLessThanOrEqualTo(sheet.needed());
  }

  @Test
  void aShortClassLeavesMoreToHome() {
    assertThat(ClassSheet.of(work, 12, 45).home().size())
        .isGreaterThan(ClassSheet.of(work, 12, 600).home().size());
    assertThat(ClassSheet.of(work, 12, 16).fits()).isFalse();
    assertThat(ClassSheet.of(work, 12, 600).fits()).isTrue();
  }
}
