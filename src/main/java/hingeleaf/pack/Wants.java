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
 * @param lesson the class that is taught; {@link Lesson#NONE} for none
 * @param price what a price needs to know beside the bench
 */
public record Wants(
    MakerUnits units,
    boolean letter,
    int copies,
    boolean mirrored,
    Lesson lesson,
    PriceWants price) {
  /**
   * A class.
   *
   * @param seats how many learn, 0 where nobody is taught
   * @param minutes how long it lasts
   */
  public record Lesson(int seats, int minutes) {
    public static final Lesson NONE = new Lesson(0, 0);

    public Lesson {
      if (seats < 0 || minutes < 0 || (seats > 0 && minutes < 1)) {
        throw new IllegalArgumentException("a class has seats and minutes, not " + seats);
      }
    }
  }

  public Wants {
    if (copies < 1) {
      throw new IllegalArgumentException("at least one card is made, not " + copies);
    }
  }

  /** Nobody taught, nothing told of prices. */
  public Wants(MakerUnits units, boolean letter, int copies, boolean mirrored) {
    this(units, letter, copies, mirrored, Lesson.NONE, PriceWants.UNTOLD);
  }

  public Wants with(PriceWants prices) {
    return new Wants(units, letter, copies, mirrored, lesson, prices);
  }

  /** The same for a class; this one where it is the class that is wanted already. */
  public Wants teaching(Lesson taught) {
    return taught == lesson ? this : new Wants(units, letter, copies, mirrored, taught, price);
  }
}
