package hingeleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.sheet.bound.AreaBounds;
import hingeleaf.sheet.bound.Bound;
import hingeleaf.sheet.bound.PatternLp;
import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import hingeleaf.sheet.task.Task;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Two hundred random small jobs, recomputed by {@link Enumeration}. */
class SmallJobsTest {

  private static SheetJob random(Random r) {
    Jobs jobs = Jobs.empty();
    int stocks = 1 + r.nextInt(3);
    for (int s = 0; s < stocks; s++) {
      Grain grain = r.nextInt(4) == 0 ? Grain.values()[r.nextInt(3)] : Grain.ANY;
      boolean limited = s > 0 && r.nextBoolean();
      double price = limited && r.nextBoolean() ? 0 : 1 + r.nextInt(5);
      int base = s == 0 ? 8 : 4;
      jobs.stock(
          base + r.nextInt(5), base + r.nextInt(5), price, limited ? 1 + r.nextInt(2) : -1, grain);
    }
    int pieces = 3 + r.nextInt(4);
    for (int p = 0; p < pieces; p++) {
      int q = pieces > 4 ? 1 : 1 + r.nextInt(2);
      Grain grain = r.nextInt(4) == 0 ? Grain.values()[r.nextInt(3)] : Grain.ANY;
      jobs.piece(1 + r.nextInt(7), 1 + r.nextInt(7), q, r.nextBoolean(), grain);
    }
    return jobs.job();
  }

  @Test
  void plansAreAsCheapAsEnumerationSaysAndBoundsStayBelow() {
    int proven = 0;
    int planned = 0;
    for (int seed = 0; planned < 200; seed++) {
      SheetJob job = random(new Random(seed));
      if (job.count() > 7) {
        continue;
      }
      long least = Enumeration.leastCost(job);
      Outcome outcome = SheetPlanner.plan(job, new Effort(1, 20_000, 1), () -> false, p -> {});
      if (least == Long.MAX_VALUE) {
        assertThat(outcome).as("seed %d", seed).isInstanceOf(Outcome.Blocked.class);
        continue;
      }
      planned++;
      assertThat(outcome).as("seed %d", seed).isInstanceOf(Outcome.Planned.class);
      SheetPlan plan = ((Outcome.Planned) outcome).plan();
      assertThat(PlanChecker.check(job, plan)).as("seed %d", seed).isEmpty();
      assertThat(plan.lowerBound())
          .as("seed %d, %s", seed, plan.bound())
          .isLessThanOrEqualTo(least);
      assertThat(plan.cost()).as("seed %d", seed).isGreaterThanOrEqualTo(least);
      if (plan.provenOptimal()) {
        proven++;
        assertThat(plan.cost()).as("seed %d, %s", seed, plan.bound()).isEqualTo(least);
      }
      bounds(Task.of(job), least, seed);
    }
    assertThat(proven).isGreaterThanOrEqualTo(195);
  }

  private static void bounds(Task task, long least, int seed) {
    Bound[] all = {
      AreaBounds.area(task),
      AreaBounds.dualFeasible(task),
      PatternLp.solve(task, 50_000_000L, Long.MAX_VALUE, () -> false)
    };
    for (Bound b : all) {
      assertThat(b.cost()).as("seed %d, %s", seed, b.name()).isLessThanOrEqualTo(least);
    }
  }
}
