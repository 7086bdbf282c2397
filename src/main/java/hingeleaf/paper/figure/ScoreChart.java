package hingeleaf.paper.figure;

import hingeleaf.card.Label;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Drawing.Layer;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Lengths;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.PanelNames;
import hingeleaf.paper.PieceMarks;
import hingeleaf.paper.SeenPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * A piece to scale with all that is measured on it: upright scores from the left edge and level
 * scores from the lower edge, each as a scoring board is read once the piece is turned; apertures
 * by their size and their distances from the left and the lower edge.
 */
public final class ScoreChart {
  private static final double ROW = 6.5;

  /** More apertures than this are left to the table. */
  private static final int MOST_CHAINS = 3;

  private final SeenPiece piece;
  private final boolean openings;
  private final Lengths lengths;
  private final Fonts fonts;
  private final double scale;
  private final List<Mark> marks = new ArrayList<>();

  private ScoreChart(
      SeenPiece piece, boolean openings, Lengths lengths, Fonts fonts, double scale) {
    this.piece = piece;
    this.openings = openings;
    this.lengths = lengths;
    this.fonts = fonts;
    this.scale = scale;
  }

  /**
   * The chart, at true size where it fits and else as large as it fits.
   *
   * @param width most that it may have, mm, at least 60
   * @param height most that it may have, mm, at least 60
   */
  public static Drawing of(
      SeenPiece piece, double width, double height, Lengths lengths, Fonts fonts) {
    return of(piece, true, width, height, lengths, fonts);
  }

  /** The same with its scores alone; openings are drawn but not measured. */
  public static Drawing scores(
      SeenPiece piece, double width, double height, Lengths lengths, Fonts fonts) {
    return of(piece, false, width, height, lengths, fonts);
  }

  private static Drawing of(
      SeenPiece piece,
      boolean openings,
      double width,
      double height,
      Lengths lengths,
      Fonts fonts) {
    Box room = new ScoreChart(piece, openings, lengths, fonts, 1).room();
    double left = -room.minX();
    double below = -room.minY();
    double right = room.maxX();
    double above = room.maxY();
    double scale =
        Math.min(
            1,
            Math.min(
                (width - left - right) / piece.width(), (height - below - above) / piece.height()));
    ScoreChart chart = new ScoreChart(piece, openings, lengths, fonts, Math.max(scale, 1e-3));
    chart.draw();
    double w = chart.x(piece.width()) + left + right;
    double h = chart.x(piece.height()) + below + above;
    Vec2 by = new Vec2(left, below);
    return Drawing.plain(
        w, h, piece.piece().name(), chart.marks.stream().map(m -> m.moved(by)).toList());
  }

  /** Room for dimensions around the piece, as a box around a piece of no size. */
  private Box room() {
    int chains = chained().size();
    double right = chains > 0 ? chains * ROW + 4 : 4;
    double above = chains > 0 ? chains * ROW + 4 : 2;
    return new Box(
        -RunningScale.depth(fromBelow(), fonts),
        -RunningScale.depth(fromLeft(), fonts),
        right,
        above);
  }

  private double x(double mm) {
    return mm * scale;
  }

  private void draw() {
    UnaryOperator<Vec2> f = p -> p.times(scale);
    SeenPiece small = scaled(f);
    List<Layer> layers = new ArrayList<>(PieceMarks.inks(small));
    layers.addAll(PieceMarks.glue(small));
    layers.addAll(PieceMarks.structure(small));
    marks.addAll(PieceMarks.relief(small.pressed()));
    layers.forEach(l -> marks.addAll(l.marks()));
    marks.addAll(PanelNames.of(small, Look.SMALL, Look.QUIET, fonts));
    marks.addAll(RunningScale.beside(fromLeft(), true));
    marks.addAll(RunningScale.beside(fromBelow(), false));
    int row = 0;
    for (Ring aperture : chained()) {
      chains(aperture.box(), row++);
    }
    if (openings) {
      piece.shape().holes().forEach(this::inside);
    }
  }

