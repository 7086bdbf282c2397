package hingeleaf.design;

import java.util.List;

/** Small turns of phrase for the sentences of this package. */
final class Wording {
  private static final int LONGEST = 40;

  private Wording() {}

  /** A text on one line, cut after forty characters, without control characters. */
  static String shortened(String text) {
    String line = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    if (line.codePointCount(0, line.length()) <= LONGEST) {
      return line;
    }
    return line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "...";
  }

  /** "a, b or c", each in back quotes. */
  static String oneOf(List<String> words) {
    List<String> quoted = words.stream().map(w -> "`" + w + "`").toList();
    int n = quoted.size();
    if (n <= 1) {
      return n == 0 ? "nothing" : quoted.get(0);
    }
    return String.join(", ", quoted.subList(0, n - 1)) + " or " + quoted.get(n - 1);
  }

  /** " - did you mean `x`?", or nothing. */
  static String didYouMean(java.util.Optional<String> word) {
    return word.map(w -> " - did you mean `" + w + "`?").orElse("");
  }
}
