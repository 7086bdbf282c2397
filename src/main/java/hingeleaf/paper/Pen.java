package hingeleaf.paper;

import java.util.List;

/**
 * How a line is drawn.
 *
 * <p>Widths are those of ISO 128-2:2020 (0.13, 0.18, 0.25, 0.35, 0.5, 0.7 mm; thin to thick is 1 to
 * 2). The valley dash is line 02 of the same standard: 12 widths drawn, 3 left open. The mountain
 * line has the order of the Yoshizawa-Randlett notation as Western books draw it, dash, dot, dot;
 * its dash is kept as short as the valley's and its dots are one width long, so that a score of 15
 * mm already shows which it is and a laser print does not lose the dots. Neither is a fold sign in
 * engineering drawing, so a key stands beside every set of them.
 *
 * @param width mm
 * @param dash lengths in mm, drawn and left open in turn; empty for a whole line
 * @param colour {@code #rrggbb}
 * @param round whether ends and corners are round; dashes always end square
 */
public record Pen(double width, List<Double> dash, String colour, boolean round) {
  /** The blade goes through here. */
  public static final Pen CUT = solid(0.5, Look.INK);

  public static final Pen VALLEY = dashed(0.35, Look.ACCENT, 12, 3);
  public static final Pen MOUNTAIN = dashed(0.35, Look.ACCENT, 12, 3, 1, 3, 1, 3);

  /** A score that stays flat in the made card. */
  public static final Pen FLAT = dashed(0.35, Look.ACCENT, 3, 9);

  /** Round a pattern: dashes of their own, longer gaps than a fold's. */
  public static final Pen PRESSED = dashed(0.18, "#7a5c2e", 6, 6);

  public static final Pen GLUE = solid(0.13, "#9c9fa1");
  public static final Pen DIMENSION = solid(0.18, Look.QUIET);

  /** What lies behind something else: dots. */
  public static final Pen HIDDEN = dashed(0.25, Look.QUIET, 1, 3);

  public static final Pen RULE = solid(0.18, Look.HAIR);
  public static final Pen EDGE = new Pen(0.35, List.of(), Look.INK, true);
  public static final Pen FINE_EDGE = new Pen(0.18, List.of(), Look.INK, true);

  public Pen {
    dash = List.copyOf(dash);
  }

  public static Pen solid(double width, String colour) {
    return new Pen(width, List.of(), colour, false);
  }

  /** Elements in line widths, as ISO 128 tells them. */
  public static Pen dashed(double width, String colour, double... elements) {
    return new Pen(
        width, java.util.Arrays.stream(elements).mapToObj(e -> e * width).toList(), colour, false);
  }

  public Pen coloured(String other) {
    return new Pen(width, dash, other, round);
  }
}
