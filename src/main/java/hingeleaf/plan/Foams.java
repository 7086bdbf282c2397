package hingeleaf.plan;

import hingeleaf.card.Join;
import hingeleaf.stock.Bench;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * The foam under the raised parts of a card, each worked out once: the words, the pictures, the
 * templates, the scales and the shopping list all ask for it. Threads may share it.
 */
public final class Foams {
  private final Bench bench;
  private final Map<Join.Glue, FoamPads> known =
      Collections.synchronizedMap(new IdentityHashMap<>());

  public Foams(Bench bench) {
    this.bench = bench;
  }

  /**
   * The foam of a raised join, by the very join.
   *
   * @param g raised by more than 0
   */
  public FoamPads under(Join.Glue g) {
    return known.computeIfAbsent(g, raised -> FoamPads.of(raised, bench));
  }
}
