package hingeleaf.fold;

/** The whole Jacobian of a part, dense, with a column for each of its joints. */
final class Jacobians {
  private Jacobians() {}

  static double[][] dense(Part part, double[] q) {
    double[][] a = new double[part.rows()][part.size()];
    double[] r = new double[6];
    int at = 0;
    for (Loop loop : part.loops()) {
      int m = loop.rows();
      int[] js = loop.joints();
      double[] jac = new double[m * js.length];
      loop.linearize(q, r, 0, jac);
      for (int k = 0; k < js.length; k++) {
        int col = local(part, js[k]);
        for (int i = 0; i < m; i++) {
          a[at + i][col] += jac[k * m + i];
        }
      }
      at += m;
    }
    return a;
  }

  static int local(Part part, int joint) {
    return java.util.Arrays.binarySearch(part.joints(), joint);
  }

  static Svd at(Part part, double[] q, double cut) {
    return new Svd(dense(part, q), cut);
  }

  /** How many freedoms a part has to first order at {@code q}. */
  static int freedoms(Part part, double[] q, double cut) {
    return part.size() - at(part, q, cut).rank();
  }
}
