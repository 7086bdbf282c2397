package hingeleaf.paper;

import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Straight-edged lines, all open or all closed, in mm.
 *
 * @param lines each at least two points; a closed line does not repeat its first
 */
public record Path(List<List<Vec2>> lines, boolean closed) {
  public Path {
    lines = lines.stream().map(List::copyOf).toList();
  }

  public static Path of(Region region) {
    List<List<Vec2>> lines = new ArrayList<>();
    lines.add(region.outer().points());
    for (Ring hole : region.holes()) {
      lines.add(hole.points());
    }
    return new Path(lines, true);
  }

  public static Path of(Ring ring) {
    return new Path(List.of(ring.points()), true);
  }

  public static Path of(Segment s) {
    return line(s.from(), s.to());
  }

  /** An open line through these points. */
  public static Path line(Vec2... points) {
    return new Path(List.of(List.of(points)), false);
  }

  public static Path rectangle(double x0, double y0, double x1, double y1) {
    return of(Ring.rectangle(x0, y0, x1, y1));
  }

  /** A closed circle of chords, for marks; cuts come as rings. */
  public static Path circle(Vec2 c, double r) {
    List<Vec2> points = new ArrayList<>();
    int n = r < 1 ? 16 : 36;
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      points.add(new Vec2(c.x() + r * Math.cos(a), c.y() + r * Math.sin(a)));
    }
    return new Path(List.of(points), true);
  }

  public Path map(UnaryOperator<Vec2> f) {
    return new Path(lines.stream().map(l -> l.stream().map(f).toList()).toList(), closed);
  }
}
