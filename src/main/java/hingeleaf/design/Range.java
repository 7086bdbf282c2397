package hingeleaf.design;

/**
 * Which numbers or lengths (in mm) a field takes.
 *
 * @param least smallest
 * @param open whether {@code least} itself is left out
 * @param most largest, included
 */
public record Range(double least, boolean open, double most) {
  public Range {
    if (!(least <= most)) {
      throw new IllegalArgumentException(least + " to " + most + " is no range");
    }
  }

  /** From one to the other, both included. */
  public static Range from(double least, double most) {
    return new Range(least, false, most);
  }

  /** More than 0, up to {@code most}. */
  public static Range positive(double most) {
    return new Range(0, true, most);
  }

  /** Either way up to {@code most}, for offsets. */
  public static Range eitherWay(double most) {
    return new Range(-most, false, most);
  }

  public boolean holds(double value) {
    return value <= most && (open ? value > least : value >= least);
  }
}
