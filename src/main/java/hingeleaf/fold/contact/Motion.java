package hingeleaf.fold.contact;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;

/**
 * A rigid motion put together turn after turn, the same as by {@link Rigid#then} to the last bit,
 * but with nothing built between: every pair of parts asks for hundreds.
 */
final class Motion {
  private double xx = 1;
  private double xy;
  private double xz;
  private double yx;
  private double yy = 1;
  private double yz;
  private double zx;
  private double zy;
  private double zz = 1;
  private double x;
  private double y;
  private double z;

  /** After what there is, a shift. */
  void slide(Vec3 along, double by) {
    x += by * along.x();
    y += by * along.y();
    z += by * along.z();
  }

  /**
   * After what there is, a turn about a line through a point (Rodrigues).
   *
   * @param along direction of the line, a unit vector
   * @param angle rad
   */
  void turn(Vec3 at, Vec3 along, double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double k = 1 - c;
    double ux = along.x();
    double uy = along.y();
    double uz = along.z();
    double cx = at.x();
    double cy = at.y();
    double cz = at.z();
    row(c + k * ux * ux, k * ux * uy - s * uz, k * ux * uz + s * uy, 0, cx, cy, cz, cx);
    row(k * ux * uy + s * uz, c + k * uy * uy, k * uy * uz - s * ux, 1, cx, cy, cz, cy);
    row(k * ux * uz - s * uy, k * uy * uz + s * ux, c + k * uz * uz, 2, cx, cy, cz, cz);
    take();
  }

  private final double[] next = new double[12];

  /** One row of the product, and of where the origin goes; {@code c} is the point that stays. */
  private void row(
      double a, double b, double d, int row, double cx, double cy, double cz, double c) {
    int i = 4 * row;
    next[i] = a * xx + b * yx + d * zx;
    next[i + 1] = a * xy + b * yy + d * zy;
    next[i + 2] = a * xz + b * yz + d * zz;
    next[i + 3] = a * x + b * y + d * z + (c - (a * cx + b * cy + d * cz));
  }

  private void take() {
    xx = next[0];
    xy = next[1];
    xz = next[2];
    x = next[3];
    yx = next[4];
    yy = next[5];
    yz = next[6];
    y = next[7];
    zx = next[8];
    zy = next[9];
    zz = next[10];
    z = next[11];
  }

  Rigid rigid() {
    return new Rigid(xx, xy, xz, yx, yy, yz, zx, zy, zz, new Vec3(x, y, z));
  }
}
