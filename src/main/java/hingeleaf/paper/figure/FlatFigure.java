package hingeleaf.paper.figure;

import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fold;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Hatch;
import hingeleaf.paper.Lengths;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.PieceMarks;
import hingeleaf.paper.SeenPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A piece as it lies on the table, small, with only what one step of the work is about: its size,
 * its openings, its glue, or where another part is set on it.
 */
public final class FlatFigure {
  /** What is new at a step. */
  public static final String FRESH = "#f1dccd";

  private static final double LEFT = 8;
  private static final double BELOW = 8;
  private static final double SIDE = 3;
  private static final double ROW = 6.5;
  private static final double GLUE_LINES = 1.5;
  private static final Pen FAINT = Pen.solid(0.18, Look.HAIR);
  private static final Pen GLUE = Pen.solid(0.25, Look.ACCENT);

  private final Lengths lengths;
  private final Fonts fonts;
  private final double scale;
  private final Vec2 corner;
  private final List<Mark> marks = new ArrayList<>();

  private FlatFigure(Lengths lengths, Fonts fonts, double scale, Vec2 corner) {
    this.lengths = lengths;
    this.fonts = fonts;
    this.scale = scale;
    this.corner = corner;
  }

  /**
   * Outline and size.
   *
   * @param width most that the figure may have, mm, at least 30
   * @param height most that the figure may have, mm, at least 30
   */
  public static Drawing size(
      SeenPiece piece, double width, double height, Lengths lengths, Fonts fonts) {
    Box box = new Box(0, 0, piece.width(), piece.height());
    FlatFigure f = fitted(box, new Box(LEFT, BELOW, SIDE, SIDE), width, height, lengths, fonts);
    f.fill(Region.of(piece.shape().outer()), FRESH);
    // Its openings are not cut yet.
    f.relief(piece.pressed().stream().map(r -> Region.of(r.outer())).toList());
    f.line(Path.of(piece.shape().outer()), Pen.CUT);
    f.sizes(box);
    return f.drawing(box, new Box(LEFT, BELOW, SIDE, SIDE), piece.piece().name());
  }

  /** Outline and openings: where each begins and how large it is. */
  public static Drawing openings(
      SeenPiece piece, double width, double height, Lengths lengths, Fonts fonts) {
    int rows = Math.min(2, piece.shape().holes().size());
    Box room = new Box(SIDE, SIDE, SIDE + 2 * rows * ROW + 3, SIDE + 2 * rows * ROW);
    Box box = new Box(0, 0, piece.width(), piece.height());
    FlatFigure f = fitted(box, room, width, height, lengths, fonts);
    f.fill(piece.shape(), "#ffffff");
    f.relief(piece.pressed());
    piece.shape().holes().forEach(h -> f.fill(Region.of(h.anticlockwise()), FRESH));
    f.line(Path.of(piece.shape().outer()), Pen.EDGE);
    piece.slits().forEach(s -> f.line(Path.of(s), Pen.CUT));
    for (int i = 0; i < piece.shape().holes().size(); i++) {
      Ring hole = piece.shape().holes().get(i);
      f.line(Path.of(hole), Pen.CUT);
      if (i < rows) {
        f.chains(box, hole.box(), i);
      }
    }
    return f.drawing(box, room, piece.piece().name());
  }

  /** The face that takes glue, the glue hatched. */
  public static Drawing glue(SeenPiece piece, double width, double height, Fonts fonts) {
    Box room = new Box(SIDE, SIDE, SIDE, SIDE);
    Box box = new Box(0, 0, piece.width(), piece.height());
    FlatFigure f = fitted(box, room, width, height, Lengths.MM, fonts);
    f.fill(piece.shape(), FRESH);
    f.relief(piece.pressed());
    piece.glue().forEach(r -> f.hatch(r));
    f.scores(piece);
    f.line(Path.of(piece.shape()), Pen.EDGE);
    return f.drawing(box, room, piece.piece().name());
  }

  /** Words on a face, with where they begin. */
  public static Drawing words(
      SeenPiece piece, double width, double height, Lengths lengths, Fonts fonts) {
    Box room = new Box(LEFT, BELOW, SIDE, SIDE);
    Box box = new Box(0, 0, piece.width(), piece.height());
    FlatFigure f = fitted(box, room, width, height, lengths, fonts);
    f.fill(piece.shape(), "#ffffff");
    f.relief(piece.pressed());
    f.scores(piece);
    f.line(Path.of(piece.shape()), Pen.EDGE);
    for (SeenPiece.SeenInk ink : piece.inks()) {
      ink.regions().forEach(r -> f.fill(r, Look.INK));
      Box words = ink.regions().get(0).box();
      for (Region r : ink.regions()) {
        words = words.union(r.box());
      }
      f.from(box, words);
    }
    return f.drawing(box, room, piece.piece().name());
  }

  /**
   * Parts set on a panel, with the distances of the first few from its left and lower edge.
   *
   * @param base the piece with the face up that takes the parts
   * @param panel the box of the panel on it that takes them
   * @param parts outlines in the coordinates of {@code base}
   */
  public static Drawing placed(
      SeenPiece base,
      Box panel,
      List<Region> parts,
      double width,
      double height,
      Lengths lengths,
      Fonts fonts) {
    Box box = new Box(0, 0, base.width(), base.height());
    for (Region part : parts) {
      box = box.union(part.box());
    }
    int rows = Math.min(3, parts.size());
    Box room = new Box(LEFT + ROW * (rows - 1), BELOW + ROW * (rows - 1), SIDE, SIDE);
    FlatFigure f = fitted(box, room, width, height, lengths, fonts);
    f.fill(base.shape(), "#ffffff");
    f.relief(base.pressed());
    f.scores(base);
    f.line(Path.of(base.shape()), Pen.EDGE);
    for (int i = 0; i < parts.size(); i++) {
      f.fill(parts.get(i), FRESH);
      f.line(Path.of(parts.get(i)), Pen.EDGE);
    }
    for (int i = 0; i < rows; i++) {
      f.distances(box, panel, parts.get(i).box(), i);
    }
    return f.drawing(box, room, base.piece().name());
  }

