package hingeleaf.outline;

import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import hingeleaf.geom.Box;
import hingeleaf.geom.Crossings;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * From drawn lines to regions: closed, straightened at the final size, checked for crossings, and
 * sorted into outer lines and holes.
 *
 * <p>Within one filled element the fill rule decides what is a hole, and filled elements are laid
 * over one another as a painter would. Elements without filling are lines to cut along: of these
 * each one inside another cuts a hole.
 */
final class Outliner {
  /** Half goes to the chords, half to stretching the result to exactly the width asked for. */
  private static final double CHORD = Tolerance.CHORD_MM / 2;

  /** A drawn gap under this many mm, at the final size, is closed without a word. */
  private static final double GAP = Tolerance.CHORD_MM;

  private static final int MOST_CROSSINGS = 20_000;
  private static final int MOST_LINES = 2_000;

  private final String name;
  private final Drawing drawing;

  Outliner(String name, Drawing drawing) {
    this.name = name;
    this.drawing = drawing;
  }

  /** A finished problem on its way out. */
  static final class Fault extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Fault(Problem problem) {
      super(problem.message(), null, false, false);
      this.problem = problem;
    }

    Problem problem() {
      return problem;
    }
  }

  Outline.Reading outline(OptionalDouble width, List<Problem> notes) throws Fault {
    Box drawn = roughBox();
    double scale = width.isPresent() ? width.getAsDouble() / drawn.width() : 1;
    checkSize(drawn, scale);
    // y turns up here; from now on everything is at the final size
    Affine finish =
        Affine.scale(scale, -scale)
            .times(Affine.translate(-drawn.centre().x(), -drawn.centre().y()));
    List<Region> regions = regions(finish);
    if (regions.isEmpty()) {
      throw new Fault(problem("empty-drawing", 1, 1, "this drawing has no area to cut out"));
    }
    return new Outline.Reading.Read(new Outline(fitted(regions, width)), notes);
  }

  private Box roughBox() throws Fault {
    List<Vec2> points = new ArrayList<>();
    for (Subpath s : drawing.subpaths()) {
      points.addAll(s.flat(Math.max(1e-3, extent(s) * 1e-4)));
    }
    if (points.isEmpty()) {
      throw new Fault(problem("empty-drawing", 1, 1, "this drawing has no outline in it"));
    }
    Box box = Box.around(points);
    if (!(box.width() > 0) || !(box.height() > 0)) {
      throw new Fault(problem("empty-drawing", 1, 1, "this drawing has no area to cut out"));
    }
    return box;
  }

  private static double extent(Subpath s) {
    List<Vec2> handles = new ArrayList<>(List.of(s.start()));
    for (Subpath.Segment seg : s.segments()) {
      handles.add(seg.handle1());
      handles.add(seg.handle2());
      handles.add(seg.end());
    }
    Box box = Box.around(handles);
    return Math.max(box.width(), box.height());
  }

  private void checkSize(Box drawn, double scale) throws Fault {
    double largest = Math.max(drawn.width(), drawn.height()) * scale;
    if (!(largest <= 10_000)) {
      throw new Fault(problem("too-large", 1, 1, "this drawing would be more than 10 m large"));
    }
    double smallest = Math.min(drawn.width(), drawn.height()) * scale;
    if (smallest < 10 * Tolerance.CHORD_MM) {
      throw new Fault(
          problem("empty-drawing", 1, 1, "this drawing would be less than 0.1 mm wide or high"));
    }
    long corners = 0;
    for (Subpath s : drawing.subpaths()) {
      corners += s.corners(CHORD / scale);
      if (corners > Pen.MOST) {
        throw new Fault(
            problem("too-many-points", 1, 1, "this drawing needs more than 200,000 points"));
      }
    }
  }

  private List<Region> regions(Affine finish) throws Fault {
    if (drawing.subpaths().size() > MOST_LINES) {
      throw new Fault(
          problem("too-many-points", 1, 1, "this drawing has more than 2,000 separate outlines"));
    }
    List<List<Region>> layers = new ArrayList<>();
    List<Ring> lines = new ArrayList<>();
    Drawing.Element firstLine = null;
    for (Drawing.Element e : drawing.elements()) {
      List<Ring> rings = rings(e, finish);
      checkCrossings(rings, e, finish);
      if (e.filled()) {
        layers.add(Nesting.regions(rings, e.evenOdd()));
      } else {
        lines.addAll(rings);
        firstLine = firstLine == null ? e : firstLine;
      }
    }
    if (firstLine != null) {
      checkCrossings(lines, firstLine, finish);
      layers.add(Nesting.regions(lines, true));
    }
    // the regions of one layer lie apart already
    return layers.size() == 1
        ? layers.get(0)
        : union(layers.stream().flatMap(List::stream).toList());
  }

  private List<Region> union(List<Region> overlapping) throws Fault {
    List<Ring> rings = new ArrayList<>();
    for (Region r : overlapping) {
      rings.add(r.outer());
      rings.addAll(r.holes());
    }
    if (!Crossings.of(rings, MOST_CROSSINGS).complete()) {
      throw new Fault(tangled());
    }
    return Overlay.union(overlapping);
  }

  private Problem tangled() {
    return problem(
        "too-many-points", 1, 1, "the lines of this drawing are too tangled; join its shapes");
  }

  private List<Ring> rings(Drawing.Element e, Affine finish) throws Fault {
    List<Ring> rings = new ArrayList<>();
    for (Subpath s : e.subpaths()) {
      Subpath at = s.map(finish);
      if (!at.closed() && at.start().distance(at.end()) > GAP) {
        throw new Fault(
            problem(
                "open-outline",
                e.line(),
                e.column(),
                "the outline of this `"
                    + e.name()
                    + "` is open: it begins at "
                    + shown(s.start())
                    + " and ends at "
                    + shown(s.end())
                    + " of the drawing; close it"));
      }
      List<Vec2> corners = Nesting.distinct(at.flat(CHORD));
      if (corners.size() >= 3) {
        Ring ring = new Ring(corners);
        // by its box: the two halves of a crossed outline may cancel to no area at all
        if (ring.box().width() * ring.box().height() >= Tolerance.AREA_MM2) {
          rings.add(ring);
        }
      }
    }
    return rings;
  }

  private void checkCrossings(List<Ring> rings, Drawing.Element e, Affine finish) throws Fault {
    Crossings crossings = Crossings.of(rings, 1);
    Vec2 at = crossings.first();
    if (at == null && !crossings.complete()) {
      throw new Fault(tangled());
    }
    if (at != null) {
      Vec2 drawn = new Vec2((at.x() - finish.e()) / finish.a(), (at.y() - finish.f()) / finish.d());
      throw new Fault(
          problem(
              "crossing-outline",
              e.line(),
              e.column(),
              "the outline of this `"
                  + e.name()
                  + "` crosses or touches itself at "
                  + shown(drawn)
                  + " of the drawing; join or separate its lines there"));
    }
  }

  /** A point in the drawing's own units. */
  private String shown(Vec2 mm) {
    return String.format(
        Locale.ROOT, "(%.1f, %.1f)", mm.x() / drawing.mmPerUnitX(), mm.y() / drawing.mmPerUnitY());
  }

  /**
   * Stretched by the last hundredth so that the box has exactly the width asked for, and centred.
   */
  private static List<Region> fitted(List<Region> regions, OptionalDouble width) {
    Box box = new Outline(regions).box();
    double k = width.isPresent() ? width.getAsDouble() / box.width() : 1;
    Vec2 c = box.centre();
    return regions.stream().map(r -> r.map(p -> p.minus(c).times(k))).toList();
  }

  private Problem problem(String kind, int line, int column, String message) {
    Place at = new Place(name, Math.max(1, line), Math.max(1, column));
    return Problem.blocks(kind, "", "", message).at(at);
  }
}
