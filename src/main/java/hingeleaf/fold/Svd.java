package hingeleaf.fold;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.SingularOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * Singular values, kernels and least-norm solutions of a dense matrix (EJML beneath). For rank and
 * branches, not for every step: it costs some hundred microseconds for a small card.
 */
final class Svd {
  private final DMatrixRMaj u;
  private final DMatrixRMaj v;
  private final double[] s;
  private final int rows;
  private final int cols;
  private final int rank;

  /**
   * @param a {@code a[row][col]}, at least one of each
   * @param cut singular values under {@code cut} times the largest count as zero
   */
  Svd(double[][] a, double cut) {
    rows = a.length;
    cols = a[0].length;
    SingularValueDecomposition_F64<DMatrixRMaj> svd =
        DecompositionFactory_DDRM.svd(rows, cols, true, true, false);
    if (!svd.decompose(new DMatrixRMaj(a))) {
      throw new ArithmeticException("the singular values did not converge");
    }
    u = svd.getU(null, false);
    v = svd.getV(null, false);
    DMatrixRMaj w = svd.getW(null);
    SingularOps_DDRM.descendingOrder(u, false, w, v, false);
    s = new double[Math.min(rows, cols)];
    int r = 0;
    for (int i = 0; i < s.length; i++) {
      s[i] = w.get(i, i);
      r += s[i] > cut * Math.max(s[0], 1e-300) ? 1 : 0;
    }
    rank = r;
  }

  int rank() {
    return rank;
  }

  double value(int i) {
    return i < s.length ? s[i] : 0;
  }

  /** Orthonormal basis of the kernel: vectors of as many entries as the matrix has columns. */
  double[][] kernel() {
    return columns(v, rank, cols);
  }

  /** The left singular vector of the {@code i}th largest singular value. */
  double[] left(int i) {
    return columns(u, i, i + 1)[0];
  }

  /** Orthonormal basis of the left kernel: vectors of as many entries as there are rows. */
  double[][] leftKernel() {
    return columns(u, rank, rows);
  }

  private static double[][] columns(DMatrixRMaj m, int from, int to) {
    double[][] out = new double[to - from][m.numRows];
    for (int k = from; k < to; k++) {
      for (int i = 0; i < m.numRows; i++) {
        out[k - from][i] = m.get(i, k);
      }
    }
    return out;
  }

  /** The shortest x among those for which {@code |A x - b|} is least. */
  double[] solve(double[] b) {
    double[] x = new double[cols];
    for (int k = 0; k < rank; k++) {
      double dot = 0;
      for (int i = 0; i < rows; i++) {
        dot += u.get(i, k) * b[i];
      }
      dot /= s[k];
      for (int i = 0; i < cols; i++) {
        x[i] += dot * v.get(i, k);
      }
    }
    return x;
  }
}
