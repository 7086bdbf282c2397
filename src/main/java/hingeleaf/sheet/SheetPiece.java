package hingeleaf.sheet;

/**
 * One kind of piece to be cut.
 *
 * @param name what it is called
 * @param w width in nm
 * @param h height in nm
 * @param quantity how many are wanted, at least 1
 * @param rotate whether it may be turned by a quarter
 * @param grain which way the grain must run in it
 */
public record SheetPiece(String name, long w, long h, long quantity, boolean rotate, Grain grain) {

  /** Whether it may lie as written on that stock, grain and size considered. */
  public boolean liesUpright(SheetStock stock) {
    return grain.agrees(stock.grain()) && w <= stock.w() && h <= stock.h();
  }

  /** Whether it may lie turned by a quarter on that stock, grain and size considered. */
  public boolean liesTurned(SheetStock stock) {
    return rotate && grain.turned().agrees(stock.grain()) && h <= stock.w() && w <= stock.h();
  }
}
