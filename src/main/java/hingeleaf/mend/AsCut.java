package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.design.Change;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.List;

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
    List<Change> own = new ArrayList<>();
    for (Sizes.One o : Sizes.of(made, made.card().piece(name)).all()) {
      if (Math.abs(o.mm() - Sizes.of(start, was).mm(o.word(), o.mm())) > EPS) {
        own.add(new Change.Put(o.path(), Said.yaml(start, o.mm())));
      }
    }
    if (own.isEmpty()
        || !(Trial.of(start.inputs().design().tree(), own) instanceof Trial.Read read)) {
      return was;
    }
    return start.of(read.design()).card().pieces().stream()
        .filter(p -> p.id().equals(name))
        .findFirst()
        .orElse(was);
  }
}
