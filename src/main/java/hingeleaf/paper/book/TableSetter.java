package hingeleaf.paper.book;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.Wrapping;
import java.util.ArrayList;
import java.util.List;

/** A table to slabs, one for each row; its head comes again on every page. */
final class TableSetter {
  private static final double SPACE = 6;
  private static final double LEAST = 14;
  private static final double CUT = 2;
  private static final double SIZE = 9.5 * Look.PT;
  private static final double LEAD = 12.5 * Look.PT;
  private static final double PAD = 1.1;
  private static final Pen HAIR = Pen.solid(0.13, Look.HAIR);
  private static final Pen LINE = Pen.solid(0.25, Look.INK);

  private final Block.Table table;
  private final double width;
  private final Fonts fonts;
  private final double[] widths;

  /** For number columns: length of the widest part left of the line that they share. */
  private final double[] before;

  TableSetter(Block.Table table, double width, Fonts fonts) {
    this.table = table;
    this.width = width;
    this.fonts = fonts;
    this.before = new double[table.columns().size()];
    this.widths = natural();
    shrink();
  }

  List<Slab> slabs() {
    Slab head = head();
    List<Slab> slabs = new ArrayList<>();
    slabs.add(head.staying(!table.rows().isEmpty()));
    for (List<String> row : table.rows()) {
      Slab line = row(row);
      boolean first = slabs.size() == 1;
      slabs.add(first ? line : line.headed(List.of(head)));
    }
    return slabs;
  }

  private static String whole(String cell) {
    int i = 0;
    while (i < cell.length() && ("+-−0123456789".indexOf(cell.charAt(i)) >= 0)) {
      i++;
    }
    return cell.substring(0, i);
  }

  private double[] natural() {
    double[] natural = new double[table.columns().size()];
    for (int c = 0; c < natural.length; c++) {
      Block.Column column = table.columns().get(c);
      Weight weight = weight(column);
      double after = 0;
      for (List<String> row : table.rows()) {
        String cell = fonts.set(row.get(c));
        String whole = column.align() == Block.Align.NUMBER ? whole(cell) : "";
        before[c] = Math.max(before[c], fonts.width(whole, weight, SIZE));
        String rest = cell.substring(whole.length());
        after = Math.max(after, fonts.width(rest, weight, SIZE));
      }
      double title = fonts.width(column.title(), Weight.SEMIBOLD, Look.SMALL);
      natural[c] = Math.max(before[c] + after, title) + 1e-6;
    }
    return natural;
  }

  /** Text columns give way, each time the one whose narrowing costs the table fewest lines. */
  private void shrink() {
    List<ColumnText> texts = new ArrayList<>();
    for (int c = 0; c < widths.length; c++) {
      Block.Column column = table.columns().get(c);
      if (column.align() == Block.Align.LEFT) {
        texts.add(ColumnText.of(table, c, weight(column), SIZE, fonts));
      }
    }
    int[][] lines = new int[texts.size()][];
    for (int t = 0; t < lines.length; t++) {
      lines[t] = texts.get(t).lines(widths[texts.get(t).column()]);
    }
    while (sum() > width + 1e-6) {
      int whole = cheapest(texts, lines, true);
      int best = whole < 0 ? cheapest(texts, lines, false) : whole;
      if (best < 0) {
        return;
      }
      int c = texts.get(best).column();
      widths[c] = Math.max(LEAST, widths[c] - Math.min(CUT, sum() - width));
      lines[best] = texts.get(best).lines(widths[c]);
    }
  }

  /** The column to narrow, or -1; words are kept whole if wanted. */
  private int cheapest(List<ColumnText> texts, int[][] lines, boolean whole) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int t = 0; t < texts.size(); t++) {
      double w = widths[texts.get(t).column()];
      if (w <= LEAST || (whole && w - CUT < texts.get(t).longestWord())) {
        continue;
      }
      int[][] then = lines.clone();
      then[t] = texts.get(t).lines(w - CUT);
      // Among equals the widest gives way.
      double cost = tall(then) - w * 1e-3;
      if (cost < least) {
        least = cost;
        best = t;
      }
    }
    return best;
  }

  /** Lines of the whole table: every row is as tall as its tallest cell. */
  private int tall(int[][] lines) {
    int sum = 0;
    for (int r = 0; r < table.rows().size(); r++) {
      int most = 1;
      for (int[] column : lines) {
        most = Math.max(most, column[r]);
      }
      sum += most;
    }
    return sum;
  }

  private double sum() {
    double sum = (widths.length - 1) * SPACE;
    for (double w : widths) {
      sum += w;
    }
    return sum;
  }

  private static Weight weight(Block.Column column) {
    return column.strong() ? Weight.SEMIBOLD : Weight.REGULAR;
  }

  private Slab head() {
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    int most = 1;
    for (int c = 0; c < widths.length; c++) {
      Block.Column column = table.columns().get(c);
      List<String> lines =
          Wrapping.lines(column.title(), Weight.SEMIBOLD, Look.SMALL, widths[c], fonts);
      most = Math.max(most, lines.size());
      boolean right = column.align() == Block.Align.RIGHT;
      for (int i = 0; i < lines.size(); i++) {
        Vec2 at = new Vec2(right ? x + widths[c] : x, -LEAD * (i + 0.75));
        marks.add(words(lines.get(i), at, Look.SMALL, Weight.SEMIBOLD, right, Look.QUIET));
      }
      x += widths[c] + SPACE;
    }
    double high = most * LEAD + PAD;
    marks.add(new Mark.Stroke(Path.line(new Vec2(0, -high), new Vec2(rule(), -high)), LINE));
    return Slab.of(4, high, marks);
  }

  private double rule() {
    return Math.min(width, Math.max(sum(), Math.min(width, BookStyle.MEASURE)));
  }

  private Slab row(List<String> row) {
    List<Mark> marks = new ArrayList<>();
    double x = 0;
    int most = 1;
    for (int c = 0; c < widths.length; c++) {
      Block.Column column = table.columns().get(c);
      most = Math.max(most, cell(marks, row.get(c), column, x, c));
      x += widths[c] + SPACE;
    }
    double high = most * LEAD + 2 * PAD;
    marks.add(new Mark.Stroke(Path.line(new Vec2(0, -high), new Vec2(rule(), -high)), HAIR));
    return Slab.of(0, high, marks);
  }

  /** Writes a cell and tells how many lines it has. */
  private int cell(List<Mark> marks, String cell, Block.Column column, double x, int c) {
    Weight weight = weight(column);
    double y = -PAD - LEAD * 0.75;
    if (column.align() == Block.Align.NUMBER) {
      String set = fonts.set(cell);
      double indent = before[c] - fonts.width(whole(set), weight, SIZE);
      marks.add(words(set, new Vec2(x + indent, y), SIZE, weight, false, Look.INK));
      return 1;
    }
    boolean right = column.align() == Block.Align.RIGHT;
    List<String> lines = Wrapping.lines(cell, weight, SIZE, widths[c], fonts);
    for (int i = 0; i < lines.size(); i++) {
      Vec2 at = new Vec2(right ? x + widths[c] : x, y - i * LEAD);
      marks.add(words(lines.get(i), at, SIZE, weight, right, Look.INK));
    }
    return lines.size();
  }

  private static Mark words(
      String text, Vec2 at, double size, Weight weight, boolean right, String colour) {
    return new Mark.Words(text, at, size, weight, right ? Anchor.END : Anchor.START, colour, 0);
  }
}
