package hingeleaf.fold;

import java.util.ArrayList;
import java.util.List;

/**
 * The states of one part in which every fold is open or closed, by trying both for each and pruning
 * with the loops: each loop must have an even number of closed folds, and must close.
 *
 * <p>A fold that closes keeps the sense, mountain or valley, that it has in the reference pose.
 */
final class ShutFolds {
  private static final int MOST_FOLDS = 18;

  private final Part part;
  private final Axes axes;
  private final double[] reference;
  private final Budget budget;
  private final List<double[]> found = new ArrayList<>();
  private boolean cut;

  ShutFolds(Part part, Axes axes, double[] reference, Budget budget) {
    this.part = part;
    this.axes = axes;
    this.reference = reference;
    this.budget = budget;
  }

  /** Whether every joint is a fold in the planes of its panels. */
  boolean possible() {
    for (int j : part.joints()) {
      if (axes.slides[j] || Double.isNaN(axes.total[j])) {
        return false;
      }
    }
    return true;
  }

  boolean exhaustive() {
    return !cut;
  }

  /** All that close. */
  List<double[]> closed() {
    if (part.size() > MOST_FOLDS) {
      cut = true;
      return List.of();
    }
    double[] q = reference.clone();
    for (long mask = 0; mask < 1L << part.size(); mask++) {
      if (!even(mask)) {
        continue;
      }
      budget.spend(1);
      for (int i = 0; i < part.size(); i++) {
        int j = part.joints()[i];
        boolean shut = (mask >> i & 1) == 1;
        double sense = axes.total[j] < -1e-9 ? -Math.PI : Math.PI;
        q[j] = (shut ? sense : 0) - axes.total[j];
      }
      if (part.residual(q) <= 1e-12) {
        found.add(q.clone());
      }
    }
    return found;
  }

  private boolean even(long mask) {
    for (Loop loop : part.loops()) {
      int count = 0;
      for (int j : loop.joints()) {
        count += (int) (mask >> Jacobians.local(part, j) & 1);
      }
      if (count % 2 != 0) {
        return false;
      }
    }
    return true;
  }
}
