package hingeleaf.plan;

import java.util.List;

/**
 * One step of the work.
 *
 * @param number from 1, in the order of work
 * @param kind what sort of work it is
 * @param pieces ids of the pieces that are worked on or added
 * @param joins ids of the joins that this step closes
 * @param title a few words: "Cut the frames"
 * @param text what to do, with tool and numbers
 * @param lines one for each thing that the text speaks of; empty where the text says all
 * @param check how to see that it came right; empty where the step checks itself
 * @param tools what must lie ready
 * @param hands minutes of work, of them {@code hold} pressing
 * @param dries minutes until what was done may be worked on
 * @param after numbers of the steps that must come before
 * @param meanwhile numbers of later steps that need not wait for this one to dry
 */
public record Step(
    int number,
    Kind kind,
    List<String> pieces,
    List<String> joins,
    String title,
    String text,
    List<String> lines,
    String check,
    List<String> tools,
    double hands,
    double dries,
    List<Integer> after,
    List<Integer> meanwhile) {
  /** Sorts of work, in the order in which they would come if nothing else decided. */
  public enum Kind {
    CUT,
    /** Cut by a template, with knife or scissors. */
    SHAPE,
    /** Cut larger than wanted, to be embossed and then trimmed. */
    BLANK,
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
    MOVING,
    FINISH,
    CHECK
  }

  public Step {
    pieces = List.copyOf(pieces);
    joins = List.copyOf(joins);
    lines = List.copyOf(lines);
    tools = List.copyOf(tools);
    after = List.copyOf(after);
    meanwhile = List.copyOf(meanwhile);
  }

  /** A step before it has its place: no number, nothing before it. */
  static Step loose(
      Kind kind,
      List<String> pieces,
      List<String> joins,
      String title,
      String text,
      List<String> lines,
      String check,
      List<String> tools,
      double hands,
      double dries) {
    return new Step(
        0, kind, pieces, joins, title, text, lines, check, tools, hands, dries, List.of(),
        List.of());
  }

  Step placed(int at, List<Integer> needs, List<Integer> free) {
    return new Step(
        at, kind, pieces, joins, title, text, lines, check, tools, hands, dries, needs, free);
  }

  /** All that is said, for readers that take one text. */
  public String whole() {
    return String.join(" ", text, String.join(" ", lines), check).strip();
  }
}
