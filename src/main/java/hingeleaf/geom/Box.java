package hingeleaf.geom;

/** An upright rectangle, in mm; {@code minX <= maxX} and {@code minY <= maxY}. */
public record Box(double minX, double minY, double maxX, double maxY) {
  /**
   * The smallest box that holds all points.
   *
   * @throws IllegalArgumentException if there are none
   */
  public static Box around(Iterable<Vec2> points) {
    double x0 = Double.POSITIVE_INFINITY;
    double y0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double y1 = Double.NEGATIVE_INFINITY;
    for (Vec2 p : points) {
      x0 = Math.min(x0, p.x());
      y0 = Math.min(y0, p.y());
      x1 = Math.max(x1, p.x());
      y1 = Math.max(y1, p.y());
    }
    if (!(x0 <= x1)) {
      throw new IllegalArgumentException("no points to put a box around");
    }
    return new Box(x0, y0, x1, y1);
  }

  public double width() {
    return maxX - minX;
  }

  public double height() {
    return maxY - minY;
  }

  public Vec2 centre() {
    return new Vec2((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public Box union(Box o) {
    return new Box(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY));
  }

  /** Whether all of another box lies in this one; they may share edges. */
  public boolean holds(Box o) {
    return minX <= o.minX && minY <= o.minY && maxX >= o.maxX && maxY >= o.maxY;
  }

  /** This box with every side moved outwards by {@code d} (inwards where negative). */
  public Box grown(double d) {
    return new Box(minX - d, minY - d, maxX + d, maxY + d);
  }
}
