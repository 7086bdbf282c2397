package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Closes the loops of one part by Newton's method while some joints are held.
 *
 * <p>Block-triangular: a loop with no more unknowns than rows is solved by itself, then others that
 * lean on it; only what is left is solved together. Loops that are left without unknowns must then
 * close of themselves, as in every overconstrained card, and are checked.
 *
 * <p>Holds scratch space, so one thread at a time.
 */
final class Solver {
  /** A residual, in rad, that rounding alone explains. */
  static final double CLOSED = 1e-11;

  /** A loop is worth solving by itself if its unknowns are this well conditioned. */
  private static final double FIRM = 1e-3;

  private static final int ROUNDS = 30;

  private final Part part;
  private final int jointCount;
  private final boolean loose;
  private final List<Single> singles = new ArrayList<>();
  private final List<Loop> checked = new ArrayList<>();
  private final boolean[] held;
  private @Nullable Coupled rest;
  private @Nullable Coupled whole;

  /** A correction, in rad or loop sizes, that no step along a path needs. */
  private final double wild;

  private final double[] r = new double[6];
  private final double[] dq = new double[6];
  private double[] jac = new double[0];
  private double[] square = new double[0];

  /** Rough inverse condition of the worst block in the last solve; near 0 at a singular pose. */
  double ratio;

  /** Largest residual after the last solve. */
  double residual;

  /** One loop and the places in it of its unknowns. */
  private record Single(Loop loop, int[] unknown) {}

  /**
   * @param held joints that keep their value
   * @param q values at which to judge which loops can be solved by themselves
   * @param loose whether the loops leave some unknowns free, which then move as little as can be
   */
  Solver(Part part, boolean[] held, double[] q, boolean loose) {
    this.part = part;
    this.held = held.clone();
    this.loose = loose;
    jointCount = held.length;
    for (Loop loop : part.loops()) {
      int need = loop.rows() * loop.joints().length;
      jac = jac.length < need ? new double[need] : jac;
    }
    square = new double[36];
    wild = Math.max(3, part.scale());
    plan(q);
  }

  private void plan(double[] q) {
    boolean[] known = held.clone();
    List<Loop> open = new ArrayList<>(part.loops());
    boolean progress = true;
    while (progress) {
      progress = false;
      List<Loop> later = new ArrayList<>();
      for (Loop loop : open) {
        int[] unknown = unknown(loop, known);
        if (unknown.length == 0) {
          checked.add(loop);
        } else if (unknown.length <= loop.rows() && conditioned(loop, unknown, q)) {
          singles.add(new Single(loop, unknown));
          for (int k : unknown) {
            known[loop.joints()[k]] = true;
          }
          progress = true;
        } else {
          later.add(loop);
        }
      }
      open = later;
    }
    int[] left = Arrays.stream(part.joints()).filter(j -> !known[j]).toArray();
    if (left.length > 0) {
      rest = new Coupled(open, left, jointCount, loose);
    }
  }

  /** How many equations are solved all at once; 0 where every loop is solved by itself. */
  int together() {
    return rest == null ? 0 : rest.rows();
  }

  private static int[] unknown(Loop loop, boolean[] known) {
    int[] js = loop.joints();
    int[] out = new int[js.length];
    int n = 0;
    for (int k = 0; k < js.length; k++) {
      if (!known[js[k]]) {
        out[n++] = k;
      }
    }
    return Arrays.copyOf(out, n);
  }

  private boolean conditioned(Loop loop, int[] unknown, double[] q) {
    loop.linearize(q, r, 0, jac);
    return correction(loop.rows(), unknown) > FIRM;
  }

  /** Solves the picked columns of {@code jac} against {@code -r} into {@code dq}. */
  private double correction(int rows, int[] unknown) {
    for (int k = 0; k < unknown.length; k++) {
      System.arraycopy(jac, unknown[k] * rows, square, k * rows, rows);
    }
    for (int i = 0; i < rows; i++) {
      r[i] = -r[i];
    }
    return SmallQr.solve(square, r, rows, unknown.length, dq);
  }

  /**
   * Closes the loops from the values in {@code q}, which are replaced; held joints stay.
   *
   * @return whether every loop closes to rounding
   */
  boolean solve(double[] q) {
    ratio = 1;
    boolean fine = true;
    for (int i = 0; i < singles.size(); i++) {
      fine &= close(singles.get(i), q);
    }
    if (rest != null) {
      fine &= close(rest, q);
    }
    residual = fine ? check(q) : Double.POSITIVE_INFINITY;
    if (residual <= CLOSED) {
      return true;
    }
    return together(q);
  }

  /** What one loop alone, or a part of the loops, does not close is tried all at once. */
  private boolean together(double[] q) {
    if (singles.isEmpty() && rest != null) {
      residual = part.residual(q);
      return residual <= CLOSED;
    }
    if (whole == null) {
      int[] free = Arrays.stream(part.joints()).filter(j -> !held[j]).toArray();
      if (free.length == 0) {
        residual = part.residual(q);
        return residual <= CLOSED;
      }
      whole = new Coupled(part.loops(), free, jointCount, loose);
    }
    close(whole, q);
    residual = part.residual(q);
    return residual <= CLOSED;
  }

  private double check(double[] q) {
    double worst = 0;
    for (int i = 0; i < checked.size(); i++) {
      worst = Math.max(worst, largest(checked.get(i), q));
    }
    return worst;
  }

  private double largest(Loop loop, double[] q) {
    double worst = 0;
    loop.linearize(q, r, 0, jac);
    for (int k = 0; k < loop.rows(); k++) {
      worst = Math.max(worst, Math.abs(r[k]));
    }
    return worst;
  }

  private boolean close(Single single, double[] q) {
    Loop loop = single.loop();
    int rows = loop.rows();
    int[] js = loop.joints();
    int[] unknown = single.unknown();
    double before = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      loop.linearize(q, r, 0, jac);
      double worst = 0;
      for (int i = 0; i < rows; i++) {
        worst = Math.max(worst, Math.abs(r[i]));
      }
      if (round > 0 && (worst < 4e-16 || (worst <= CLOSED && worst >= 0.5 * before))) {
        return true;
      }
      double firm = correction(rows, unknown);
      ratio = Math.min(ratio, firm);
      if (!(firm > 1e-13)) {
        return false;
      }
      double moved = move(q, js, unknown);
      if (!(moved < wild)) {
        return false;
      }
      if (moved < 1e-8 * firm) {
        return unknown.length == rows || largest(loop, q) <= CLOSED;
      }
      before = worst;
    }
    return before <= CLOSED;
  }

  private double move(double[] q, int[] js, int[] unknown) {
    double moved = 0;
    for (int k = 0; k < unknown.length; k++) {
      q[js[unknown[k]]] += dq[k];
      moved = Math.max(moved, Math.abs(dq[k]));
    }
    return moved;
  }

  private boolean close(Coupled block, double[] q) {
    double before = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      double worst = block.evaluate(q);
      if (round > 0 && (worst < 4e-16 || (worst <= CLOSED && worst >= 0.5 * before))) {
        return true;
      }
      double moved = block.step(q);
      ratio = Math.min(ratio, block.ratio);
      if (!(moved < wild)) {
        return false;
      }
      if (moved < 1e-9 * block.ratio) {
        return block.square() || block.evaluate(q) <= CLOSED;
      }
      before = worst;
    }
    return before <= CLOSED;
  }
}
