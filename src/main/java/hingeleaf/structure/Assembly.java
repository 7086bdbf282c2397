package hingeleaf.structure;

import hingeleaf.card.Card;
import hingeleaf.card.Ink;
import hingeleaf.card.Join;
import hingeleaf.card.Piece;
import hingeleaf.card.Stay;
import hingeleaf.finding.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A card while it is being put together: pieces, joins, named panels and what was found wrong. */
public final class Assembly {
  private final List<Card.Root> roots = new ArrayList<>();
  private final Map<String, Piece> pieces = new LinkedHashMap<>();
  private final List<Join> joins = new ArrayList<>();
  private final Map<String, Surface> surfaces = new LinkedHashMap<>();
  private final List<Stay> stays = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private @Nullable Stack stack;

  void root(Card.Root root) {
    roots.add(root);
  }

  /** Adds a piece; a second one of the same id is a problem and is left out. */
  boolean add(Piece piece) {
    if (pieces.putIfAbsent(piece.id(), piece) != null) {
      problems.add(
          Problem.blocks(
              "name-twice",
              piece.id(),
              piece.origin(),
              "the name " + piece.id() + " is used twice - give one of the two another name"));
      return false;
    }
    return true;
  }

  void add(Join join) {
    joins.add(join);
  }

  void add(Surface surface) {
    surfaces.put(surface.name(), surface);
  }

  void add(Stay stay) {
    stays.add(stay);
  }

  /** Tells that the base is a stack. */
  void stack(Stack base) {
    stack = base;
  }

  /** The stack that the base is; null for another base. */
  @Nullable Stack stack() {
    return stack;
  }

  void report(Problem problem) {
    problems.add(problem);
  }

  Optional<Surface> surface(String name) {
    return Optional.ofNullable(surfaces.get(name));
  }

  /** What can be fixed to on one piece. */
  List<Surface> surfacesOf(String piece) {
    return surfaces.values().stream().filter(s -> s.piece().equals(piece)).toList();
  }

  List<String> surfaceNames() {
    return List.copyOf(surfaces.keySet());
  }

  Optional<Piece> piece(String id) {
    return Optional.ofNullable(pieces.get(id));
  }

  /** Puts another version of a piece in its place. */
  void replace(Piece piece) {
    pieces.replace(piece.id(), piece);
  }

  /** Puts an ink on a piece. */
  void ink(String piece, Ink ink) {
    pieces.computeIfPresent(
        piece,
        (id, p) -> {
          List<Ink> inks = new ArrayList<>(p.inks());
          inks.add(ink);
          return p.withInks(inks);
        });
  }

  List<Join> joins() {
    return List.copyOf(joins);
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }

  boolean blocked() {
    return problems.stream().anyMatch(p -> p.level() == hingeleaf.finding.Level.BLOCKS);
  }

  Card card(String title) {
    return new Card(title, roots, List.copyOf(pieces.values()), joins, stays);
  }
}
