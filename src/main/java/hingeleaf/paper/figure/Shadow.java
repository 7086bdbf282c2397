package hingeleaf.paper.figure;

import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** A soft shadow of opaque tones, each a little smaller and darker than the one below it. */
final class Shadow {
  private static final int TONES = 10;
  private static final double DEEPEST = 0.86;
  private static final GeometryFactory JTS = new GeometryFactory();

  private Shadow() {}

  /**
   * The shadow of what stands on an area.
   *
   * @param reach how far it runs out beyond the area, mm
   */
  static List<Mark> of(Region area, double reach, String background) {
    List<Coordinate> c = new ArrayList<>();
    area.outer().points().forEach(p -> c.add(new Coordinate(p.x(), p.y())));
    c.add(c.get(0).copy());
    Geometry base = JTS.createPolygon(c.toArray(Coordinate[]::new)).convexHull();
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < TONES; i++) {
      double part = (i + 1.0) / TONES;
      Geometry wide = base.buffer(reach * (1 - part) + 1e-3);
      // Smooth at both ends, so that no rim shows.
      double dark = part * part * (3 - 2 * part);
      String tone = Tone.shaded(background, 1 - (1 - DEEPEST) * dark);
      marks.add(new Mark.Fill(Path.of(ring(wide)), tone));
    }
    return marks;
  }

  private static Ring ring(Geometry g) {
    List<Vec2> points = new ArrayList<>();
    Coordinate[] c = g.getCoordinates();
    for (int i = 0; i + 1 < c.length; i++) {
      points.add(new Vec2(c[i].x, c[i].y));
    }
    return new Ring(points);
  }
}
