package hingeleaf.paper.template;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing.Layer;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.Step;
import hingeleaf.paper.Target;
import java.util.ArrayList;
import java.util.List;

/** A piece larger than a page: windows that overlap, with targets to lay upon each other. */
final class TiledPiece {
  private static final double OVERLAP = 12;
  private static final double BAND = 22;
  private static final double CELL = 6;

  private final Template template;
  private final TemplateStyle style;
  private final Box area;

  TiledPiece(Template template, TemplateStyle style) {
    this.template = template;
    this.style = style;
    Box whole = new PageMarks(style).area();
    this.area = new Box(whole.minX(), whole.minY(), whole.maxX(), whole.maxY() - BAND);
  }

  List<PageMarks> pages(SeenPiece upright) {
    SeenPiece turned = upright.turned();
    SeenPiece piece = tiling(turned).count() < tiling(upright).count() ? turned : upright;
    Tiling tiling = tiling(piece);
    List<Layer> layers = TemplateBook.layers(piece, style);
    List<PageMarks> pages = new ArrayList<>();
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        pages.add(page(piece, layers, tiling, column, row));
      }
    }
    return pages;
  }

  private Tiling tiling(SeenPiece p) {
    return Tiling.of(p.width(), p.height(), area.width(), area.height(), OVERLAP);
  }

  private PageMarks page(SeenPiece piece, List<Layer> layers, Tiling tiling, int column, int row) {
    PageMarks page = new PageMarks(style);
    Box window = tiling.window(column, row, piece.height());
    Vec2 by = new Vec2(area.minX() - window.minX(), area.minY() - window.minY());
    for (Layer layer : layers) {
      List<Mark> moved = List.of(new Mark.Group(layer.marks(), by));
      if (!moved.isEmpty()) {
        page.add(layer.step(), List.of(new Mark.Window(area, moved)));
      }
    }
    List<Mark> seams = seams(piece, tiling, window, column, row);
    page.add(Step.LEGEND, seams.stream().map(m -> m.moved(by)).toList());
    head(page, piece, tiling, column, row);
    return page;
  }

  private void head(PageMarks page, SeenPiece piece, Tiling tiling, int column, int row) {
    double top = area.maxY() + BAND;
    Vec2 at = new Vec2(area.minX(), top);
    Caption caption = Caption.of(template, piece, style);
    caption.write(page, at);
    String which =
        "Sheet "
            + Tiling.name(column, row)
            + " of "
            + tiling.count()
            + ". Cut along a dotted line, lay the targets upon each other, tape.";
    page.words(
        which,
        at.plus(new Vec2(0, -caption.height() - 2.5)),
        Look.SMALL,
        Weight.REGULAR,
        Anchor.START,
        Look.INK);
    double cell = Math.min(CELL, (BAND - 3) / tiling.rows());
    page.add(Step.LEGEND, map(tiling, column, row, new Vec2(area.maxX(), top - 1), cell));
  }

  /** A little plan of all sheets, this one toned; {@code corner} is its upper right. */
  private static List<Mark> map(Tiling tiling, int column, int row, Vec2 corner, double cell) {
    List<Mark> marks = new ArrayList<>();
    for (int r = 0; r < tiling.rows(); r++) {
      for (int c = 0; c < tiling.columns(); c++) {
        double x = corner.x() - (tiling.columns() - c) * cell;
        double y = corner.y() - (r + 1) * cell;
        Path box = Path.rectangle(x, y, x + cell, y + cell);
        if (r == row && c == column) {
          marks.add(new Mark.Fill(box, Look.HAIR));
        }
        marks.add(new Mark.Stroke(box, Pen.DIMENSION));
        double size = Math.min(Look.TINY, cell * 0.55);
        Vec2 at = new Vec2(x + cell / 2, y + cell / 2 - size * 0.33);
        marks.add(
            new Mark.Words(
                Tiling.name(c, r), at, size, Weight.REGULAR, Anchor.MIDDLE, Look.INK, 0));
      }
    }
    return marks;
  }

  /** The middle of every overlap of this window, in piece coordinates. */
  private static List<Mark> seams(SeenPiece piece, Tiling tiling, Box window, int column, int row) {
    List<Mark> marks = new ArrayList<>();
    for (double x : tiling.seamsX()) {
      if (x > window.minX() && x < window.maxX()) {
        boolean right = x > window.centre().x();
        marks.add(dotted(new Vec2(x, window.minY()), new Vec2(x, window.maxY())));
        for (double part : new double[] {0.12, 0.5, 0.88}) {
          marks.addAll(Target.at(new Vec2(x, window.minY() + part * window.height()), 4));
        }
        String other = Tiling.name(column + (right ? 1 : -1), row);
        Vec2 at = new Vec2(x + (right ? 4 : -2), window.minY() + 0.3 * window.height());
        marks.add(joins(other, at, Math.PI / 2));
      }
    }
    for (double y : tiling.seamsY(piece.height())) {
      if (y > window.minY() && y < window.maxY()) {
        boolean below = y < window.centre().y();
        marks.add(dotted(new Vec2(window.minX(), y), new Vec2(window.maxX(), y)));
        for (double part : new double[] {0.12, 0.5, 0.88}) {
          marks.addAll(Target.at(new Vec2(window.minX() + part * window.width(), y), 4));
        }
        String other = Tiling.name(column, row + (below ? 1 : -1));
        Vec2 at = new Vec2(window.minX() + 0.3 * window.width(), y + (below ? -4 : 2));
        marks.add(joins(other, at, 0));
      }
    }
    return marks;
  }

  private static Mark joins(String other, Vec2 at, double turn) {
    return new Mark.Words(
        "joins " + other, at, Look.TINY, Weight.REGULAR, Anchor.MIDDLE, Look.QUIET, turn);
  }

  private static Mark dotted(Vec2 a, Vec2 b) {
    return new Mark.Stroke(Path.line(a, b), Pen.HIDDEN);
  }
}
