package hingeleaf.paper.figure;

import hingeleaf.fold.accuracy.CuttingReport;
import hingeleaf.fold.accuracy.FourBar;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The figures that explain to a maker how exactly to cut; 150 mm wide each. */
public final class AccuracyFigures {
  private static final double WIDTH = 150;
  private static final Pen PAPER = new Pen(0.7, List.of(), Look.INK, true);
  private static final Pen STRONG = new Pen(0.7, List.of(), Look.ACCENT, true);
  private static final Pen THIN = Pen.solid(0.25, Look.QUIET);

  private final List<Mark> marks = new ArrayList<>();

  private AccuracyFigures() {}

  /**
   * The same pieces glued two ways: with both tabs set on the edges the frame stops above the
   * layer; with the second tab closed flat it lies, and the tab lands where it falls.
   *
   * @param links a stage whose panel is longer than the layer behind is wide
   */
  public static Drawing twoWays(FourBar links) {
    AccuracyFigures f = new AccuracyFigures();
    double scale = 0.32;
    f.stage(links, jammed(links), new Vec2(12, 46), scale);
    f.words(
        "Glued standing: it stops here, " + mm(links.jamHeight(1)) + " up", 12, 62, Look.ACCENT);
    FourBar flat = links.gluedFlat(1);
    f.stage(flat, flat(flat), new Vec2(12, 18), scale);
    double over = flat.base() - links.base();
    f.words("Glued flat: it lies flat, its second tab " + mm(over) + " over", 12, 27, Look.INK);
    for (double y : new double[] {41.5, 13.5}) {
      f.words("first tab", 12, y, Mark.Anchor.START);
      f.words("layer behind", 70, y, Mark.Anchor.MIDDLE);
      f.words("second tab", 127, y, Mark.Anchor.END);
    }
    f.words("heights drawn four times too large", WIDTH - 4, 3, Mark.Anchor.END);
    return Drawing.plain(WIDTH, 70, "the same pieces, glued two ways", f.marks);
  }

  /** The four folds of the jammed stage: foot, upper fold, upper fold, foot. */
  private static List<Vec2> jammed(FourBar f) {
    double span = f.base() - f.first();
    double x = (f.panel() * f.panel() - f.second() * f.second() + span * span) / (2 * span);
    Vec2 up = new Vec2(f.first() + x, f.jamHeight(1));
    return List.of(Vec2.ZERO, new Vec2(f.first(), 0), up, new Vec2(f.base(), 0));
  }

  private static List<Vec2> flat(FourBar f) {
    return List.of(
        Vec2.ZERO,
        new Vec2(f.first(), 0),
        new Vec2(f.first() + f.panel(), 0),
        new Vec2(f.base(), 0));
  }

