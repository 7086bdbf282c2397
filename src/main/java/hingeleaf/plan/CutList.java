package hingeleaf.plan;

import hingeleaf.card.Embossing;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Shapes;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Die;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The pieces to cut, identical ones counted together, and how each opening is made.
 *
 * @param lines in the order in which the card is built
 */
public record CutList(List<Line> lines) {
  /** A die whose measured cut is within this of the opening cuts it, mm: what a gauge can tell. */
  public static final double DIE_FIT_MM = 0.25;

  public CutList {
    lines = List.copyOf(lines);
  }

  /**
   * One kind of piece.
   *
   * @param pieces ids of the identical pieces, at least one
   * @param piece one of them
   * @param openings of one piece
   * @param blankWidth what is cut first, mm: the piece's own width, or more where it is embossed
   *     and trimmed afterwards
   * @param blankHeight likewise
   */
  public record Line(
      List<String> pieces,
      Piece piece,
      List<Opening> openings,
      double blankWidth,
      double blankHeight) {
    public Line {
      pieces = List.copyOf(pieces);
      openings = List.copyOf(openings);
    }

    public int quantity() {
      return pieces.size();
    }

    /** The names as a maker reads them: "far, middle and near". */
    public String names() {
      int n = pieces.size();
      return n == 1
          ? pieces.get(0)
          : String.join(", ", pieces.subList(0, n - 1)) + " and " + pieces.get(n - 1);
    }

    /** Whether a pattern is pressed into it, so that it is cut larger first. */
    public boolean embossed() {
      return piece.embossing().isPresent();
    }

    /**
     * Where a pattern lies on the blank: origin at the blank's lower left corner, cut off at its
     * edges; empty for a plain piece.
     */
    public Optional<Box> pressed() {
      double x = (blankWidth - piece.width()) / 2 - piece.box().minX();
      double y = (blankHeight - piece.height()) / 2 - piece.box().minY();
      return piece
          .embossing()
          .map(Embossing::plates)
          .map(
              b ->
                  new Box(
                      Math.max(0, b.minX() + x),
                      Math.max(0, b.minY() + y),
                      Math.min(blankWidth, b.maxX() + x),
                      Math.min(blankHeight, b.maxY() + y)));
    }

    /** Whether the outline is a plain rectangle, which a trimmer cuts. */
    public boolean rectangular() {
      Box b = piece.box();
      return Math.abs(piece.shape().outer().area() - b.width() * b.height()) < 1e-6;
    }
  }

  /**
   * An opening of a piece.
   *
   * @param shape in words, such as "circle" or "arch"; "shape" for what has no plain name
   * @param fromLeft of its box to the piece's left edge, mm
   * @param fromBottom of its box to the piece's lower edge, mm
   * @param die that cuts it by its measured size; empty where a knife must
   */
  public record Opening(
      String shape,
      double width,
      double height,
      double fromLeft,
      double fromBottom,
      Optional<Die> die) {}

  /** The cut list of pieces. */
  public static CutList of(List<Piece> pieces, Bench bench) {
    Map<List<Object>, List<Piece>> alike = new LinkedHashMap<>();
    for (Piece p : pieces) {
      alike.computeIfAbsent(cut(p), k -> new ArrayList<>()).add(p);
    }
    List<Line> lines = new ArrayList<>();
    for (List<Piece> same : alike.values()) {
      Piece one = same.get(0);
      List<Opening> openings = one.apertures().stream().map(r -> opening(one, r, bench)).toList();
      lines.add(line(same, openings, bench.trimmer().step()));
    }
    return new CutList(lines);
  }

  private static Line line(List<Piece> same, List<Opening> openings, double mark) {
    Piece one = same.get(0);
    boolean larger = one.embossing().isPresent();
    return new Line(
        same.stream().map(Piece::id).toList(),
        one,
        openings,
        larger ? Embossing.blank(one.width(), mark) : one.width(),
        larger ? Embossing.blank(one.height(), mark) : one.height());
  }

