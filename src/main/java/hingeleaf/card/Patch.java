package hingeleaf.card;

import hingeleaf.geom.Region;
import hingeleaf.geom.Vec2;

/**
 * An area of one face of a panel that takes part in a join, with a frame that says how it lies.
 *
 * @param piece id of the piece
 * @param panel name of the panel
 * @param face the face that is touched
 * @param area in piece coordinates; what takes the glue
 * @param origin a point of the frame, in piece coordinates
 * @param along unit direction of the frame in piece coordinates, as seen on the front
 */
public record Patch(String piece, String panel, Face face, Region area, Vec2 origin, Vec2 along) {}
