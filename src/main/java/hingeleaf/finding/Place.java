package hingeleaf.finding;

/**
 * A place in a text that somebody wrote.
 *
 * @param source the name under which the text was given, such as a file name
 * @param line from 1
 * @param column from 1, counted in characters as an editor shows them (code points)
 */
public record Place(String source, int line, int column) {
  @Override
  public String toString() {
    return source + ":" + line + ":" + column;
  }
}
