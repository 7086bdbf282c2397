package hingeleaf.fold;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Makes an almost flat state exactly flat: every fold that is nearly open or nearly closed is set
 * to the exact multiple of pi, and the loops are checked by substitution.
 *
 * <p>Newton's method must not be trusted there: near flat a closure error goes as the square of the
 * angle error, so a pose can close to 1e-11 mm and still be 1e-6 rad off.
 */
final class Snap {
  private Snap() {}

  /**
   * @param reach how far a fold may be from a multiple of pi, rad
   * @param held joints that must keep their value
   * @return the values with the folds set, closed to rounding; null if that does not close
   */
  static double @Nullable [] of(Part part, Axes axes, double[] q, boolean[] held, double reach) {
    double[] flat = q.clone();
    boolean[] set = held.clone();
    boolean any = false;
    boolean all = true;
    for (int j : part.joints()) {
      double off = offFlat(axes, j, q[j]);
      if (!held[j] && Math.abs(off) < reach) {
        flat[j] = exact(axes, j, q[j]);
        set[j] = true;
        any = true;
      }
      all &= set[j];
    }
    if (!any) {
      return null;
    }
    if (all) {
      return part.residual(flat) <= 1e-12 ? flat : null;
    }
    return new Solver(part, set, flat, false).solve(flat) ? flat : null;
  }

  /** How far a fold is from flat or closed, rad; NaN where its panels do not tell. */
  static double offFlat(Axes axes, int j, double value) {
    return Math.IEEEremainder(value + axes.total[j], Math.PI);
  }

  private static double exact(Axes axes, int j, double value) {
    return Math.rint((value + axes.total[j]) / Math.PI) * Math.PI - axes.total[j];
  }

  /** Whether every fold of the part is flat or closed to within {@code reach}. */
  static boolean isFlat(Part part, Axes axes, double[] q, double reach) {
    return Arrays.stream(part.joints()).allMatch(j -> Math.abs(offFlat(axes, j, q[j])) <= reach);
  }
}
