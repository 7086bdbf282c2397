package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.jspecify.annotations.Nullable;

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
    List<Partial> best = List.of(new Partial(0, null, -1));
    for (int c = 0; c < choices.size(); c++) {
      List<Partial> longer = new ArrayList<>();
      List<RestState> ways = choices.get(c).ways();
      for (Partial p : best) {
        for (int w = 0; w < ways.size(); w++) {
          longer.add(new Partial(p.sum() + score.applyAsDouble(c, ways.get(w)), p, w));
        }
      }
      longer.sort(Comparator.comparingDouble(Partial::sum));
      best = List.copyOf(longer.subList(0, Math.min(limit, longer.size())));
    }
    return best.stream().map(p -> p.picks(choices.size())).toList();
  }

  /** The first choices decided: whatever the rest, only the best of these can lead to the best. */
  private record Partial(double sum, @Nullable Partial before, int way) {
    int[] picks(int n) {
      int[] out = new int[n];
      Partial p = this;
      for (int c = n - 1; c >= 0 && p != null; c--) {
        out[c] = p.way;
        p = p.before;
      }
      return out;
    }
  }
}
