package hingeleaf.geom;

import org.jspecify.annotations.Nullable;

/** A point or a displacement in the plane, in mm. */
public record Vec2(double x, double y) {
  public static final Vec2 ZERO = new Vec2(0, 0);

  // Written out because these are asked for in every map of points; the derived ones are slow to
  // wake. They say the same.
  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Vec2 v && Double.compare(x, v.x) == 0 && Double.compare(y, v.y) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(x) + Double.hashCode(y);
  }

  public Vec2 plus(Vec2 o) {
    return new Vec2(x + o.x, y + o.y);
  }

  public Vec2 minus(Vec2 o) {
    return new Vec2(x - o.x, y - o.y);
  }

  public Vec2 times(double k) {
    return new Vec2(k * x, k * y);
  }

  public double dot(Vec2 o) {
    return x * o.x + y * o.y;
  }

  /** The z component of the cross product: positive when {@code o} lies anticlockwise of this. */
  public double cross(Vec2 o) {
    return x * o.y - y * o.x;
  }

  public double length() {
    return Math.sqrt(x * x + y * y);
  }

  public double distance(Vec2 o) {
    double dx = x - o.x;
    double dy = y - o.y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** This turned a quarter anticlockwise. */
  public Vec2 left() {
    return new Vec2(-y, x);
  }

  /**
   * The unit vector along this.
   *
   * @throws ArithmeticException if this has no length
   */
  public Vec2 unit() {
    double n = length();
    if (!(n > 0)) {
      throw new ArithmeticException("a zero vector has no direction");
    }
    return new Vec2(x / n, y / n);
  }
}
