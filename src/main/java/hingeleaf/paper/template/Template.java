package hingeleaf.paper.template;

import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import java.util.List;

/**
 * A piece to be drawn once, however often it is cut.
 *
 * @param quantity how many of it one card needs
 * @param glue patches to hatch; those of other pieces or of the other face are passed over
 */
public record Template(Piece piece, int quantity, List<Patch> glue) {
  public Template {
    glue = List.copyOf(glue);
  }
}
