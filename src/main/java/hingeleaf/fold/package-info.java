/**
 * How a card folds: pieces folded forward to the made card, loops settled and driven, flat rests
 * and piles.
 *
 * <p>Invariant: pure solvers over {@code card}. Everything three-dimensional that leaves this
 * package was folded from pieces; thickness enters piles only.
 */
@NullMarked
package hingeleaf.fold;

import org.jspecify.annotations.NullMarked;
