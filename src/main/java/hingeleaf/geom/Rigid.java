package hingeleaf.geom;

/**
 * A rigid motion of space: a rotation (row-major 3 x 3) followed by a translation, {@code p -> R p
 * + t}, in mm.
 *
 * <p>{@code a.then(b)} is b after a. Rotations are taken as given: callers build them from the
 * factories, so they are orthonormal to rounding.
 */
public record Rigid(
    double xx,
    double xy,
    double xz,
    double yx,
    double yy,
    double yz,
    double zx,
    double zy,
    double zz,
    Vec3 shift) {
  public static final Rigid IDENTITY = new Rigid(1, 0, 0, 0, 1, 0, 0, 0, 1, Vec3.ZERO);

  public static Rigid translation(Vec3 by) {
    return new Rigid(1, 0, 0, 0, 1, 0, 0, 0, 1, by);
  }

  /** The motion that takes x, y, z and the origin to three orthonormal axes and a point. */
  public static Rigid frame(Vec3 origin, Vec3 x, Vec3 y, Vec3 z) {
    return new Rigid(x.x(), y.x(), z.x(), x.y(), y.y(), z.y(), x.z(), y.z(), z.z(), origin);
  }

  /**
   * Rotation by {@code angle} rad about the line through two points, right-handed about the
   * direction from the first to the second (Rodrigues).
   */
  public static Rigid rotation(Vec3 from, Vec3 to, double angle) {
    return turning(from, to.minus(from).unit(), angle);
  }

  /**
   * The same about the line through a point.
   *
   * @param along direction of the line, a unit vector
   */
  public static Rigid turning(Vec3 at, Vec3 along, double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double k = 1 - c;
    double x = along.x();
    double y = along.y();
    double z = along.z();
    double xx = c + k * x * x;
    double xy = k * x * y - s * z;
    double xz = k * x * z + s * y;
    double yx = k * x * y + s * z;
    double yy = c + k * y * y;
    double yz = k * y * z - s * x;
    double zx = k * x * z - s * y;
    double zy = k * y * z + s * x;
    double zz = c + k * z * z;
    // Written out, for every pose of every card is made of these: the point stays where it is.
    Vec3 shift =
        new Vec3(
            at.x() - (xx * at.x() + xy * at.y() + xz * at.z()),
            at.y() - (yx * at.x() + yy * at.y() + yz * at.z()),
            at.z() - (zx * at.x() + zy * at.y() + zz * at.z()));
    return new Rigid(xx, xy, xz, yx, yy, yz, zx, zy, zz, shift);
  }

  private Rigid shifted(Vec3 by) {
    return new Rigid(xx, xy, xz, yx, yy, yz, zx, zy, zz, shift.plus(by));
  }

  public Vec3 apply(Vec3 p) {
    return new Vec3(
        xx * p.x() + xy * p.y() + xz * p.z() + shift.x(),
        yx * p.x() + yy * p.y() + yz * p.z() + shift.y(),
        zx * p.x() + zy * p.y() + zz * p.z() + shift.z());
  }

  /** A point of the plane z = 0. */
  public Vec3 apply(Vec2 p) {
    return new Vec3(
        xx * p.x() + xy * p.y() + shift.x(),
        yx * p.x() + yy * p.y() + shift.y(),
        zx * p.x() + zy * p.y() + shift.z());
  }

  /** The rotation alone, for directions. */
  public Vec3 turn(Vec3 v) {
    return new Vec3(
        xx * v.x() + xy * v.y() + xz * v.z(),
        yx * v.x() + yy * v.y() + yz * v.z(),
        zx * v.x() + zy * v.y() + zz * v.z());
  }

  /** This motion first, {@code next} after it. */
  public Rigid then(Rigid next) {
    // Written out, for this is what posing thousands of panels comes down to.
    return new Rigid(
        next.xx * xx + next.xy * yx + next.xz * zx,
        next.xx * xy + next.xy * yy + next.xz * zy,
        next.xx * xz + next.xy * yz + next.xz * zz,
        next.yx * xx + next.yy * yx + next.yz * zx,
        next.yx * xy + next.yy * yy + next.yz * zy,
        next.yx * xz + next.yy * yz + next.yz * zz,
        next.zx * xx + next.zy * yx + next.zz * zx,
        next.zx * xy + next.zy * yy + next.zz * zy,
        next.zx * xz + next.zy * yz + next.zz * zz,
        next.apply(shift));
  }

  public Rigid inverse() {
    Rigid t = new Rigid(xx, yx, zx, xy, yy, zy, xz, yz, zz, Vec3.ZERO);
    return t.shifted(t.apply(shift).times(-1));
  }

  /** Where the z axis points: the front of a piece that this motion places. */
  public Vec3 normal() {
    return new Vec3(xz, yz, zz);
  }
}