  /** A stage seen from the edge, its heights four times too large, papers set apart. */
  private void stage(FourBar f, List<Vec2> folds, Vec2 corner, double scale) {
    double lift = 1.6;
    List<Vec2> at = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double layer = i == 0 || i == 3 ? lift : 2 * lift;
      Vec2 p = folds.get(i);
      at.add(corner.plus(new Vec2(p.x() * scale * 2.4, p.y() * scale * 2.4 * 4 + layer)));
    }
    double back = f.base() * scale * 2.4;
    line(PAPER, corner, corner.plus(new Vec2(Math.min(back, 150 * scale * 2.4), 0)));
    double tab = 12 * scale * 2.4;
    line(PAPER, at.get(0), at.get(0).plus(new Vec2(tab, 0)));
    line(PAPER, at.get(3), at.get(3).minus(new Vec2(tab, 0)));
    line(STRONG, at.get(0), at.get(1), at.get(2), at.get(3));
    at.forEach(p -> marks.add(new Mark.Fill(Path.circle(p, 0.9), Look.ACCENT)));
  }

  /** How high a stage jams for each error of its second side, and how high when glued flat. */
  public static Drawing jamCurve(double base, double side) {
    AccuracyFigures f = new AccuracyFigures();
    double left = 16;
    double low = 16;
    double wide = WIDTH - left - 8;
    double high = 62;
    double most = 8;
    for (int h = 0; h <= most; h += 2) {
      double y = low + high * h / most;
      f.line(Pen.RULE, new Vec2(left, y), new Vec2(left + wide, y));
      f.words(h + "", left - 2, y - 1, Mark.Anchor.END);
    }
    for (double d = 0; d <= 2; d += 0.5) {
      f.words(number(d), left + wide * d / 2, low - 5, Mark.Anchor.MIDDLE);
    }
    List<Vec2> curve = new ArrayList<>();
    for (int i = 0; i <= 200; i++) {
      double d = 2 * i / 200.0;
      double h = new FourBar(base, side, base, side + d).jamHeight(1);
      curve.add(new Vec2(left + wide * d / 2, low + high * h / most));
    }
    f.marks.add(new Mark.Stroke(new Path(List.of(curve), false), STRONG));
    f.line(PAPER, new Vec2(left, low), new Vec2(left + wide, low));
    f.words("glued standing", left + wide * 0.4, low + high * 0.79, Look.ACCENT);
    f.words("glued flat: lies flat whatever the error", left + wide * 0.45, low + 2, Look.INK);
    f.words("stands up, mm", 2, low + high + 5, Mark.Anchor.START);
    f.words("one side deeper than the other by, mm", left + wide, 3, Mark.Anchor.END);
    return Drawing.plain(WIDTH, 88, "a small error stands up high", f.marks);
  }

  /** How many cards of a hundred come out well at each accuracy, both ways of gluing. */
  public static Drawing shares(List<String> hands, List<CuttingReport> reports) {
    AccuracyFigures f = new AccuracyFigures();
    double left = 44;
    double wide = WIDTH - left - 14;
    double y = 10;
    for (int i = reports.size() - 1; i >= 0; i--) {
      CuttingReport r = reports.get(i);
      f.bar(r.standing(), "lie flat if glued standing", left, y, wide, Look.ACCENT);
      f.bar(r.lands(), "second tab within 1 mm of its edge", left, y + 6, wide, "#8b8f92");
      f.bar(r.flat(), "lie flat if glued flat", left, y + 12, wide, Look.INK);
      f.words(hands.get(i), 2, y + 7.5, Look.INK);
      f.words("within " + mm(r.accuracy()), 2, y + 3, Mark.Anchor.START);
      y += 24;
    }
    f.words("of 100 cards", WIDTH - 4, 3, Mark.Anchor.END);
    return Drawing.plain(WIDTH, y + 2, "how many cards come out well", f.marks);
  }

  private void bar(
      CuttingReport.Share s, String what, double left, double y, double wide, String colour) {
    double to = left + wide * s.share();
    marks.add(new Mark.Fill(Path.rectangle(left, y, Math.max(to, left + 0.2), y + 4.4), colour));
    double middle = y + 2.2;
    line(THIN, new Vec2(left + wide * s.least(), middle), new Vec2(left + wide * s.most(), middle));
    boolean inside = s.share() > 0.55;
    String words = Math.round(100 * s.share()) + "  " + what;
    marks.add(
        new Mark.Words(
            words,
            new Vec2(inside ? left + 2 : left + wide * s.most() + 1.5, y + 1.2),
            Look.SMALL,
            Mark.Weight.REGULAR,
            Mark.Anchor.START,
            inside ? Look.PAPER : Look.INK,
            0));
  }

  private void line(Pen pen, Vec2... points) {
    marks.add(new Mark.Stroke(Path.line(points), pen));
  }

  private void words(String text, double x, double y, String colour) {
    marks.add(
        new Mark.Words(
            text, new Vec2(x, y), Look.SMALL, Mark.Weight.REGULAR, Mark.Anchor.START, colour, 0));
  }

  private void words(String text, double x, double y, Mark.Anchor anchor) {
    marks.add(
        new Mark.Words(
            text, new Vec2(x, y), Look.SMALL, Mark.Weight.REGULAR, anchor, Look.QUIET, 0));
  }

  private static String mm(double value) {
    return number(Math.rint(value * 10) / 10) + " mm";
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? String.valueOf(Math.round(value))
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
