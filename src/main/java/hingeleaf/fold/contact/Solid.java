package hingeleaf.fold.contact;

import hingeleaf.geom.Vec3;

/**
 * A part as contact sees it, in the made pose.
 *
 * @param panel index of the panel
 * @param piece id of its piece
 * @param id of the panel, piece/panel
 * @param body what it moves with
 * @param shell its surface; of a prism the top and the walls, its bottom being glued
 * @param prism whether it stands on a face; otherwise a sheet without thickness
 * @param normal unit, of a prism away from what it stands on
 * @param at a point of the sheet's plane; of a prism a point of the plane it stands on
 * @param top how high a prism stands, mm; 0 for a sheet
 * @param thickness of its paper, mm
 */
record Solid(
    int panel,
    String piece,
    String id,
    int body,
    Shell shell,
    boolean prism,
    Vec3 normal,
    Vec3 at,
    double top,
    double thickness) {}
