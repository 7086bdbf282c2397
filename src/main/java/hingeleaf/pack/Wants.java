package hingeleaf.pack;

import hingeleaf.measure.MakerUnits;

/**
 * What is asked of a pack.
 *
 * @param units in which the plan is written; in another system than the design's the card is a
 *     separately rounded version
 * @param letter whether pages are US letter; A4 otherwise
 * @param copies how many cards are made, at least 1
 * @param mirrored whether templates are mirrored, for marking on the back
 */
public record Wants(MakerUnits units, boolean letter, int copies, boolean mirrored) {
  public Wants {
    if (copies < 1) {
      throw new IllegalArgumentException("at least one card is made, not " + copies);
    }
  }
}
