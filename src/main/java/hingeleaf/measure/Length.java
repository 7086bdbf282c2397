package hingeleaf.measure;

import java.math.BigInteger;

/**
 * A length, exact: a fraction of millimetres. May be negative, as in an offset to the left.
 *
 * @param inMm how many millimetres
 */
public record Length(Rational inMm) implements Comparable<Length> {
  /** Lengths closer than this, in mm, are printed as exact. */
  public static final double EXACT_MM = 1e-6;

  public static final Length ZERO = new Length(Rational.ZERO);

  /** A whole number of a unit. */
  public static Length of(long number, Unit unit) {
    return of(Rational.of(number, 1), unit);
  }

  public static Length of(Rational number, Unit unit) {
    return new Length(number.times(unit.mm()));
  }

  /**
   * Reads a length as people write it, such as {@code 7}, {@code 7 1/2"}, {@code 7½ in}, {@code
   * 18.5 cm}, {@code 1' 2"} or {@code 0,5 cm}.
   *
   * @param bare how a number without a unit is meant
   * @return the length, at most 10 m either way, or what is wrong with the text
   */
  public static Reading read(String text, Unit bare) {
    return new LengthReader(text, bare).read();
  }

  /**
   * A regular expression (ECMA-262) for what {@link #read} takes, for schemas; it does not know the
   * bounds on size and digits.
   */
  public static String pattern() {
    return "^\\s*[-+\u2212]?" + LengthReader.UNSIGNED + "\\s*$";
  }

  /** {@link #pattern} without a minus sign. */
  public static String unsignedPattern() {
    return "^\\s*\\+?" + LengthReader.UNSIGNED + "\\s*$";
  }

  /** The nearest {@code double} of millimetres. */
  public double mm() {
    return inMm.toDouble();
  }

  /** This in another unit, exactly. */
  public Rational in(Unit unit) {
    return inMm.over(unit.mm());
  }

  public Length plus(Length o) {
    return new Length(inMm.plus(o.inMm));
  }

  public Length minus(Length o) {
    return new Length(inMm.minus(o.inMm));
  }

  /** This so many times. */
  public Length times(long k) {
    return new Length(inMm.times(Rational.of(k, 1)));
  }

  /** An equal share of this; {@code parts} must not be 0. */
  public Length over(long parts) {
    return new Length(inMm.over(Rational.of(parts, 1)));
  }

  public int signum() {
    return inMm.signum();
  }

  /** How many whole steps fit in this from below; the step must be more than 0. */
  BigInteger stepsBelow(Length step) {
    return inMm.over(step.inMm).floor();
  }

  @Override
  public int compareTo(Length o) {
    return inMm.compareTo(o.inMm);
  }

  /** Millimetres as a fraction, for tests and logs; makers read {@link MakerUnits}. */
  @Override
  public String toString() {
    return inMm + " mm";
  }
}
