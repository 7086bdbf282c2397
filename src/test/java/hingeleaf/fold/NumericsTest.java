package hingeleaf.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;

/** The pieces of the solver against reference libraries, finite differences and known graphs. */
class NumericsTest {
  /** EJML as the reference. */
  @Test
  void sparseFactorSolvesLikeADenseOne() {
    Random r = new Random(9);
    int n = 40;
    DMatrixRMaj a = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      a.set(i, i, 4 + r.nextDouble());
      for (int k = 0; k < 2; k++) {
        int j = r.nextInt(n);
        if (j != i) {
          double x = r.nextDouble() - 0.5;
          a.set(i, j, x);
          a.set(j, i, x);
        }
      }
    }
    List<Integer> rows = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    int[] start = new int[n + 1];
    for (int k = 0; k < n; k++) {
      for (int i = 0; i <= k; i++) {
        if (a.get(i, k) != 0) {
          rows.add(i);
          values.add(a.get(i, k));
        }
      }
      start[k + 1] = rows.size();
    }
    SparseLdl ldl = new SparseLdl(n, start, rows.stream().mapToInt(x -> x).toArray());
    ldl.factor(values.stream().mapToDouble(x -> x).toArray());
    double[] b = new double[n];
    Arrays.setAll(b, i -> r.nextDouble());
    DMatrixRMaj want = reference(a, b);
    ldl.solve(b);
    for (int i = 0; i < n; i++) {
      assertThat(b[i]).isCloseTo(want.get(i, 0), within(1e-12));
    }
  }

  private static DMatrixRMaj reference(DMatrixRMaj a, double[] b) {
    DMatrixRMaj x = new DMatrixRMaj(a.numCols, 1);
    assertThat(CommonOps_DDRM.solve(a, new DMatrixRMaj(b.length, 1, true, b), x)).isTrue();
    return x;
  }

  /**
   * On a k x k grid the natural order fills about k^3; minimum degree stays well under half of that
   * (George and Liu, SIAM Review 31, 1989, table of grid problems: order k^2 log k).
   */
  @Test
  void fillOrderKeepsAGridSparse() {
    int k = 30;
    int[][] graph = new int[k * k][];
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        List<Integer> near = new ArrayList<>();
        int[][] steps = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};
        for (int[] d : steps) {
          if (i + d[0] >= 0 && i + d[0] < k && j + d[1] >= 0 && j + d[1] < k) {
            near.add((i + d[0]) * k + j + d[1]);
          }
        }
        graph[i * k + j] = near.stream().mapToInt(x -> x).toArray();
      }
    }
    int[] order = FillOrder.of(graph);
    assertThat(Arrays.stream(order).sorted().toArray())
        .isEqualTo(java.util.stream.IntStream.range(0, k * k).toArray());
    int[] natural = java.util.stream.IntStream.range(0, k * k).toArray();
    assertThat(fill(graph, order)).isLessThan(fill(graph, natural) / 2);
  }

  private static int fill(int[][] graph, int[] order) {
    int n = order.length;
    int[] rank = new int[n];
    for (int i = 0; i < n; i++) {
      rank[order[i]] = i;
    }
    List<Integer> rows = new ArrayList<>();
    int[] start = new int[n + 1];
    for (int c = 0; c < n; c++) {
      int at = c;
      Arrays.stream(graph[order[c]])
          .map(x -> rank[x])
          .filter(i -> i < at)
          .sorted()
          .forEach(rows::add);
      rows.add(c);
      start[c + 1] = rows.size();
    }
    return new SparseLdl(n, start, rows.stream().mapToInt(x -> x).toArray()).fill();
  }

  @Test
  void smallLeastSquaresAgreesWithTheReference() {
    Random r = new Random(4);
    for (int rows = 3; rows <= 6; rows++) {
      for (int n = 1; n <= rows; n++) {
        double[] a = r.doubles((long) rows * n, -1, 1).toArray();
        double[] b = r.doubles(rows, -1, 1).toArray();
        DMatrixRMaj m = new DMatrixRMaj(rows, n);
        for (int k = 0; k < n; k++) {
          for (int i = 0; i < rows; i++) {
            m.set(i, k, a[k * rows + i]);
          }
        }
        DMatrixRMaj want = reference(m, b);
        double[] x = new double[n];
        assertThat(SmallQr.solve(a.clone(), b.clone(), rows, n, x)).isPositive();
        for (int k = 0; k < n; k++) {
          assertThat(x[k]).isCloseTo(want.get(k, 0), within(1e-9));
        }
      }
    }
  }

  @Test
  void dependentColumnsAreToldApart() {
    double[] a = {1, 2, 3, 2, 4, 6};
    assertThat(SmallQr.solve(a, new double[] {1, 1, 1}, 3, 2, new double[2])).isLessThan(1e-14);
  }

  /** Central differences of the residual, at poses that close. */
  @Test
  void jacobiansMatchFiniteDifferences() {
    jacobian(Samples.vFold(30, 75), "gutter", 0.4);
    jacobian(Samples.parallelBox(30, 40), "gutter", 0.4);
    jacobian(SpatialSamples.bennett(1.2), "j0", 0.4);
  }

  private static void jacobian(Sample s, String lead, double to) {
    Linkage l = Linkage.of(s.mechanism(), Budget.of(100_000));
    Drive d = l.drive(java.util.Map.of(lead, to), java.util.Map.of(), Budget.of(100_000));
    double[] q = d.posed().values().stream().mapToDouble(x -> x).toArray();
    Loop loop = l.parts().get(0).loops().get(0);
    int m = loop.rows();
    double[] jac = new double[m * loop.joints().length];
    double[] r = new double[m];
    loop.linearize(q, r, 0, jac);
    double[] scratch = new double[jac.length];
    double[] plus = new double[m];
    double[] minus = new double[m];
    double h = 1e-5;
    for (int k = 0; k < loop.joints().length; k++) {
      int j = loop.joints()[k];
      q[j] += h;
      loop.linearize(q, plus, 0, scratch);
      q[j] -= 2 * h;
      loop.linearize(q, minus, 0, scratch);
      q[j] += h;
      for (int i = 0; i < m; i++) {
        assertThat(jac[k * m + i]).isCloseTo((plus[i] - minus[i]) / (2 * h), within(1e-8));
      }
    }
  }

  @Test
  void loopsAreToldPlanarSphericalOrGeneral() {
    assertThat(only(Samples.parallelBox(30, 40))).isInstanceOf(PlanarLoop.class);
    assertThat(only(Samples.vFold(45, 60))).isInstanceOf(SphericalLoop.class);
    assertThat(only(SpatialSamples.bennett(1.2))).isInstanceOf(GeneralLoop.class);
  }

  private static Loop only(Sample s) {
    return Linkage.of(s.mechanism(), Budget.of(10_000)).parts().get(0).loops().get(0);
  }

  /** A tube with two strips: three loops of four folds, no longer one among the basis. */
  @Test
  void basesAreShort() {
    Linkage tube = Linkage.of(Samples.boxTube(100, 70, 120).mechanism(), Budget.of(10_000));
    assertThat(tube.loops()).isEqualTo(3);
    assertThat(lengths(tube)).containsOnly(4);
    Linkage sheet = Linkage.of(SpatialSamples.miura(6, 5, 0.5).mechanism(), Budget.of(100_000));
    assertThat(sheet.loops()).isEqualTo(20);
    assertThat(lengths(sheet)).containsOnly(4);
    // Four walls: cycles lo - wall - hi - wall, any three of them.
    assertThat(lengths(Linkage.of(Samples.fourWalls().mechanism(), Budget.of(10_000))))
        .containsExactly(4, 4, 4);
  }

  private static List<Integer> lengths(Linkage l) {
    return l.parts().stream().flatMap(p -> p.loops().stream()).map(x -> x.joints().length).toList();
  }

  /** Stages do not hang together: one part each, whatever order they are written in. */
  @Test
  void stagesAreParts() {
    Linkage l = Linkage.of(RestsTest.stack(5, 150, 100, 12).mechanism(), Budget.of(100_000));
    assertThat(l.parts()).hasSize(5).allMatch(p -> p.size() == 4);
  }
}
