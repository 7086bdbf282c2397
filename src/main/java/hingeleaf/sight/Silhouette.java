package hingeleaf.sight;

import hingeleaf.geom.Segment;
import hingeleaf.geom.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The area that all panels together cover, and its outline. */
final class Silhouette {
  static final Silhouette NONE = new Silhouette(Shapes.NOTHING);

  private final Geometry area;
  private final List<Polygon> covered;
  private final Outline outline;

  private Silhouette(Geometry area) {
    this.area = area;
    this.covered = Shapes.polygons(area);
    this.outline = new Outline(covered);
  }

  /** The silhouette of these and more surfaces. */
  Silhouette with(List<Surface> more) {
    Geometry all = union(area, more);
    return all == area ? this : new Silhouette(all);
  }

  private static Geometry union(Geometry before, List<Surface> surfaces) {
    List<Geometry> shapes = new ArrayList<>(surfaces.stream().map(Surface::shape).toList());
    shapes.sort(Comparator.comparingDouble(Geometry::getArea).reversed());
    Geometry all = before;
    for (Geometry shape : shapes) {
      // Whether it only just covers a shape is as dear to ask as to join the two.
      if (!shape.isEmpty() && !inside(shape, all)) {
        Geometry joined = Shapes.or(all, shape);
        if (joined.getArea() > all.getArea() + Tolerance.AREA_MM2) {
          all = joined;
        }
      }
    }
    return all;
  }

  /** Whether every part of a shape lies well inside a part of another. */
  private static boolean inside(Geometry shape, Geometry area) {
    List<Polygon> parts = Shapes.polygons(area);
    return Shapes.polygons(shape).stream()
        .allMatch(s -> parts.stream().anyMatch(p -> Apart.inside(s, p)));
  }

  /** Where a line runs along the outline. */
  Spans along(Segment line) {
    return Spans.union(outline.along(line));
  }

  /** Where a line runs along the outline or outside it. */
  Spans outside(Segment line) {
    Spans free = Spans.whole();
    for (Polygon p : covered) {
      free = free.minus(Edgewise.inside(line, p));
    }
    return free.plus(along(line));
  }
}
