package hingeleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Jobs that cannot be planned: one sentence each, at once. */
class BadJobTest {
  private static List<String> sentences(Jobs jobs) {
    Outcome outcome = SheetPlanner.plan(jobs.job(), new Effort(1, 4_000, 1), () -> false, p -> {});
    assertThat(outcome).isInstanceOf(Outcome.Blocked.class);
    return ((Outcome.Blocked) outcome).sentences();
  }

  @Test
  void aPieceLargerThanEverySheetSaysWhichWayItWouldFit() {
    assertThat(sentences(Jobs.on(210, 297, 1).piece(297, 210, 1, false)))
        .containsExactly(
            "p0, 297 x 210 mm, fits on no sheet as allowed; it would fit turned on stock 0 of"
                + " 210 x 297 mm if it might be turned");
    assertThat(sentences(Jobs.on(210, 297, 1).piece(400, 300, 1, true)))
        .containsExactly(
            "p0, 400 x 300 mm, fits on no sheet as allowed; the largest sheet is stock 0 of"
                + " 210 x 297 mm");
  }

  @Test
  void zeroAndNegativeSizes() {
    assertThat(sentences(Jobs.on(210, 297, 1).piece(0, 10, 1, true)))
        .containsExactly("p0: width and height must be above zero, found 0 x 10 mm");
    assertThat(sentences(Jobs.on(-210, 297, 1).piece(10, 10, 1, true)))
        .containsExactly("stock stock 0: width and height must be above zero, found -210 x 297 mm");
    assertThat(sentences(Jobs.on(210, 297, 1).piece(10, 10, 0, true)))
        .containsExactly("p0: the quantity must be at least 1");
  }

  @Test
  void aMillionPiecesAreTooManyForOnePlan() {
    assertThat(sentences(Jobs.on(210, 297, 1).piece(10, 10, 1_000_000, true)))
        .singleElement()
        .asString()
        .startsWith("1000000 pieces are too many for one plan, which takes 20000");
  }

  @Test
  void stockThatCannotSufficeSaysWhatIsShort() {
    assertThat(sentences(Jobs.empty().stock(100, 100, 1, 2).piece(100, 100, 3, true)))
        .containsExactly(
            "the stock does not suffice: the pieces cover 30000 square mm, the sheets only 20000"
                + " square mm; 10000 square mm is short");
    assertThat(sentences(Jobs.empty().stock(100, 100, 1, 2).piece(60, 60, 3, true)))
        .singleElement()
        .asString()
        .contains("the stock does not suffice");
  }

  @Test
  void nothingToCutOrNothingToCutFrom() {
    assertThat(sentences(Jobs.empty().piece(10, 10, 1, true)))
        .containsExactly("there is no stock to cut from: add a sheet with w and h");
    assertThat(sentences(Jobs.on(10, 10, 1)))
        .containsExactly("there are no pieces to cut: add one with w and h");
  }

  @Test
  void tenThousandDifferentPiecesAreLaid() {
    Jobs jobs = Jobs.on(1000, 1000, 1);
    for (int i = 0; i < 10_000; i++) {
      jobs.piece(10 + i % 100, 10 + i / 100, 1, true);
    }
    SheetJob job = jobs.job();
    Outcome outcome = SheetPlanner.plan(job, new Effort(1, 0, 1), () -> true, p -> {});
    assertThat(outcome).isInstanceOf(Outcome.Planned.class);
    SheetPlan plan = ((Outcome.Planned) outcome).plan();
    assertThat(plan.sheets().stream().mapToInt(s -> s.pieces().size()).sum()).isEqualTo(10_000);
    assertThat(plan.cost()).isLessThan((long) (plan.lowerBound() * 1.15));
  }
}
