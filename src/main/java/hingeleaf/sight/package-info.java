/**
 * What is seen of a card: the parts of placed panels that no other panel hides, as flat polygons
 * and lines with part, face and depth, for every drawing and every question about sight.
 *
 * <p>Invariant: polygons of paper in a view never overlap (beyond the sliver tolerance), together
 * they cover the silhouette of the card's opaque panels, and each can be laid back on its piece.
 * Projection and hiding are exact for flat panels, also where panels cross or overlap in a ring;
 * nothing here paints, and nothing depends on the order in which panels are given except ties of
 * panels that lie in one plane.
 */
@NullMarked
package hingeleaf.sight;

import org.jspecify.annotations.NullMarked;
