package hingeleaf.paper;

/**
 * Numbers in files: the shortest decimal that is right to a ten-thousandth, the same everywhere.
 */
public final class Numerals {
  private static final int PLACES = 4;

  private Numerals() {}

  /**
   * {@code v} rounded to 0.0001 without trailing zeros; never {@code -0} and never an exponent.
   *
   * @throws IllegalArgumentException unless {@code |v| < 1e9}
   */
  public static String of(double v) {
    if (!(Math.abs(v) < 1e9)) {
      throw new IllegalArgumentException("no number for a drawing: " + v);
    }
    long units = Math.round(v * 10_000);
    long part = Math.abs(units) % 10_000;
    StringBuilder out = new StringBuilder();
    if (units < 0) {
      out.append('-');
    }
    out.append(Math.abs(units) / 10_000);
    if (part != 0) {
      String digits = Long.toString(part);
      out.append('.').append("0".repeat(PLACES - digits.length())).append(digits);
      while (out.charAt(out.length() - 1) == '0') {
        out.setLength(out.length() - 1);
      }
    }
    return out.toString();
  }
}
