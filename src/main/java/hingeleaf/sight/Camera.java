package hingeleaf.sight;

import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;

/**
 * The projection of a look, with everything as affine functions of view coordinates.
 *
 * <p>For a point at height {@code h} above the plane through the target across the line of sight,
 * <i>nearness</i> is {@code h} in a parallel view and {@code D h / (D - h)} from an eye at distance
 * {@code D}. Both grow towards the viewer, both are mm with slope 1 at the target, and on any plane
 * both are affine in view coordinates (the reciprocal of distance is, under perspective: Blinn,
 * "Hyperbolic interpolation", IEEE CG&amp;A 12(4), 1992). So of two planes one is in front on
 * exactly a half-plane of the view, which is all that hiding needs.
 */
final class Camera {
  /** Nothing nearer to the eye than this share of its distance is drawn. */
  private static final double NEAREST = 0.01;

  private final Vec3 target;
  private final Vec3 right;
  private final Vec3 up;
  private final Vec3 back;
  private final double distance;

  private Camera(Look look, double distance) {
    this.target = look.target();
    this.back = look.towards();
    this.right = look.up().cross(back).unit();
    this.up = back.cross(right);
    this.distance = distance;
  }

  static Camera of(Look look) {
    if (look instanceof Look.FromEye eye) {
      return new Camera(look, eye.distance());
    }
    return new Camera(look, Double.POSITIVE_INFINITY);
  }

  /** Whether lines of sight are parallel. */
  boolean parallel() {
    return Double.isInfinite(distance);
  }

  /** How far before the near plane a point lies: at least 0 is drawn; infinite if parallel. */
  double room(Vec3 world) {
    return distance * (1 - NEAREST) - height(world);
  }

  double height(Vec3 world) {
    return world.minus(target).dot(back);
  }

  /** The picture of a point that has room. */
  Spot project(Vec3 world) {
    Vec3 p = world.minus(target);
    double h = p.dot(back);
    double k = parallel() ? 1 : distance / (distance - h);
    return new Spot(k * p.dot(right), k * p.dot(up), k * h);
  }

  /** The point of the world at a place of the view with a nearness. */
  Vec3 unproject(Vec2 at, double nearness) {
    double k = parallel() ? 1 : distance / (distance + nearness);
    return target
        .plus(right.times(k * at.x()))
        .plus(up.times(k * at.y()))
        .plus(back.times(k * nearness));
  }

  /** Cosine of the angle at which a plane is seen at a point; negative from its back. */
  double facing(Vec3 at, Vec3 normal) {
    return parallel() ? normal.dot(back) : normal.dot(eye().minus(at).unit());
  }

  private Vec3 eye() {
    return target.plus(back.times(distance));
  }

  /**
   * Nearness of a plane over the view.
   *
   * @param at a point of the plane
   * @param normal unit; the plane is not seen edge-on
   */
  Slope slope(Vec3 at, Vec3 normal) {
    double nx = normal.dot(right);
    double ny = normal.dot(up);
    double nz = normal.dot(back);
    double c = at.minus(target).dot(normal);
    double below = parallel() ? nz : nz - c / distance;
    return new Slope(-nx / below, -ny / below, c / below);
  }

  /** A place in the view with its nearness. */
  record Spot(double x, double y, double nearness) {
    Vec2 at() {
      return new Vec2(x, y);
    }
  }

  /** An affine function {@code a x + b y + c} of view coordinates. */
  record Slope(double a, double b, double c) {
    double at(double x, double y) {
      return a * x + b * y + c;
    }

    Slope minus(Slope o) {
      return new Slope(a - o.a, b - o.b, c - o.c);
    }

    Slope negated() {
      return new Slope(-a, -b, -c);
    }
  }
}
