package hingeleaf.sight;

import hingeleaf.geom.Segment;

/**
 * A straight line that is seen.
 *
 * @param at in view coordinates, mm
 * @param kind what makes it
 * @param stroke how heavily a drawing should ink it
 * @param part id of a panel that it belongs to
 * @param name of the score for a fold; empty else
 * @param fresh whether its piece is new at this step
 */
public record VisibleLine(
    Segment at, Kind kind, Stroke stroke, String part, String name, boolean fresh) {
  /** What makes a line. */
  public enum Kind {
    /** An edge of paper, or a slit. */
    CUT,
    /** A score. */
    FOLD,
    /** Where a panel passes through another. */
    CROSSING
  }

  /** How heavily to draw, heaviest first. */
  public enum Stroke {
    /** Beyond it nothing of the card is seen. */
    SILHOUETTE,
    /** Beyond it something else of the card is seen, or the other panel of a fold is hidden. */
    EDGE,
    /** Both panels of a fold are seen, or a slit lies in its panel. */
    INNER
  }
}
