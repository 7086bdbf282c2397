package hingeleaf.structure;

import hingeleaf.card.Face;
import hingeleaf.card.Ink;
import hingeleaf.card.Join;
import hingeleaf.card.Label;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is fixed to the panels of a base: mats, windows, cut-outs, words and the message panel. */
final class Fittings {
  /** How much of the frame's own card a mat shows around an opening when nobody says otherwise. */
  static final double REVEAL_MM = 3;

  /** A part with less bearing than this, or than a fifth of itself, falls off: a 4 mm pad. */
  static final double LEAST_BEARING_MM2 = 16;

  private static final Vec2 ALONG = new Vec2(1, 0);

  private final Assembly card;
  private final Bearings bearings;
  private final String glue;
  private final Crowding crowding;

  /** For what is clear: wet glue would show through it. */
  private final String tape;

  Fittings(Assembly card, Bearings bearings, String glue, String tape) {
    this.tape = tape;
    this.card = card;
    this.bearings = bearings;
    this.glue = glue;
    this.crowding = new Crowding(card, bearings);
  }

  /**
   * A panel glued on a face.
   *
   * @param width null for the largest that leaves glue strips and a border free
   * @param height likewise
   * @param at of its middle from the middle of the panel's free part
   * @param border how much of the panel shows round a mat whose size is left to us, mm
   * @param opening centred on the panel; empty for the panel's own, a reveal wider
   * @param origin path in the design
   */
  record Mat(
      String name,
      Surface on,
      Face face,
      Stock stock,
      @Nullable Double width,
      @Nullable Double height,
      Vec2 at,
      double border,
      List<Region> opening,
      double raisedBy,
      String origin) {}

  /**
   * A clear sheet behind all apertures of a panel.
   *
   * @param overlap how far it reaches past them where its size is left to us, mm
   * @param width null for the openings' and the overlap
   * @param height likewise
   */
  record Window(
      String name,
      Surface on,
      Stock stock,
      double overlap,
      @Nullable Double width,
      @Nullable Double height,
      String origin) {}

  /**
   * A loose ornament.
   *
   * @param shape centred where {@code at} says, from the panel's centre
   * @param raisedBy foam, mm
   */
  record CutOut(
      String name,
      Surface on,
      Face face,
      Vec2 at,
      Region shape,
      Stock stock,
      double raisedBy,
      String origin) {}

  /**
   * A line of words.
   *
   * @param height of a capital, mm
   * @param carrier the stock of a strip of its own to carry them; null to letter the panel itself
   */
  record Words(
      String text,
      Surface on,
      Face face,
      Vec2 at,
      double height,
      String colour,
      @Nullable Stock carrier,
      double raisedBy,
      String origin) {}

  /** The free part of a panel's face: inside its edges, clear of the glue strips. */
  static Box free(Surface s, Face face) {
    Box b = s.box();
    double x0 = b.minX();
    double y0 = b.minY();
    double x1 = b.maxX();
    double y1 = b.maxY();
    if (face == Face.FRONT) {
      for (Box strip : s.frontStrips()) {
        boolean whole = strip.width() >= b.width() - 1e-9;
        boolean upright =
            strip.height() >= b.height() - 1e-9 || !whole && strip.height() > strip.width();
        if (upright && strip.minX() <= b.minX() + 1e-9) {
          x0 = Math.max(x0, strip.maxX());
        } else if (upright) {
          x1 = Math.min(x1, strip.minX());
        } else if (strip.minY() <= b.minY() + 1e-9) {
          y0 = Math.max(y0, strip.maxY());
        } else {
          y1 = Math.min(y1, strip.minY());
        }
      }
    }
    return new Box(x0, y0, x1, y1);
  }

