package hingeleaf.paper;

import hingeleaf.paper.Mark.Weight;
import java.util.ArrayList;
import java.util.List;

/** Breaking words into lines by their measured length. */
public final class Wrapping {
  private Wrapping() {}

  /**
   * Lines that are at most {@code width} mm long; a word that is longer is broken anywhere.
   *
   * @return at least one line; one empty line for text without words
   */
  public static List<String> lines(
      String text, Weight weight, double size, double width, Fonts fonts) {
    List<String> lines = new ArrayList<>();
    String line = "";
    double reach = 0;
    double blank = fonts.width(" ", weight, size);
    for (String word : fonts.set(text).strip().split("\\s+", -1)) {
      double more = (line.isEmpty() ? 0 : blank) + fonts.width(word, weight, size);
      if (reach + more <= width) {
        reach += more;
        line = line.isEmpty() ? word : line + " " + word;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (fonts.width(line, weight, size) > width && line.codePointCount(0, line.length()) > 1) {
        int cut = fitting(line, weight, size, width, fonts);
        lines.add(line.substring(0, cut));
        line = line.substring(cut);
      }
      reach = fonts.width(line, weight, size);
    }
    lines.add(line);
    return lines;
  }

  /** How many chars of a word fit; at least one whole sign. */
  private static int fitting(String word, Weight weight, double size, double width, Fonts fonts) {
    int cut = word.offsetByCodePoints(0, 1);
    while (cut < word.length()) {
      int next = word.offsetByCodePoints(cut, 1);
      if (fonts.width(word.substring(0, next), weight, size) > width) {
        break;
      }
      cut = next;
    }
    return cut;
  }

  /** The text itself, or as much of its start as fits before an ellipsis. */
  public static String shortened(
      String text, Weight weight, double size, double width, Fonts fonts) {
    String set = fonts.set(text);
    if (fonts.width(set, weight, size) <= width) {
      return set;
    }
    double room = width - fonts.width("…", weight, size);
    return set.substring(0, fitting(set, weight, size, room, fonts)).stripTrailing() + "…";
  }
}
