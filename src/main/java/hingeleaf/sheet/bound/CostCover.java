package hingeleaf.sheet.bound;

import hingeleaf.sheet.task.Task;

/**
 * The cheapest set of sheets whose capacities sum to a need: a small covering knapsack. Any weights
 * of the pieces with an upper limit per sheet (area, dual feasible functions, prices of a linear
 * program) become a bound on the cost through it.
 */
public final class CostCover {
  /** Stands for: no set of sheets suffices. */
  public static final long IMPOSSIBLE = Long.MAX_VALUE;

  private static final int MOST_NODES = 20_000;
  private final long[] price;
  private final double[] capacity;
  private final long[] most;
  private final long step;
  private long best;
  private int nodes;

  private CostCover(Task task, int[] order, double[] capacities) {
    int n = order.length;
    price = new long[n];
    capacity = new double[n];
    most = new long[n];
    step = task.costStep();
    for (int i = 0; i < n; i++) {
      price[i] = task.price[order[i]];
      capacity[i] = capacities[order[i]];
      most[i] = task.limit[order[i]];
    }
  }

  /**
   * The least cost at which sheets with these capacities (one per stock, whole numbers below 2^53
   * held as doubles) reach the need; {@link #IMPOSSIBLE} when the limits do not allow it.
   */
  public static long least(Task task, double[] capacities, double need) {
    int[] order =
        java.util.stream.IntStream.range(0, task.stocks)
            .filter(s -> capacities[s] > 0)
            .boxed()
            .sorted(
                (a, b) ->
                    Double.compare(task.price[a] / capacities[a], task.price[b] / capacities[b]))
            .mapToInt(Integer::intValue)
            .toArray();
    CostCover cover = new CostCover(task, order, capacities);
    double reach = 0;
    for (int i = 0; i < order.length; i++) {
      reach += cover.capacity[i] * cover.most[i];
    }
    if (reach < need) {
      return IMPOSSIBLE;
    }
    cover.best = IMPOSSIBLE;
    cover.descend(0, need, 0);
    return cover.nodes < MOST_NODES ? cover.best : cover.relaxed(0, need, 0);
  }

  private void descend(int i, double need, long cost) {
    if (need <= 0) {
      best = Math.min(best, cost);
      return;
    }
    if (i == price.length || nodes++ >= MOST_NODES || relaxed(i, need, cost) >= best) {
      return;
    }
    long take = Math.min(most[i], (long) Math.ceil(need / capacity[i]));
    if (price[i] == 0) {
      descend(i + 1, need - take * capacity[i], cost);
      return;
    }
    for (long k = take; k >= 0 && nodes < MOST_NODES; k--) {
      descend(i + 1, need - k * capacity[i], cost + k * price[i]);
    }
  }

  /** The linear relaxation, rounded up to a possible cost. */
  private long relaxed(int from, double need, long cost) {
    double sum = 0;
    double left = need;
    for (int i = from; i < price.length && left > 0; i++) {
      double take = Math.min(most[i], left / capacity[i]);
      sum += take * price[i];
      left -= take * capacity[i];
    }
    if (left > need * 1e-12) {
      return IMPOSSIBLE;
    }
    long up = (long) Math.ceil((cost + sum) * (1 - 1e-12) / step - 1e-9);
    return up * step;
  }
}
