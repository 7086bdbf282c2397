package hingeleaf.paper;

/**
 * What the maker's printer takes, upright, mm.
 *
 * @param name as shown
 */
public record PaperSize(String name, double width, double height) {
  /** ISO 216. */
  public static final PaperSize A4 = new PaperSize("A4", 210, 297);

  /** ANSI/ASME Y14.1 size A, 8 1/2 x 11 in. */
  public static final PaperSize US_LETTER = new PaperSize("US letter", 215.9, 279.4);
}
