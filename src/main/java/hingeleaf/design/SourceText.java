package hingeleaf.design;

import hingeleaf.finding.Place;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A text with its name, able to tell line and column of any character. Lines end with a line feed,
 * a carriage return, or both; a byte order mark at the start counts for no column.
 */
public final class SourceText {
  private final String name;
  private final String text;
  private final int[] lineStarts;
  private final int[] pairs;

  public SourceText(String name, String text) {
    this.name = name;
    this.text = text;
    this.lineStarts = lineStarts(text);
    this.pairs =
        IntStream.range(0, text.length())
            .filter(i -> Character.isLowSurrogate(text.charAt(i)))
            .toArray();
  }

  /** How many signs of two code units end before an offset. */
  private int pairsBefore(int offset) {
    int found = Arrays.binarySearch(pairs, offset);
    return found >= 0 ? found : -found - 1;
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[16];
    int n = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean end = c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1));
      if (end) {
        starts = n == starts.length ? Arrays.copyOf(starts, 2 * n) : starts;
        starts[n++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, n);
  }

  public String name() {
    return name;
  }

  public String text() {
    return text;
  }

  /** Where the character at an offset stands; the column counts code points. */
  public Place place(int offset) {
    int at = Math.max(0, Math.min(offset, text.length()));
    int line = lineOf(at);
    int start = lineStarts[line];
    int from = start == 0 && text.startsWith("\uFEFF") ? Math.min(1, at) : start;
    int column = at - from - (pairsBefore(at) - pairsBefore(from)) + 1;
    return new Place(name, line + 1, column);
  }

  /** Where the line with this character begins. */
  int lineStart(int offset) {
    return lineStarts[lineOf(offset)];
  }

  private int lineOf(int offset) {
    int found = Arrays.binarySearch(lineStarts, offset);
    return found >= 0 ? found : -found - 2;
  }
}
