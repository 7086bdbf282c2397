package hingeleaf.card;

import hingeleaf.geom.Rigid;
import java.util.List;

/**
 * A whole card: pieces and joins, and where its roots lie.
 *
 * @param title as the maker calls it
 * @param roots the panels that stand still; several for a box and its lid
 * @param pieces in the order in which they are made, from the back forwards
 * @param joins in the order in which they are closed
 */
public record Card(String title, List<Root> roots, List<Piece> pieces, List<Join> joins) {
  public Card {
    roots = List.copyOf(roots);
    pieces = List.copyOf(pieces);
    joins = List.copyOf(joins);
  }

  /**
   * A panel whose place in the world is given.
   *
   * @param pose from piece coordinates (the front facing +z) to the world
   */
  public record Root(String piece, String panel, Rigid pose) {}

  public Piece piece(String id) {
    return pieces.stream()
        .filter(p -> p.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the card has no piece " + id));
  }

  /** Mass of the pieces in g, before glue, foam and ink. */
  public double mass() {
    return pieces.stream().mapToDouble(Piece::mass).sum();
  }
}
