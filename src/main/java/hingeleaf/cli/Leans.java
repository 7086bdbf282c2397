package hingeleaf.cli;

import hingeleaf.card.Rest;
import java.util.stream.Collectors;

/** How a card leans, in words: "leans left, right, left, from the back". */
final class Leans {
  private Leans() {}

  static String words(Rest rest) {
    if (rest.leans().isEmpty()) {
      return "as it is";
    }
    boolean same = rest.leans().stream().distinct().count() == 1;
    String each = rest.leans().stream().map(Leans::word).collect(Collectors.joining(", "));
    if (rest.leans().size() == 1) {
      return "leans " + each;
    }
    return same ? "all leaning " + word(rest.leans().get(0)) : "leans " + each + " from the back";
  }

  private static String word(int lean) {
    return lean < 0 ? "left" : "right";
  }
}
