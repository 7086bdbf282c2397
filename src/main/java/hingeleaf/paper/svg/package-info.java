/**
 * Drawings as SVG 1.1, one user unit to the millimetre.
 *
 * <p>Invariant: text out; the only flip of y is here.
 */
@NullMarked
package hingeleaf.paper.svg;

import org.jspecify.annotations.NullMarked;
