package hingeleaf.price;

import java.math.BigDecimal;

/** The checks that all given amounts share. */
final class Amounts {
  static void notNegative(String what, BigDecimal amount) {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException(what + ": expected 0 or more, found " + amount);
    }
  }

  static void positive(String what, BigDecimal amount) {
    if (amount.signum() <= 0) {
      throw new IllegalArgumentException(what + ": expected more than 0, found " + amount);
    }
  }

  private Amounts() {}
}
