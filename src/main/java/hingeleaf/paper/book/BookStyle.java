package hingeleaf.paper.book;

import hingeleaf.paper.Fonts;
import hingeleaf.paper.PaperSize;

/**
 * What all pages of a book share.
 *
 * @param running words at the foot of every page
 */
public record BookStyle(PaperSize paper, String running, Fonts fonts) {
  static final double SIDE = 20;
  static final double TOP = 18;
  static final double FOOT = 20;

  /** The longest line of running words: some 75 signs of body type. */
  static final double MEASURE = 128;

  /** Width that tables and figures may have, mm. */
  public double width() {
    return paper.width() - 2 * SIDE;
  }

  /** Height that a figure may have on a page of its own, mm. */
  public double height() {
    return paper.height() - TOP - FOOT;
  }
}
