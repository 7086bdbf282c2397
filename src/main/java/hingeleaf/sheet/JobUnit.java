package hingeleaf.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The unit in which a sheet job is written, and in which its plan is told. */
public enum JobUnit {
  MM("mm", 1_000_000L),
  CM("cm", 10_000_000L),
  IN("in", 25_400_000L);

  private final String label;
  private final long nanometres;

  JobUnit(String label, long nanometres) {
    this.label = label;
    this.nanometres = nanometres;
  }

  /** The word in the job file: mm, cm or in. */
  public String label() {
    return label;
  }

  /** Nanometres in one unit; the inch is 25.4 mm exactly (international inch, 1959). */
  public long nanometres() {
    return nanometres;
  }

  /**
   * A written size in whole nanometres, rounded down. Rounding down everything keeps every exact
   * fit: floor(a) + floor(b) is never more than floor(a + b).
   *
   * @throws ArithmeticException when the size does not fit in 63 bits of nanometres
   */
  public long toNanometres(BigDecimal size) {
    return size.multiply(BigDecimal.valueOf(nanometres))
        .setScale(0, RoundingMode.FLOOR)
        .longValueExact();
  }

  /** A length as a decimal in this unit, to a millionth at most, without needless zeros. */
  public BigDecimal fromNanometres(long nm) {
    BigDecimal exact =
        BigDecimal.valueOf(nm)
            .divide(BigDecimal.valueOf(nanometres), 9, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0) : exact;
  }

  /** A length as a maker reads it: number, blank, unit. */
  public String tell(long nm) {
    BigDecimal value = fromNanometres(nm).setScale(6, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return value.toPlainString() + " " + label;
  }
}
