package hingeleaf.mend;

import hingeleaf.design.Change;
import java.util.List;

/**
 * A change that was tried and cures a finding without bringing another.
 *
 * @param words what is done, as an order without a full stop: "make the opening 126 mm"
 * @param changes to the design, in order
 */
public record Mend(String words, List<Change> changes) {
  public Mend {
    changes = List.copyOf(changes);
  }
}
