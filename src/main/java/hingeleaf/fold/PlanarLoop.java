package hingeleaf.fold;

import hingeleaf.geom.Vec3;

/**
 * A loop whose folds are all parallel (and whose sliders run across them): it closes in a plane.
 *
 * <p>Rows: turn, and the two shifts of the centre over the size.
 */
final class PlanarLoop implements Loop {
  private final int[] joints;
  private final boolean[] slide;
  private final double[] sense;
  private final double[] x;
  private final double[] y;
  private final double size;

  /**
   * @param sign 1 where the loop runs through the joint from a to b, else -1
   * @param u the unit direction of all folds
   */
  PlanarLoop(int[] joints, double[] sign, Axes axes, Vec3 u, Vec3 centre, double size) {
    this.joints = joints;
    this.size = size;
    int n = joints.length;
    slide = new boolean[n];
    sense = new double[n];
    x = new double[n];
    y = new double[n];
    Vec3 e1 = Loops.across(u);
    Vec3 e2 = u.cross(e1);
    for (int k = 0; k < n; k++) {
      int j = joints[k];
      slide[k] = axes.slides[j];
      Vec3 v = slide[k] ? axes.along[j] : axes.at[j].minus(centre);
      x[k] = v.dot(e1);
      y[k] = v.dot(e2);
      sense[k] = slide[k] ? sign[k] : Math.signum(axes.along[j].dot(u)) * sign[k];
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
    double turn = 0;
    double c = 1;
    double s = 0;
    double tx = 0;
    double ty = 0;
    for (int k = 0; k < joints.length; k++) {
      double vx = c * x[k] - s * y[k];
      double vy = s * x[k] + c * y[k];
      double step = sense[k] * q[joints[k]];
      if (slide[k]) {
        jac[3 * k + 1] = vx;
        jac[3 * k + 2] = vy;
        tx += step * vx;
        ty += step * vy;
        continue;
      }
      double wx = vx + tx;
      double wy = vy + ty;
      jac[3 * k + 1] = wx;
      jac[3 * k + 2] = wy;
      turn += step;
      c = Math.cos(turn);
      s = Math.sin(turn);
      tx = wx - (c * x[k] - s * y[k]);
      ty = wy - (s * x[k] + c * y[k]);
    }
    r[at] = Math.abs(turn) < 3 ? turn : Math.IEEEremainder(turn, 2 * Math.PI);
    r[at + 1] = tx / size;
    r[at + 2] = ty / size;
    finish(jac, tx, ty);
  }

  private void finish(double[] jac, double tx, double ty) {
    for (int k = 0; k < joints.length; k++) {
      double a = jac[3 * k + 1];
      double b = jac[3 * k + 2];
      double f = sense[k] / size;
      jac[3 * k] = slide[k] ? 0 : sense[k];
      jac[3 * k + 1] = slide[k] ? f * a : f * (b - ty);
      jac[3 * k + 2] = slide[k] ? f * b : f * (tx - a);
    }
  }

  @Override
  public void bracket(double[] p, int i, double[] q, int j, double k, double[] out, int at) {
    out[at + 1] += k * (-p[i] * q[j + 2] + q[j] * p[i + 2]);
    out[at + 2] += k * (p[i] * q[j + 1] - q[j] * p[i + 1]);
  }
}
