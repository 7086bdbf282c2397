package hingeleaf.geom;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** Flat shapes with holes cut into triangles, by ear clipping (JTS). */
public final class Triangles {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Triangles() {}

  /**
   * The triangles of a region: they cover it, holes left out, and overlap only along edges.
   *
   * @param region valid, of more than no area
   * @return six numbers a triangle: x and y of its three corners, which are corners of the region
   */
  public static double[] of(Region region) {
    LinearRing[] holes = region.holes().stream().map(Triangles::ring).toArray(LinearRing[]::new);
    Geometry cut =
        PolygonTriangulator.triangulate(FACTORY.createPolygon(ring(region.outer()), holes));
    double[] out = new double[6 * cut.getNumGeometries()];
    for (int i = 0; i < cut.getNumGeometries(); i++) {
      Coordinate[] c = cut.getGeometryN(i).getCoordinates();
      for (int k = 0; k < 3; k++) {
        out[6 * i + 2 * k] = c[k].x;
        out[6 * i + 2 * k + 1] = c[k].y;
      }
    }
    return out;
  }

  private static LinearRing ring(Ring ring) {
    int n = ring.points().size();
    Coordinate[] corners = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      Vec2 p = ring.points().get(i % n);
      corners[i] = new Coordinate(p.x(), p.y());
    }
    return FACTORY.createLinearRing(corners);
  }
}
