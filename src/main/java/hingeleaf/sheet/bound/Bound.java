package hingeleaf.sheet.bound;

/**
 * A lower bound on the cost.
 *
 * @param cost no plan costs less, in millionths; {@link CostCover#IMPOSSIBLE} when there is none
 * @param name the argument behind it, as told to the maker
 */
public record Bound(long cost, String name) {

  /** The higher of two; the first when they are equal. */
  public Bound higher(Bound other) {
    return other.cost > cost ? other : this;
  }
}
