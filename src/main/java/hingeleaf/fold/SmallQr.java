package hingeleaf.fold;

/** Least squares of at most six rows by Householder reflections, without allocating. */
final class SmallQr {
  private SmallQr() {}

  /**
   * Solves {@code min |A x - b|}; A and b are overwritten.
   *
   * @param a columns one after another, {@code rows} each
   * @param n columns, at most {@code rows}
   * @return smallest over largest diagonal of R in magnitude: 0 where the columns are dependent,
   *     and then x is not set
   */
  static double solve(double[] a, double[] b, int rows, int n, double[] x) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int k = 0; k < n; k++) {
      double d = reflect(a, b, rows, n, k);
      least = Math.min(least, Math.abs(d));
      most = Math.max(most, Math.abs(d));
    }
    if (!(least > 1e-14 * most)) {
      return 0;
    }
    for (int k = n - 1; k >= 0; k--) {
      double sum = b[k];
      for (int j = k + 1; j < n; j++) {
        sum -= a[j * rows + k] * x[j];
      }
      x[k] = sum / a[k * rows + k];
    }
    return least / most;
  }

  /** Clears column k below the diagonal; returns the diagonal of R, which is left in place. */
  private static double reflect(double[] a, double[] b, int rows, int n, int k) {
    int c = k * rows;
    double norm = 0;
    for (int i = k; i < rows; i++) {
      norm += a[c + i] * a[c + i];
    }
    norm = Math.sqrt(norm);
    if (norm == 0) {
      return 0;
    }
    double d = a[c + k] > 0 ? -norm : norm;
    double head = a[c + k] - d;
    double f = 1 / (d * head);
    a[c + k] = head;
    for (int j = k + 1; j < n; j++) {
      apply(a, c, a, j * rows, k, rows, f);
    }
    apply(a, c, b, 0, k, rows, f);
    a[c + k] = d;
    return d;
  }

  private static void apply(double[] v, int c, double[] to, int t, int k, int rows, double f) {
    double dot = 0;
    for (int i = k; i < rows; i++) {
      dot += v[c + i] * to[t + i];
    }
    dot *= f;
    for (int i = k; i < rows; i++) {
      to[t + i] += dot * v[c + i];
    }
  }
}
