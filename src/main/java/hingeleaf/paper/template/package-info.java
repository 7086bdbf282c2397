/**
 * True-size templates: pieces laid on pages that a home printer takes, tiled where they are larger.
 *
 * <p>Invariant: nothing is scaled. A page is made of positions; lengths come from the pieces.
 */
@NullMarked
package hingeleaf.paper.template;

import org.jspecify.annotations.NullMarked;
