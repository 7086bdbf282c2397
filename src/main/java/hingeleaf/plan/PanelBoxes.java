package hingeleaf.plan;

import hingeleaf.card.PanelLayout;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import java.util.HashMap;
import java.util.Map;

/**
 * The boxes of the panels of pieces, in piece coordinates. Dividing a piece is costly, so each is
 * divided once; not to be shared by threads.
 */
final class PanelBoxes {
  private final Map<String, PanelLayout> known = new HashMap<>();

  /**
   * @throws IllegalArgumentException if the piece has no such panel
   */
  Box box(Piece piece, String panel) {
    PanelLayout layout = known.computeIfAbsent(piece.id(), id -> PanelLayout.of(piece));
    return layout.panels().get(layout.index(panel)).region().box();
  }
}