  private static FlatFigure fitted(
      Box box, Box room, double width, double height, Lengths lengths, Fonts fonts) {
    double across = (width - room.minX() - room.maxX()) / box.width();
    double up = (height - room.minY() - room.maxY()) / box.height();
    double scale = Math.max(1e-3, Math.min(1, Math.min(across, up)));
    Vec2 corner = new Vec2(room.minX() - box.minX() * scale, room.minY() - box.minY() * scale);
    return new FlatFigure(lengths, fonts, scale, corner);
  }

  private Drawing drawing(Box box, Box room, String title) {
    return Drawing.plain(
        box.width() * scale + room.minX() + room.maxX(),
        box.height() * scale + room.minY() + room.maxY(),
        title,
        marks);
  }

  private Vec2 at(Vec2 p) {
    return p.times(scale).plus(corner);
  }

  private void fill(Region region, String colour) {
    marks.add(new Mark.Fill(Path.of(region.map(this::at)), colour));
  }

  private void line(Path path, Pen pen) {
    UnaryOperator<Vec2> place = this::at;
    marks.add(new Mark.Stroke(path.map(place), pen));
  }

  private void hatch(Region region) {
    marks.add(new Mark.Stroke(Hatch.of(region.map(this::at), GLUE_LINES), GLUE));
  }

  /** What is pressed into a piece, seen by a pale double contour. */
  private void relief(List<Region> pressed) {
    UnaryOperator<Vec2> place = this::at;
    marks.addAll(PieceMarks.relief(pressed.stream().map(r -> r.map(place)).toList()));
  }

  private void scores(SeenPiece piece) {
    for (SeenPiece.SeenScore s : piece.scores()) {
      line(Path.of(s.at()), s.fold() == Fold.VALLEY ? FAINT.coloured(Look.QUIET) : FAINT);
    }
  }

  private void sizes(Box box) {
    Vec2 low = at(new Vec2(box.minX(), box.minY()));
    Vec2 high = at(new Vec2(box.maxX(), box.maxY()));
    Vec2 right = new Vec2(high.x(), low.y());
    Vec2 up = new Vec2(low.x(), high.y());
    add(
        Dimension.between(
            low, right, low.y() - 5.5, true, lengths.bare().apply(box.width()), fonts));
    add(
        Dimension.between(
            low, up, low.x() - 3.5, false, lengths.bare().apply(box.height()), fonts));
  }

  /** Where an opening begins and how large it is; what is too short for its number stands apart. */
  private void chains(Box piece, Box hole, int row) {
    double above = at(new Vec2(0, piece.maxY())).y() + 3 + 2 * row * ROW;
    double beside = at(new Vec2(piece.maxX(), 0)).x() + 4.5 + 2 * row * ROW;
    Vec2 top = at(new Vec2(0, piece.maxY()));
    Vec2 left = at(new Vec2(hole.minX(), hole.maxY()));
    Vec2 right = at(new Vec2(hole.maxX(), hole.maxY()));
    add(Dimension.between(top, left, above, true, bare(hole.minX()), fonts));
    add(Dimension.between(left, right, above + ROW, true, bare(hole.width()), fonts));
    Vec2 foot = at(new Vec2(piece.maxX(), 0));
    Vec2 low = at(new Vec2(hole.maxX(), hole.minY()));
    Vec2 high = at(new Vec2(hole.maxX(), hole.maxY()));
    add(Dimension.between(foot, low, beside, false, bare(hole.minY()), fonts));
    add(Dimension.between(low, high, beside + ROW, false, bare(hole.height()), fonts));
  }

  private void from(Box piece, Box words) {
    distances(piece, piece, words, 0);
  }

  /** From the left edge of a panel to a part, below; from its lower edge, on the left. */
  private void distances(Box whole, Box panel, Box part, int row) {
    double below = at(new Vec2(0, whole.minY())).y() - 5.5 - row * ROW;
    double beside = at(new Vec2(whole.minX(), 0)).x() - 3.5 - row * ROW;
    double across = part.minX() - panel.minX();
    double up = part.minY() - panel.minY();
    Vec2 corner = at(new Vec2(part.minX(), part.minY()));
    Vec2 edge = at(new Vec2(panel.minX(), panel.minY()));
    if (Math.abs(across) > 1e-6) {
      boolean past = across < 0;
      add(
          Dimension.between(
              past ? corner : edge,
              past ? edge : corner,
              below,
              true,
              bare(Math.abs(across)),
              fonts));
    }
    if (Math.abs(up) > 1e-6) {
      boolean past = up < 0;
      add(
          Dimension.between(
              past ? corner : edge,
              past ? edge : corner,
              beside,
              false,
              bare(Math.abs(up)),
              fonts));
    }
  }

  private String bare(double mm) {
    return lengths.bare().apply(mm);
  }

  private void add(List<Mark> more) {
    marks.addAll(more);
  }
}
