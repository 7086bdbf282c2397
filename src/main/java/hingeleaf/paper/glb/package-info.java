/**
 * The card as a three-dimensional file, glTF 2.0 in its binary form.
 *
 * <p>Invariant: panels and poses come in; nothing is folded here. Lengths in the file are metres, y
 * is up and the front looks along +z, as the format wants and the world of the card already is.
 */
@NullMarked
package hingeleaf.paper.glb;

import org.jspecify.annotations.NullMarked;
