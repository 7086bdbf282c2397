package hingeleaf.fold;

import hingeleaf.geom.Vec3;

/**
 * A loop whose folds all meet in one point, as the creases of an origami vertex do: only rotations
 * have to close (S. Belcastro and T. C. Hull, Linear Algebra and its Applications 348, 2002).
 */
final class SphericalLoop implements Loop {
  private final int[] joints;
  private final double[] axis;
  private final double size;

  SphericalLoop(int[] joints, double[] sign, Axes axes, double size) {
    this.joints = joints;
    this.size = size;
    axis = new double[3 * joints.length];
    for (int k = 0; k < joints.length; k++) {
      Vec3 u = axes.along[joints[k]].times(sign[k]);
      axis[3 * k] = u.x();
      axis[3 * k + 1] = u.y();
      axis[3 * k + 2] = u.z();
    }
  }

  @Override
  public int rows() {
    return 3;
  }

  @Override
  public int[] joints() {
    return joints;
  }

  @Override
  public double size() {
    return size;
  }

  @Override
  public void linearize(double[] q, double[] r, int at, double[] jac) {
    double w = 1;
    double x = 0;
    double y = 0;
    double z = 0;
    for (int k = 0; k < joints.length; k++) {
      double ax = axis[3 * k];
      double ay = axis[3 * k + 1];
      double az = axis[3 * k + 2];
      double bx = 2 * (y * az - z * ay);
      double by = 2 * (z * ax - x * az);
      double bz = 2 * (x * ay - y * ax);
      double ux = ax + w * bx + y * bz - z * by;
      double uy = ay + w * by + z * bx - x * bz;
      double uz = az + w * bz + x * by - y * bx;
      jac[3 * k] = ux;
      jac[3 * k + 1] = uy;
      jac[3 * k + 2] = uz;
      double c = Math.cos(q[joints[k]] / 2);
      double s = Math.sin(q[joints[k]] / 2);
      double nx = c * x + s * (w * ux + uy * z - uz * y);
      double ny = c * y + s * (w * uy + uz * x - ux * z);
      double nz = c * z + s * (w * uz + ux * y - uy * x);
      w = c * w - s * (ux * x + uy * y + uz * z);
      x = nx;
      y = ny;
      z = nz;
    }
    rotationVector(w, x, y, z, r, at);
  }

  /** The rotation vector, in rad, of a unit quaternion; shorter than pi. */
  static void rotationVector(double w, double x, double y, double z, double[] r, int at) {
    double sign = w < 0 ? -1 : 1;
    double n = Math.sqrt(x * x + y * y + z * z);
    double k = n < 1e-9 ? 2 * sign : sign * 2 * Math.atan2(n, Math.abs(w)) / n;
    r[at] = k * x;
    r[at + 1] = k * y;
    r[at + 2] = k * z;
  }

  @Override
  public void bracket(double[] p, int i, double[] q, int j, double k, double[] out, int at) {
    cross(p, i, q, j, k, out, at);
  }

  static void cross(double[] p, int i, double[] q, int j, double k, double[] out, int at) {
    out[at] += k * (p[i + 1] * q[j + 2] - p[i + 2] * q[j + 1]);
    out[at + 1] += k * (p[i + 2] * q[j] - p[i] * q[j + 2]);
    out[at + 2] += k * (p[i] * q[j + 1] - p[i + 1] * q[j]);
  }
}
