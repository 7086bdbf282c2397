/**
 * Outlines drawn in SVG files, read into regions: closed lines of straight edges in mm, y up, the
 * middle of their box at the origin.
 *
 * <p>Invariant: nothing outside the bytes given is ever opened; what is returned is closed, crosses
 * nothing, and lies within {@link hingeleaf.geom.Tolerance#CHORD_MM} of the true curve at the size
 * at which it will be cut. Follows SVG 1.1 (Second Edition), W3C Recommendation of 16 August 2011,
 * chapters 7 to 9, as far as closed outlines need it.
 */
@NullMarked
package hingeleaf.outline;

import org.jspecify.annotations.NullMarked;
