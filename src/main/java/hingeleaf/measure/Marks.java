package hingeleaf.measure;

import java.math.BigInteger;

/**
 * Evenly spaced marks from 0, such as those of a ruler or the grooves of a scoring board.
 *
 * @param step from one mark to the next, more than 0
 */
public record Marks(Length step) {
  public Marks {
    if (step.signum() <= 0) {
      throw new IllegalArgumentException("marks must be some way apart, not " + step);
    }
  }

  /** The last mark not beyond {@code at}. */
  public Length down(Length at) {
    return mark(at.stepsBelow(step));
  }

  /** The first mark not before {@code at}. */
  public Length up(Length at) {
    Length below = down(at);
    return below.compareTo(at) == 0 ? below : below.plus(step);
  }

  /** The mark nearest to {@code at}, the further one of two equally near. */
  public Length nearest(Length at) {
    return mark(at.plus(step.over(2)).stepsBelow(step));
  }

  /** Whether {@code at} stands on a mark, to {@link Length#EXACT_MM}. */
  public boolean on(double at) {
    return Math.abs(nearest(at) - at) <= Length.EXACT_MM;
  }

  /** {@link #down(Length)} in mm; a value within {@link Length#EXACT_MM} of a mark is on it. */
  public double down(double at) {
    return Math.floor((at + Length.EXACT_MM) / step.mm()) * step.mm();
  }

  /** {@link #up(Length)} in mm; a value within {@link Length#EXACT_MM} of a mark is on it. */
  public double up(double at) {
    return Math.ceil((at - Length.EXACT_MM) / step.mm()) * step.mm() + 0.0;
  }

  /** {@link #nearest(Length)} in mm. */
  public double nearest(double at) {
    return Math.floor((at + Length.EXACT_MM) / step.mm() + 0.5) * step.mm();
  }

  private Length mark(BigInteger number) {
    return new Length(step.inMm().times(new Rational(number, BigInteger.ONE)));
  }
}
