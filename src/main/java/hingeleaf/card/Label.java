package hingeleaf.card;

import hingeleaf.geom.Vec2;

/**
 * The name of a panel, tied to it by a point inside it.
 *
 * @param name unique in its piece
 * @param at strictly inside the panel's material, in piece coordinates
 */
public record Label(String name, Vec2 at) {}
