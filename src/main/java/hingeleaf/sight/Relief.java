package hingeleaf.sight;

import hingeleaf.card.Face;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * How a pressed pattern is drawn: two contours inside the pressed area, each a narrow slope that is
 * light where it looks up to the left, whence draughtsmen let the light come, and dark where it
 * looks down to the right. The pattern stands up on the good face and is sunk on the back.
 *
 * <p>What stands on the folder's plates is not told, so nothing more of it is drawn.
 *
 * @param lit slopes towards the light, in piece coordinates
 * @param shaded slopes away from it
 */
record Relief(List<Region> lit, List<Region> shaded) {
  /** How far inside the pressed area the two contours run, mm. */
  private static final double[] INSIDE = {0.8, 3.6};

  /** How wide a slope is drawn, along each axis, mm. */
  private static final double SLOPE = 0.9;

  Relief {
    lit = List.copyOf(lit);
    shaded = List.copyOf(shaded);
  }

  /**
   * The slopes on one panel of a piece.
   *
   * @param face that is seen
   * @return without slopes where nothing is pressed into it
   */
  static Relief of(Placed part, Face face) {
    List<Region> lit = new ArrayList<>();
    List<Region> shaded = new ArrayList<>();
    List<Region> pressed =
        part.piece().embossing().map(e -> e.pressed(part.panel().region())).orElse(List.of());
    // From behind the piece is mirrored and what stood up is sunk: the light falls on the slopes
    // at the lower left of the piece as the front shows it.
    Vec2 by = face == Face.FRONT ? new Vec2(SLOPE, -SLOPE) : new Vec2(SLOPE, SLOPE);
    for (Region area : pressed) {
      for (double inside : INSIDE) {
        List<Region> plateau = Overlay.grown(area, -inside);
        lit.addAll(Overlay.difference(plateau, moved(plateau, by)));
        shaded.addAll(Overlay.difference(plateau, moved(plateau, by.times(-1))));
      }
    }
    return new Relief(lit, shaded);
  }

  private static List<Region> moved(List<Region> regions, Vec2 by) {
    return regions.stream().map(r -> r.moved(by)).toList();
  }
}
