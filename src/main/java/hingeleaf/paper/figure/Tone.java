package hingeleaf.paper.figure;

/** Sums on {@code #rrggbb} colours. */
final class Tone {
  private Tone() {}

  /** The colour in less light; {@code light} 0 to 1. */
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
