package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Poses along a path by its parameter, and polynomials through them. */
final class Trail {
  private final List<double[]> values = new ArrayList<>();
  private final List<Double> at = new ArrayList<>();

  void add(double s, double[] q) {
    at.add(s);
    values.add(q.clone());
  }

  /** Forgets all but the first {@code kept} poses. */
  void cut(int kept) {
    while (at.size() > kept) {
      at.remove(at.size() - 1);
      values.remove(values.size() - 1);
    }
  }

  int size() {
    return at.size();
  }

  double lastAt() {
    return at.get(at.size() - 1);
  }

  double[] last() {
    return values.get(values.size() - 1);
  }

  /** The polynomial through the last {@code most} poses at {@code s} (Neville's scheme). */
  double[] ahead(double s, int most) {
    List<Integer> picked = new ArrayList<>();
    for (int i = Math.max(0, at.size() - most); i < at.size(); i++) {
      picked.add(i);
    }
    return through(s, picked);
  }

  /** The polynomial through the {@code most} poses nearest to {@code s}, that pose left out. */
  double[] around(double s, int most) {
    List<Integer> picked = new ArrayList<>();
    for (int i = 0; i < at.size(); i++) {
      picked.add(i);
    }
    picked.sort(Comparator.comparingDouble(i -> Math.abs(at.get(i) - s)));
    return through(s, picked.subList(0, Math.min(most, picked.size())));
  }

  private double[] through(double s, List<Integer> picked) {
    int n = picked.size();
    double[][] p = new double[n][];
    for (int i = 0; i < n; i++) {
      p[i] = values.get(picked.get(i)).clone();
    }
    for (int gap = 1; gap < n; gap++) {
      for (int i = 0; i + gap < n; i++) {
        double lo = at.get(picked.get(i));
        double hi = at.get(picked.get(i + gap));
        double f = (s - lo) / (hi - lo);
        for (int j = 0; j < p[i].length; j++) {
          p[i][j] += f * (p[i + 1][j] - p[i][j]);
        }
      }
    }
    return p[0];
  }
}
