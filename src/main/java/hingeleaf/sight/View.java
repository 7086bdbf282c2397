package hingeleaf.sight;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import java.util.List;
import java.util.Optional;

/**
 * A picture as plain geometry.
 *
 * @param polygons from back to front: all paper with what is on it, then windows with what is on
 *     them; ink, slopes and glue follow the paper they lie on and overlap it, else paper is
 *     disjoint
 * @param lines heavier strokes before inner ones, else in the order of the scene, panels seen
 *     edge-on last; no stretch is there twice
 * @param box around polygons and lines; a point at the origin where nothing is seen
 */
public record View(List<VisiblePolygon> polygons, List<VisibleLine> lines, Box box) {
  public View {
    polygons = List.copyOf(polygons);
    lines = List.copyOf(lines);
  }

  /**
   * What a finger put on a place of the picture points at: ink and glue before the paper below
   * them, a window before what is behind it.
   *
   * @param place in view coordinates, mm
   * @return empty where nothing of the card is
   */
  public Optional<VisiblePolygon> at(Vec2 place) {
    for (int i = polygons.size() - 1; i >= 0; i--) {
      if (polygons.get(i).region().contains(place)) {
        return Optional.of(polygons.get(i));
      }
    }
    return Optional.empty();
  }

  /** The lines joined end to end where they are of one part and sort. */
  public List<VisiblePath> paths() {
    return VisiblePath.chain(lines);
  }
}
