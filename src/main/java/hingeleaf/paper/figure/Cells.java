package hingeleaf.paper.figure;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Wrapping;
import java.util.ArrayList;
import java.util.List;

/** Small drawings side by side, each with a few words below it, in as many rows as they need. */
public final class Cells {
  private static final double GAP = 5;
  private static final double LEAST = 32;
  private static final double LINE = Look.SMALL * 1.25;

  /** One drawing with what is said of it; the words may be empty. */
  public record Cell(Drawing drawing, String words) {}

  private Cells() {}

  /**
   * All in one drawing.
   *
   * @param cells at least one, none wider than {@code width}
   * @param width of the row, mm
   */
  public static Drawing of(List<Cell> cells, double width, Fonts fonts) {
    List<List<Cell>> rows = rows(cells, width);
    double wide = 0;
    double high = 0;
    for (List<Cell> row : rows) {
      wide = Math.max(wide, rowWidth(row));
      high += rowHeight(row, fonts) + (high > 0 ? GAP : 0);
    }
    List<Mark> marks = new ArrayList<>();
    double top = high;
    for (List<Cell> row : rows) {
      lay(row, top, marks, fonts);
      top -= rowHeight(row, fonts) + GAP;
    }
    return Drawing.plain(wide, high, cells.get(0).words(), marks);
  }

  private static List<List<Cell>> rows(List<Cell> cells, double width) {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(new ArrayList<>());
    for (Cell c : cells) {
      List<Cell> row = rows.get(rows.size() - 1);
      if (!row.isEmpty() && rowWidth(row) + GAP + wide(c) > width + 1e-6) {
        row = new ArrayList<>();
        rows.add(row);
      }
      row.add(c);
    }
    return rows;
  }

  private static double rowWidth(List<Cell> row) {
    return row.stream().mapToDouble(Cells::wide).sum() + GAP * (row.size() - 1);
  }

  /** Words need some width, however narrow the drawing is. */
  private static double wide(Cell c) {
    return c.words().isEmpty() ? c.drawing().width() : Math.max(LEAST, c.drawing().width());
  }

  private static double rowHeight(List<Cell> row, Fonts fonts) {
    double drawings = row.stream().mapToDouble(c -> c.drawing().height()).max().orElse(0);
    int lines = row.stream().mapToInt(c -> words(c, fonts).size()).max().orElse(0);
    return drawings + lines * LINE + (lines > 0 ? 1 : 0);
  }

  private static List<String> words(Cell c, Fonts fonts) {
    return c.words().isEmpty()
        ? List.of()
        : Wrapping.lines(c.words(), Weight.ITALIC, Look.SMALL, wide(c), fonts);
  }

  private static void lay(List<Cell> row, double top, List<Mark> marks, Fonts fonts) {
    double tallest = row.stream().mapToDouble(c -> c.drawing().height()).max().orElse(0);
    double x = 0;
    for (Cell c : row) {
      marks.add(c.drawing().moved(new Vec2(x, top - tallest)));
      double y = top - tallest - 1 - Look.SMALL * 0.9;
      for (String line : words(c, fonts)) {
        marks.add(
            new Mark.Words(
                line, new Vec2(x, y), Look.SMALL, Weight.ITALIC, Anchor.START, Look.QUIET, 0));
        y -= LINE;
      }
      x += wide(c) + GAP;
    }
  }
}
