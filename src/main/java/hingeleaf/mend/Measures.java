package hingeleaf.mend;

import java.util.Map;
import java.util.Set;

/**
 * What a maker has measured, in mm.
 *
 * @param pieces for each piece its sizes by word, such as {@code width} or {@code side.left}
 * @param papers for each paper of the bench its thickness
 * @param dies for each die of the bench width and height of the opening that it leaves; NaN for one
 *     that was not measured
 * @param cut names of the pieces that are cut, the measured ones among them
 */
public record Measures(
    Map<String, Map<String, Double>> pieces,
    Map<String, Double> papers,
    Map<String, Die> dies,
    Set<String> cut) {
  public Measures {
    pieces = Map.copyOf(pieces);
    papers = Map.copyOf(papers);
    dies = Map.copyOf(dies);
    cut = Set.copyOf(cut);
  }

  /** What a die was found to cut. */
  public record Die(double width, double height) {}

  /** A size of a piece, or {@code otherwise} where it was not measured. */
  double size(String piece, String word, double otherwise) {
    return pieces.getOrDefault(piece, Map.of()).getOrDefault(word, otherwise);
  }

  boolean has(String piece, String word) {
    return pieces.getOrDefault(piece, Map.of()).containsKey(word);
  }
}
