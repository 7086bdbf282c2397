package hingeleaf.measure;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * The right word nearest to a wrong one, counting letters changed, added, left out, or swapped with
 * their neighbour (the optimal string alignment distance after Damerau, Communications of the ACM
 * 7(3), 1964, and Levenshtein, 1966).
 */
public final class NearestWord {
  /** Longer words are nobody's slip of the pen. */
  private static final int LONGEST = 60;

  private NearestWord() {}

  /**
   * The nearest of the right words, if one is near enough: at most a third of its letters, or one
   * in a short word, differ. The first of several equally near; failing that, one that is the
   * other's beginning. Capitals, spaces and underlines count little.
   */
  public static Optional<String> to(String wrong, Collection<String> right) {
    if (wrong.isEmpty() || wrong.length() > LONGEST) {
      return Optional.empty();
    }
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String word : right) {
      int d = distance(plain(wrong), plain(word));
      if (d < least && d <= Math.max(1, word.length() / 3)) {
        least = d;
        best = word;
      }
    }
    return Optional.ofNullable(best).or(() -> beginning(plain(wrong), right));
  }

  /** The first word that begins like the wrong one, or that the wrong one begins with. */
  private static Optional<String> beginning(String wrong, Collection<String> right) {
    return right.stream()
        .filter(w -> Math.min(w.length(), wrong.length()) >= 2)
        .filter(w -> plain(w).startsWith(wrong) || wrong.startsWith(plain(w)))
        .findFirst();
  }

  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  /** The number of slips between two words. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : cell(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cell(int[][] d, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
