package hingeleaf.sight;

import hingeleaf.geom.Segment;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.hprtree.HPRtree;

/** The straight edges of some polygons, findable by place. */
final class Outline {
  private final HPRtree tree = new HPRtree();

  Outline(List<Polygon> polygons) {
    for (Polygon p : polygons) {
      add(p.getExteriorRing());
      for (int i = 0; i < p.getNumInteriorRing(); i++) {
        add(p.getInteriorRingN(i));
      }
    }
  }

  private void add(LinearRing ring) {
    Coordinate[] c = ring.getCoordinates();
    for (int i = 0; i + 1 < c.length; i++) {
      Segment s = new Segment(new Vec2(c[i].x, c[i].y), new Vec2(c[i + 1].x, c[i + 1].y));
      tree.insert(new Envelope(c[i], c[i + 1]), s);
    }
  }

  /** For each line the stretches on which the outline runs along it, in any order. */
  List<List<Spans.Span>> along(List<Rims.Rim> lines) {
    List<List<Spans.Span>> out = new ArrayList<>();
    for (Rims.Rim line : lines) {
      out.add(along(line.at()));
    }
    return out;
  }

  List<Spans.Span> along(Segment line) {
    List<Spans.Span> spans = new ArrayList<>();
    tree.query(box(line), found -> spans.addAll(Spans.shared(line, (Segment) found).parts()));
    return spans;
  }

  /** The box of a line, a little larger, so that lines along it are found. */
  static Envelope box(Segment line) {
    Envelope box = new Envelope(line.from().x(), line.to().x(), line.from().y(), line.to().y());
    box.expandBy(Tolerance.SLIVER_MM);
    return box;
  }
}
