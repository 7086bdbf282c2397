package hingeleaf.plan;

import java.util.List;

/**
 * One step of the work.
 *
 * @param number from 1, in the order of work
 * @param kind what sort of work it is
 * @param pieces ids of the pieces that are worked on or added
 * @param title a few words: "Cut the frames"
 * @param text what to do, with tool and numbers
 * @param check how to see that it came right; empty where the step checks itself
 * @param tools what must lie ready
 * @param hands minutes of work
 * @param dries minutes until what was done may be worked on
 * @param after numbers of the steps that must come before
 * @param joins ids of the joins that this step closes
 */
public record Step(
    int number,
    Kind kind,
    List<String> pieces,
    String title,
    String text,
    String check,
    List<String> tools,
    double hands,
    double dries,
    List<Integer> after,
    List<String> joins) {
  /** Sorts of work, in the order in which they would come if nothing else decided. */
  public enum Kind {
    CUT,
    EMBOSS,
    OPEN,
    SCORE,
    WRITE,
    WINDOW,
    MAT,
    FOLD,
    CUT_OUT,
    GLUE_TAB,
    CLOSE_FLAT,
    FINISH,
    CHECK
  }

  public Step {
    pieces = List.copyOf(pieces);
    tools = List.copyOf(tools);
    after = List.copyOf(after);
    joins = List.copyOf(joins);
  }
}