  void add(Mat m) {
    Box free = free(m.on(), m.face());
    double w = m.width() == null ? bearings.down(free.width() - 2 * m.border()) : m.width();
    double h = m.height() == null ? bearings.down(free.height() - 2 * m.border()) : m.height();
    Vec2 c = free.centre().plus(m.at());
    Box box = new Box(c.x() - w / 2, c.y() - h / 2, c.x() + w / 2, c.y() + h / 2);
    if (!(w > 0) || !(h > 0) || !holds(free, box)) {
      card.report(matOverStrip(m, w, h, free));
      return;
    }
    List<Region> openings = openings(m, box);
    if (bordersOpenings(m, box, openings)) {
      flat(m.name(), m.stock(), box, openings, m.origin(), m.on(), m.face(), m.raisedBy());
      double top = m.raisedBy() + m.stock().thickness();
      Region placed = new Region(rectangle(box), openings.stream().map(Region::outer).toList());
      crowding.lay(
          new Crowding.Part(
              m.name(),
              m.on(),
              m.face(),
              placed,
              m.raisedBy(),
              top,
              m.origin(),
              m.at().x(),
              m.at().y()),
          false);
    }
  }

  private static Ring rectangle(Box b) {
    return Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
  }

  private static boolean holds(Box outer, Box inner) {
    double eps = Tolerance.LENGTH_MM;
    return inner.minX() >= outer.minX() - eps
        && inner.maxX() <= outer.maxX() + eps
        && inner.minY() >= outer.minY() - eps
        && inner.maxY() <= outer.maxY() + eps;
  }

  /** The openings of a mat, where the mat reaches them at all. */
  private List<Region> openings(Mat m, Box box) {
    List<Region> cut =
        !m.opening().isEmpty()
            ? m.opening()
            : m.on().openings().isEmpty()
                ? List.of()
                : Overlay.grown(
                    m.on().openings().stream().map(r -> Region.of(r.anticlockwise())).toList(),
                    REVEAL_MM);
    Region mat = Region.of(Ring.rectangle(box.minX(), box.minY(), box.maxX(), box.maxY()));
    return cut.stream().filter(o -> Overlay.overlap(o, mat)).toList();
  }

  private Problem matOverStrip(Mat m, double w, double h, Box free) {
    String most = bearings.units().size(free.width(), free.height());
    return Problem.blocks(
            "mat-over-glue-strip",
            m.name(),
            m.origin(),
            m.name()
                + ": a mat of "
                + bearings.units().size(w, h)
                + " on "
                + m.on().name()
                + " would cover its glue strips or edges - make it "
                + most
                + " or less ("
                + (bearings.units().unit() == Unit.IN ? "1/16 in" : bearings.say(1))
                + " less each side looks best)")
        .with(
            Map.of("width", w, "height", h, "mostWidth", free.width(), "mostHeight", free.height()))
        .wanting(
            Want.atMost(m.origin() + ".width", free.width()),
            Want.atMost(m.origin() + ".height", free.height()));
  }

  private boolean bordersOpenings(Mat m, Box box, List<Region> openings) {
    for (Region o : openings) {
      Box b = o.box();
      double border =
          Math.min(
              Math.min(b.minX() - box.minX(), box.maxX() - b.maxX()),
              Math.min(b.minY() - box.minY(), box.maxY() - b.maxY()));
      if (border < m.stock().leastBorder() - 1e-9) {
        card.report(
            Problem.blocks(
                "mat-border",
                m.name(),
                m.origin(),
                m.name()
                    + ": around the opening of "
                    + m.on().name()
                    + " the mat would be "
                    + bearings.say(Math.max(0, border))
                    + " wide at its narrowest, but "
                    + m.stock().title()
                    + " needs "
                    + bearings.say(m.stock().leastBorder())
                    + " - make the opening smaller"));
        return false;
      }
    }
    return true;
  }

