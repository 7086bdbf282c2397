package hingeleaf.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A closed line of straight edges, in mm; the last point joins the first, which is not repeated.
 *
 * <p>Anticlockwise rings have positive area. Outer rings are anticlockwise, holes clockwise.
 *
 * @param points at least three
 */
public record Ring(List<Vec2> points) {
  public Ring {
    points = List.copyOf(points);
    if (points.size() < 3) {
      throw new IllegalArgumentException("a ring needs three points, this has " + points.size());
    }
  }

  // Written out for the same reason as those of points.
  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Ring r && points.equals(r.points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  /** The anticlockwise rectangle with these two corners. */
  public static Ring rectangle(double x0, double y0, double x1, double y1) {
    return new Ring(
        List.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1)));
  }

  /** Signed area in mm2, positive where anticlockwise (the shoelace formula). */
  public double area() {
    // Without vectors between, for every region that is moved asks which way round it runs.
    Vec2 o = points.get(0);
    double twice = 0;
    double x = 0;
    double y = 0;
    for (Vec2 p : points) {
      double dx = p.x() - o.x();
      double dy = p.y() - o.y();
      twice += x * dy - y * dx;
      x = dx;
      y = dy;
    }
    return twice / 2;
  }

  /** Length once round. */
  public double perimeter() {
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      sum += points.get(i).distance(points.get((i + 1) % points.size()));
    }
    return sum;
  }

  public Box box() {
    return Box.around(points);
  }

  public Ring anticlockwise() {
    return area() < 0 ? reversed() : this;
  }

  public Ring clockwise() {
    return area() > 0 ? reversed() : this;
  }

  public Ring reversed() {
    List<Vec2> back = new ArrayList<>(points);
    Collections.reverse(back);
    return new Ring(back);
  }

  public Ring moved(Vec2 by) {
    return map(p -> p.plus(by));
  }

  public Ring map(UnaryOperator<Vec2> f) {
    List<Vec2> mapped = new ArrayList<>(points.size());
    for (Vec2 p : points) {
      mapped.add(f.apply(p));
    }
    return new Ring(mapped);
  }

  /** Whether a point lies inside, by the even-odd rule; on the line itself either answer. */
  public boolean contains(Vec2 p) {
    boolean in = false;
    for (int i = 0, j = points.size() - 1; i < points.size(); j = i++) {
      Vec2 a = points.get(i);
      Vec2 b = points.get(j);
      if ((a.y() > p.y()) != (b.y() > p.y())
          && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        in = !in;
      }
    }
    return in;
  }
}
