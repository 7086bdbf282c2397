package hingeleaf.geom;

/** A point or a displacement in the plane, in mm. */
public record Vec2(double x, double y) {
  public static final Vec2 ZERO = new Vec2(0, 0);

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
    return Math.hypot(x, y);
  }

  public double distance(Vec2 o) {
    return Math.hypot(x - o.x, y - o.y);
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
