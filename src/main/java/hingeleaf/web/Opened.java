package hingeleaf.web;

import hingeleaf.design.DesignDocument;
import hingeleaf.finding.Problem;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Pack;
import hingeleaf.store.History;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A card as it is now.
 *
 * @param name of its file
 * @param view unit in which it is shown
 * @param pack null where the file cannot be read as a design
 * @param unread what is wrong with such a file
 */
record Opened(
    String name, History.Version version, Unit view, @Nullable Pack pack, List<Problem> unread) {

  List<Problem> problems() {
    Pack p = pack;
    return p == null ? unread : p.problems();
  }

  /** What is found quickly; the rest is asked for when the hand rests. */
  List<Problem> firstProblems() {
    Pack p = pack;
    return p == null ? unread : p.firstProblems();
  }

  /** The pack of a card that can be made. */
  Pack whole() {
    Pack p = pack;
    if (p == null || p.blocked()) {
      throw new Refusal(422, "this card cannot be made yet; see what is found below", problems());
    }
    return p;
  }

  DesignDocument design() {
    Pack p = pack;
    if (p == null) {
      throw new Refusal(422, unread.get(0).message(), unread);
    }
    return p.inputs().design();
  }
}
