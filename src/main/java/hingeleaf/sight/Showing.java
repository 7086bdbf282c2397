package hingeleaf.sight;

import hingeleaf.card.Face;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * A part of a piece that is seen behind that piece's own opening, where a maker would rather not
 * see it: a glue tab of a frame inside the frame's aperture.
 *
 * @param part id of the panel that shows
 * @param through id of the panel whose opening it shows in
 * @param area that shows, mm2 on the part itself
 * @param depth of the deepest strip that shows, across the part's fold, in mm on the part itself
 * @param inOpening the same strip measured in the plane of the opening, mm: as far as the opening's
 *     edge would have to come in to hide it from this look
 * @param face which face shows
 * @param colour of that face, {@code #rrggbb}
 * @param behind the colours that would be seen in its place if it were not there, sorted; where
 *     they are all the same as its own a maker hardly sees it
 */
public record Showing(
    String part,
    String through,
    double area,
    double depth,
    double inOpening,
    Face face,
    String colour,
    List<String> behind) {
  public Showing {
    behind = List.copyOf(behind);
  }

  /**
   * Everything of the kind in a scene, one entry for each part and opening panel, in the scene's
   * order. A part counts only where it lies behind the opening.
   *
   * <p>Most parts are nowhere near their opening; only for those that are is it worked out what
   * hides them.
   */
  public static List<Showing> of(Scene scene, Look look) {
    Sight sight = Sight.of(scene, look);
    List<Found> found = new ArrayList<>();
    for (Surface frame : sight.surfaces()) {
      if (!frame.part().panel().region().holes().isEmpty()) {
        for (Surface own : sight.surfaces()) {
          if (own != frame && own.part().piece().id().equals(frame.part().piece().id())) {
            find(frame, own, sight, found);
          }
        }
      }
    }
    return found.isEmpty() ? List.of() : measured(found, scene, look);
  }

  /** A part with the strips of it that show in an opening. */
  private record Found(Surface frame, Surface own, List<Polygon> strips) {}

  private static void find(Surface frame, Surface own, Sight sight, List<Found> found) {
    if (frame.edgeOn() || own.edgeOn() || !own.opaque()) {
      return;
    }
    List<Polygon> strips = new ArrayList<>();
    if (!strips(frame, own, Shapes.polygons(own.shape())).isEmpty()) {
      strips.addAll(strips(frame, own, sight.visible(own)));
    }
    if (!strips.isEmpty()) {
      found.add(new Found(frame, own, strips));
    }
  }

  private static List<Showing> measured(List<Found> found, Scene scene, Look look) {
    Set<String> parts = new HashSet<>();
    found.forEach(f -> parts.add(f.own.part().id()));
    View without = Sight.look(scene.keeping(p -> !parts.contains(p.id())), look);
    return found.stream().map(f -> measured(f, without)).toList();
  }

  private static Showing measured(Found f, View without) {
    Vec2 across = across(f.own.part());
    double area = 0;
    double depth = 0;
    double inOpening = 0;
    SortedSet<String> behind = new TreeSet<>();
    for (Polygon strip : f.strips) {
      Region on = Shapes.region(strip);
      area += on.map(f.own::onPiece).area();
      depth = Math.max(depth, extent(on, f.own::onPiece, across));
      inOpening = Math.max(inOpening, extent(on, f.frame::onPiece, across));
      colours(strip, without, behind);
    }
    Face face = f.own.face();
    return new Showing(
        f.own.part().id(),
        f.frame.part().id(),
        area,
        depth,
        inOpening,
        face,
        f.own.colour(face),
        List.copyOf(behind));
  }

  private static void colours(Polygon strip, View view, Set<String> out) {
    for (VisiblePolygon p : view.polygons()) {
      if (p.kind() == VisiblePolygon.Kind.PAPER) {
        Polygon paper = polygon(p.region());
        if (paper.getEnvelopeInternal().intersects(strip.getEnvelopeInternal())
            && !Shapes.polygons(Shapes.and(paper, strip)).isEmpty()) {
          out.add(p.colour());
        }
      }
    }
  }

  private static Polygon polygon(Region view) {
    return Shapes.polygon(view, p -> new Coordinate(p.x(), p.y()));
  }

  /** The parts of a visible region that lie behind an opening of the frame. */
  private static List<Polygon> strips(Surface frame, Surface own, List<Polygon> seen) {
    Camera.Slope above = own.plane().minus(frame.plane());
    List<Polygon> out = new ArrayList<>();
    for (Ring hole : frame.part().panel().region().holes()) {
      Geometry opening = frame.picture(Region.of(hole));
      for (Polygon region : seen) {
        for (Polygon strip : common(region, opening)) {
          Point inside = strip.getInteriorPoint();
          if (above.at(inside.getX(), inside.getY()) < -Tolerance.TOUCH_MM) {
            out.add(strip);
          }
        }
      }
    }
    return out;
  }

  private static List<Polygon> common(Polygon a, Geometry b) {
    return a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())
        ? Shapes.polygons(Shapes.and(a, b))
        : List.of();
  }

  /** How far a region reaches in a direction of the piece, seen back on a plane. */
  private static double extent(Region view, UnaryOperator<Vec2> onPiece, Vec2 along) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Vec2 p : view.outer().points()) {
      double t = onPiece.apply(p).dot(along);
      least = Math.min(least, t);
      most = Math.max(most, t);
    }
    return most - least;
  }

  /** Square to the longest fold of a panel; to its longest edge where it has no fold. */
  private static Vec2 across(Placed part) {
    List<Rims.Rim> rims = Rims.of(part);
    List<Rims.Rim> folds = rims.stream().filter(r -> r.kind() == VisibleLine.Kind.FOLD).toList();
    Segment longest =
        (folds.isEmpty() ? rims : folds)
            .stream()
                .map(Rims.Rim::at)
                .max(Comparator.comparingDouble(Segment::length))
                .orElseThrow();
    return longest.to().minus(longest.from()).unit().left();
  }
}
