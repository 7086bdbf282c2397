package hingeleaf.fold.contact;

import org.jspecify.annotations.Nullable;

/**
 * What frees an ornament that jams, each tried against every other part of the card.
 *
 * @param part panel id of the ornament
 * @param move the least move along its face that frees it, in the made card's x and y, mm; null
 *     where none within 60 mm does
 * @param height to which it must be thinned, foam and card together, mm; null where even bare card
 *     jams
 */
public record Remedy(String part, @Nullable Move move, @Nullable Double height) {
  /** Right and up, mm; one of the two is 0. */
  public record Move(double right, double up) {
    public double length() {
      return Math.abs(right) + Math.abs(up);
    }
  }
}
