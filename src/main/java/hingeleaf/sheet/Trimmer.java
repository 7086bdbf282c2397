package hingeleaf.sheet;

/**
 * What the trimmer can do; 0 stands for "not given".
 *
 * @param longest longest cut in nm; a part wider and higher than this cannot be cut
 * @param step distance of its marks in nm; sizes off the marks are told, not forbidden
 * @param leastStrip narrowest part that may fall off a cut, in nm
 */
public record Trimmer(long longest, long step, long leastStrip) {

  /** A trimmer about which nothing is said. */
  public static final Trimmer UNSAID = new Trimmer(0, 0, 0);
}
