package hingeleaf.geom;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Flat shapes laid over one another: union, intersection, difference, growing, distance.
 *
 * <p>A shape is a list of regions that do not overlap; the empty list is the empty shape. Results
 * leave out slivers under {@link Tolerance#AREA_MM2} and come in a fixed order (lowest left corner
 * first), so the same input gives the same output. Regions given must be {@link #valid}. The work
 * is done by the JTS library, which stays inside this package.
 */
public final class Overlay {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Mitres longer than this many times the distance are cut off square. */
  private static final double MITRE_LIMIT = 5;

  private Overlay() {}

  /** What any of the regions covers; they may overlap. */
  public static List<Region> union(Collection<Region> regions) {
    if (regions.size() < 2) {
      return List.copyOf(regions);
    }
    Geometry all = FACTORY.createGeometryCollection(polygons(regions).toArray(new Geometry[0]));
    return regions(OverlayNGRobust.union(all));
  }

  public static List<Region> union(Region a, Region b) {
    return union(List.of(a, b));
  }

  /** What both cover. */
  public static List<Region> intersection(Collection<Region> a, Collection<Region> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return List.of();
    }
    if (b.size() == 1 && frames(b.iterator().next(), a)) {
      List<Region> holes = holesNear(b.iterator().next(), a);
      return holes.isEmpty() ? regions(shape(a)) : difference(a, holes);
    }
    return regions(OverlayNGRobust.overlay(shape(a), shape(b), OverlayNG.INTERSECTION));
  }

  public static List<Region> intersection(Region a, Region b) {
    return intersection(List.of(a), List.of(b));
  }

  /** What {@code a} covers and {@code b} does not. */
  public static List<Region> difference(Collection<Region> a, Collection<Region> b) {
    return regions(OverlayNGRobust.overlay(shape(a), shape(b), OverlayNG.DIFFERENCE));
  }

  public static List<Region> difference(Region a, Region b) {
    return difference(List.of(a), List.of(b));
  }

  /** Area in mm2 of regions that do not overlap. */
  public static double area(Collection<Region> regions) {
    return regions.stream().mapToDouble(Region::area).sum();
  }

  /** Whether {@code inner} lies in {@code outer}, edges allowed to touch. */
  public static boolean within(Collection<Region> inner, Collection<Region> outer) {
    Region only = outer.size() == 1 ? outer.iterator().next() : null;
    return only != null && plainlyCovers(only, inner) || difference(inner, outer).isEmpty();
  }

  /** Whether the boxes tell already: a plain rectangle, with no hole near what lies in it. */
  private static boolean plainlyCovers(Region a, Collection<Region> b) {
    return !b.isEmpty() && frames(a, b) && holesNear(a, b).isEmpty();
  }

  /** Whether a region is a plain rectangle, but for its holes, and others lie in its outline. */
  private static boolean frames(Region a, Collection<Region> b) {
    return fillsItsBox(a.outer()) && b.stream().allMatch(r -> a.box().holds(r.box()));
  }

  /** The holes of a region whose boxes meet those of others, as regions. */
  private static List<Region> holesNear(Region a, Collection<Region> b) {
    return a.holes().stream()
        .filter(h -> b.stream().anyMatch(r -> meet(h.box(), r.box())))
        .map(Region::of)
        .toList();
  }

  private static boolean fillsItsBox(Ring ring) {
    Box box = ring.box();
    return ring.points().size() == 4 && ring.area() >= box.width() * box.height();
  }

  private static boolean meet(Box p, Box q) {
    return p.minX() < q.maxX() && q.minX() < p.maxX() && p.minY() < q.maxY() && q.minY() < p.maxY();
  }

  public static boolean within(Region inner, Region outer) {
    return within(List.of(inner), List.of(outer));
  }

  /** Whether the two share more than edges. */
  public static boolean overlap(Region a, Region b) {
    return !intersection(a, b).isEmpty();
  }

  /**
   * The shape with every edge moved outwards by {@code distance} mm (inwards where negative), its
   * corners kept sharp; a corner so sharp that its point would run past {@value #MITRE_LIMIT} times
   * the distance is cut off. Empty where nothing is left.
   */
  public static List<Region> grown(Collection<Region> shape, double distance) {
    BufferParameters sharp =
        new BufferParameters(
            16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
    sharp.setSimplifyFactor(1e-4);
    return regions(BufferOp.bufferOp(shape(shape), distance, sharp));
  }

  public static List<Region> grown(Region region, double distance) {
    return grown(List.of(region), distance);
  }

  /**
   * The region with fewer points, no line moved by more than a distance (Douglas &amp; Peucker
   * 1973); the region itself where it would lose a hole or fall apart.
   *
   * @param distance mm, not negative
   */
  public static Region coarser(Region region, double distance) {
    Geometry simple = DouglasPeuckerSimplifier.simplify(polygon(region), distance);
    return simple instanceof Polygon p && p.getNumInteriorRing() == region.holes().size()
        ? region(p)
        : region;
  }

  /** Shortest distance in mm between two regions, 0 where they touch or overlap. */
  public static double distance(Region a, Region b) {
    return polygon(a).distance(polygon(b));
  }

  /**
   * Shortest distance in mm between the lines of two rings, 0 where they touch or cross; the border
   * between an opening and the edge around it.
   */
  public static double distance(Ring a, Ring b) {
    return line(a).distance(line(b));
  }

  /** Shortest distance in mm from a point to a region, 0 inside. */
  public static double distance(Vec2 p, Region a) {
    return polygon(a).distance(FACTORY.createPoint(new Coordinate(p.x(), p.y())));
  }

  /** Whether no line crosses or touches itself and every hole lies inside. */
  public static boolean valid(Region region) {
    return faultOf(region) == null;
  }

  /** A point at which a region's lines cross or a hole lies wrong; null where all is well. */
  public static @Nullable Vec2 faultOf(Region region) {
    TopologyValidationError error = new IsValidOp(polygon(region)).getValidationError();
    if (error == null) {
      return null;
    }
    Coordinate at = error.getCoordinate();
    return at == null ? region.outer().points().get(0) : new Vec2(at.x, at.y);
  }

  private static Geometry shape(Collection<Region> regions) {
    List<Polygon> all = polygons(regions);
    return all.size() == 1 ? all.get(0) : FACTORY.createMultiPolygon(all.toArray(new Polygon[0]));
  }

  private static List<Polygon> polygons(Collection<Region> regions) {
    return regions.stream().map(Overlay::polygon).toList();
  }

  private static Polygon polygon(Region region) {
    LinearRing[] holes = region.holes().stream().map(Overlay::line).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(line(region.outer()), holes);
  }

  private static LinearRing line(Ring ring) {
    int n = ring.points().size();
    Coordinate[] corners = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      Vec2 p = ring.points().get(i % n);
      corners[i] = new Coordinate(p.x(), p.y());
    }
    return FACTORY.createLinearRing(corners);
  }

  private static List<Region> regions(Geometry geometry) {
    List<Region> out = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon p && p.getArea() >= Tolerance.AREA_MM2) {
        out.add(region(p));
      }
    }
    out.sort(
        Comparator.comparingDouble((Region r) -> r.box().minY())
            .thenComparingDouble(r -> r.box().minX())
            .thenComparingDouble(Region::area));
    return List.copyOf(out);
  }

  private static Region region(Polygon polygon) {
    List<Ring> holes = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      Ring hole = ring(polygon.getInteriorRingN(i));
      if (Math.abs(hole.area()) >= Tolerance.AREA_MM2) {
        holes.add(hole);
      }
    }
    return new Region(ring(polygon.getExteriorRing()), holes);
  }

  private static Ring ring(LineString line) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i + 1 < line.getNumPoints(); i++) {
      Coordinate c = line.getCoordinateN(i);
      points.add(new Vec2(c.x + 0.0, c.y + 0.0));
    }
    return new Ring(points);
  }
}
