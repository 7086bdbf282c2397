package hingeleaf.sheet;

/**
 * Where the search stands.
 *
 * @param cost cost of the best plan so far, in millionths
 * @param lowerBound no plan costs less, in millionths
 * @param doing what is being tried
 */
public record Progress(long cost, long lowerBound, String doing) {

  /** How far the best plan may be above the best possible, as a share of its cost. */
  public double gap() {
    return cost == 0 ? 0 : Math.max(0, (cost - lowerBound) / (double) cost);
  }
}
