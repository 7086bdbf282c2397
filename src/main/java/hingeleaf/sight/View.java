package hingeleaf.sight;

import hingeleaf.geom.Box;
import java.util.List;

/**
 * A picture as plain geometry.
 *
 * @param polygons from back to front: all paper with what is on it, then windows with what is on
 *     them; ink and glue follow the paper they lie on and overlap it, else paper is disjoint
 * @param lines heavier strokes before inner ones, else in the order of the scene, panels seen
 *     edge-on last; no stretch is there twice
 * @param box around polygons and lines; a point at the origin where nothing is seen
 */
public record View(List<VisiblePolygon> polygons, List<VisibleLine> lines, Box box) {
  public View {
    polygons = List.copyOf(polygons);
    lines = List.copyOf(lines);
  }

  /** The lines joined end to end where they are of one part and sort. */
  public List<VisiblePath> paths() {
    return VisiblePath.chain(lines);
  }
}
