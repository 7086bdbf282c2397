package hingeleaf.fold;

import java.util.Arrays;

/**
 * Factors a sparse symmetric positive matrix as L D L^T, row by row (T. A. Davis, ACM Trans. Math.
 * Software 31(4), 2005), for a pattern that is analysed once and factored often.
 */
final class SparseLdl {
  private final int n;
  private final int[] colStart;
  private final int[] rowOf;
  private final int[] parent;
  private final int[] lp;
  private final int[] lnz;
  private final int[] li;
  private final double[] lx;
  private final double[] d;
  private final double[] y;
  private final int[] pattern;
  private final int[] flag;

  /**
   * @param colStart start of each column in {@code rowOf}, and the end
   * @param rowOf rows of the upper triangle, diagonal included, column by column
   */
  SparseLdl(int n, int[] colStart, int[] rowOf) {
    this.n = n;
    this.colStart = colStart;
    this.rowOf = rowOf;
    parent = new int[n];
    lp = new int[n + 1];
    lnz = new int[n];
    flag = new int[n];
    pattern = new int[n];
    d = new double[n];
    y = new double[n];
    analyse();
    li = new int[lp[n]];
    lx = new double[lp[n]];
  }

  private void analyse() {
    for (int k = 0; k < n; k++) {
      parent[k] = -1;
      flag[k] = k;
      for (int p = colStart[k]; p < colStart[k + 1]; p++) {
        for (int i = rowOf[p]; i < k && flag[i] != k; i = parent[i]) {
          if (parent[i] == -1) {
            parent[i] = k;
          }
          lnz[i]++;
          flag[i] = k;
        }
      }
    }
    for (int k = 0; k < n; k++) {
      lp[k + 1] = lp[k] + lnz[k];
    }
  }

  /** Entries of L below the diagonal. */
  int fill() {
    return lp[n];
  }

  /**
   * @param values of the upper triangle in the order of the pattern
   * @return square root of the smallest over the largest pivot: a rough inverse condition of the
   *     matrix whose normal equations these are; 0 where a pivot is lost, which is then left out
   */
  double factor(double[] values) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    Arrays.fill(lnz, 0);
    for (int k = 0; k < n; k++) {
      int top = gather(k, values);
      d[k] = y[k];
      double own = y[k];
      y[k] = 0;
      for (; top < n; top++) {
        row(k, pattern[top]);
      }
      most = Math.max(most, own);
      if (!(d[k] > 1e-14 * most)) {
        least = 0;
        d[k] = Double.POSITIVE_INFINITY;
      } else {
        least = Math.min(least, d[k]);
      }
    }
    return most > 0 ? Math.sqrt(least / most) : 1;
  }

  private int gather(int k, double[] values) {
    int top = n;
    flag[k] = k;
    for (int p = colStart[k]; p < colStart[k + 1]; p++) {
      int i = rowOf[p];
      y[i] += values[p];
      int len = 0;
      for (; flag[i] != k; i = parent[i]) {
        pattern[len++] = i;
        flag[i] = k;
      }
      while (len > 0) {
        pattern[--top] = pattern[--len];
      }
    }
    return top;
  }

  private void row(int k, int i) {
    double yi = y[i];
    y[i] = 0;
    int end = lp[i] + lnz[i];
    for (int p = lp[i]; p < end; p++) {
      y[li[p]] -= lx[p] * yi;
    }
    double l = yi / d[i];
    d[k] -= l * yi;
    li[end] = k;
    lx[end] = l;
    lnz[i]++;
  }

  /** Solves in place. */
  void solve(double[] x) {
    for (int j = 0; j < n; j++) {
      for (int p = lp[j]; p < lp[j] + lnz[j]; p++) {
        x[li[p]] -= lx[p] * x[j];
      }
    }
    for (int j = 0; j < n; j++) {
      x[j] /= d[j];
    }
    for (int j = n - 1; j >= 0; j--) {
      for (int p = lp[j]; p < lp[j] + lnz[j]; p++) {
        x[j] -= lx[p] * x[li[p]];
      }
    }
  }
}
