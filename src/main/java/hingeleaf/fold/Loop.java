package hingeleaf.fold;

/**
 * One closed chain of joints and the equations that it stays closed.
 *
 * <p>With E the product of all joints' motions once round, the residual is E's rotation vector and,
 * but for spherical loops, how far E moves the loop's centre, over the loop's size. Column k of the
 * Jacobian is the current screw of joint k, in the same rows; so the residual's change is the
 * Jacobian times the change of the values, exactly, as long as the loop closes.
 *
 * <p>The rotation vector is taken from a quaternion: the antisymmetric part of a rotation matrix
 * vanishes at half turns too, where a folded card would falsely seem closed.
 */
sealed interface Loop permits PlanarLoop, SphericalLoop, GeneralLoop {
  /** 3 for planar and spherical loops, 6 for others. */
  int rows();

  /** The joints once round, as indices of the mechanism. */
  int[] joints();

  /** mm per unit of the residual, so that angles and lengths weigh alike. */
  double size();

  /**
   * Residual and Jacobian at the values {@code q}.
   *
   * @param q values of all joints of the mechanism
   * @param r the residual goes to {@code r[at..at+rows)}
   * @param jac column k goes to {@code jac[k*rows..(k+1)*rows)}
   */
  void linearize(double[] q, double[] r, int at, double[] jac);

  /**
   * Adds the Lie bracket of two screws, given in this loop's rows, times {@code k}.
   *
   * @param x holds the first screw from {@code ix}
   * @param y holds the second screw from {@code iy}
   */
  void bracket(double[] x, int ix, double[] y, int iy, double k, double[] out, int at);
}
