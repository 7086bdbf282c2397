package hingeleaf.plan;

/**
 * How high letters must be to be read.
 *
 * <p>Letter height = 2 pi D a / 21600 for a viewing distance D and an angle of a minutes of arc
 * (NUREG-0700, 1.3.1-4). At least 16', better 20' to 22' (ISO 9241-3).
 */
public final class LetterHeight {
  /** From here a card in the hand is read, mm: the usual near distance of printed text. */
  public static final double HELD_MM = 400;

  /** Minutes of arc under which letters are hard to read. */
  public static final double LEAST = 16;

  /** Minutes of arc at which letters are read with ease. */
  public static final double EASY = 20;

  private LetterHeight() {}

  /**
   * The height of a capital, mm.
   *
   * @param distance from the eye, mm, 0 or more
   * @param minutes of arc, 0 or more
   */
  public static double of(double distance, double minutes) {
    return 2 * Math.PI * distance * minutes / 21_600;
  }
}
