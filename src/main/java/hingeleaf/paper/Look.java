package hingeleaf.paper;

/** The few colours and sizes that all pages share: ink on quiet paper, and one accent. */
public final class Look {
  public static final String INK = "#23272b";

  /** Dimensions, captions, what is said in a low voice. */
  public static final String QUIET = "#6b6f72";

  /** Hair rules. */
  public static final String HAIR = "#c4c0b7";

  /** A tone behind rows and figures. */
  public static final String WASH = "#f3f0e9";

  /** Behind pictures on a screen. */
  public static final String PAPER = "#faf8f3";

  /** Scores, step numbers, and nothing else. */
  public static final String ACCENT = "#a8481f";

  /** One point of type, mm (1 in = 72 pt: CSS Values and Units). */
  public static final double PT = 25.4 / 72;

  public static final double BODY = 10.5 * PT;
  public static final double SMALL = 8.5 * PT;
  public static final double TINY = 7 * PT;
  public static final double LEAD = 14.5 * PT;

  private Look() {}
}
