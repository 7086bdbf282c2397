package hingeleaf.paper.figure;

import hingeleaf.geom.Vec2;
import hingeleaf.pack.SizeSweep;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.raster.PngWriter;
import hingeleaf.paper.svg.SvgWriter;
import java.util.ArrayList;
import java.util.List;

/** How many sheets a card takes at each size of a sweep, as steps; 120 x 70 mm. */
public final class StepPlot {
  private static final double WIDTH = 120;
  private static final double HEIGHT = 70;
  private static final double LEFT = 14;
  private static final double LOW = 14;
  private static final double RIGHT = 6;
  private static final double TOP = 8;
  private static final int PIXELS = 1200;

  private final SizeSweep sweep;
  private final List<Mark> marks = new ArrayList<>();
  private final int most;

  private StepPlot(SizeSweep sweep) {
    this.sweep = sweep;
    this.most = Math.max(1, sweep.rows().stream().mapToInt(SizeSweep.Row::sheets).max().orElse(1));
  }

  public static String svg(SizeSweep sweep) {
    return SvgWriter.write(drawing(sweep), "sheets by size");
  }

  public static byte[] png(SizeSweep sweep, Fonts fonts) {
    return PngWriter.write(drawing(sweep), PIXELS, Look.PAPER, fonts);
  }

  /** The plot; sizes that cannot be made leave a gap. */
  public static Drawing drawing(SizeSweep sweep) {
    StepPlot plot = new StepPlot(sweep);
    plot.axes();
    plot.steps();
    return Drawing.plain(WIDTH, HEIGHT, "sheets by size", plot.marks);
  }

  private double x(double mm) {
    double least = sweep.rows().get(0).mm();
    double span = Math.max(1e-9, sweep.rows().get(sweep.rows().size() - 1).mm() - least);
    return LEFT + (WIDTH - LEFT - RIGHT) * (mm - least) / span;
  }

  private double y(double sheets) {
    return LOW + (HEIGHT - LOW - TOP) * sheets / most;
  }

  private void axes() {
    int every = Math.max(1, (int) Math.ceil(most / 6.0));
    for (int n = 0; n <= most; n += every) {
      marks.add(
          new Mark.Stroke(
              Path.line(new Vec2(LEFT, y(n)), new Vec2(WIDTH - RIGHT, y(n))), Pen.RULE));
      words(String.valueOf(n), new Vec2(LEFT - 2, y(n) - 1), Mark.Anchor.END);
    }
    int rows = sweep.rows().size();
    int step = Math.max(1, (int) Math.ceil(rows / 8.0));
    for (int i = 0; i < rows; i += step) {
      double mm = sweep.rows().get(i).mm();
      words(sweep.units().number(mm), new Vec2(x(mm), LOW - 4.5), Mark.Anchor.MIDDLE);
    }
    words("sheets", new Vec2(2, HEIGHT - 4.5), Mark.Anchor.START);
    String name = sweep.size().substring(sweep.size().lastIndexOf('.') + 1);
    words(name + ", " + sweep.units().unit().word(), new Vec2(WIDTH - RIGHT, 3), Mark.Anchor.END);
  }

  private void words(String text, Vec2 at, Mark.Anchor anchor) {
    marks.add(new Mark.Words(text, at, Look.SMALL, Mark.Weight.REGULAR, anchor, Look.QUIET, 0));
  }

  private void steps() {
    Pen pen = new Pen(0.7, List.of(), Look.ACCENT, true);
    for (int i = 0; i < sweep.rows().size(); i++) {
      SizeSweep.Row row = sweep.rows().get(i);
      if (row.sheets() > 0) {
        double from = i == 0 ? x(row.mm()) : (x(sweep.rows().get(i - 1).mm()) + x(row.mm())) / 2;
        double to =
            i + 1 == sweep.rows().size()
                ? x(row.mm())
                : (x(sweep.rows().get(i + 1).mm()) + x(row.mm())) / 2;
        double y = y(row.sheets());
        marks.add(new Mark.Stroke(Path.line(new Vec2(from, y), new Vec2(to, y)), pen));
      }
    }
  }
}
