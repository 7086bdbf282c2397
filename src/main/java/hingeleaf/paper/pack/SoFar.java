package hingeleaf.paper.pack;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.card.Stay;
import hingeleaf.pack.Pack;
import hingeleaf.plan.Step;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What of a card there is once a step is done. */
final class SoFar {
  private SoFar() {}

  /** Pieces that hang together with the card's root, by what is joined up to the step. */
  static Set<String> pieces(Pack pack, Step step) {
    Set<String> closed = new LinkedHashSet<>();
    for (Step s : pack.work().steps()) {
      if (s.number() <= step.number()) {
        closed.addAll(s.joins());
      }
    }
    Set<String> reached = new LinkedHashSet<>();
    pack.card().roots().stream()
        .map(Card.Root::piece)
        .filter(p -> !loose(pack, p) || step.pieces().contains(p))
        .forEach(reached::add);
    boolean grew = true;
    while (grew) {
      grew = false;
      for (Join j : pack.card().joins()) {
        List<String> two = ends(j);
        if (closed.contains(j.id()) && reached.stream().anyMatch(two::contains)) {
          grew |= reached.addAll(two);
        }
      }
    }
    return reached;
  }

  private static boolean loose(Pack pack, String piece) {
    return pack.card().stay(piece).map(Stay::loose).orElse(false);
  }

  private static List<String> ends(Join j) {
    return j.match(
        g -> List.of(g.a().piece(), g.b().piece()),
        s -> List.of(s.strip().piece(), s.guide().piece()),
        p -> List.of(p.wheel().piece(), p.seat().piece()),
        passage -> List.of());
  }
}
