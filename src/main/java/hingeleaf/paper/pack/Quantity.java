package hingeleaf.paper.pack;

import hingeleaf.measure.Decimal;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;

/** How much of something, in the units in which a maker buys it. */
final class Quantity {
  /** Avoirdupois, by the International Yard and Pound Agreement, 1959. */
  private static final double OUNCE_G = 28.349523125;

  private static final double FOOT_M = 0.3048;
  private static final double SQUARE_INCH_CM2 = 2.54 * 2.54;

  private Quantity() {}

  /**
   * An amount in words.
   *
   * @param unit of the amount: "g", "m" or "cm2"; any other is written as it is
   */
  static String of(double amount, String unit, MakerUnits units) {
    boolean inches = units.unit() == Unit.IN;
    return switch (unit) {
      case "g" -> inches ? decimals(amount / OUNCE_G, 2) + " oz" : few(amount) + " g";
      case "m" -> inches ? few(amount / FOOT_M) + " ft" : few(amount) + " m";
      case "cm2" -> inches ? few(amount / SQUARE_INCH_CM2) + " sq in" : few(amount) + " cm²";
      default -> few(amount) + " " + unit;
    };
  }

  private static String few(double value) {
    return decimals(value, value < 10 ? 1 : 0);
  }

  private static String decimals(double value, int places) {
    return Decimal.fixed(value, places);
  }
}
