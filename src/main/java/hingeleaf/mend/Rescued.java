package hingeleaf.mend;

import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import java.util.List;

/**
 * What becomes of a card some of whose pieces came out otherwise.
 *
 * @param rows one for each piece, in the card's order
 * @param appeared what is found of the new card and was not of the old, gravest first
 * @param gone the other way round
 * @param sight what shows or hides otherwise, straight on, as sentences; empty where nothing does
 * @param post what changes in the post, as sentences; empty where nothing does
 * @param bench what the bench file has to say, without full stops: "thickness 0.41 mm at ..."
 * @param pack of the new design, with the bench as measured
 */
public record Rescued(
    List<Row> rows,
    List<Problem> appeared,
    List<Problem> gone,
    List<String> sight,
    List<String> post,
    List<String> bench,
    Pack pack) {
  public Rescued {
    rows = List.copyOf(rows);
    appeared = List.copyOf(appeared);
    gone = List.copyOf(gone);
    sight = List.copyOf(sight);
    post = List.copyOf(post);
    bench = List.copyOf(bench);
  }

  /** What is to be done with a piece. */
  public enum Verdict {
    /** It is cut and stays as it is. */
    STILL_GOOD("still good"),
    /** It is cut and loses a strip. */
    TRIM("trim this"),
    /** It is cut and nothing fits it. */
    RECUT("recut this one"),
    /** It is not cut yet and gets other sizes than designed. */
    CUT_OTHERWISE("cut it otherwise"),
    /** It is not cut yet and stays as designed. */
    AS_DESIGNED("as designed");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * One piece.
   *
   * @param width of its finished panel, mm
   * @param height of its finished panel, mm
   * @param flatWidth of the piece as it is cut, mm
   * @param flatHeight likewise
   * @param scores where it is scored, from its left or lower edge, mm
   * @param words why it has to be cut anew, or how it is glued where that is not as usual; may be
   *     empty
   */
  public record Row(
      String piece,
      Verdict verdict,
      double width,
      double height,
      double flatWidth,
      double flatHeight,
      List<Double> scores,
      String words) {
    public Row {
      scores = List.copyOf(scores);
    }
  }

  /** The text of the new design. */
  public String text() {
    return pack.inputs().design().tree().source().text();
  }

  /** Whether a cut piece has to be cut anew. */
  public boolean recuts() {
    return rows.stream().anyMatch(r -> r.verdict() == Verdict.RECUT);
  }
}
