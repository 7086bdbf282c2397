package hingeleaf.paper.pack;

import hingeleaf.card.Join;
import hingeleaf.card.Patch;
import hingeleaf.plan.Foams;
import java.util.List;

/** What takes glue or foam on a part: the foam as it is cut, not all that it could cover. */
final class Held {
  private Held() {}

  /** The patches of the part that a join lays on. */
  static List<Patch> of(Join.Glue g, Foams foams) {
    Patch a = g.a();
    return g.raisedBy() == 0
        ? List.of(a)
        : foams.under(g).pads().stream()
            .map(r -> new Patch(a.piece(), a.panel(), a.face(), r, a.origin(), a.along()))
            .toList();
  }
}
