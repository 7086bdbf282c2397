/**
 * How exactly a card must be cut: what small errors of cuts and scores do to its stages, when each
 * second tab is glued with the stage standing, or flat.
 *
 * <p>A stage is a loop of four parallel folds of one piece, standing on two lines of the layer
 * behind it. Near flat its re-solve is exact (law of cosines): errors grow there like their square
 * root, so no linear estimate is used for it.
 *
 * <p>Invariant: nothing here is unseeded; the same card and accuracy give the same figures.
 */
@NullMarked
package hingeleaf.fold.accuracy;

import org.jspecify.annotations.NullMarked;
