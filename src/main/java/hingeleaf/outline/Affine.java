package hingeleaf.outline;

import hingeleaf.geom.Vec2;

/** The map (x, y) to (a x + c y + e, b x + d y + f), as SVG's {@code matrix(a b c d e f)}. */
record Affine(double a, double b, double c, double d, double e, double f) {
  static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  static Affine translate(double x, double y) {
    return new Affine(1, 0, 0, 1, x, y);
  }

  static Affine scale(double x, double y) {
    return new Affine(x, 0, 0, y, 0, 0);
  }

  static Affine rotate(double degrees) {
    double t = Math.toRadians(degrees);
    return new Affine(Math.cos(t), Math.sin(t), -Math.sin(t), Math.cos(t), 0, 0);
  }

  /** {@code inner} first, this after it: the order in which SVG writes them. */
  Affine times(Affine inner) {
    return new Affine(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  Vec2 apply(Vec2 p) {
    return new Vec2(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }
}
