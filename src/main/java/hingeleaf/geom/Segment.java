package hingeleaf.geom;

import org.jspecify.annotations.Nullable;

/** A directed straight line from one point to another, in mm. */
public record Segment(Vec2 from, Vec2 to) {
  // Written out for the same reason as those of points.
  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Segment s && from.equals(s.from) && to.equals(s.to);
  }

  @Override
  public int hashCode() {
    return 31 * from.hashCode() + to.hashCode();
  }

  public static Segment of(double x0, double y0, double x1, double y1) {
    return new Segment(new Vec2(x0, y0), new Vec2(x1, y1));
  }

  public double length() {
    return from.distance(to);
  }

  public Vec2 middle() {
    return from.plus(to).times(0.5);
  }

  /** Signed distance of a point from the line, positive on the left of the direction. */
  public double side(Vec2 p) {
    return to.minus(from).unit().cross(p.minus(from));
  }

  public Segment reversed() {
    return new Segment(to, from);
  }
}
