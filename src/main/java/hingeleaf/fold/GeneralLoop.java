package hingeleaf.fold;

import hingeleaf.geom.Vec3;

/** A loop of joints in general position: rotation and shift must close, six rows. */
final class GeneralLoop implements Loop {
  private final int[] joints;
  private final boolean[] slide;
  private final double[] axis;
  private final double[] point;
  private final double size;

  GeneralLoop(int[] joints, double[] sign, Axes axes, Vec3 centre, double size) {
    this.joints = joints;
    this.size = size;
    int n = joints.length;
    slide = new boolean[n];
    axis = new double[3 * n];
    point = new double[3 * n];
    for (int k = 0; k < n; k++) {
      slide[k] = axes.slides[joints[k]];
      put(axis, k, axes.along[joints[k]].times(sign[k]));
      put(point, k, axes.at[joints[k]].minus(centre));
    }
  }

  private static void put(double[] to, int k, Vec3 v) {
    to[3 * k] = v.x();
    to[3 * k + 1] = v.y();
    to[3 * k + 2] = v.z();
  }

  @Override
  public int rows() {
    return 6;
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
    double tx = 0;
    double ty = 0;
    double tz = 0;
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
      jac[6 * k] = ux;
      jac[6 * k + 1] = uy;
      jac[6 * k + 2] = uz;
      double value = q[joints[k]];
      if (slide[k]) {
        tx += value * ux;
        ty += value * uy;
        tz += value * uz;
        continue;
      }
      double px = point[3 * k];
      double py = point[3 * k + 1];
      double pz = point[3 * k + 2];
      bx = 2 * (y * pz - z * py);
      by = 2 * (z * px - x * pz);
      bz = 2 * (x * py - y * px);
      double wx = tx + px + w * bx + y * bz - z * by;
      double wy = ty + py + w * by + z * bx - x * bz;
      double wz = tz + pz + w * bz + x * by - y * bx;
      jac[6 * k + 3] = wx;
      jac[6 * k + 4] = wy;
      jac[6 * k + 5] = wz;
      double c = Math.cos(value / 2);
      double s = Math.sin(value / 2);
      double nx = c * x + s * (w * ux + uy * z - uz * y);
      double ny = c * y + s * (w * uy + uz * x - ux * z);
      double nz = c * z + s * (w * uz + ux * y - uy * x);
      w = c * w - s * (ux * x + uy * y + uz * z);
      x = nx;
      y = ny;
      z = nz;
      bx = 2 * (y * pz - z * py);
      by = 2 * (z * px - x * pz);
      bz = 2 * (x * py - y * px);
      tx = wx - (px + w * bx + y * bz - z * by);
      ty = wy - (py + w * by + z * bx - x * bz);
      tz = wz - (pz + w * bz + x * by - y * bx);
    }
    SphericalLoop.rotationVector(w, x, y, z, r, at);
    r[at + 3] = tx / size;
    r[at + 4] = ty / size;
    r[at + 5] = tz / size;
    finish(jac, tx, ty, tz);
  }

  private void finish(double[] jac, double tx, double ty, double tz) {
    for (int k = 0; k < joints.length; k++) {
      int i = 6 * k;
      double ux = jac[i];
      double uy = jac[i + 1];
      double uz = jac[i + 2];
      if (slide[k]) {
        jac[i + 3] = ux / size;
        jac[i + 4] = uy / size;
        jac[i + 5] = uz / size;
        jac[i] = 0;
        jac[i + 1] = 0;
        jac[i + 2] = 0;
        continue;
      }
      double dx = (tx - jac[i + 3]) / size;
      double dy = (ty - jac[i + 4]) / size;
      double dz = (tz - jac[i + 5]) / size;
      jac[i + 3] = uy * dz - uz * dy;
      jac[i + 4] = uz * dx - ux * dz;
      jac[i + 5] = ux * dy - uy * dx;
    }
  }

  @Override
  public void bracket(double[] p, int i, double[] q, int j, double k, double[] out, int at) {
    SphericalLoop.cross(p, i, q, j, k, out, at);
    SphericalLoop.cross(p, i, q, j + 3, k, out, at + 3);
    SphericalLoop.cross(p, i + 3, q, j, k, out, at + 3);
  }
}
