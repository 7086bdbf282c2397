package hingeleaf.fold.contact;

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
 */
public record Swing(
    String door,
    String leaf,
    double opens,
    @Nullable String against,
    double reach,
    double square) {}
