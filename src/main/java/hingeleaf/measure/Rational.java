package hingeleaf.measure;

import java.math.BigInteger;

/**
 * An exact fraction in lowest terms with a positive denominator.
 *
 * <p>Sizes are bounded by their makers: readers admit twelve digits, and arithmetic here is used a
 * handful of times on any one value.
 */
public record Rational(BigInteger numerator, BigInteger denominator)
    implements Comparable<Rational> {
  public static final Rational ZERO = of(0, 1);
  public static final Rational ONE = of(1, 1);

  public Rational {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("a fraction cannot have 0 below the line");
    }
    BigInteger common = numerator.gcd(denominator);
    if (denominator.signum() < 0) {
      common = common.negate();
    }
    numerator = numerator.divide(common);
    denominator = denominator.divide(common);
  }

  public static Rational of(long numerator, long denominator) {
    return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  public Rational plus(Rational o) {
    return new Rational(
        numerator.multiply(o.denominator).add(o.numerator.multiply(denominator)),
        denominator.multiply(o.denominator));
  }

  public Rational minus(Rational o) {
    return plus(o.negated());
  }

  public Rational times(Rational o) {
    return new Rational(numerator.multiply(o.numerator), denominator.multiply(o.denominator));
  }

  /**
   * This over {@code o}.
   *
   * @throws ArithmeticException if {@code o} is 0
   */
  public Rational over(Rational o) {
    return new Rational(numerator.multiply(o.denominator), denominator.multiply(o.numerator));
  }

  public Rational negated() {
    return new Rational(numerator.negate(), denominator);
  }

  public int signum() {
    return numerator.signum();
  }

  /** The largest whole number not above this. */
  public BigInteger floor() {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }

  /** The nearest {@code double}. */
  public double toDouble() {
    return numerator.bitLength() < 54 && denominator.bitLength() < 54
        ? (double) numerator.longValue() / denominator.longValue()
        : new java.math.BigDecimal(numerator)
            .divide(new java.math.BigDecimal(denominator), java.math.MathContext.DECIMAL64)
            .doubleValue();
  }

  @Override
  public int compareTo(Rational o) {
    return numerator.multiply(o.denominator).compareTo(o.numerator.multiply(denominator));
  }

  @Override
  public String toString() {
    return denominator.equals(BigInteger.ONE)
        ? numerator.toString()
        : numerator + "/" + denominator;
  }
}
