package hingeleaf.price;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact amount in the bench's money: a fraction in lowest terms. A third of a sheet for 1.00 is
 * a third, so that three of them make 1.00 again; a decimal number cannot do that.
 *
 * @param numerator any sign
 * @param denominator more than 0
 */
public record Money(BigInteger numerator, BigInteger denominator) implements Comparable<Money> {
  public static final Money ZERO = new Money(BigInteger.ZERO, BigInteger.ONE);

  /**
   * Nobody pays, or measures, with more digits; keeps a mistyped 1e999999999 from filling memory.
   */
  private static final int MOST_DIGITS = 30;

  public Money {
    if (denominator.signum() <= 0) {
      throw new ArithmeticException("money: nothing can be shared among " + denominator);
    }
    BigInteger common = numerator.gcd(denominator);
    numerator = numerator.divide(common);
    denominator = denominator.divide(common);
  }

  /**
   * A decimal amount, exactly.
   *
   * @throws IllegalArgumentException for more than 30 digits before or after the point
   */
  public static Money of(BigDecimal amount) {
    checkDigits(amount);
    return new Money(
        amount.movePointRight(Math.max(0, amount.scale())).toBigIntegerExact(),
        BigInteger.TEN.pow(Math.max(0, amount.scale())));
  }

  /** A decimal amount as written, such as "1.25". */
  public static Money of(String amount) {
    return of(new BigDecimal(amount));
  }

  public Money plus(Money other) {
    return new Money(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  public Money minus(Money other) {
    return plus(new Money(other.numerator.negate(), other.denominator));
  }

  /** So many times this, exactly. */
  public Money times(BigDecimal factor) {
    Money by = of(factor);
    return new Money(numerator.multiply(by.numerator), denominator.multiply(by.denominator));
  }

  public Money times(long factor) {
    return new Money(numerator.multiply(BigInteger.valueOf(factor)), denominator);
  }

  /**
   * One of so many equal shares, exactly.
   *
   * @throws ArithmeticException unless there is more than 0 of them
   */
  public Money dividedBy(BigDecimal shares) {
    Money by = of(shares);
    return new Money(numerator.multiply(by.denominator), denominator.multiply(by.numerator));
  }

  public Money dividedBy(long shares) {
    return new Money(numerator, denominator.multiply(BigInteger.valueOf(shares)));
  }

  public boolean isZero() {
    return numerator.signum() == 0;
  }

  /**
   * As it is printed: halves are rounded up.
   *
   * @param digits after the point: 2 for most moneys, 0 for yen
   */
  public BigDecimal rounded(int digits) {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), digits, RoundingMode.HALF_UP);
  }

  /** This in proportion to another amount, to 34 digits; the other must not be 0. */
  BigDecimal per(Money other) {
    return new BigDecimal(numerator.multiply(other.denominator))
        .divide(new BigDecimal(denominator.multiply(other.numerator)), MathContext.DECIMAL128);
  }

  @Override
  public int compareTo(Money other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  private static void checkDigits(BigDecimal amount) {
    long before = (long) amount.precision() - amount.scale();
    if (amount.scale() > MOST_DIGITS || before > MOST_DIGITS) {
      throw new IllegalArgumentException(
          "money: expected at most " + MOST_DIGITS + " digits before or after the point");
    }
  }
}
