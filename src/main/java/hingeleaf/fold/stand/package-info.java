/**
 * Whether a made card stands on a shelf: on its lower edges, by weight alone.
 *
 * <p>Invariant: statics of a rigid body, and the sign of the work that weight does along each
 * freedom; friction and the spring of folds are left to the maker.
 */
@NullMarked
package hingeleaf.fold.stand;

import org.jspecify.annotations.NullMarked;
