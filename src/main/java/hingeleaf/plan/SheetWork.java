package hingeleaf.plan;

import hingeleaf.sheet.SheetPlan;
import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * An order with what came of planning it.
 *
 * @param plan empty where no plan was found; then {@code why} says why
 */
public record SheetWork(SheetOrder order, Optional<SheetPlan> plan, List<String> why) {
  /** Enough for one card of a maker's size; the answer does not depend on the machine. */
  private static final Effort QUICK = new Effort(1, 20_000, 1);

  public SheetWork {
    why = List.copyOf(why);
  }

  /** Plans each order with a fixed amount of work. */
  public static List<SheetWork> of(List<SheetOrder> orders, BooleanSupplier stop) {
    List<SheetWork> all = new ArrayList<>();
    for (SheetOrder order : orders) {
      all.add(of(order, SheetPlanner.plan(order.job(), QUICK, stop, p -> {})));
    }
    return all;
  }

  /** An order with an outcome. */
  public static SheetWork of(SheetOrder order, Outcome outcome) {
    if (outcome instanceof Outcome.Planned p) {
      return new SheetWork(order, Optional.of(p.plan()), List.of());
    }
    return new SheetWork(order, Optional.empty(), ((Outcome.Blocked) outcome).sentences());
  }

  /** What the sheets cost in the bench's money; 0 where the bench tells no price. */
  public double cost() {
    return order.priced() ? plan.map(p -> p.cost() / 1e6).orElse(0.0) : 0;
  }

  public int sheets() {
    return plan.map(p -> p.sheets().size()).orElse(0);
  }

  /** How many sheets of each size, by index in the job's stock. */
  public Map<Integer, Long> counts() {
    Map<Integer, Long> counts = new LinkedHashMap<>();
    plan.ifPresent(p -> p.sheets().forEach(s -> counts.merge(s.stock(), 1L, Long::sum)));
    return counts;
  }
}
