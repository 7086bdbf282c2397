package hingeleaf.sheet.exact;

import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The most area that a sum of money buys: a small bounded knapsack, remembered. */
final class AreaPurse {
  private static final int MOST_NODES = 20_000;
  private final Task task;
  private final Map<List<Long>, Double> seen = new HashMap<>();
  private double best;
  private int nodes;

  AreaPurse(Task task) {
    this.task = task;
  }

  /**
   * The most area within the money when {@code used} of each stock are gone already; never less
   * than the truth.
   */
  double most(long money, int[] used) {
    if (money < 0) {
      return -1;
    }
    if (task.stocks == 1) {
      long left = task.limit[0] - used[0];
      long n = task.price[0] == 0 ? left : Math.min(left, money / task.price[0]);
      return (double) n * task.sheetArea(0);
    }
    List<Long> key = new ArrayList<>(List.of(money));
    for (int s = 0; s < task.stocks; s++) {
      key.add(task.limit[s] < task.count ? (long) used[s] : 0L);
    }
    return seen.computeIfAbsent(key, k -> solve(money, used));
  }

  private double solve(long money, int[] used) {
    best = 0;
    nodes = 0;
    descend(0, money, used, 0);
    if (nodes < MOST_NODES) {
      return best;
    }
    double rate = 0;
    double free = 0;
    for (int s = 0; s < task.stocks; s++) {
      if (task.price[s] == 0) {
        free += (double) (task.limit[s] - used[s]) * task.sheetArea(s);
      } else {
        rate = Math.max(rate, (double) task.sheetArea(s) / task.price[s]);
      }
    }
    return free + rate * money;
  }

  private void descend(int s, long money, int[] used, double area) {
    best = Math.max(best, area);
    if (s == task.stocks || nodes++ >= MOST_NODES) {
      return;
    }
    long left = task.limit[s] - used[s];
    long n = task.price[s] == 0 ? left : Math.min(left, money / task.price[s]);
    long least = task.price[s] == 0 ? n : 0;
    for (long k = n; k >= least && nodes < MOST_NODES; k--) {
      descend(s + 1, money - k * task.price[s], used, area + k * (double) task.sheetArea(s));
    }
  }
}
