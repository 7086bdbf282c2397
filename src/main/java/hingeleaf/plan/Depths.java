package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.card.Piece;
import java.util.ArrayList;
import java.util.List;

/** How deep the stages of a card are that stand on sides. */
public final class Depths {
  private Depths() {}

  /** One for each piece with sides, in the card's order, mm. */
  public static List<Double> of(Card card) {
    return of(card, new PanelBoxes());
  }

  static List<Double> of(Card card, PanelBoxes panels) {
    List<Double> sides = new ArrayList<>();
    for (Piece p : card.pieces()) {
      p.labels().stream()
          .filter(l -> l.name().startsWith("side-"))
          .findFirst()
          .map(l -> panels.box(p, l.name()))
          .ifPresent(b -> sides.add(Math.min(b.width(), b.height())));
    }
    return sides;
  }
}
