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

  private Tolerance() {}
}
