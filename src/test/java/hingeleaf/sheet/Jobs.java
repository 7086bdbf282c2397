package hingeleaf.sheet;

import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** Jobs for tests, in millimetres. */
public final class Jobs {
  private static final long MM = 1_000_000;
  private final List<SheetStock> stock = new ArrayList<>();
  private final List<SheetPiece> pieces = new ArrayList<>();
  private Trimmer trimmer = Trimmer.UNSAID;

  private Jobs() {}

  public static Jobs empty() {
    return new Jobs();
  }

  /** Stock without limit at a price in whole units. */
  public static Jobs on(double w, double h, double price) {
    return new Jobs().stock(w, h, price, -1);
  }

  /** Adds stock; a negative quantity means no limit. */
  public Jobs stock(double w, double h, double price, long quantity) {
    return stock(w, h, price, quantity, Grain.ANY);
  }

  public Jobs stock(double w, double h, double price, long quantity, Grain grain) {
    stock.add(
        new SheetStock(
            "stock " + stock.size(),
            nm(w),
            nm(h),
            Math.round(price * MM),
            quantity < 0 ? OptionalLong.empty() : OptionalLong.of(quantity),
            grain));
    return this;
  }

  public Jobs piece(double w, double h, long quantity, boolean rotate) {
    return piece(w, h, quantity, rotate, Grain.ANY);
  }

  public Jobs piece(double w, double h, long quantity, boolean rotate, Grain grain) {
    pieces.add(new SheetPiece("p" + pieces.size(), nm(w), nm(h), quantity, rotate, grain));
    return this;
  }

  public Jobs trimmer(double longest, double step, double leastStrip) {
    trimmer = new Trimmer(nm(longest), nm(step), nm(leastStrip));
    return this;
  }

  public SheetJob job() {
    return new SheetJob(JobUnit.MM, stock, pieces, trimmer);
  }

  private static long nm(double mm) {
    return Math.round(mm * MM);
  }

  /** Plans a job within so many steps; the plan must exist and pass the checker. */
  public static SheetPlan plan(SheetJob job, long steps) {
    Outcome outcome = SheetPlanner.plan(job, new Effort(7, steps, 1), () -> false, p -> {});
    if (!(outcome instanceof Outcome.Planned planned)) {
      throw new AssertionError("blocked: " + ((Outcome.Blocked) outcome).sentences());
    }
    List<String> faults = PlanChecker.check(job, planned.plan());
    if (!faults.isEmpty()) {
      throw new AssertionError("unsound plan: " + faults);
    }
    return planned.plan();
  }
}
