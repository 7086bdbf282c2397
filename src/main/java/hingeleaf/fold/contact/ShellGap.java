package hingeleaf.fold.contact;

import hingeleaf.geom.Rigid;

/**
 * How near two surfaces come to each other in one relative pose: down both trees of boxes, nearest
 * first, leaving out what is further than the nearest yet.
 *
 * <p>Keeps the nearest points of its last answer, both in the first surface's coordinates; one
 * thread at a time.
 */
final class ShellGap {
  /** How much nearer than told two surfaces may be, as a share. */
  static final double SLACK = 0.03;

  private static final double KEEP = (1 - SLACK) * (1 - SLACK);

  final double[] on = new double[3];
  final double[] to = new double[3];
  private final TriangleGap triangles = new TriangleGap();
  private final double[] moved = new double[9];
  private Rigid pose = Rigid.IDENTITY;
  private double best;

  /** A lower bound of the distance from the two surfaces' outer boxes alone, mm. */
  double boxes(Shell a, Shell b, Rigid bToA) {
    pose = bToA;
    return Math.sqrt(apart(a, 0, b, 0));
  }

  /**
   * The distance in mm, or {@code below} if it is no less; then the points mean nothing. The true
   * distance may be less by {@link #SLACK} of it: parallel sheets would otherwise be gone through
   * triangle by triangle for the last bit.
   *
   * @param bToA from the second surface's coordinates to the first's
   */
  double of(Shell a, Shell b, Rigid bToA, double below) {
    pose = bToA;
    best = below;
    if (apart(a, 0, b, 0) < best * best) {
      visit(a, 0, b, 0);
    }
    return best;
  }

  private void visit(Shell a, int i, Shell b, int j) {
    if (a.child[i] < 0 && b.child[j] < 0) {
      leaves(a, i, b, j);
    } else if (b.child[j] < 0 || (a.child[i] >= 0 && size(a, i) >= size(b, j))) {
      int c = a.child[i];
      both(a, c, b, j, a, c + 1, b, j);
    } else {
      int c = b.child[j];
      both(a, i, b, c, a, i, b, c + 1);
    }
  }

  private void both(Shell a, int i, Shell b, int j, Shell c, int k, Shell d, int m) {
    double first = apart(a, i, b, j);
    double second = apart(c, k, d, m);
    if (first <= second) {
      down(a, i, b, j, first);
      down(c, k, d, m, second);
    } else {
      down(c, k, d, m, second);
      down(a, i, b, j, first);
    }
  }

  private void down(Shell a, int i, Shell b, int j, double apart) {
    if (best > 0 && apart < KEEP * best * best) {
      visit(a, i, b, j);
    }
  }

  private void leaves(Shell a, int i, Shell b, int j) {
    int a0 = -1 - a.child[i];
    int b0 = -1 - b.child[j];
    for (int y = b0; y < b0 + b.count[j]; y++) {
      for (int k = 0; k < 9; k += 3) {
        Shell.apply(pose, b.corners, 9 * y + k, moved, k);
      }
      box(moved);
      for (int x = a0; x < a0 + a.count[i] && best > 0; x++) {
        if (beyond(a.corners, 9 * x)) {
          continue;
        }
        double d = triangles.of(a.corners, 9 * x, moved, 0, best);
        if (d < best) {
          best = d;
          System.arraycopy(triangles.on, 0, on, 0, 3);
          System.arraycopy(triangles.to, 0, to, 0, 3);
        }
      }
    }
  }

  private final double[] least = new double[3];
  private final double[] most = new double[3];

  private void box(double[] t) {
    for (int k = 0; k < 3; k++) {
      least[k] = Math.min(t[k], Math.min(t[k + 3], t[k + 6]));
      most[k] = Math.max(t[k], Math.max(t[k + 3], t[k + 6]));
    }
  }

  /** Whether a triangle's box is further from the moved one's than the nearest yet. */
  private boolean beyond(double[] t, int i) {
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      double p = t[i + k];
      double q = t[i + 3 + k];
      double r = t[i + 6 + k];
      double lo = Math.min(p, Math.min(q, r)) - most[k];
      double hi = least[k] - Math.max(p, Math.max(q, r));
      double g = lo > hi ? lo : hi;
      sum += g > 0 ? g * g : 0;
    }
    return sum >= KEEP * best * best;
  }

  private static double size(Shell s, int node) {
    double[] b = s.boxes;
    int o = 6 * node;
    return (b[o + 3] - b[o]) + (b[o + 4] - b[o + 1]) + (b[o + 5] - b[o + 2]);
  }

  /** Square of a lower bound of the distance between two boxes, the second moved and reboxed. */
  private double apart(Shell a, int i, Shell b, int j) {
    double[] p = a.boxes;
    double[] q = b.boxes;
    int o = 6 * i;
    int w = 6 * j;
    double cx = (q[w] + q[w + 3]) / 2;
    double cy = (q[w + 1] + q[w + 4]) / 2;
    double cz = (q[w + 2] + q[w + 5]) / 2;
    double hx = q[w + 3] - cx;
    double hy = q[w + 4] - cy;
    double hz = q[w + 5] - cz;
    Rigid m = pose;
    double x = m.xx() * cx + m.xy() * cy + m.xz() * cz + m.shift().x();
    double y = m.yx() * cx + m.yy() * cy + m.yz() * cz + m.shift().y();
    double z = m.zx() * cx + m.zy() * cy + m.zz() * cz + m.shift().z();
    double rx = Math.abs(m.xx()) * hx + Math.abs(m.xy()) * hy + Math.abs(m.xz()) * hz;
    double ry = Math.abs(m.yx()) * hx + Math.abs(m.yy()) * hy + Math.abs(m.yz()) * hz;
    double rz = Math.abs(m.zx()) * hx + Math.abs(m.zy()) * hy + Math.abs(m.zz()) * hz;
    double gx = Math.max(0, Math.max(p[o] - x - rx, x - rx - p[o + 3]));
    double gy = Math.max(0, Math.max(p[o + 1] - y - ry, y - ry - p[o + 4]));
    double gz = Math.max(0, Math.max(p[o + 2] - z - rz, z - rz - p[o + 5]));
    return gx * gx + gy * gy + gz * gz;
  }
}
