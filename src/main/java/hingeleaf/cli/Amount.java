package hingeleaf.cli;

import java.math.BigDecimal;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads an amount of money or a percentage: 0 or more, with at most six decimals. */
final class Amount implements ITypeConverter<BigDecimal> {
  private static final BigDecimal MOST = new BigDecimal("1e9");
  private static final int DECIMALS = 6;
  private static final int LONGEST = 24;

  @Override
  public BigDecimal convert(String text) {
    try {
      BigDecimal amount = new BigDecimal(text.length() > LONGEST ? "" : text.strip());
      boolean small = amount.signum() >= 0 && amount.compareTo(MOST) <= 0;
      if (small && amount.scale() <= DECIMALS) {
        return amount;
      }
    } catch (NumberFormatException e) {
      // told below, in words of ours
    }
    throw new TypeConversionException("expected an amount such as 1.80, found '" + text + "'");
  }
}
