package hingeleaf.sight;

import hingeleaf.card.Face;
import hingeleaf.geom.Region;

/**
 * A connected part of a face that is seen.
 *
 * @param part id of the panel, or name of the ink
 * @param piece id of the piece
 * @param panel name of the panel
 * @param face which face is seen
 * @param kind what it is
 * @param region in view coordinates, mm
 * @param onPiece the same area in piece coordinates (seen on the front, also for a back)
 * @param depth of its middle behind the plane through the look's target, mm; negative in front
 * @param facing cosine between the seen face's normal and the line of sight at the panel's middle,
 *     above 0 to 1
 * @param colour {@code #rrggbb} of the seen face or ink; of the patch's face for glue, of the paper
 *     for a slope
 * @param fresh whether its piece is new at this step
 */
public record VisiblePolygon(
    String part,
    String piece,
    String panel,
    Face face,
    Kind kind,
    Region region,
    Region onPiece,
    double depth,
    double facing,
    String colour,
    boolean fresh) {
  /** What a polygon is. */
  public enum Kind {
    /** An opaque face. */
    PAPER,
    /** Printed on a face. */
    INK,
    /** A slope of an embossed pattern that the light falls on. */
    LIT,
    /** A slope of an embossed pattern that lies in shade. */
    SHADED,
    /** A patch that takes glue, marked on a face. */
    GLUE,
    /** Acetate: a tint over what is behind it. */
    WINDOW
  }
}
