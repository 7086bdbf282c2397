package hingeleaf.fold.contact;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far a door opens towards the viewer while the rest of the card stands as made.
 *
 * @param door piece id, or piece/score for one that is cut in
 * @param leaf panel id of the leaf
 * @param opens rad, up to pi where nothing is in its way
 * @param against panel id of what stops it; null where nothing does
 * @param reach from its fold to its free edge, mm
 * @param square the greatest reach at which it opens to a right angle at least, mm; the leaf's own
 *     where it does anyway
 * @param passes panel ids of the frames through whose openings it goes, nearest first
 * @param ajar how far it can stand open behind a lid that lies on the foremost layer, as in a box
 *     as deep as the card, rad
 */
public record Swing(
    String door,
    String leaf,
    double opens,
    @Nullable String against,
    double reach,
    double square,
    List<String> passes,
    double ajar) {
  public Swing {
    passes = List.copyOf(passes);
  }
}