  /** What must agree for two pieces to be cut as one kind; names and print may differ. */
  private static List<Object> cut(Piece p) {
    List<Object> all = new ArrayList<>(List.of(p.stock().name(), p.grain(), p.slits()));
    all.add(p.shape().outer().points());
    p.shape().holes().forEach(h -> all.add(h.points()));
    p.scores().forEach(s -> all.addAll(List.of(s.name(), s.at(), s.made())));
    p.embossing().ifPresent(e -> all.addAll(List.of(e.folder(), e.plates())));
    return all;
  }

  private static Opening opening(Piece piece, Ring ring, Bench bench) {
    Box o = ring.box();
    Box p = piece.box();
    Die.Shape shape = shape(ring);
    Optional<Die> die =
        bench.dies().stream().filter(d -> d.shape() == shape && fits(d, o)).findFirst();
    return new Opening(
        word(shape, o), o.width(), o.height(), o.minX() - p.minX(), o.minY() - p.minY(), die);
  }

  private static boolean fits(Die d, Box o) {
    return Math.abs(d.cutWidth() - o.width()) <= DIE_FIT_MM
        && Math.abs(d.cutHeight() - o.height()) <= DIE_FIT_MM;
  }

  /** The shape of a ring, told from the share of its box that it fills. */
  private static Die.Shape shape(Ring ring) {
    Box b = ring.box();
    double fills = Math.abs(ring.area()) / (b.width() * b.height());
    boolean even = Math.abs(b.width() - b.height()) < 0.02;
    if (fills > 1 - 1e-9) {
      return Die.Shape.RECTANGLE;
    } else if (Math.abs(fills - Math.PI / 4) < 2e-3 && ring.points().size() > 12) {
      return even ? Die.Shape.CIRCLE : Die.Shape.ELLIPSE;
    } else if (sameArea(ring, Shapes.arch(b.width(), b.height())) && flatBelow(ring, b)) {
      return Die.Shape.ARCH;
    }
    return squareSided(ring, b) ? Die.Shape.ROUNDED_RECTANGLE : Die.Shape.OTHER;
  }

  private static boolean sameArea(Ring a, Ring b) {
    return Math.abs(Math.abs(a.area()) / Math.abs(b.area()) - 1) < 1e-3;
  }

  private static boolean flatBelow(Ring ring, Box b) {
    return touches(ring, p -> Math.abs(p.y() - b.minY()) < 1e-6) > 0.9 * b.width();
  }

  /** Whether all four sides of the box are touched along a good part: only corners are missing. */
  private static boolean squareSided(Ring ring, Box b) {
    return touches(ring, p -> Math.abs(p.y() - b.minY()) < 1e-6) > 0.2 * b.width()
        && touches(ring, p -> Math.abs(p.y() - b.maxY()) < 1e-6) > 0.2 * b.width()
        && touches(ring, p -> Math.abs(p.x() - b.minX()) < 1e-6) > 0.2 * b.height()
        && touches(ring, p -> Math.abs(p.x() - b.maxX()) < 1e-6) > 0.2 * b.height();
  }

  /** Length of the edges of a ring whose both ends fulfil a condition. */
  private static double touches(Ring ring, Predicate<Vec2> on) {
    double length = 0;
    for (int i = 0; i < ring.points().size(); i++) {
      Vec2 p = ring.points().get(i);
      Vec2 q = ring.points().get((i + 1) % ring.points().size());
      length += on.test(p) && on.test(q) ? p.distance(q) : 0;
    }
    return length;
  }

  private static String word(Die.Shape shape, Box b) {
    return switch (shape) {
      case RECTANGLE -> Math.abs(b.width() - b.height()) < 1e-6 ? "square" : "rectangle";
      case CIRCLE -> "circle";
      case ELLIPSE -> "ellipse";
      case ARCH -> "arch";
      case ROUNDED_RECTANGLE -> "rounded rectangle";
      case OTHER -> "shape";
    };
  }

  /** The ids of all pieces of some lines. */
  static List<String> ids(List<Line> lines) {
    return lines.stream().flatMap(l -> l.pieces().stream()).toList();
  }

  /** How many pieces some lines have. */
  static int count(List<Line> lines) {
    return lines.stream().mapToInt(Line::quantity).sum();
  }
}
