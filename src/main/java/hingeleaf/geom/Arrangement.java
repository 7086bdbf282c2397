package hingeleaf.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * The cells into which many overlapping shapes divide the plane, and which shapes cover each.
 *
 * <p>All boundaries are cut at their crossings on a grid of {@value #GRID_MM} mm and turned into
 * {@link Faces}. Cells that nothing covers, and slivers under {@link Tolerance#AREA_MM2}, are left
 * out. Order is fixed by the input.
 */
public final class Arrangement {
  /**
   * A tenth of the tolerance of lengths times a hundred: edges that should be one, after a fold
   * through floating point, are one; nothing that a blade can cut is lost.
   */
  private static final double GRID_MM = 1e-5;

  private static final GeometryFactory FACTORY =
      new GeometryFactory(new PrecisionModel(1 / GRID_MM));

  /**
   * One cell.
   *
   * @param inside a point strictly inside
   * @param area mm2
   * @param cover the indices of the shapes that cover it; at least one
   */
  public record Cell(Vec2 inside, double area, BitSet cover) {
    public Cell {
      cover = (BitSet) cover.clone();
    }
  }

  private Arrangement() {}

  /** The cells of the shapes; shapes of less than a sliver's area are never covering. */
  public static List<Cell> of(List<Region> shapes) {
    Map<List<Coordinate>, BitSet> bounded = new LinkedHashMap<>();
    for (int i = 0; i < shapes.size(); i++) {
      Polygon p = polygon(shapes.get(i));
      if (p.getArea() > Tolerance.AREA_MM2) {
        bound(p, i, bounded);
      }
    }
    List<Faces.Border> borders = new ArrayList<>();
    bounded.forEach((r, which) -> borders.add(new Faces.Border(closed(r), which)));
    List<Cell> cells = new ArrayList<>();
    for (Faces.Face face : Faces.of(borders, GRID_MM)) {
      Polygon p = polygon(face);
      if (p.getArea() > Tolerance.AREA_MM2) {
        Coordinate at = p.getInteriorPoint().getCoordinate();
        cells.add(new Cell(new Vec2(at.x, at.y), p.getArea(), face.cover()));
      }
    }
    return cells;
  }

  private static Polygon polygon(Faces.Face face) {
    return FACTORY.createPolygon(
        FACTORY.createLinearRing(face.outer()),
        face.holes().stream().map(FACTORY::createLinearRing).toArray(LinearRing[]::new));
  }

  /** Panels that lie on each other edge to edge, as those of frames alike do, share one ring. */
  private static void bound(Polygon p, int shape, Map<List<Coordinate>, BitSet> bounded) {
    for (int i = -1; i < p.getNumInteriorRing(); i++) {
      LinearRing ring = i < 0 ? p.getExteriorRing() : p.getInteriorRingN(i);
      bounded.computeIfAbsent(corners(ring), r -> new BitSet()).flip(shape);
    }
  }

  /** The corners anticlockwise from the least one, so that like rings compare alike. */
  private static List<Coordinate> corners(LinearRing ring) {
    List<Coordinate> all = new ArrayList<>(Arrays.asList(ring.getCoordinates()));
    all.remove(all.size() - 1);
    if (!Orientation.isCCWArea(ring.getCoordinates())) {
      Collections.reverse(all);
    }
    Collections.rotate(all, -all.indexOf(Collections.min(all)));
    return all;
  }

  private static Coordinate[] closed(List<Coordinate> corners) {
    Coordinate[] ring = corners.toArray(new Coordinate[corners.size() + 1]);
    ring[corners.size()] = ring[0];
    return ring;
  }

  private static Polygon polygon(Region r) {
    return FACTORY.createPolygon(
        FACTORY.createLinearRing(ring(r.outer())),
        r.holes().stream().map(h -> FACTORY.createLinearRing(ring(h))).toArray(LinearRing[]::new));
  }

  private static Coordinate[] ring(Ring r) {
    List<Vec2> p = r.points();
    Coordinate[] c = new Coordinate[p.size() + 1];
    Arrays.setAll(c, i -> precise(p.get(i % p.size())));
    return c;
  }

  private static Coordinate precise(Vec2 p) {
    PrecisionModel grid = FACTORY.getPrecisionModel();
    return new Coordinate(grid.makePrecise(p.x()), grid.makePrecise(p.y()));
  }
}
