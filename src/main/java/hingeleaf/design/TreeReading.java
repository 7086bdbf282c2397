package hingeleaf.design;

import hingeleaf.finding.Problem;
import java.util.List;

/** What came of reading a text: its tree, or why not. */
public sealed interface TreeReading {
  /** Larger files are refused; a reader of files need not take in more than one byte beyond. */
  int LIMIT_BYTES = 2_000_000;

  /** It could be read. */
  record Legible(Tree tree) implements TreeReading {}

  /**
   * It could not.
   *
   * @param problems at least one, each blocking and with its place
   */
  record Illegible(List<Problem> problems) implements TreeReading {
    public Illegible {
      problems = List.copyOf(problems);
    }
  }
}
