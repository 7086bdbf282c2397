package hingeleaf.sheet.search;

import hingeleaf.sheet.task.Task;
import java.util.function.BooleanSupplier;

/**
 * Looks for single sheets worth more than they cost at given prices of the pieces: ruin and
 * recreate on one sheet, everything wanted being at hand. It is the column generator of the program
 * over the pool, a heuristic one.
 */
final class Pricer {
  private final Task task;
  private final Dice dice;
  private final Inserter inserter;
  private final Pool pool;
  private final int[] left;
  private final double[] keys;
  private final int[] order;
  private final Loose dropped;
  private Bin now = new Bin(64);
  private Bin trial = new Bin(64);

  Pricer(Task task, Dice dice, Inserter inserter, Pool pool) {
    this.task = task;
    this.dice = dice;
    this.inserter = inserter;
    this.pool = pool;
    left = new int[task.types];
    keys = new double[task.types];
    order = new int[task.types];
    dropped = new Loose(16, pool.marks());
  }

  void run(double[] worths, double[] costs, int steps, BooleanSupplier stop) {
    double value = 0;
    int stale = Integer.MAX_VALUE;
    int stock = 0;
    for (int i = 0; i < steps; i++) {
      if ((i & 31) == 0 && stop.getAsBoolean()) {
        return;
      }
      if (stale > 60) {
        stock = dice.below(task.stocks);
        now.reset(task, stock);
        value = 0;
        stale = 0;
      }
      trial.copyFrom(now);
      disturb();
      fill(worths);
      double next = value(trial, worths);
      if (next >= value - 0.02 * costs[stock]) {
        stale = next > value + 1e-9 ? 0 : stale + 1;
        value = next;
        Bin keep = now;
        now = trial;
        trial = keep;
        if (value > costs[stock] - 0.01) {
          pool.keep(now);
        }
      } else {
        stale++;
      }
    }
  }

  private void disturb() {
    dropped.count = 0;
    int removals = 1 + dice.below(3);
    for (int k = 0; k < removals && !trial.isEmpty(); k++) {
      int node = dice.below(trial.size);
      while (!trial.isRemovable(node)) {
        node = (node + 1) % trial.size;
      }
      trial.remove(node, dropped);
    }
  }

  private void fill(double[] worths) {
    System.arraycopy(task.demand, 0, left, 0, left.length);
    for (int i = 0; i < trial.size; i++) {
      if (trial.kind[i] >= 0) {
        left[trial.kind[i]]--;
      }
    }
    int n = 0;
    boolean dense = dice.below(3) > 0;
    for (int t = 0; t < task.types; t++) {
      if (left[t] > 0 && worths[t] > 1e-9 && task.fits(trial.stock, t)) {
        double base = dense ? worths[t] / task.area(t) : worths[t];
        keys[t] = base * (0.5 + dice.unit());
        order[n++] = t;
      }
    }
    while (n > 0) {
      int at = best(n);
      int type = order[at];
      order[at] = order[--n];
      while (left[type] > 0 && lay(type)) {
        left[type]--;
      }
      if (trial.freeCount == 0) {
        return;
      }
    }
  }

  private int best(int n) {
    int at = 0;
    for (int i = 1; i < n; i++) {
      if (keys[order[i]] > keys[order[at]]) {
        at = i;
      }
    }
    return at;
  }

  private boolean lay(int type) {
    inserter.begin(type);
    inserter.consider(trial, 0);
    if (!inserter.found()) {
      return false;
    }
    inserter.commit(trial);
    return true;
  }

  private static double value(Bin bin, double[] worths) {
    double sum = 0;
    for (int i = 0; i < bin.size; i++) {
      if (bin.kind[i] >= 0) {
        sum += worths[bin.kind[i]];
      }
    }
    return sum;
  }
}
