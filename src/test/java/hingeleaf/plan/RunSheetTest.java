package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Card;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A batch, by sums done by hand (shares: common practice, no source). */
class RunSheetTest {
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

  @ParameterizedTest
  @CsvSource({
    // By hand, setting + 53 x the rest. Cuts: 3 frames at 1.5 minutes, the back at 1.5.
    "1, 2.25, 121.5", // cut the frames: half of 4.5, then 53 x 2.25
    "2, 0.75, 40.5", // cut the back: half of 1.5, then 53 x 0.75
    "3, 2.4, 129.6", // score: 4 scores on 3 pieces at 0.4 minutes, half of 4.8
    "4, 0, 159", // fold: 4 folds on 3 pieces at a quarter of a minute, 53 times
    "5, 0, 106", // first tab: 2 minutes, 53 times
    "6, 0, 106", // second tab: the same
    "7, 0, 106", // and the next stage
    "11, 0, 159" // the trial: 3 minutes, 53 times
  })
  void aSettingIsMadeOnce(int step, double set, double all) {
    RunSheet.Round round = run(50).rounds().get(step - 1);
    assertThat(round.set()).isEqualTo(set, Offset.offset(1e-9));
    assertThat(round.hands()).isEqualTo(all, Offset.offset(1e-9));
    assertThat(round.hands()).isEqualTo(round.set() + 53 * round.each(), Offset.offset(1e-9));
  }

  @Test
  void oneCardTakesWhatThePlanSays_andABatchLessForEach() {
    assertThat(RunSheet.minutes(work, 1)).isEqualTo(work.hands(), Offset.offset(1e-9));
    double each = RunSheet.minutes(work, 50) / 50;
    assertThat(each).isLessThan(work.hands());
    // All that a setting can save is half of the cuts and scores: 5.4 minutes of each further card.
    assertThat(each).isEqualTo(work.hands() - 5.4 * 49 / 50, Offset.offset(1e-9));
  }
}
