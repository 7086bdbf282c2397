package hingeleaf.sight;

import hingeleaf.geom.Segment;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/** Panels seen edge-on, which have no area but show as lines: a door that stands open. */
final class Edgewise {
  private final List<Surface> surfaces;
  private final List<Lines.Draft> drawn;

  /**
   * @param drawn lines that are there already and are not drawn again
   */
  Edgewise(List<Surface> surfaces, List<Lines.Draft> drawn) {
    this.surfaces = surfaces;
    this.drawn = new ArrayList<>(drawn);
  }

  List<Lines.Draft> seen() {
    List<Lines.Draft> out = new ArrayList<>();
    for (Surface s : surfaces) {
      if (s.edgeOn() && s.opaque()) {
        for (Rims.Rim rim : Rims.of(s.part())) {
          seen(s, rim, out);
        }
      }
    }
    return out;
  }

  private void seen(Surface s, Rims.Rim rim, List<Lines.Draft> out) {
    Lines.Ends ends = Lines.Ends.of(rim.at(), s.part().pose(), s.camera());
    if (ends == null || ends.length() < Tolerance.SLIVER_MM) {
      return;
    }
    Segment line = ends.at();
    Spans free = Spans.whole();
    for (Surface hider : surfaces) {
      if (hider.opaque() && !hider.edgeOn() && !free.isEmpty()) {
        free = free.minus(behind(hider, ends));
      }
    }
    for (Lines.Draft d : drawn) {
      free = free.isEmpty() ? free : free.minus(Spans.shared(line, d.at()));
    }
    for (Segment at : free.on(line)) {
      Lines.Draft draft = new Lines.Draft(rim.at(at), s.index(), false);
      out.add(draft);
      drawn.add(draft);
    }
  }

  /** Where a line is behind a surface by more than a touch. */
  private static Spans behind(Surface hider, Lines.Ends ends) {
    double from = above(hider, ends.from());
    double to = above(hider, ends.to());
    if (from <= 0 && to <= 0) {
      return Spans.none();
    }
    double cross = from / (from - to);
    Spans deeper =
        from > 0 && to > 0
            ? Spans.whole()
            : Spans.union(List.of(from > 0 ? new Spans.Span(0, cross) : new Spans.Span(cross, 1)));
    return deeper.and(inside(ends.at(), hider.shape()));
  }

  private static double above(Surface hider, Camera.Spot spot) {
    return hider.plane().at(spot.x(), spot.y()) - spot.nearness() - Tolerance.TOUCH_MM;
  }

  /** Which stretches of a line lie in a shape. */
  static Spans inside(Segment line, Geometry shape) {
    Vec2 a = line.from();
    Vec2 b = line.to();
    LineString string =
        Shapes.FACTORY.createLineString(
            new Coordinate[] {new Coordinate(a.x(), a.y()), new Coordinate(b.x(), b.y())});
    if (!string.getEnvelopeInternal().intersects(shape.getEnvelopeInternal())) {
      return Spans.none();
    }
    Geometry within = Shapes.and(string, shape);
    List<Spans.Span> spans = new ArrayList<>();
    for (int i = 0; i < within.getNumGeometries(); i++) {
      if (within.getGeometryN(i) instanceof LineString part && part.getNumPoints() > 1) {
        Coordinate p = part.getCoordinateN(0);
        Coordinate q = part.getCoordinateN(part.getNumPoints() - 1);
        double s = along(line, p);
        double t = along(line, q);
        spans.add(new Spans.Span(Math.min(s, t), Math.max(s, t)));
      }
    }
    return Spans.union(spans);
  }

  private static double along(Segment line, Coordinate c) {
    Vec2 d = line.to().minus(line.from());
    return new Vec2(c.x, c.y).minus(line.from()).dot(d) / d.dot(d);
  }
}
