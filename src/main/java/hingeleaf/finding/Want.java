package hingeleaf.finding;

/**
 * A cure as a demand on one parameter of the design: bring it into an interval.
 *
 * @param parameter path in the design, such as {@code base.stacked-frames.tab}
 * @param least smallest value that cures, in mm; negative infinity where there is none
 * @param most largest value that cures, in mm; positive infinity where there is none
 */
public record Want(String parameter, double least, double most) {
  public Want {
    if (!(least <= most)) {
      throw new IllegalArgumentException(
          parameter + ": wants at least " + least + " and at most " + most);
    }
  }

  public static Want atMost(String parameter, double most) {
    return new Want(parameter, Double.NEGATIVE_INFINITY, most);
  }

  public static Want atLeast(String parameter, double least) {
    return new Want(parameter, least, Double.POSITIVE_INFINITY);
  }
}