  void add(Window w) {
    if (w.on().openings().isEmpty()) {
      card.report(
          Problem.blocks(
              "window-without-aperture",
              w.name(),
              w.origin(),
              w.name() + ": " + w.on().name() + " has no aperture to put a window behind"));
      return;
    }
    Box box = w.on().openings().get(0).box();
    for (Ring r : w.on().openings()) {
      box = box.union(r.box());
    }
    Panes panes = new Panes(w, box, bearings);
    Optional<Problem> fault = panes.fault();
    if (fault.isPresent()) {
      card.report(fault.get());
      return;
    }
    flat(w.name(), w.stock(), panes.box(), List.of(), w.origin(), w.on(), Face.BACK, 0);
  }

  void add(CutOut c) {
    Vec2 centre = c.on().point(c.at());
    Region placed = c.shape().moved(centre);
    Box box = placed.box();
    Vec2 corner = new Vec2(-box.minX(), -box.minY());
    Region seen = placed.moved(corner);
    Region shape = outwards(c.face(), c.stock()) ? mirror(seen, box.width()) : seen;
    Piece piece =
        Piece.flat(
            c.name(),
            c.name(),
            c.stock(),
            Grain.ANY,
            shape,
            new Label("panel", shape.inside()),
            c.origin());
    List<Region> bearing = bearing(c.on(), placed);
    if (Overlay.area(bearing) < Math.min(LEAST_BEARING_MM2, shape.area() / 5)) {
      card.report(nothingToGlueTo(c));
      return;
    }
    if (card.add(piece)) {
      crowding.lay(part(c, placed), true);
      glue(piece, c.on(), c.face(), corner, bearing, c.raisedBy(), c.origin());
      card.add(
          new Surface(
              c.name(),
              piece.id(),
              "panel",
              shape.box(),
              shape.holes(),
              List.of(),
              c.stock(),
              c.on().order()));
    }
  }

  private static Crowding.Part part(CutOut c, Region placed) {
    double top = c.raisedBy() + c.stock().thickness();
    return new Crowding.Part(
        c.name(), c.on(), c.face(), placed, c.raisedBy(), top, c.origin(), c.at().x(), c.at().y());
  }

  private Problem nothingToGlueTo(CutOut c) {
    return Problem.blocks(
        "nothing-to-glue-to",
        c.name(),
        c.origin(),
        c.name()
            + ": at this place it lies over the opening of "
            + c.on().name()
            + " and has nothing to be glued to - move it onto the card, or hang it on a window "
            + "behind that opening");
  }

  /** What a part can be glued to: the panel's card, or a window behind its openings. */
  private List<Region> bearing(Surface on, Region placed) {
    return Overlay.intersection(List.of(placed), List.of(on.material()));
  }

  void add(Words w) {
    List<Region> letters = bearings.lettering().letters(w.text(), w.height());
    if (letters.isEmpty()) {
      card.report(
          Problem.blocks(
              "no-letters",
              w.text(),
              w.origin(),
              "the words \"" + w.text() + "\" have no letter that can be drawn"));
      return;
    }
    if (bearings.lettering().lacks(w.text())) {
      card.report(
          Problem.warns(
              "letters-missing",
              w.text(),
              w.origin(),
              "the words \""
                  + w.text()
                  + "\" have a sign that the face lacks, drawn as an empty box - leave it out, and"
                  + " draw it by hand"));
    }
    if (w.carrier() != null) {
      addCarrier(w, letters, w.carrier());
      return;
    }
    Vec2 at = w.on().point(w.at());
    List<Region> placed = letters.stream().map(r -> r.moved(at)).toList();
    if (!Overlay.within(placed, List.of(w.on().material()))) {
      card.report(
          Problem.warns(
              "words-over-edge",
              w.text(),
              w.origin(),
              "the words \""
                  + w.text()
                  + "\" run over an edge or opening of "
                  + w.on().name()
                  + " - make them smaller or move them"));
    }
    card.ink(
        w.on().piece(), new Ink(w.text(), w.face(), mirrored(w, placed), w.colour(), w.origin()));
  }

