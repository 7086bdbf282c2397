package hingeleaf.paper;

import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/** Parallel lines that tone an area, so that it still shows in a copy in black and white. */
public final class Hatch {
  private static final double DIAGONAL = Math.sqrt(0.5);

  private Hatch() {}

  /**
   * Lines at 45 degrees inside a region; the pattern is fixed to the origin of its coordinates.
   *
   * @param apart distance between lines, mm, more than 0
   */
  public static Path of(Region region, double apart) {
    Box box = region.box();
    double least = (box.minY() - box.maxX()) * DIAGONAL;
    double most = (box.maxY() - box.minX()) * DIAGONAL;
    List<List<Vec2>> lines = new ArrayList<>();
    for (double k = Math.ceil(least / apart); k * apart < most; k++) {
      lines.addAll(across(region, k * apart));
    }
    return new Path(lines, false);
  }

  /** What lies inside of the line whose points have the distance {@code v} along (-1, 1). */
  private static List<List<Vec2>> across(Region region, double v) {
    List<Double> crossings = new ArrayList<>();
    collect(region.outer(), v, crossings);
    region.holes().forEach(h -> collect(h, v, crossings));
    crossings.sort(Double::compare);
    List<List<Vec2>> lines = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      lines.add(List.of(point(crossings.get(i), v), point(crossings.get(i + 1), v)));
    }
    return lines;
  }

  private static void collect(Ring ring, double v, List<Double> crossings) {
    for (int i = 0; i < ring.points().size(); i++) {
      Vec2 a = ring.points().get(i);
      Vec2 b = ring.points().get((i + 1) % ring.points().size());
      double va = (a.y() - a.x()) * DIAGONAL;
      double vb = (b.y() - b.x()) * DIAGONAL;
      if ((va > v) != (vb > v)) {
        double t = (v - va) / (vb - va);
        double ua = (a.x() + a.y()) * DIAGONAL;
        double ub = (b.x() + b.y()) * DIAGONAL;
        crossings.add(ua + t * (ub - ua));
      }
    }
  }

  private static Vec2 point(double u, double v) {
    return new Vec2((u - v) * DIAGONAL, (u + v) * DIAGONAL);
  }
}
