package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.measure.MakerUnits;
import hingeleaf.stock.Bench;
import java.util.List;
import java.util.Set;

/**
 * The order of work of a card: a graph of tasks read off the pieces and joins, then numbered.
 *
 * <p>What must come first: openings and windows before folding, writing before assembly, mats
 * before layers, everything on a layer's front before the next layer closes over it (no glue can be
 * reached behind a closed layer), and each stage's first tab standing, its second closed flat,
 * where it lands where it falls.
 *
 * @param steps numbered from 1; each comes after all that it needs
 */
public record WorkPlan(List<Step> steps) {
  public WorkPlan {
    steps = List.copyOf(steps);
  }

  /** Minutes of hands-on work. */
  public double hands() {
    return steps.stream().mapToDouble(Step::hands).sum();
  }

  /**
   * Minutes from start to finish, waiting included, when each step is taken up as soon as what it
   * needs has dried and the hands are free.
   */
  public double elapsed() {
    double free = 0;
    double end = 0;
    double[] ready = new double[steps.size() + 1];
    for (Step s : steps) {
      double start = free;
      for (int before : s.after()) {
        start = Math.max(start, ready[before]);
      }
      free = start + s.hands();
      ready[s.number()] = free + s.dries();
      end = Math.max(end, ready[s.number()]);
    }
    return end;
  }

  /** The plan of a card. */
  public static WorkPlan of(
      Card card, CutList cuts, ScoreChart scores, Bench bench, MakerUnits units) {
    return of(card, cuts, scores, bench, new Foams(bench), units);
  }

  /** The same where the foam is known. */
  public static WorkPlan of(
      Card card, CutList cuts, ScoreChart scores, Bench bench, Foams foams, MakerUnits units) {
    return new WorkPlan(
        Task.order(new WorkOrder(card, cuts, scores, bench, foams, units, Set.of()).tasks()));
  }

  /**
   * The plan of a card as it is taught. Its steps bear the numbers of the card's own plan, for the
   * order depends on what is joined and not on what joins it.
   */
  public static WorkPlan of(
      TapedCard taught, CutList cuts, ScoreChart scores, Bench bench, MakerUnits units) {
    return new WorkPlan(
        Task.order(
            new WorkOrder(taught.card(), cuts, scores, bench, new Foams(bench), units, taught.wet())
                .tasks()));
  }
}
