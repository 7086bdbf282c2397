package hingeleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How one maker's plan writes lengths: a unit and the finest step of their ruler.
 *
 * <p>{@link #text} never hides a rounding: what is not on a step is printed "about", with the rest.
 *
 * @param unit in which everything is written
 * @param step finest division of the ruler; a power of two of an inch, or a decimal of a millimetre
 */
public record MakerUnits(Unit unit, Length step) {
  /** The usual rulers: 1/16 in, or 0.5 mm. */
  public static MakerUnits of(Unit unit) {
    return unit == Unit.IN
        ? new MakerUnits(unit, Length.of(Rational.of(1, 16), Unit.IN))
        : new MakerUnits(unit, Length.of(Rational.of(1, 2), Unit.MM));
  }

  public MakerUnits {
    if (step.signum() <= 0) {
      throw new IllegalArgumentException("a ruler's step must be more than 0");
    }
  }

  /**
   * A length with its unit: {@code 7 1/2 in}, {@code 185 mm}, {@code 18.5 cm}; where it is not on a
   * step, the nearest step and how far the true length is from it: {@code about 5 11/16 in (0.016
   * in less)} is 0.016 in less than 5 11/16 in.
   */
  public String text(double mm) {
    String near = number(mm) + " " + unit.word();
    return exact(mm) ? near : "about " + near + " (" + rest(mm) + ")";
  }

  public String text(Length length) {
    return text(length.mm());
  }

  /** The nearest step without unit or error, for a drawing that says its unit once. */
  public String number(double mm) {
    Length near = nearest(mm);
    return unit == Unit.IN ? mixed(near.in(Unit.IN)) : decimal(near.in(unit));
  }

  /** The nearest step with its unit and no error: {@code 5 11/16 in}. */
  public String rounded(double mm) {
    return number(mm) + " " + unit.word();
  }

  /** Two sizes: {@code 198 x 150 mm}; the nearest steps, marked "about" where either is rounded. */
  public String size(double width, double height) {
    String both = number(width) + " x " + number(height) + " " + unit.word();
    return exact(width) && exact(height) ? both : "about " + both;
  }

  /** Small things such as a paper's thickness: {@code 0.36 mm} or {@code 0.014 in}. */
  public String fine(double mm) {
    boolean inch = unit == Unit.IN;
    double value = inch ? mm / Unit.IN.mm().toDouble() : mm;
    BigDecimal shown = BigDecimal.valueOf(value).setScale(inch ? 3 : 2, RoundingMode.HALF_UP);
    return trimmed(shown) + (inch ? " in" : " mm");
  }

  /** Whether the length stands on a step, to {@link Length#EXACT_MM}. */
  public boolean exact(double mm) {
    return Math.abs(nearest(mm).mm() - mm) <= Length.EXACT_MM;
  }

  /** The step nearest to a length, exactly. */
  public Length nearest(double mm) {
    if (!Double.isFinite(mm)) {
      throw new IllegalArgumentException("not a length: " + mm);
    }
    long steps = (long) Math.floor((mm + Length.EXACT_MM) / step.mm() + 0.5);
    return step.times(steps);
  }

  /** In the maker's own unit: whoever works in inches has no millimetres on the ruler. */
  private String rest(double mm) {
    double error = mm - nearest(mm).mm();
    boolean inch = unit == Unit.IN;
    double size = Math.abs(error) / (inch ? Unit.IN.mm().toDouble() : 1);
    BigDecimal shown = BigDecimal.valueOf(size).setScale(inch ? 3 : 2, RoundingMode.HALF_UP);
    String least = inch ? "under 0.001" : "under 0.01";
    return (shown.signum() == 0 ? least : trimmed(shown))
        + (inch ? " in " : " mm ")
        + (error < 0 ? "less" : "more");
  }

  private static String mixed(Rational inches) {
    Rational size = inches.signum() < 0 ? inches.negated() : inches;
    Rational whole = new Rational(size.floor(), java.math.BigInteger.ONE);
    Rational part = size.minus(whole);
    String text =
        part.signum() == 0
            ? whole.toString()
            : whole.signum() == 0 ? part.toString() : whole + " " + part;
    return inches.signum() < 0 ? "-" + text : text;
  }

  private static String decimal(Rational value) {
    return trimmed(
        new BigDecimal(value.numerator())
            .divide(new BigDecimal(value.denominator()), 6, RoundingMode.HALF_UP));
  }

  private static String trimmed(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
