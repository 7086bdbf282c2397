package hingeleaf.sheet.solve;

import hingeleaf.sheet.SheetPlan;
import java.util.List;

/** What comes of planning. */
public sealed interface Outcome {
  /** A plan that can be cut. */
  record Planned(SheetPlan plan) implements Outcome {}

  /** No plan: why, one sentence each. */
  record Blocked(List<String> sentences) implements Outcome {
    public Blocked {
      sentences = List.copyOf(sentences);
    }
  }
}
