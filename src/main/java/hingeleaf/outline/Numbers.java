package hingeleaf.outline;

/**
 * Takes numbers, flags and letters from the front of a text: the number grammar of SVG 1.1, section
 * 8.3.9, in which {@code 1.5.5} is two numbers and arc flags need no space after them.
 */
final class Numbers {
  private static final double FURTHEST = 1e7;
  private static final int LONGEST = 40;

  private final String text;
  private int at;

  Numbers(String text) {
    this.text = text;
  }

  /** Skips spaces and at most one comma. */
  void separator() {
    spaces();
    if (at < text.length() && text.charAt(at) == ',') {
      at++;
      spaces();
    }
  }

  void spaces() {
    while (at < text.length() && " \t\r\n\f".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  boolean done() {
    return at >= text.length();
  }

  /** The next sign, not taken; 0 at the end. */
  char peek() {
    return done() ? 0 : text.charAt(at);
  }

  char take() {
    return text.charAt(at++);
  }

  boolean numberAhead() {
    char c = peek();
    return (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+';
  }

  /** The next number, with a separator before it. */
  double number() throws Refusal {
    separator();
    int from = at;
    if (peek() == '-' || peek() == '+') {
      at++;
    }
    int digits = digits();
    if (peek() == '.') {
      at++;
      digits += digits();
    }
    if (digits == 0) {
      at = from;
      throw wrong("a number");
    }
    exponent();
    if (at - from > LONGEST) {
      throw new Refusal("bad-drawing", "a number in this drawing has too many digits");
    }
    double value = Double.parseDouble(text.substring(from, at));
    if (!(Math.abs(value) <= FURTHEST)) {
      throw new Refusal(
          "bad-drawing",
          "the number `" + text.substring(from, at) + "` is too large for a drawing");
    }
    return value;
  }

  private int digits() {
    int from = at;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at - from;
  }

  private void exponent() {
    int back = at;
    if (peek() == 'e' || peek() == 'E') {
      at++;
      if (peek() == '-' || peek() == '+') {
        at++;
      }
      if (digits() == 0) {
        at = back;
      }
    }
  }

  /** The next arc flag, 0 or 1, with a separator before it. */
  boolean flag() throws Refusal {
    separator();
    if (peek() != '0' && peek() != '1') {
      throw wrong("a flag, 0 or 1,");
    }
    return take() == '1';
  }

  Refusal wrong(String expected) {
    String found =
        done() ? "the end" : "`" + text.substring(at, Math.min(at + 12, text.length())) + "`";
    return new Refusal(
        "bad-drawing",
        "expected "
            + expected
            + " at character "
            + (at + 1)
            + "; found "
            + found.replaceAll("\\p{Cntrl}", " "));
  }
}
