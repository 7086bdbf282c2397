package hingeleaf.stock;

/**
 * The US way to weigh paper: pounds of 500 sheets of a basis size that depends on the kind.
 *
 * <p>g/m2 (ISO 536) = pounds x 453.59237 g / (500 x basis sheet in m2). The international pound is
 * 453.59237 g exactly and the inch 25.4 mm exactly (agreement of 1959). Basis sizes: as printers'
 * conversion tables give them. Printed factors are rounded; some tables print 2.708 for cover where
 * the sizes give 2.7041.
 */
public enum BasisWeight {
  COVER(20, 26),
  /** Text and book papers. */
  TEXT(25, 38),
  /** Bond, ledger and writing papers; also envelope papers. */
  BOND(17, 22),
  INDEX(25.5, 30.5),
  TAG(24, 36),
  BRISTOL(22.5, 28.5);

  private static final double GRAMS_PER_POUND = 453.59237;
  private static final double SQUARE_METRES_PER_SQUARE_INCH = 0.0254 * 0.0254;
  private static final int SHEETS = 500;

  private final double factor;

  BasisWeight(double widthInches, double heightInches) {
    factor =
        GRAMS_PER_POUND / (SHEETS * widthInches * heightInches * SQUARE_METRES_PER_SQUARE_INCH);
  }

  /** g/m2 of a paper that weighs so many pounds by this basis. */
  public double grammage(double pounds) {
    return pounds * factor;
  }

  /** Pounds by this basis of a paper of so many g/m2. */
  public double pounds(double grammage) {
    return grammage / factor;
  }
}