  private SeenPiece scaled(UnaryOperator<Vec2> f) {
    return new SeenPiece(
        piece.piece(),
        piece.face(),
        x(piece.width()),
        x(piece.height()),
        piece.shape().map(f),
        piece.slits().stream().map(s -> segment(s, f)).toList(),
        piece.scores().stream()
            .map(s -> new SeenPiece.SeenScore(s.name(), segment(s.at(), f), s.fold(), s.degrees()))
            .toList(),
        piece.labels().stream().map(l -> new Label(l.name(), f.apply(l.at()))).toList(),
        piece.glue().stream().map(r -> r.map(f)).toList(),
        piece.inks().stream()
            .map(
                i ->
                    new SeenPiece.SeenInk(
                        i.regions().stream().map((Region r) -> r.map(f)).toList(), i.colour()))
            .toList(),
        piece.pressed().stream().map(r -> r.map(f)).toList(),
        piece.grain());
  }

  private static Segment segment(Segment s, UnaryOperator<Vec2> f) {
    return new Segment(f.apply(s.from()), f.apply(s.to()));
  }

  private List<RunningScale.Stop> fromLeft() {
    TreeMap<Double, String> stops = new TreeMap<>();
    for (SeenPiece.SeenScore s : piece.scores()) {
      if (Math.abs(s.at().from().x() - s.at().to().x()) < Tolerance.LENGTH_MM) {
        stops.put(s.at().from().x(), lengths.bare().apply(s.at().from().x()));
      }
    }
    stops.put(piece.width(), lengths.bare().apply(piece.width()));
    return stops(stops);
  }

  private List<RunningScale.Stop> fromBelow() {
    TreeMap<Double, String> stops = new TreeMap<>();
    for (SeenPiece.SeenScore s : piece.scores()) {
      if (Math.abs(s.at().from().y() - s.at().to().y()) < Tolerance.LENGTH_MM) {
        stops.put(s.at().from().y(), lengths.bare().apply(s.at().from().y()));
      }
    }
    stops.put(piece.height(), lengths.bare().apply(piece.height()));
    return stops(stops);
  }

  private List<RunningScale.Stop> stops(TreeMap<Double, String> at) {
    List<RunningScale.Stop> stops = new ArrayList<>();
    at.forEach((v, words) -> stops.add(new RunningScale.Stop(x(v), words)));
    return stops;
  }

  private List<Ring> chained() {
    List<Ring> holes = openings ? piece.shape().holes() : List.of();
    return holes.subList(0, Math.min(MOST_CHAINS, holes.size()));
  }

  /**
   * From the left edge to the aperture and across it, above; from the lower edge likewise, right.
   */
  private void chains(Box hole, int row) {
    double above = x(piece.height()) + 3 + row * ROW;
    double middle = x(hole.maxY());
    Vec2 corner = new Vec2(0, x(piece.height()));
    Vec2 left = new Vec2(x(hole.minX()), middle);
    Vec2 right = new Vec2(x(hole.maxX()), middle);
    add(Dimension.between(corner, left, above, true, bare(hole.minX()), fonts));
    add(Dimension.between(left, right, above, true, bare(hole.width()), fonts));
    double beside = x(piece.width()) + 3 + row * ROW + 1.5;
    Vec2 foot = new Vec2(x(piece.width()), 0);
    Vec2 low = new Vec2(x(hole.maxX()), x(hole.minY()));
    Vec2 high = new Vec2(x(hole.maxX()), x(hole.maxY()));
    add(Dimension.between(foot, low, beside, false, bare(hole.minY()), fonts));
    add(Dimension.between(low, high, beside, false, bare(hole.height()), fonts));
  }

  private void add(List<Mark> more) {
    marks.addAll(more);
  }

  private String bare(double mm) {
    return lengths.bare().apply(mm);
  }

  /** What an aperture is, inside it, where there is room. */
  private void inside(Ring hole) {
    Box box = hole.box();
    String words =
        round(hole)
            ? "⌀ " + lengths.full().apply(box.width())
            : lengths.size(box.width(), box.height());
    double length = fonts.width(words, Mark.Weight.REGULAR, Dimension.SIZE);
    if (length + 3 < x(box.width()) && x(box.height()) > 6) {
      Vec2 at = box.centre().times(scale).minus(new Vec2(0, Dimension.SIZE * 0.33));
      marks.add(Dimension.words(words, at, Anchor.MIDDLE, 0));
    }
  }

  /** Whether a ring is a circle as far as its chords can tell. */
  private static boolean round(Ring ring) {
    Box box = ring.box();
    return ring.points().size() >= 16
        && ring.points().stream()
            .allMatch(
                p -> Math.abs(p.distance(box.centre()) - box.width() / 2) < 2 * Tolerance.CHORD_MM);
  }
}
