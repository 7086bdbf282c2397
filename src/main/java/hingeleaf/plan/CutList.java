package hingeleaf.plan;

import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Ring;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Die;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
   */
  public record Line(List<String> pieces, Piece piece, List<Opening> openings) {
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

    /** Whether the outline is a plain rectangle, which a trimmer cuts. */
    public boolean rectangular() {
      Box b = piece.box();
      return Math.abs(piece.shape().outer().area() - b.width() * b.height()) < 1e-6;
    }
  }

  /**
   * An opening of a piece.
   *
   * @param shape in words: "circle", "square", "rectangle" or "shape"
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
    Map<Cut, List<Piece>> alike = new LinkedHashMap<>();
    for (Piece p : pieces) {
      alike.computeIfAbsent(Cut.of(p), k -> new ArrayList<>()).add(p);
    }
    List<Line> lines = new ArrayList<>();
    for (List<Piece> same : alike.values()) {
      Piece one = same.get(0);
      List<Opening> openings = one.apertures().stream().map(r -> opening(one, r, bench)).toList();
      lines.add(new Line(same.stream().map(Piece::id).toList(), one, openings));
    }
    return new CutList(lines);
  }

  /** What must agree for two pieces to be cut as one kind; names and print may differ. */
  private record Cut(Object stock, Object shape, Object slits, Object scores, Object grain) {
    static Cut of(Piece p) {
      return new Cut(p.stock().name(), p.shape(), p.slits(), p.scores(), p.grain());
    }
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
    }
    return Die.Shape.OTHER;
  }

  private static String word(Die.Shape shape, Box b) {
    if (shape == Die.Shape.RECTANGLE) {
      return Math.abs(b.width() - b.height()) < 1e-6 ? "square" : "rectangle";
    }
    return shape == Die.Shape.CIRCLE ? "circle" : shape == Die.Shape.ELLIPSE ? "ellipse" : "shape";
  }
}
