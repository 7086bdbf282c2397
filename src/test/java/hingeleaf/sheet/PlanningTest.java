package hingeleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a maker relies on: the same again, limits kept, drop-outs used, few settings. */
class PlanningTest {
  private static final long ONE = 1_000_000;

  private static SheetJob scatter(int pieces, long seed) {
    Random r = new Random(seed);
    Jobs jobs = Jobs.on(210, 297, 1).stock(297, 420, 1.9, -1);
    for (int i = 0; i < pieces; i++) {
      jobs.piece(20 + r.nextInt(120), 20 + r.nextInt(150), 1 + r.nextInt(2), r.nextBoolean());
    }
    return jobs.job();
  }

  private static SheetPlan plan(SheetJob job, Effort effort) {
    return ((Outcome.Planned) SheetPlanner.plan(job, effort, () -> false, p -> {})).plan();
  }

  @Test
  void theSameSeedAndStepsGiveTheSamePlanOnOneThreadOrTwo() {
    SheetJob job = scatter(25, 5);
    SheetPlan one = plan(job, new Effort(3, 12_000, 1));
    SheetPlan again = plan(job, new Effort(3, 12_000, 1));
    SheetPlan two = plan(job, new Effort(3, 12_000, 2));
    assertThat(again).isEqualTo(one);
    assertThat(two).isEqualTo(one);
  }

  @Test
  void randomJobsPassTheCheckerUnderATrimmersLimits() {
    for (int seed = 0; seed < 30; seed++) {
      SheetJob free = scatter(12, seed);
      Trimmer trimmer = new Trimmer(310 * ONE, 0, (seed % 3) * 10 * ONE);
      SheetJob job = new SheetJob(free.unit(), free.stock(), free.pieces(), trimmer);
      Outcome outcome = SheetPlanner.plan(job, new Effort(1, 4_000, 1), () -> false, p -> {});
      assertThat(outcome).as("seed %d", seed).isInstanceOf(Outcome.Planned.class);
      SheetPlan plan = ((Outcome.Planned) outcome).plan();
      assertThat(PlanChecker.check(job, plan)).as("seed %d", seed).isEmpty();
    }
  }

  /** 130 x 130 in a 150 x 150 sheet: within the trimmer either way; at 120 no cut can be made. */
  @Test
  void aTrimmerTooShortForTheSheetBlocks() {
    SheetJob job = Jobs.on(150, 150, 1).piece(130, 130, 1, true).trimmer(120, 0, 0).job();
    Outcome outcome = SheetPlanner.plan(job, new Effort(1, 2_000, 1), () -> false, p -> {});
    assertThat(outcome).isInstanceOf(Outcome.Blocked.class);
  }

  @Test
  void dropOutsAreUsedBeforeSheetsArePaidFor() {
    SheetJob job =
        Jobs.on(210, 297, 0.5)
            .stock(90, 90, 0, 3)
            .piece(40, 40, 12, true)
            .piece(80, 80, 1, true)
            .job();
    SheetPlan plan = Jobs.plan(job, 20_000);
    assertThat(plan.cost()).isEqualTo(ONE / 2);
    SheetJob fewer =
        Jobs.on(210, 297, 0.5)
            .stock(90, 90, 0, 3)
            .piece(40, 40, 8, true)
            .piece(80, 80, 1, true)
            .job();
    SheetPlan free = Jobs.plan(fewer, 20_000);
    assertThat(free.cost()).isZero();
    assertThat(free.provenOptimal()).isTrue();
  }

  /** Limited cheap stock first, then the dear: worked out by hand. */
  @Test
  void limitedStockIsMixedAtTheLeastCost() {
    SheetJob job = Jobs.on(100, 100, 3).stock(100, 50, 1, 3).piece(100, 50, 5, false).job();
    SheetPlan plan = Jobs.plan(job, 20_000);
    assertThat(plan.cost()).isEqualTo(6 * ONE);
    assertThat(plan.provenOptimal()).isTrue();
  }

  /** Sixty tags of 50 x 90, twelve to the sheet: rows of 90, then 50; two measures in all. */
  @Test
  void equalPiecesAreCutWithTwoSettings() {
    SheetJob job = Jobs.on(210, 297, 0.1).piece(50, 90, 60, false).job();
    SheetPlan plan = Jobs.plan(job, 20_000);
    assertThat(plan.cost()).isEqualTo(ONE / 2);
    assertThat(plan.settings()).isEqualTo(2);
  }

  @Test
  void grainTurnsAPieceOrForbidsIt() {
    SheetJob turned =
        Jobs.empty().stock(100, 200, 1, -1, Grain.H).piece(150, 80, 1, true, Grain.W).job();
    assertThat(Jobs.plan(turned, 2_000).sheets().get(0).pieces().get(0).rotated()).isTrue();
    SheetJob not =
        Jobs.empty().stock(100, 200, 1, -1, Grain.W).piece(150, 80, 1, true, Grain.W).job();
    assertThat(JobFaults.of(not)).singleElement().asString().contains("it would fit turned");
  }

  @Test
  void aNarrowStripIsWarnedOf() {
    SheetPlan plan = Jobs.plan(Jobs.on(100, 100, 1).piece(100, 10, 2, false).job(), 2_000);
    assertThat(plan.warnings()).singleElement().asString().contains("hold the wide side");
  }

  @Test
  void aStopSignalBringsTheBestSoFar() {
    Outcome outcome =
        SheetPlanner.plan(scatter(40, 1), new Effort(1, 1_000_000, 1), () -> true, p -> {});
    assertThat(outcome).isInstanceOf(Outcome.Planned.class);
  }

  @Test
  void progressNeverGoesBack() {
    List<Progress> told = new ArrayList<>();
    SheetPlanner.plan(scatter(25, 5), new Effort(3, 12_000, 1), () -> false, told::add);
    assertThat(told).isNotEmpty();
    for (int i = 1; i < told.size(); i++) {
      assertThat(told.get(i).cost()).isLessThanOrEqualTo(told.get(i - 1).cost());
      assertThat(told.get(i).lowerBound()).isGreaterThanOrEqualTo(told.get(i - 1).lowerBound());
    }
  }
}
