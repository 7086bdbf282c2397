package hingeleaf.paper.book;

import hingeleaf.paper.Fonts;
import hingeleaf.paper.Mark.Weight;
import java.util.ArrayList;
import java.util.List;

/**
 * The words of a column as lengths, to try widths quickly.
 *
 * @param cells for each row the lengths of its words, mm
 * @param space length of a space, mm
 * @param longestWord of all cells, mm
 */
record ColumnText(int column, List<double[]> cells, double space, double longestWord) {
  static ColumnText of(Block.Table table, int column, Weight weight, double size, Fonts fonts) {
    List<double[]> cells = new ArrayList<>();
    double longest = 0;
    for (List<String> row : table.rows()) {
      String[] words = fonts.set(row.get(column)).strip().split("\\s+");
      double[] lengths = new double[words.length];
      for (int i = 0; i < words.length; i++) {
        lengths[i] = fonts.width(words[i], weight, size);
        longest = Math.max(longest, lengths[i]);
      }
      cells.add(lengths);
    }
    return new ColumnText(column, cells, fonts.width(" ", weight, size), longest);
  }

  /** How many lines each cell takes in a column of a width. */
  int[] lines(double width) {
    int[] lines = new int[cells.size()];
    for (int r = 0; r < lines.length; r++) {
      double x = 0;
      lines[r] = 1;
      for (double word : cells.get(r)) {
        boolean first = x == 0;
        if (!first && x + space + word > width) {
          lines[r]++;
          x = word;
        } else {
          x += first ? word : space + word;
        }
      }
    }
    return lines;
  }
}
