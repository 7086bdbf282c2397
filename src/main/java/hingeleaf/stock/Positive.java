package hingeleaf.stock;

/** The one check that all records of the bench share: a figure is a number and not below 0. */
final class Positive {
  static void check(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + ": expected more than 0, found " + value);
    }
  }

  static void orZero(String what, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + ": expected 0 or more, found " + value);
    }
  }

  private Positive() {}
}
