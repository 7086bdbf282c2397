package hingeleaf.fold;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The way of a card from its made pose to a rest, all parts moving together. */
public final class FoldWay {
  private static final long STEPS = 2_000_000;

  private FoldWay() {}

  /**
   * Poses from made to flat, both included: every joint a share of its way, set right by the solver
   * where the loops do not allow that exactly.
   *
   * @param steps at least 1
   * @return steps + 1 poses; a step that the solver cannot reach is left out
   */
  public static List<Posed> between(MadeCard made, Rest rest, int steps) {
    Linkage linkage = Linkage.of(made.mechanism(), Budget.of(STEPS));
    List<Posed> way = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      double share = (double) i / steps;
      double[] values = rest.posed().values().stream().mapToDouble(v -> v * share).toArray();
      Posed posed = linkage.at(values);
      if (posed.gap() <= 1e-9) {
        way.add(posed);
      } else {
        driven(made, rest, share, linkage, way);
      }
    }
    way.add(rest.posed());
    return way;
  }

  private static void driven(
      MadeCard made, Rest rest, double share, Linkage linkage, List<Posed> way) {
    Map<String, Double> near = new HashMap<>();
    for (int j = 0; j < made.mechanism().joints().size(); j++) {
      near.put(made.mechanism().joints().get(j).id(), rest.posed().values().get(j) * share);
    }
    Drive drive = linkage.drive(Map.of(), near, Budget.of(STEPS));
    if (drive.reached()) {
      way.add(drive.posed());
    }
  }
}
