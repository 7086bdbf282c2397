package hingeleaf.finding;

/** How grave a problem is to a maker, gravest first. */
public enum Level {
  /** The card cannot be made so; the content of a file blocks. */
  BLOCKS,
  /** The card can be made, but will disappoint. */
  WARNS,
  /** Good to know. */
  NOTES
}
