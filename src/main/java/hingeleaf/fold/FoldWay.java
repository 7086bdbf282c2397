package hingeleaf.fold;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The way of a card from its made pose to a rest, all parts moving together. */
public final class FoldWay {
  private static final long STEPS = 2_000_000;

  /** Stays are put away over this first share of the way. */
  private static final double PUT_AWAY = 0.25;

  private FoldWay() {}

  /**
   * Poses from made to flat, both included: every joint a share of its way, set right by the solver
   * where the loops do not allow that exactly. Stays are put away first.
   *
   * @param steps at least 1
   * @return steps + 1 poses; a step that the solver cannot reach is left out
   */
  public static List<Posed> between(MadeCard made, Rest rest, int steps) {
    Linkage linkage = Linkage.of(made.mechanism(), Budget.of(STEPS));
    Stays stays = Stays.of(made);
    List<Posed> way = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      double[] values = values(made, rest, stays, (double) i / steps);
      Posed posed = linkage.at(values);
      if (posed.gap() > 1e-9) {
        posed = driven(made, values, linkage);
      }
      if (posed != null) {
        way.add(i == 0 ? posed : stays.laid(posed));
      }
    }
    way.add(rest.posed());
    return way;
  }

  private static double[] values(MadeCard made, Rest rest, Stays stays, double share) {
    boolean any = !made.card().stays().isEmpty();
    double first = any ? Math.min(1, share / PUT_AWAY) : share;
    double then = any ? Math.max(0, (share - PUT_AWAY) / (1 - PUT_AWAY)) : share;
    double[] values = new double[rest.posed().values().size()];
    for (int j = 0; j < values.length; j++) {
      values[j] = rest.posed().values().get(j) * (stays.folds(j) ? first : then);
    }
    return values;
  }

  private static @Nullable Posed driven(MadeCard made, double[] values, Linkage linkage) {
    Map<String, Double> near = new HashMap<>();
    for (int j = 0; j < values.length; j++) {
      near.put(made.mechanism().joints().get(j).id(), values[j]);
    }
    Drive drive = linkage.drive(Map.of(), near, Budget.of(STEPS));
    return drive.reached() ? drive.posed() : null;
  }
}
