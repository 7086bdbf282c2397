package hingeleaf.paper.template;

import hingeleaf.geom.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * How a length or an area is spread over windows of one size that overlap.
 *
 * @param columns at least 1
 * @param rows at least 1
 */
record Tiling(int columns, int rows, double width, double height, double overlap) {
  /** More pages than this for one piece help nobody. */
  private static final int MOST = 100;

  /**
   * @param pieceWidth mm
   * @param pieceHeight mm
   * @param width of a window, mm, more than {@code overlap}
   * @param height of a window, mm, more than {@code overlap}
   * @throws IllegalArgumentException where more than a hundred windows were needed
   */
  static Tiling of(
      double pieceWidth, double pieceHeight, double width, double height, double overlap) {
    double columns = count(pieceWidth, width, overlap);
    double rows = count(pieceHeight, height, overlap);
    if (!(columns * rows <= MOST)) {
      throw new IllegalArgumentException(
          "a piece of " + pieceWidth + " x " + pieceHeight + " mm needs too many pages");
    }
    return new Tiling((int) columns, (int) rows, width, height, overlap);
  }

  private static double count(double length, double window, double overlap) {
    double more = Math.ceil((length - overlap) / (window - overlap) - 1e-9);
    return Math.max(1, more);
  }

  int count() {
    return columns * rows;
  }

  /** The window of a tile in piece coordinates; column 0 is left, row 0 is on top. */
  Box window(int column, int row, double pieceHeight) {
    double x = column * (width - overlap);
    double top = pieceHeight - row * (height - overlap);
    return new Box(x, top - height, x + width, top);
  }

  /** What a tile is called: A1 is at the upper left, B1 right of it, A2 below it. */
  static String name(int column, int row) {
    return (char) ('A' + column % 26) + Integer.toString(row + 1);
  }

  /** Middle lines of the overlaps between neighbours, x in piece coordinates. */
  List<Double> seamsX() {
    List<Double> seams = new ArrayList<>();
    for (int c = 1; c < columns; c++) {
      seams.add(c * (width - overlap) + overlap / 2);
    }
    return seams;
  }

  /** Middle lines of the overlaps between neighbours, y in piece coordinates. */
  List<Double> seamsY(double pieceHeight) {
    List<Double> seams = new ArrayList<>();
    for (int r = 1; r < rows; r++) {
      seams.add(pieceHeight - r * (height - overlap) - overlap / 2);
    }
    return seams;
  }
}
