package hingeleaf.stock;

/** Which way the fibres of a paper run, relative to the sheet or piece that says so. */
public enum Grain {
  /** Along the width, the x axis. */
  WIDTH,
  /** Along the height, the y axis. */
  HEIGHT,
  /** Not known, not there (acetate), or of no matter. */
  ANY
}
