package hingeleaf.fold.contact;

/**
 * How near two triangles in space come to each other, and where.
 *
 * <p>The least of six corner-to-face and nine edge-to-edge distances, unless an edge of one pierces
 * the other, when it is 0 (elementary; segment distance after Ericson, Real-Time Collision
 * Detection, 2005, section 5.1.9, from memory). Holds the nearest points of the last answer, so one
 * thread at a time.
 */
final class TriangleGap {
  /** Nearest point on the first triangle, and on the second. */
  final double[] on = new double[3];

  final double[] to = new double[3];
  private double best;
  private final double[] p = new double[3];
  private final double[] q = new double[3];

  /**
   * The distance, or {@code below} if it is no less; then the points are left as they were.
   *
   * @param a nine numbers from {@code i} on: three corners
   */
  double of(double[] a, int i, double[] b, int j, double below) {
    best = below * below;
    for (int k = 0; k < 3; k++) {
      corner(a, i + 3 * k, b, j, true);
      corner(b, j + 3 * k, a, i, false);
    }
    for (int k = 0; k < 3 && best > 0; k++) {
      for (int m = 0; m < 3; m++) {
        edges(a, i + 3 * k, i + 3 * ((k + 1) % 3), b, j + 3 * m, j + 3 * ((m + 1) % 3));
      }
    }
    if (best > 0) {
      pierced(a, i, b, j);
      pierced(b, j, a, i);
    }
    return Math.sqrt(best);
  }

  private void keep(double d2, double[] first, int fi, double[] second, int si) {
    if (d2 < best) {
      best = d2;
      System.arraycopy(first, fi, on, 0, 3);
      System.arraycopy(second, si, to, 0, 3);
    }
  }

  /** A corner against the inside of a face; its edges are the business of {@link #edges}. */
  private void corner(double[] a, int i, double[] t, int j, boolean first) {
    double ux = t[j + 3] - t[j];
    double uy = t[j + 4] - t[j + 1];
    double uz = t[j + 5] - t[j + 2];
    double vx = t[j + 6] - t[j];
    double vy = t[j + 7] - t[j + 1];
    double vz = t[j + 8] - t[j + 2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double n2 = nx * nx + ny * ny + nz * nz;
    double wx = a[i] - t[j];
    double wy = a[i + 1] - t[j + 1];
    double wz = a[i + 2] - t[j + 2];
    double h = wx * nx + wy * ny + wz * nz;
    if (!(n2 > 0) || h * h / n2 >= best) {
      return;
    }
    double s = dot(wy * vz - wz * vy, wz * vx - wx * vz, wx * vy - wy * vx, nx, ny, nz) / n2;
    double r = dot(uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx, nx, ny, nz) / n2;
    if (s >= 0 && r >= 0 && s + r <= 1) {
      p[0] = a[i] - h / n2 * nx;
      p[1] = a[i + 1] - h / n2 * ny;
      p[2] = a[i + 2] - h / n2 * nz;
      if (first) {
        keep(h * h / n2, a, i, p, 0);
      } else {
        keep(h * h / n2, p, 0, a, i);
      }
    }
  }

  private static double dot(double x, double y, double z, double a, double b, double c) {
    return x * a + y * b + z * c;
  }

  private void edges(double[] a, int a0, int a1, double[] b, int b0, int b1) {
    double dx = a[a1] - a[a0];
    double dy = a[a1 + 1] - a[a0 + 1];
    double dz = a[a1 + 2] - a[a0 + 2];
    double ex = b[b1] - b[b0];
    double ey = b[b1 + 1] - b[b0 + 1];
    double ez = b[b1 + 2] - b[b0 + 2];
    double rx = a[a0] - b[b0];
    double ry = a[a0 + 1] - b[b0 + 1];
    double rz = a[a0 + 2] - b[b0 + 2];
    double dd = dot(dx, dy, dz, dx, dy, dz);
    double ee = dot(ex, ey, ez, ex, ey, ez);
    double de = dot(dx, dy, dz, ex, ey, ez);
    double dr = dot(dx, dy, dz, rx, ry, rz);
    double er = dot(ex, ey, ez, rx, ry, rz);
    if (!(dd > 0) || !(ee > 0)) {
      return;
    }
    double den = dd * ee - de * de;
    double s = den > 1e-12 * dd * ee ? clamp((de * er - dr * ee) / den) : 0;
    double t = (de * s + er) / ee;
    if (t < 0 || t > 1) {
      t = clamp(t);
      s = clamp((de * t - dr) / dd);
    }
    double gx = rx + s * dx - t * ex;
    double gy = ry + s * dy - t * ey;
    double gz = rz + s * dz - t * ez;
    double d2 = dot(gx, gy, gz, gx, gy, gz);
    if (d2 < best) {
      set(p, a, a0, s, dx, dy, dz);
      set(q, b, b0, t, ex, ey, ez);
      keep(d2, p, 0, q, 0);
    }
  }

  private static void set(double[] out, double[] a, int i, double s, double x, double y, double z) {
    out[0] = a[i] + s * x;
    out[1] = a[i + 1] + s * y;
    out[2] = a[i + 2] + s * z;
  }

  private static double clamp(double x) {
    return x < 0 ? 0 : x > 1 ? 1 : x;
  }

  /** Whether an edge of {@code a} goes through the face {@code t}. */
  private void pierced(double[] a, int i, double[] t, int j) {
    double ux = t[j + 3] - t[j];
    double uy = t[j + 4] - t[j + 1];
    double uz = t[j + 5] - t[j + 2];
    double vx = t[j + 6] - t[j];
    double vy = t[j + 7] - t[j + 1];
    double vz = t[j + 8] - t[j + 2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double n2 = nx * nx + ny * ny + nz * nz;
    if (!(n2 > 0)) {
      return;
    }
    for (int k = 0; k < 3; k++) {
      int c = i + 3 * k;
      int d = i + 3 * ((k + 1) % 3);
      double hc = dot(a[c] - t[j], a[c + 1] - t[j + 1], a[c + 2] - t[j + 2], nx, ny, nz);
      double hd = dot(a[d] - t[j], a[d + 1] - t[j + 1], a[d + 2] - t[j + 2], nx, ny, nz);
      if (hc * hd >= 0) {
        continue;
      }
      set(p, a, c, hc / (hc - hd), a[d] - a[c], a[d + 1] - a[c + 1], a[d + 2] - a[c + 2]);
      double wx = p[0] - t[j];
      double wy = p[1] - t[j + 1];
      double wz = p[2] - t[j + 2];
      double s = dot(wy * vz - wz * vy, wz * vx - wx * vz, wx * vy - wy * vx, nx, ny, nz) / n2;
      double r = dot(uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx, nx, ny, nz) / n2;
      if (s >= 0 && r >= 0 && s + r <= 1) {
        keep(0, p, 0, p, 0);
        return;
      }
    }
  }
}
