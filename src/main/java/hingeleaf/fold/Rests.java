package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;

/**
 * All states in which a mechanism can lie: each part that moves by itself offers its ways, and
 * every combination of ways is a state. The product is counted, never spread out.
 *
 * @param complete whether the search was exhaustive; false where some part was only searched, or
 *     the budget ran out
 * @param choices the parts that move independently of each other, by their lowest joint; parts that
 *     are held fast have none
 */
public record Rests(boolean complete, List<Choice> choices) {
  public Rests {
    choices = List.copyOf(choices);
  }

  /**
   * A part and its ways.
   *
   * @param joints indices of the mechanism's joints
   * @param ways at least one
   */
  public record Choice(List<Integer> joints, List<RestState> ways) {
    public Choice {
      joints = List.copyOf(joints);
      ways = List.copyOf(ways);
    }
  }

  /** How many states there are; a double because twelve stages and a door are soon many. */
  public double count() {
    double product = 1;
    for (Choice c : choices) {
      product *= c.ways().size();
    }
    return product;
  }

  /**
   * The values of all joints in one combination.
   *
   * @param jointCount joints of the mechanism; those of no choice stay 0
   * @param pick for each choice which way, from 0
   */
  public double[] values(int jointCount, int[] pick) {
    double[] q = new double[jointCount];
    for (int c = 0; c < choices.size(); c++) {
      Choice choice = choices.get(c);
      RestState way = choice.ways().get(pick[c]);
      for (int i = 0; i < choice.joints().size(); i++) {
        q[choice.joints().get(i)] = way.values().get(i);
      }
    }
    return q;
  }

  /**
   * The combinations with the least sums of scores, least first, without building the product.
   *
   * @param score of a way (second) in a choice (first, by index); lower is listed earlier; equal
   *     sums go by the ways' order
   * @param limit at most so many
   */
  public List<int[]> ranked(ToDoubleBiFunction<Integer, RestState> score, int limit) {
    int n = choices.size();
    double[][] cost = new double[n][];
    int[][] order = new int[n][];
    for (int c = 0; c < n; c++) {
      int choice = c;
      List<RestState> ways = choices.get(c).ways();
      cost[c] = ways.stream().mapToDouble(w -> score.applyAsDouble(choice, w)).toArray();
      double[] own = cost[c];
      List<Integer> by = new ArrayList<>();
      for (int i = 0; i < own.length; i++) {
        by.add(i);
      }
      by.sort(Comparator.comparingDouble(i -> own[i]));
      order[c] = by.stream().mapToInt(Integer::intValue).toArray();
    }
    return best(cost, order, limit);
  }

  private List<int[]> best(double[][] cost, int[][] order, int limit) {
    record Node(double sum, int[] place) {}
    PriorityQueue<Node> queue =
        new PriorityQueue<>(
            Comparator.comparingDouble(Node::sum)
                .thenComparing((p, q) -> Arrays.compare(p.place(), q.place())));
    Set<String> seen = new HashSet<>();
    queue.add(new Node(sum(cost, order, new int[order.length]), new int[order.length]));
    List<int[]> out = new ArrayList<>();
    while (!queue.isEmpty() && out.size() < limit) {
      Node top = queue.remove();
      int[] pick = new int[order.length];
      for (int c = 0; c < pick.length; c++) {
        pick[c] = order[c][top.place()[c]];
      }
      out.add(pick);
      for (int c = 0; c < pick.length; c++) {
        int[] next = top.place().clone();
        next[c]++;
        if (next[c] < order[c].length && seen.add(Arrays.toString(next))) {
          queue.add(new Node(sum(cost, order, next), next));
        }
      }
    }
    return out;
  }

  private static double sum(double[][] cost, int[][] order, int[] place) {
    double sum = 0;
    for (int c = 0; c < place.length; c++) {
      sum += cost[c][order[c][place[c]]];
    }
    return sum;
  }
}
