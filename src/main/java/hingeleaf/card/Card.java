package hingeleaf.card;

import hingeleaf.geom.Rigid;
import java.util.List;
import java.util.Optional;

/**
 * A whole card: pieces and joins, and where its roots lie.
 *
 * @param title as the maker calls it
 * @param roots the panels that stand still; several for a box and its lid
 * @param pieces in the order in which they are made, from the back forwards
 * @param joins in the order in which they are closed
 * @param stays pieces that keep it from leaning while it stands
 */
public record Card(
    String title, List<Root> roots, List<Piece> pieces, List<Join> joins, List<Stay> stays) {
  public Card {
    roots = List.copyOf(roots);
    pieces = List.copyOf(pieces);
    joins = List.copyOf(joins);
    stays = List.copyOf(stays);
  }

  /** A card without stays. */
  public Card(String title, List<Root> roots, List<Piece> pieces, List<Join> joins) {
    this(title, roots, pieces, joins, List.of());
  }

  /** This card as if its stays had never been made; slits that were cut for them stay. */
  public Card withoutStays() {
    return new Card(
        title,
        roots.stream().filter(r -> stay(r.piece()).isEmpty()).toList(),
        pieces.stream().filter(p -> stay(p.id()).isEmpty()).toList(),
        joins.stream().filter(j -> !ofStay(j)).toList());
  }

  private boolean ofStay(Join join) {
    List<Patch> both =
        join.match(
            g -> List.of(g.a(), g.b()),
            s -> List.of(s.strip(), s.guide()),
            p -> List.of(p.wheel(), p.seat()),
            p -> List.of(p.tab(), p.slit()));
    return both.stream().anyMatch(p -> stay(p.piece()).isPresent());
  }

  /** The stay that a piece is; empty where it is none. */
  public Optional<Stay> stay(String piece) {
    return stays.stream().filter(s -> s.piece().equals(piece)).findFirst();
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
