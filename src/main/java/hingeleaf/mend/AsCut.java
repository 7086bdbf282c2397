package hingeleaf.mend;

import hingeleaf.card.Card;
import hingeleaf.card.Piece;
import hingeleaf.design.Change;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A part as it was cut: with the sizes that it keeps, but for the card as it was designed. */
final class AsCut {
  private static final double EPS = 1e-6;

  private AsCut() {}

  /**
   * @param start pack of the design as it was
   * @param made pack of the new one
   * @param name of a piece of both
   */
  static Piece of(Pack start, Pack made, String name) {
    Piece was = start.card().piece(name);
    Piece is = made.card().piece(name);
    Sizes sizes = Sizes.of(made, is);
    if (sizes.leaf()) {
      return is; // its sizes are all its own
    }
    List<Change> own = new ArrayList<>();
    for (Sizes.One o : sizes.all()) {
      if (Math.abs(o.mm() - Sizes.of(start, was).mm(o.word(), o.mm())) > EPS) {
        own.add(new Change.Put(o.path(), Said.yaml(start, o.mm())));
      }
    }
    if (own.isEmpty()) {
      return was;
    }
    return Trial.of(start.inputs().design().tree(), own) instanceof Trial.Read read
        ? card(start.of(read.design())).map(c -> c.piece(name)).orElse(is)
        : is;
  }

  private static Optional<Card> card(Pack pack) {
    return pack.blocked() ? Optional.empty() : Optional.of(pack.card());
  }
}
