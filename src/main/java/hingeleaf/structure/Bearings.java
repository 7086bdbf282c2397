package hingeleaf.structure;

import hingeleaf.measure.MakerUnits;
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
    double step = bench.trimmer().step();
    return Math.floor(mm / step + 1e-9) * step;
  }

  /** The nearest length on the trimmer's marks; for sizes that we choose. */
  public double nearest(double mm) {
    double step = bench.trimmer().step();
    return Math.rint(mm / step) * step;
  }
}
