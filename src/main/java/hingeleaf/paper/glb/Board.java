package hingeleaf.paper.glb;

import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** The faces of a thin board as triangles, anticlockwise seen from outside. */
final class Board {
  private static final GeometryFactory JTS = new GeometryFactory();

  /**
   * Corners, each with its own normal, and triangles of corners.
   *
   * @param corners x, y, z in mm, one after the other
   * @param normals unit, one for each corner
   * @param triangles three corner numbers each
   */
  record Faces(List<double[]> corners, List<double[]> normals, List<Integer> triangles) {
    Faces() {
      this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    }

    int corner(double x, double y, double z, double nx, double ny, double nz) {
      corners.add(new double[] {x, y, z});
      normals.add(new double[] {nx, ny, nz});
      return corners.size() - 1;
    }
  }

  private final Faces front = new Faces();
  private final Faces back = new Faces();
  private final Faces edge = new Faces();

  /** A board over {@code region}, from {@code low} to {@code high} along z, mm. */
  Board(Region region, double low, double high) {
    Map<Coordinate, Integer> tops = new HashMap<>();
    Map<Coordinate, Integer> bottoms = new HashMap<>();
    Geometry triangles = PolygonTriangulator.triangulate(polygon(region));
    for (int i = 0; i < triangles.getNumGeometries(); i++) {
      Coordinate[] c = triangles.getGeometryN(i).getCoordinates();
      boolean turn = cross(c) < 0;
      for (int k = 0; k < 3; k++) {
        Coordinate p = c[turn ? 2 - k : k];
        Coordinate q = c[turn ? k : 2 - k];
        front.triangles().add(corner(front, tops, p, high, 1));
        back.triangles().add(corner(back, bottoms, q, low, -1));
      }
    }
    wall(region.outer(), low, high);
    region.holes().forEach(h -> wall(h, low, high));
  }

  Faces front() {
    return front;
  }

  Faces back() {
    return back;
  }

  Faces edge() {
    return edge;
  }

  private static double cross(Coordinate[] c) {
    return (c[1].x - c[0].x) * (c[2].y - c[0].y) - (c[1].y - c[0].y) * (c[2].x - c[0].x);
  }

  private static int corner(
      Faces faces, Map<Coordinate, Integer> known, Coordinate c, double z, double nz) {
    return known.computeIfAbsent(c, p -> faces.corner(p.x, p.y, z, 0, 0, nz));
  }

  /** Outer rings run anticlockwise and holes clockwise, so the paper is always on the left. */
  private void wall(Ring ring, double low, double high) {
    List<Vec2> points = ring.points();
    for (int i = 0; i < points.size(); i++) {
      Vec2 a = points.get(i);
      Vec2 b = points.get((i + 1) % points.size());
      if (a.distance(b) < 1e-9) {
        continue;
      }
      Vec2 out = b.minus(a).unit().left().times(-1);
      int p = edge.corner(a.x(), a.y(), low, out.x(), out.y(), 0);
      int q = edge.corner(b.x(), b.y(), low, out.x(), out.y(), 0);
      int r = edge.corner(b.x(), b.y(), high, out.x(), out.y(), 0);
      int s = edge.corner(a.x(), a.y(), high, out.x(), out.y(), 0);
      edge.triangles().addAll(List.of(p, q, r, p, r, s));
    }
  }

  private static Polygon polygon(Region region) {
    return JTS.createPolygon(
        ring(region.outer()), region.holes().stream().map(Board::ring).toArray(LinearRing[]::new));
  }

  private static LinearRing ring(Ring ring) {
    List<Coordinate> c = new ArrayList<>();
    ring.points().forEach(p -> c.add(new Coordinate(p.x(), p.y())));
    c.add(c.get(0).copy());
    return JTS.createLinearRing(c.toArray(Coordinate[]::new));
  }
}
