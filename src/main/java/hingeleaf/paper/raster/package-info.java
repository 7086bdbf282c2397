/**
 * Drawings as PNG pictures.
 *
 * <p>Invariant: words are painted as outlines of the face that is brought along, never with a font
 * of the machine, so a picture is the same everywhere.
 */
@NullMarked
package hingeleaf.paper.raster;

import org.jspecify.annotations.NullMarked;
