package hingeleaf.design;

/**
 * A stretch of a text, in UTF-16 code units as {@link String} counts them.
 *
 * @param from first character
 * @param to one past the last; equal to {@code from} where there is none
 */
public record Span(int from, int to) {
  public Span {
    if (from < 0 || to < from) {
      throw new IllegalArgumentException(from + " to " + to + " is no stretch of text");
    }
  }
}
