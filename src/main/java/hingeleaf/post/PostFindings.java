package hingeleaf.post;

import hingeleaf.finding.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a maker should know of a decision, as problems. */
public final class PostFindings {
  /** A counter's gauge and a card's spring differ by about this much, mm; common practice. */
  private static final double TIGHT_MM = 0.5;

  /**
   * Paper is heavier or lighter than its label by so much, as a share; from memory, not verified.
   */
  private static final double PAPER_VARIES = 0.05;

  /** A cheaper offer further off than this, in proportion to its bound, is no advice. */
  private static final double NEAR = 0.25;

  /**
   * None for a card that goes in the cheapest class with room to spare.
   *
   * <ul>
   *   <li>{@code post-none} warns: no class takes it;
   *   <li>{@code post-tight} warns: less than 0.5 mm under the thickness of its class;
   *   <li>{@code post-weigh} notes: the reckoned mass is within 5 % below the end of its step or
   *       class;
   *   <li>{@code post-cheaper} notes: a small change reaches a cheaper offer. Where it is the
   *       thickness, number {@code pile} is the rigid pile of card that reaches it.
   * </ul>
   */
  public static List<Problem> of(Decision decision, Packing packing, PostWords words) {
    List<Problem> problems = new ArrayList<>();
    if (decision.taken().isEmpty()) {
      problems.add(none(decision, words));
    }
    tight(decision, words).ifPresent(problems::add);
    weigh(decision, words).ifPresent(problems::add);
    cheaper(decision, packing, words).ifPresent(problems::add);
    return List.copyOf(problems);
  }

  private static Problem none(Decision decision, PostWords words) {
    List<Decision.Missed> missed = decision.missed();
    String why = words.missed(missed.get(missed.size() - 1), decision.mail());
    return Problem.warns("post-none", "", "", words.taken(decision) + "; " + why);
  }

  private static Optional<Problem> tight(Decision decision, PostWords words) {
    return decision.margins().stream()
        .filter(m -> m.limit().figure() == Figure.THICKNESS && m.room() < TIGHT_MM)
        .findFirst()
        .map(
            m ->
                Problem.warns(
                        "post-tight",
                        "",
                        "",
                        words.taken(decision)
                            + " only just: "
                            + words.room(m)
                            + " - press the card under weight, or lower what raises it")
                    .with(Map.of("room", m.room(), "bound", m.limit().most())));
  }

  private static Optional<Problem> weigh(Decision decision, PostWords words) {
    double grams = decision.mail().grams();
    double end =
        decision.margins().stream()
            .filter(m -> m.limit().figure() == Figure.WEIGHT)
            .mapToDouble(m -> m.limit().most())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    double bound = decision.step() > 0 ? Math.min(end, decision.step()) : end;
    if (Double.isInfinite(bound) || grams < (1 - PAPER_VARIES) * bound) {
      return Optional.empty();
    }
    return Optional.of(
        Problem.notes("post-weigh", "", "", words.weigh(decision, bound))
            .with(Map.of("grams", grams, "bound", bound)));
  }

  private static Optional<Problem> cheaper(Decision decision, Packing packing, PostWords words) {
    if (decision.taken().isEmpty()) {
      return Optional.empty();
    }
    return decision
        .nearest()
        .filter(PostFindings::near)
        .map(m -> cheaper(decision, m, packing, words));
  }

  private static Problem cheaper(
      Decision decision, Decision.Missed missed, Packing packing, PostWords words) {
    Failure failure = missed.failures().get(0);
    Map<String, Double> numbers = new HashMap<>();
    numbers.put("value", failure.value());
    numbers.put("bound", failure.bound());
    numbers.put("excess", failure.outside());
    String how = "";
    if (failure.limit().figure() == Figure.THICKNESS && failure.outside() > 0) {
      Mail mail = decision.mail();
      double pile = packing.pileFor(failure.bound(), mail.bends());
      numbers.put("pile", pile);
      how = " - " + words.pile(packing.pileFor(mail.thickness(), mail.bends()), pile);
    }
    String message = words.taken(decision) + "; " + words.reach(missed, decision.mail()) + how;
    return Problem.notes("post-cheaper", "", "", message).with(numbers);
  }

  private static boolean near(Decision.Missed missed) {
    Failure failure = missed.failures().get(0);
    return missed.failures().size() == 1
        && failure.limit().figure() != Figure.STIFF
        && Math.abs(failure.outside()) <= NEAR * Math.abs(failure.bound());
  }

  private PostFindings() {}
}
