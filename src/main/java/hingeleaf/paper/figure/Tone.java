package hingeleaf.paper.figure;

/** Sums on {@code #rrggbb} colours. */
final class Tone {
  private Tone() {}

  /** The colour in less light; {@code light} 0 to 1. */
  /** How light a colour looks: 0 black to 1 white (ITU-R BT.709 weights, on coded values). */
  static double lightness(String colour) {
    int c = Integer.parseInt(colour.substring(1), 16);
    return (0.2126 * (c >> 16 & 0xff) + 0.7152 * (c >> 8 & 0xff) + 0.0722 * (c & 0xff)) / 255;
  }

  static String shaded(String colour, double light) {
    return mixed("#000000", colour, light);
  }

  /** {@code share} of the second colour in the first. */
  static String mixed(String first, String second, double share) {
    int a = Integer.parseInt(first.substring(1), 16);
    int b = Integer.parseInt(second.substring(1), 16);
    double s = Math.min(1, Math.max(0, share));
    StringBuilder out = new StringBuilder("#");
    for (int shift : new int[] {16, 8, 0}) {
      double v = (a >> shift & 0xff) * (1 - s) + (b >> shift & 0xff) * s;
      int n = (int) Math.rint(v);
      out.append(Character.forDigit(n >> 4, 16)).append(Character.forDigit(n & 15, 16));
    }
    return out.toString();
  }
}
