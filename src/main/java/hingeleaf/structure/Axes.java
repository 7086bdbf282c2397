package hingeleaf.structure;

import hingeleaf.geom.Box;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;

/**
 * Which way a frame's sides stand. Layouts are written once, in {@code u} across the sides and
 * {@code v} along them, and placed by this.
 */
enum Axes {
  /** Sides left and right: u is x, v is y. */
  LEFT_RIGHT,
  /** Sides at top and bottom: u is y, v is x. */
  TOP_BOTTOM;

  Vec2 at(double u, double v) {
    return this == LEFT_RIGHT ? new Vec2(u, v) : new Vec2(v, u);
  }

  double u(Vec2 p) {
    return this == LEFT_RIGHT ? p.x() : p.y();
  }

  /** Length of a box across the sides. */
  double across(Box b) {
    return this == LEFT_RIGHT ? b.width() : b.height();
  }

  double along(Box b) {
    return this == LEFT_RIGHT ? b.height() : b.width();
  }

  double minU(Box b) {
    return this == LEFT_RIGHT ? b.minX() : b.minY();
  }

  double maxU(Box b) {
    return this == LEFT_RIGHT ? b.maxX() : b.maxY();
  }

  Box box(double u0, double v0, double u1, double v1) {
    return this == LEFT_RIGHT ? new Box(u0, v0, u1, v1) : new Box(v0, u0, v1, u1);
  }

  Ring ring(Box b) {
    return Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
  }

  /** The line u = at for v from 0 to {@code length}. */
  Segment line(double at, double length) {
    return new Segment(at(at, 0), at(at, length));
  }

  String first() {
    return this == LEFT_RIGHT ? "left" : "bottom";
  }

  String second() {
    return this == LEFT_RIGHT ? "right" : "top";
  }
}
