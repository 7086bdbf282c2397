package hingeleaf.geom;

/**
 * The tolerances of the whole tool, each with its unit and its reason. A solver's threshold is
 * derived from one of these and says so.
 */
public final class Tolerance {
  /** Two lengths closer than this are one: a thousandth of what any hand or gauge can tell. */
  public static final double LENGTH_MM = 1e-6;

  /** Areas under this are slivers of rounding: the length tolerance times a metre. */
  public static final double AREA_MM2 = 1e-3;

  /** Two directions closer than this are one: the length tolerance over a metre. */
  public static final double ANGLE_RAD = 1e-9;

  /**
   * Largest distance between a true arc and the chords drawn for it; a fifth of a blade's width.
   */
  public static final double CHORD_MM = 0.01;

  /**
   * Parts of a view narrower than this on average are slivers of rounding, and lines nearer than
   * this run along each other: a tenth of the finest printed line.
   */
  public static final double SLIVER_MM = 1e-3;

  /**
   * Sheets nearer than this touch, and their order of gluing tells which is in front: a fraction of
   * the thinnest paper.
   */
  public static final double TOUCH_MM = 0.01;

  /** A panel whose normal is square to the line of sight by less than this cosine is a line. */
  public static final double EDGE_ON = 1e-4;

  private Tolerance() {}
}
