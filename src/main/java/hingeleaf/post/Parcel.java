package hingeleaf.post;

/**
 * A card ready for its envelope: folded flat, or in a box.
 *
 * @param width of the footprint, mm; more than 0
 * @param height of the footprint, mm; more than 0
 * @param limp most paper stacked in any one spot, mm
 * @param rigid thickness as stiff card stacks, mm; at least limp. The post is decided by this one
 * @param uneven how much thicker the thickest spot is than the thinnest, mm; 0 for an even pile
 * @param bends whether it bends in the hands: a card folded flat does, a box or board does not
 * @param grams with glue, foam and windows, without envelope; 0 or more
 */
public record Parcel(
    double width,
    double height,
    double limp,
    double rigid,
    double uneven,
    boolean bends,
    double grams) {
  public Parcel {
    if (!(width > 0) || !(height > 0) || Double.isInfinite(width) || Double.isInfinite(height)) {
      throw new IllegalArgumentException(
          "parcel: expected a size more than 0, found " + width + " x " + height + " mm");
    }
    if (!(limp >= 0) || !(rigid >= limp - 1e-6) || Double.isInfinite(rigid)) {
      throw new IllegalArgumentException(
          "parcel: expected 0 <= limp <= rigid, found limp " + limp + " and rigid " + rigid);
    }
    if (!(uneven >= 0) || !(grams >= 0) || Double.isInfinite(uneven) || Double.isInfinite(grams)) {
      throw new IllegalArgumentException(
          "parcel: expected 0 or more, found uneven " + uneven + " mm and " + grams + " g");
    }
  }

  /** A card folded flat. */
  public static Parcel flat(
      double width, double height, double limp, double rigid, double uneven, double grams) {
    return new Parcel(width, height, limp, rigid, uneven, true, grams);
  }

  /** A box by its outer size: it does not bend and does not spring open. */
  public static Parcel boxed(double width, double height, double depth, double grams) {
    return new Parcel(width, height, depth, depth, 0, false, grams);
  }
}
