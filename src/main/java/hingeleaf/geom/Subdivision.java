package hingeleaf.geom;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The faces into which lines divide flat material.
 *
 * <p>Lines that do not part anything (a slit inside a face) leave it whole. Lines are noded at
 * their crossings by the JTS overlay; the faces come in a fixed order, by the lower left of their
 * boxes.
 */
public final class Subdivision {
  private static final GeometryFactory FACTORY =
      new GeometryFactory(new PrecisionModel(1 / Tolerance.LENGTH_MM));

  private static final Comparator<Vec2> LOWEST_LEFT =
      Comparator.comparingDouble(Vec2::x).thenComparingDouble(Vec2::y);

  private Subdivision() {}

  /**
   * The faces of a region cut along lines.
   *
   * @param region material with its holes
   * @param lines in the same frame; parts outside the material do nothing
   */
  public static List<Region> split(Region region, Collection<Segment> lines) {
    List<Ring> clear = new ArrayList<>();
    List<Ring> met = new ArrayList<>();
    region.holes().forEach(h -> (clear(h.box(), lines) ? clear : met).add(h));
    List<Region> faces = faces(new Region(region.outer(), met), lines);
    return clear.isEmpty() ? faces : pierced(faces, clear);
  }

  /** Whether no line comes near a box. */
  private static boolean clear(Box box, Collection<Segment> lines) {
    for (Segment s : lines) {
      if (Math.max(s.from().x(), s.to().x()) > box.minX() - 1
          && Math.min(s.from().x(), s.to().x()) < box.maxX() + 1
          && Math.max(s.from().y(), s.to().y()) > box.minY() - 1
          && Math.min(s.from().y(), s.to().y()) < box.maxY() + 1) {
        return false;
      }
    }
    return true;
  }

  /** Puts holes that no line comes near into the faces that they lie in. */
  private static List<Region> pierced(List<Region> faces, List<Ring> holes) {
    List<Region> out = new ArrayList<>();
    for (Region face : faces) {
      List<Ring> all = new ArrayList<>(face.holes());
      for (Ring h : holes) {
        if (face.outer().contains(h.points().get(0))) {
          all.add(fromLowestLeft(h.points().stream().map(Subdivision::precise).toList()));
        }
      }
      all.sort((a, b) -> LOWEST_LEFT.compare(a.points().get(0), b.points().get(0)));
      out.add(new Region(face.outer(), all));
    }
    return out;
  }

  private static Vec2 precise(Vec2 p) {
    Coordinate c = coordinate(p);
    return new Vec2(c.x, c.y);
  }

  private static List<Region> faces(Region region, Collection<Segment> lines) {
    List<LineString> drawn = new ArrayList<>();
    drawn.add(line(region.outer()));
    region.holes().forEach(h -> drawn.add(line(h)));
    lines.forEach(s -> drawn.add(line(s)));
    Geometry all = FACTORY.createMultiLineString(drawn.toArray(LineString[]::new));
    Geometry noded =
        OverlayNG.overlay(all, null, OverlayNG.UNION, new SnapNoder(Tolerance.LENGTH_MM));
    Polygonizer faces = new Polygonizer();
    faces.add(noded);
    List<Region> found = new ArrayList<>();
    for (Object face : faces.getPolygons()) {
      Polygon p = (Polygon) face;
      Coordinate inside = p.getInteriorPoint().getCoordinate();
      if (region.contains(new Vec2(inside.x, inside.y))) {
        found.add(region(p));
      }
    }
    found.sort(
        Comparator.<Region>comparingDouble(r -> r.box().minX())
            .thenComparingDouble(r -> r.box().minY())
            .thenComparingDouble(Region::area));
    return found;
  }

  private static LineString line(Ring ring) {
    List<Vec2> p = ring.points();
    Coordinate[] c = new Coordinate[p.size() + 1];
    for (int i = 0; i <= p.size(); i++) {
      c[i] = coordinate(p.get(i % p.size()));
    }
    return FACTORY.createLineString(c);
  }

  private static LineString line(Segment s) {
    return FACTORY.createLineString(new Coordinate[] {coordinate(s.from()), coordinate(s.to())});
  }

  private static Coordinate coordinate(Vec2 p) {
    Coordinate c = new Coordinate(p.x(), p.y());
    FACTORY.getPrecisionModel().makePrecise(c);
    return c;
  }

  private static Region region(Polygon p) {
    List<Ring> holes = new ArrayList<>();
    for (int i = 0; i < p.getNumInteriorRing(); i++) {
      holes.add(ring(p.getInteriorRingN(i)));
    }
    holes.sort((a, b) -> LOWEST_LEFT.compare(a.points().get(0), b.points().get(0)));
    return new Region(ring(p.getExteriorRing()), holes);
  }

  private static Ring ring(LinearRing r) {
    CoordinateSequence c = r.getCoordinateSequence();
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i + 1 < c.size(); i++) {
      points.add(new Vec2(c.getX(i), c.getY(i)));
    }
    return fromLowestLeft(points);
  }

  /**
   * The polygonizer starts rings where it likes, not twice alike; ours start at their lower left.
   */
  private static Ring fromLowestLeft(List<Vec2> points) {
    int first = 0;
    for (int i = 1; i < points.size(); i++) {
      if (LOWEST_LEFT.compare(points.get(i), points.get(first)) < 0) {
        first = i;
      }
    }
    List<Vec2> turned = new ArrayList<>(points.subList(first, points.size()));
    turned.addAll(points.subList(0, first));
    return new Ring(turned);
  }
}
