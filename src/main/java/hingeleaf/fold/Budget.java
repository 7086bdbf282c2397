package hingeleaf.fold;

import java.util.function.BooleanSupplier;

/**
 * How much work a solve may do, counted in solver steps rather than time, so that the same input
 * gives the same answer on any machine; and a signal to stop early.
 *
 * <p>Not thread-safe: give each solve its own.
 */
public final class Budget {
  private long left;
  private final BooleanSupplier stop;

  private Budget(long steps, BooleanSupplier stop) {
    this.left = steps;
    this.stop = stop;
  }

  /** As many loop closures as {@code steps}; a small card spends some hundreds per drive. */
  public static Budget of(long steps) {
    return new Budget(steps, () -> false);
  }

  /**
   * @param stop asked before every step; true ends the work as if the budget were spent
   */
  public static Budget of(long steps, BooleanSupplier stop) {
    return new Budget(steps, stop);
  }

  void spend(long steps) {
    left -= steps;
    if (left < 0 || stop.getAsBoolean()) {
      throw new Spent();
    }
  }

  /** The budget is spent or the signal to stop came; never leaves the package's doors. */
  @SuppressWarnings("serial")
  static final class Spent extends RuntimeException {
    Spent() {
      super("out of budget", null, false, false);
    }
  }
}
