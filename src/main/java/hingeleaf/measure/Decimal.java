package hingeleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in sentences: the point is a point everywhere, halves are rounded away from zero. */
public final class Decimal {
  private Decimal() {}

  /**
   * A number with so many decimals, zeros kept: {@code fixed(2.5, 2)} is "2.50".
   *
   * @throws NumberFormatException if it is not finite
   */
  public static String fixed(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  /** The same without trailing zeros, nor a point where nothing follows it. */
  public static String shortest(double value, int places) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
