/**
 * The card as data: flat pieces as cut, the joins between them, and the mechanism, poses and rests
 * that are folded from them.
 *
 * <p>Invariant: nothing three-dimensional is drawn here on its own. A pose says where the panels of
 * the pieces are; placement follows from joins.
 *
 * <p>Piece frame: origin at the lower left of the outline's box, x right, y up, the reader sees the
 * front (good) face. World frame: x right, y up, z to the viewer.
 */
@NullMarked
package hingeleaf.card;

import org.jspecify.annotations.NullMarked;
