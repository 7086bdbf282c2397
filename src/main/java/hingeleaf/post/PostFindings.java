package hingeleaf.post;

import hingeleaf.finding.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a maker should know of a decision, as problems. */
public final class PostFindings {
  /** A counter's gauge and a card's spring differ by about this much, mm; common practice. */
  private static final double TIGHT_MM = 0.5;

  /** A cheaper offer further off than this, in proportion to its bound, is no advice. */
  private static final double NEAR = 0.25;

  /**
   * None for a card that goes in the cheapest class with room to spare.
   *
   * <ul>
   *   <li>{@code post-none} warns: no class takes it;
   *   <li>{@code post-tight} warns: less than 0.5 mm under the thickness of its class;
   *   <li>{@code post-cheaper} notes: a small change reaches a cheaper offer.
   * </ul>
   */
  public static List<Problem> of(Decision decision, PostWords words) {
    List<Problem> problems = new ArrayList<>();
    if (decision.taken().isEmpty()) {
      problems.add(none(decision, words));
    }
    tight(decision, words).ifPresent(problems::add);
    cheaper(decision, words).ifPresent(problems::add);
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

  private static Optional<Problem> cheaper(Decision decision, PostWords words) {
    if (decision.taken().isEmpty()) {
      return Optional.empty();
    }
    return decision
        .nearest()
        .filter(PostFindings::near)
        .map(
            m -> {
              Failure failure = m.failures().get(0);
              return Problem.notes(
                      "post-cheaper",
                      "",
                      "",
                      words.taken(decision) + "; " + words.reach(m, decision.mail()))
                  .with(
                      Map.of(
                          "value", failure.value(),
                          "bound", failure.bound(),
                          "excess", failure.outside()));
            });
  }

  private static boolean near(Decision.Missed missed) {
    Failure failure = missed.failures().get(0);
    return missed.failures().size() == 1
        && failure.limit().figure() != Figure.STIFF
        && Math.abs(failure.outside()) <= NEAR * Math.abs(failure.bound());
  }

  private PostFindings() {}
}
