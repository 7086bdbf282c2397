package hingeleaf.fold.stand;

import hingeleaf.geom.Vec3;
import java.util.List;

/**
 * How a made card stands, y up.
 *
 * @param verdict in one word
 * @param mass of its papers, g
 * @param centre of mass, in the made card's coordinates, mm
 * @param height of the centre of mass above the shelf, mm
 * @param front how far the centre lies behind the front edge of what it stands on, mm; negative
 *     where it lies before it
 * @param back how far it lies before the hindmost edge, mm
 * @param forwards by how much it can be tipped forwards before it falls over, rad; not more than 0
 *     where it falls by itself
 * @param backwards the same backwards
 * @param loose the freedoms along which it can lean, each by the piece that leans
 */
public record Stand(
    Verdict verdict,
    double mass,
    Vec3 centre,
    double height,
    double front,
    double back,
    double forwards,
    double backwards,
    List<Lean> loose) {
  public Stand {
    loose = List.copyOf(loose);
  }

  /** What a maker wants to know. */
  public enum Verdict {
    /** It stands by itself and nothing in it moves. */
    STANDS,
    /** It stands, but its stages can lean to the side; a stay keeps it square. */
    LEANS,
    /** Its own weight folds it. */
    SINKS,
    /** It falls over. */
    TIPS
  }

  /**
   * A freedom.
   *
   * @param piece the piece that leans
   * @param falls whether its weight makes it lean
   */
  public record Lean(String piece, boolean falls) {}
}
