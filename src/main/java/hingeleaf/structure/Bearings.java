package hingeleaf.structure;

import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Bench;

/**
 * What a structure is built with: the bench, how lengths are written, and the lettering.
 *
 * @param bench what the maker owns
 * @param units in which sentences name lengths
 * @param lettering of words
 */
public record Bearings(Bench bench, MakerUnits units, Lettering lettering) {
  /** A length in a sentence. */
  public String say(double mm) {
    return units.text(mm);
  }

  /** The largest length on the trimmer's marks that is not more; for sizes that we choose. */
  public double down(double mm) {
    return Math.floor(mm / mark() + 1e-9) * mark();
  }

  /** The smallest length on the trimmer's marks that is not less; for sizes that we choose. */
  public double up(double mm) {
    return Math.ceil(mm / mark() - 1e-9) * mark();
  }

  /** The nearest length on the trimmer's marks; for sizes that we choose. */
  public double nearest(double mm) {
    return Math.rint(mm / mark()) * mark();
  }

  /**
   * From one mark to the next: the trimmer's, or the ruler's where the plan is in another system.
   */
  private double mark() {
    boolean same = bench.inches() == (units.unit() == Unit.IN);
    return same ? bench.trimmer().step() : units.step().mm();
  }
}
