package hingeleaf.fold.accuracy;

/**
 * One stage across its folds, as rigid links: two sides on a base carry a panel.
 *
 * @param base between the two fold lines on the layer behind, mm
 * @param first the side at the lower coordinate (left, or bottom), mm
 * @param panel mm
 * @param second the other side, mm
 */
public record FourBar(double base, double first, double panel, double second) {
  /**
   * By how much the loop misses closing when pressed flat, mm: positive where base and the folded
   * side are too short for the panel. This is what bowing and slip must take up.
   *
   * @param lean 1 where the panel goes towards the second side, -1 towards the first
   */
  public double misfit(int lean) {
    return lean > 0 ? first + panel - second - base : second + panel - first - base;
  }

  /**
   * How high the highest fold still stands when the rigid stage jams on its way flat, mm; 0 where
   * it lies flat. Law of cosines in the triangle that is left when one side lies flat. {@code NaN}
   * where the four do not close at all.
   */
  public double jamHeight(int lean) {
    return lean > 0 ? jam(first, second) : jam(second, first);
  }

  /** The near side is the one whose foot the panel moves away from. */
  private double jam(double near, double far) {
    double span = base - near;
    if (Math.abs(near + panel - far - base) < 1e-12) {
      return 0;
    }
    if (panel - far < span) {
      // the near side lies flat; panel and far side stand over what is left of the base
      double x = (panel * panel - far * far + span * span) / (2 * span);
      return root(panel * panel - x * x);
    }
    // the far side lies flat, outwards; near side and panel stand over base and far side
    double reach = base + far;
    double x = (near * near - panel * panel + reach * reach) / (2 * reach);
    return root(near * near - x * x);
  }

  private static double root(double square) {
    return square > -1e-9 ? Math.sqrt(Math.max(0, square)) : Double.NaN;
  }

  /** How far the panel tilts out of true when upright, rad, to first order. */
  public double uprightTilt() {
    return Math.abs(first - second) / panel;
  }

  /** The same stage closed in the flat pose: the second tab lands where it falls. */
  public FourBar gluedFlat(int lean) {
    return new FourBar(base + misfit(lean), first, panel, second);
  }

  /** What is left to force when paper at the scores gives way by {@code give} mm. */
  FourBar giving(double give, int lean) {
    double miss = misfit(lean);
    double taken = Math.signum(miss) * Math.min(Math.abs(miss), give);
    return new FourBar(base + taken, first, panel, second);
  }
}
