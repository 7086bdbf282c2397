package hingeleaf.sight;

import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.SnapNoder;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * Flat shapes and what can be done with them, by the JTS library's overlay.
 *
 * <p>Vertices are snapped within {@link #SNAP}, which makes edges that should coincide do so; where
 * that fails (JTS says so by an exception) everything is rounded to a grid that cannot fail.
 */
final class Shapes {
  /** Vertices nearer than this become one, mm. */
  private static final double SNAP = Tolerance.LENGTH_MM;

  /** The grid of last resort: 1e-4 mm. */
  private static final PrecisionModel GRID = new PrecisionModel(1e4);

  static final GeometryFactory FACTORY = new GeometryFactory();

  static final Geometry NOTHING = FACTORY.createPolygon();

  private Shapes() {}

  static Polygon polygon(Region region, Function<Vec2, Coordinate> map) {
    LinearRing outer = ring(region.outer(), map);
    LinearRing[] holes = region.holes().stream().map(h -> ring(h, map)).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(outer, holes);
  }

  private static LinearRing ring(Ring ring, Function<Vec2, Coordinate> map) {
    List<Vec2> points = ring.points();
    Coordinate[] c = new Coordinate[points.size() + 1];
    for (int i = 0; i < points.size(); i++) {
      c[i] = map.apply(points.get(i));
    }
    c[points.size()] = c[0].copy();
    return FACTORY.createLinearRing(c);
  }

  static Region region(Polygon polygon) {
    List<Ring> holes = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      holes.add(ring(polygon.getInteriorRingN(i)));
    }
    return new Region(ring(polygon.getExteriorRing()), holes);
  }

  private static Ring ring(LinearRing line) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i + 1 < line.getNumPoints(); i++) {
      Coordinate c = line.getCoordinateN(i);
      points.add(new Vec2(c.x, c.y));
    }
    return new Ring(points);
  }

  static Geometry minus(Geometry a, Geometry b) {
    return overlay(a, b, OverlayNG.DIFFERENCE);
  }

  static Geometry and(Geometry a, Geometry b) {
    return overlay(a, b, OverlayNG.INTERSECTION);
  }

  static Geometry or(Geometry a, Geometry b) {
    return overlay(a, b, OverlayNG.UNION);
  }

  private static Geometry overlay(Geometry a, Geometry b, int operation) {
    try {
      return OverlayNG.overlay(a, b, operation, new SnapNoder(SNAP));
    } catch (TopologyException | IllegalArgumentException e) {
      return OverlayNG.overlay(GeometryFixer.fix(a), GeometryFixer.fix(b), operation, GRID);
    }
  }

  /** The polygons of a shape that are no slivers. */
  static List<Polygon> polygons(Geometry shape) {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      if (shape.getGeometryN(i) instanceof Polygon p && !sliver(p)) {
        out.add(p);
      }
    }
    return out;
  }

  /** Whether a polygon is thinner on average than the sliver tolerance, or has next to no area. */
  static boolean sliver(Polygon p) {
    double area = p.getArea();
    return area < Tolerance.AREA_MM2 || 2 * area < Tolerance.SLIVER_MM * p.getLength();
  }

  static Geometry gather(List<Polygon> polygons) {
    return FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  /** The part of a box where {@code f} is above 0; empty where it is nowhere. */
  static Polygon above(Camera.Slope f, Envelope box) {
    double[][] corners = {
      {box.getMinX(), box.getMinY()},
      {box.getMaxX(), box.getMinY()},
      {box.getMaxX(), box.getMaxY()},
      {box.getMinX(), box.getMaxY()}
    };
    List<Coordinate> kept = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double[] p = corners[i];
      double[] q = corners[(i + 1) % 4];
      double fp = f.at(p[0], p[1]);
      double fq = f.at(q[0], q[1]);
      if (fp > 0) {
        kept.add(new Coordinate(p[0], p[1]));
      }
      if ((fp > 0) != (fq > 0)) {
        double t = fp / (fp - fq);
        kept.add(new Coordinate(p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])));
      }
    }
    if (kept.size() < 3) {
      return FACTORY.createPolygon();
    }
    kept.add(kept.get(0).copy());
    return FACTORY.createPolygon(kept.toArray(new Coordinate[0]));
  }
}
