package hingeleaf.post;

/** What a post limits. */
public enum Figure {
  /** The longer side, mm. */
  LENGTH("length", Sort.MM),
  /** The shorter side, mm. */
  HEIGHT("height", Sort.MM),
  /** At the thickest spot, mm. */
  THICKNESS("thickness", Sort.MM),
  /** g. */
  WEIGHT("weight", Sort.GRAMS),
  /** Length divided by height. */
  RATIO("length divided by height", Sort.NUMBER),
  /** Length, height and thickness together, mm. */
  SUM("length, height and thickness together", Sort.MM),
  /** Longest side and the way round the two others, mm. */
  LENGTH_AND_GIRTH("length and girth together", Sort.MM),
  /** Difference between the thickest and the thinnest spot, mm. */
  UNEVEN("unevenness", Sort.MM),
  /** 1 for what does not bend, 0 for what does. */
  STIFF("stiffness", Sort.NUMBER);

  /** How a figure is written in a data file and to a maker. */
  enum Sort {
    MM,
    GRAMS,
    NUMBER
  }

  private final String words;
  private final Sort sort;

  Figure(String words, Sort sort) {
    this.words = words;
    this.sort = sort;
  }

  /** As a maker calls it. */
  public String words() {
    return words;
  }

  Sort sort() {
    return sort;
  }
}
