package hingeleaf.card;

import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;

/**
 * A flat part of a piece between its scores, placed in the made card.
 *
 * @param piece id of the piece
 * @param name of the panel, unique in the piece
 * @param region in piece coordinates
 * @param made from piece coordinates (front facing +z) to the world, in the made pose
 */
public record Panel(String piece, String name, Region region, Rigid made) {
  /** What findings and files call it. */
  public String id() {
    return piece + "/" + name;
  }
}
