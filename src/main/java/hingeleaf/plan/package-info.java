/**
 * What the maker follows: cut list, score chart and the order of work, read off the pieces and
 * joins.
 *
 * <p>Invariant: every number in a plan is measured on a piece or taken from the bench; nothing is
 * worked out a second time. No page layout here: a plan is values and sentences.
 */
@NullMarked
package hingeleaf.plan;

import org.jspecify.annotations.NullMarked;