  /**
   * Letters on the back read right to one who turns the card over: mirrored in the piece's frame.
   */
  private static List<Region> mirrored(Words w, List<Region> placed) {
    if (w.face() == Face.FRONT) {
      return placed;
    }
    double twice = 2 * w.on().point(w.at()).x();
    return placed.stream().map(r -> r.map(p -> new Vec2(twice - p.x(), p.y()))).toList();
  }

  /** Words on a strip of their own: a quarter of their height to spare all round. */
  private void addCarrier(Words w, List<Region> letters, Stock carrier) {
    double spare = w.height() / 2;
    Box box = letters.get(0).box();
    for (Region r : letters) {
      box = box.union(r.box());
    }
    double width = bearings.nearest(box.width() + 2 * spare);
    double height = bearings.nearest(box.height() + 2 * spare);
    Region strip = Region.of(Ring.rectangle(-width / 2, -height / 2, width / 2, height / 2));
    String name = "words " + w.text();
    Vec2 middle = box.centre();
    add(new CutOut(name, w.on(), w.face(), w.at(), strip, carrier, w.raisedBy(), w.origin()));
    Vec2 move = new Vec2(width / 2, height / 2).minus(middle);
    List<Region> placed = letters.stream().map(r -> r.moved(move)).toList();
    card.ink(name, new Ink(w.text(), Face.FRONT, placed, w.colour(), w.origin()));
  }

  /**
   * Adds a rectangular part with openings, glued on a face of a panel.
   *
   * @param box where it lies, in the coordinates of the panel's piece
   */
  private void flat(
      String name,
      Stock stock,
      Box box,
      List<Region> openings,
      String origin,
      Surface on,
      Face face,
      double raisedBy) {
    Vec2 corner = new Vec2(-box.minX(), -box.minY());
    Region shape =
        new Region(
            Ring.rectangle(0, 0, box.width(), box.height()),
            openings.stream().map(r -> r.outer().moved(corner)).toList());
    Region cut = outwards(face, stock) ? mirror(shape, box.width()) : shape;
    Piece piece =
        Piece.flat(name, name, stock, Grain.ANY, cut, new Label("panel", cut.inside()), origin);
    if (!card.add(piece)) {
      return;
    }
    Region placed = shape.moved(corner.times(-1));
    glue(piece, on, face, corner, bearing(on, placed), raisedBy, origin);
    card.add(
        new Surface(name, name, "panel", cut.box(), cut.holes(), List.of(), stock, on.order()));
  }

  /** Whether a part glued on this face turns its good face away from the card. */
  private static boolean outwards(Face face, Stock stock) {
    return face == Face.BACK && !stock.clear();
  }

  /** A shape left-right reversed in a piece of this width. */
  private static Region mirror(Region shape, double width) {
    return shape.map(p -> new Vec2(width - p.x(), p.y()));
  }

  /**
   * Glues a piece on a face. On the front its back is glued; on the back its good face is glued
   * where it is clear, and otherwise it looks outwards, upright to a reader who turns the card
   * over.
   */
  private void glue(
      Piece piece,
      Surface on,
      Face face,
      Vec2 corner,
      List<Region> bearing,
      double raisedBy,
      String origin) {
    Vec2 centre = piece.box().centre();
    Vec2 onPanel = centre.minus(corner);
    boolean outwards = outwards(face, piece.stock());
    Face touches = face == Face.BACK && !outwards ? Face.FRONT : Face.BACK;
    Region touch = bearing.isEmpty() ? piece.shape() : bearing.get(0).moved(corner);
    touch = outwards ? mirror(touch, piece.width()) : touch;
    Patch a = new Patch(piece.id(), "panel", touches, touch, centre, ALONG);
    Patch b =
        new Patch(
            on.piece(),
            on.panel(),
            face,
            bearing.isEmpty() ? on.material() : bearing.get(0),
            onPanel,
            outwards ? ALONG.times(-1) : ALONG);
    card.add(
        new Join.Glue(
            piece.id() + "/glue", a, b, raisedBy, piece.stock().clear() ? tape : glue, origin));
  }
}
