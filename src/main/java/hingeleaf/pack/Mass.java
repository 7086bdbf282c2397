package hingeleaf.pack;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.plan.FoamPads;
import hingeleaf.plan.Foams;
import hingeleaf.plan.GlueUse;
import hingeleaf.stock.Bench;

/**
 * What a card weighs, all in g.
 *
 * @param card all pieces, windows among them, before glue and foam
 * @param glue glue and tape that stay in the card: what the plan puts on times g/m2 of the bench's
 *     glue
 * @param foam under raised parts, as the plan has it cut: see {@link FoamPads}
 * @param envelope empty; 0 where the card goes without
 */
public record Mass(double card, double glue, double foam, double envelope) {
  /** The card in hand, without envelope. */
  public double made() {
    return card + glue + foam;
  }

  /** What the counter weighs. */
  public double posted() {
    return made() + envelope;
  }

  public Mass in(double envelopeGrams) {
    return new Mass(card, glue, foam, envelopeGrams);
  }

  /** A card without envelope. */
  static Mass of(Card card, Bench bench, Foams foams) {
    double glue = 0;
    double foam = 0;
    for (Join j : card.joins()) {
      if (j instanceof Join.Glue g) {
        if (g.raisedBy() > 0) {
          foam += foams.under(g).grams();
        } else {
          glue += GlueUse.of(g, bench).grams();
        }
      }
    }
    return new Mass(card.mass(), glue, foam, 0);
  }
}
