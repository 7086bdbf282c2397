package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Glue;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A card as it is put together in class, where nothing has time to dry: a join whose glue would
 * have to lie long is closed with the widest double-sided tape of the bench that it has room for.
 * Pieces and places are the card's own.
 *
 * @param card with those joins changed
 * @param taped ids of the joins that tape closes in place of glue
 * @param wet ids of the joins that dry long all the same, for no tape of the bench fits: to be made
 *     before the class
 */
public record TapedCard(Card card, Set<String> taped, Set<String> wet) {
  /** Glue that dries within so many minutes may be waited for: common practice, no source. */
  public static final double LONG_MINUTES = 5;

  public TapedCard {
    taped = Set.copyOf(taped);
    wet = Set.copyOf(wet);
  }

  /** The card with tape wherever a glue of the bench dries long and a tape of it fits. */
  public static TapedCard of(Card card, Bench bench) {
    List<Join> joins = new ArrayList<>();
    Set<String> taped = new LinkedHashSet<>();
    Set<String> wet = new LinkedHashSet<>();
    for (Join j : card.joins()) {
      if (j instanceof Join.Glue g && driesLong(card, g, bench)) {
        Optional<Glue> tape = Tapes.on(g, bench);
        (tape.isPresent() ? taped : wet).add(g.id());
        joins.add(tape.<Join>map(t -> with(g, t)).orElse(g));
      } else {
        joins.add(j);
      }
    }
    Card changed = new Card(card.title(), card.roots(), card.pieces(), joins, card.stays());
    return new TapedCard(changed, taped, wet);
  }

  /** Foam sticks by itself, and windows are taped anyway. */
  private static boolean driesLong(Card card, Join.Glue g, Bench bench) {
    return g.raisedBy() == 0
        && !card.piece(g.a().piece()).stock().clear()
        && bench.glue(g.glue()).map(Glue::dryMinutes).orElse(0.0) > LONG_MINUTES;
  }

  private static Join.Glue with(Join.Glue g, Glue tape) {
    return new Join.Glue(g.id(), g.a(), g.b(), g.raisedBy(), tape.name(), g.origin());
  }
}
