/**
 * Figures for the plan: pieces with dimensions, the made card.
 *
 * <p>Invariant: a figure is drawn at the size it will have; lines and type are never scaled with
 * it.
 */
@NullMarked
package hingeleaf.paper.figure;

import org.jspecify.annotations.NullMarked;
