package hingeleaf.fold;

import java.util.Arrays;

/**
 * Settles what the drives leave open, and how far a drive gets that cannot be met.
 *
 * <p>Of all poses with the driven values, near the one given, that with the least sum of squared
 * turns away from an anchor is taken (sliders count in part sizes). So the answer does not hang on
 * the steps of the path that led there.
 */
final class Relax {
  private static final int ROUNDS = 200;

  private final Part part;
  private final double[] weight;
  private final Budget budget;

  Relax(Part part, Axes axes, Budget budget) {
    this.part = part;
    this.budget = budget;
    weight =
        Arrays.stream(part.joints())
            .mapToDouble(j -> axes.slides[j] ? 1 / part.scale() : 1)
            .toArray();
  }

  /**
   * @param q a pose that closes
   * @param held joints that keep their values
   * @return the relaxed pose; the last one that closed where this does not settle
   */
  double[] toward(double[] anchor, double[] q, boolean[] held) {
    if (part.size() > Coupled.DENSE) {
      return q;
    }
    double[] best = q;
    double gain = 1;
    double last = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      budget.spend(part.loops().size());
      double[] pull = pull(anchor, best, held);
      double length = Arrays.stream(pull).map(Math::abs).max().orElse(0);
      if (length < 1e-13) {
        return best;
      }
      gain = length > 0.9 * last ? gain * 0.7 : gain;
      last = length;
      double[] next = best.clone();
      double most = Math.min(gain, 0.1 / length);
      for (int i = 0; i < pull.length; i++) {
        next[part.joints()[i]] += most * pull[i] / weight[i];
      }
      if (!new Solver(part, held, next, true).solve(next)) {
        return best;
      }
      best = next;
    }
    return best;
  }

  /** The weighted way to the anchor, as far as loops and held joints allow it to first order. */
  private double[] pull(double[] anchor, double[] q, boolean[] held) {
    double[] out = new double[part.size()];
    for (double[] t : tangents(q, held)) {
      double dot = 0;
      for (int i = 0; i < out.length; i++) {
        dot += t[i] * weight[i] * (anchor[part.joints()[i]] - q[part.joints()[i]]);
      }
      for (int i = 0; i < out.length; i++) {
        out[i] += dot * t[i];
      }
    }
    return out;
  }

  /** Orthonormal first-order motions that keep the held joints, in weighted values. */
  private double[][] tangents(double[] q, boolean[] held) {
    double[][] a = Jacobians.dense(part, q);
    int extra = (int) Arrays.stream(part.joints()).filter(j -> held[j]).count();
    double[][] b = Arrays.copyOf(a, a.length + extra);
    for (double[] row : a) {
      for (int i = 0; i < row.length; i++) {
        row[i] /= weight[i];
      }
    }
    int at = a.length;
    for (int i = 0; i < part.size(); i++) {
      if (held[part.joints()[i]]) {
        b[at] = new double[part.size()];
        b[at++][i] = 1;
      }
    }
    return new Svd(b, Freedom.CUT).kernel();
  }

  /**
   * The pose near {@code q}, on a path of one freedom, at which a joint comes nearest to a value
   * that it cannot reach: where its own motion stands still.
   */
  double[] turningPoint(Axes axes, double[] q, int joint, double value) {
    double[] best = q;
    for (int round = 0; round < 12; round++) {
      double[][] t = tangents(best, new boolean[q.length]);
      if (t.length != 1) {
        return best;
      }
      int lead = lead(t[0]);
      double step = round == 0 ? 1e-3 : 1e-4;
      double[] lo = moved(axes, best, lead, -step);
      double[] hi = moved(axes, best, lead, step);
      double curve = lo[joint] - 2 * best[joint] + hi[joint];
      double slope = (hi[joint] - lo[joint]) / 2;
      double by = -step * slope / curve;
      if (lo == best || hi == best || !(Math.abs(by) < 1)) {
        return best;
      }
      double[] next = moved(axes, best, lead, Math.max(-0.05, Math.min(0.05, by)));
      boolean nearer = Math.abs(next[joint] - value) < Math.abs(best[joint] - value);
      if (!nearer) {
        return best;
      }
      best = next;
    }
    return best;
  }

  private int lead(double[] t) {
    int most = 0;
    for (int i = 1; i < t.length; i++) {
      most = Math.abs(t[i]) > Math.abs(t[most]) ? i : most;
    }
    return part.joints()[most];
  }

  private double[] moved(Axes axes, double[] q, int lead, double by) {
    March m =
        new March(part, axes, q, new int[] {lead}, new double[] {q[lead] + by}, false, budget);
    return m.run() ? m.q : q;
  }
}
