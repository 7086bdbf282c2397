package hingeleaf.design;

/** From the parser's count of code points to {@link String} offsets. */
final class CodePoints {
  private final int start;
  private final int length;
  private final int[] units;

  /**
   * @param start offset in {@code text} of code point 0
   */
  CodePoints(String text, int start) {
    this.start = start;
    this.length = text.length();
    int count = text.codePointCount(start, length);
    this.units = count == length - start ? new int[0] : units(text, start, count);
  }

  private static int[] units(String text, int start, int count) {
    int[] units = new int[count + 1];
    int at = start;
    for (int i = 0; i < count; i++) {
      units[i] = at;
      at += Character.charCount(text.codePointAt(at));
    }
    units[count] = at;
    return units;
  }

  /** The offset of a code point; the end of the text for any beyond it. */
  int unit(int codePoint) {
    if (units.length == 0) {
      return Math.min(start + codePoint, length);
    }
    return units[Math.min(codePoint, units.length - 1)];
  }
}
