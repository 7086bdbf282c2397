package hingeleaf.pack;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Foam;
import hingeleaf.stock.Glue;

/**
 * What a card weighs, all in g.
 *
 * @param card all pieces, windows among them, before glue and foam
 * @param glue glue and tape that stay in the card: area of the patches times g/m2 of the bench's
 *     glue
 * @param foam under raised parts, as if it filled the whole patch: the post should not be surprised
 * @param envelope empty; 0 where the card goes without
 */
public record Mass(double card, double glue, double foam, double envelope) {
  private static final double MM2_PER_M2 = 1e6;

  /** Polyethylene foam with two films of glue, where the bench has none so thick; from memory. */
  private static final double FOAM_FILMS = 60;

  private static final double FOAM_PER_MM = 60;

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
  static Mass of(Card card, Bench bench) {
    double glue = 0;
    double foam = 0;
    for (Join j : card.joins()) {
      if (j instanceof Join.Glue g) {
        double area = g.a().area().area() / MM2_PER_M2;
        if (g.raisedBy() > 0) {
          foam += area * foamPerM2(bench, g.raisedBy());
        } else {
          glue += area * bench.glue(g.glue()).map(Glue::gramsPerM2).orElse(0.0);
        }
      }
    }
    return new Mass(card.mass(), glue, foam, 0);
  }

  private static double foamPerM2(Bench bench, double raisedBy) {
    return bench.foams().stream()
        .filter(f -> Math.abs(f.thickness() - raisedBy) < 0.05)
        .findFirst()
        .map(Foam::gramsPerM2)
        .orElse(FOAM_FILMS + FOAM_PER_MM * raisedBy);
  }
}
