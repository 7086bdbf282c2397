package hingeleaf.mend;

import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths in sentences and in the text of a design, as true as they were measured. */
final class Said {
  private static final int DECIMALS = 4;

  private Said() {}

  /** With its unit: on a mark of the ruler as makers write it, else to a hundredth of a mm. */
  static String mm(Pack pack, double mm) {
    MakerUnits units = pack.inputs().wants().units();
    return units.exact(mm) ? units.text(mm) : units.fine(mm);
  }

  static String bare(Pack pack, double mm) {
    String text = mm(pack, mm);
    return text.substring(0, text.lastIndexOf(' '));
  }

  static String size(Pack pack, double width, double height) {
    return bare(pack, width) + " x " + mm(pack, height);
  }

  /** As a bare number in the design's unit. */
  static String yaml(Pack pack, double mm) {
    double unit = pack.inputs().design().unit().mm().toDouble();
    BigDecimal number = BigDecimal.valueOf(mm / unit).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
