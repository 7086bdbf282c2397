package hingeleaf.sight;

import hingeleaf.card.Panel;
import hingeleaf.card.Piece;
import hingeleaf.geom.Rigid;

/**
 * A panel where it is at the moment of the picture.
 *
 * @param piece the piece that the panel is a part of
 * @param panel which part
 * @param pose from piece coordinates (front facing +z) to the world; used instead of the panel's
 *     made pose
 * @param layer which of several panels in one plane lies nearer to the viewer of the card's front:
 *     the higher (for planes seen edge-on from there, nearer to +y, then to +x). Of no effect
 *     between panels that are apart
 */
public record Placed(Piece piece, Panel panel, Rigid pose, int layer) {
  public Placed {
    if (!piece.id().equals(panel.piece())) {
      throw new IllegalArgumentException(panel.id() + " is no panel of " + piece.id());
    }
  }

  public String id() {
    return panel.id();
  }
}
