package hingeleaf.sight;

import hingeleaf.geom.Segment;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Polygon;

/**
 * Where the edges of surfaces are seen: just where they are part of the outline of what is seen of
 * the surface. Asked again about the very same polygons it answers from memory.
 */
final class SeenRims {
  private final @Nullable List<Rims.Rim>[] pictures;
  private final @Nullable Seen[] seen;

  /**
   * The last answer for a surface.
   *
   * @param of the visible polygons that it was about
   */
  private record Seen(List<Polygon> of, List<Rims.Rim> rims) {}

  @SuppressWarnings({"unchecked", "rawtypes"})
  SeenRims(int surfaces) {
    this.pictures = new List[surfaces];
    this.seen = new Seen[surfaces];
  }

  /** The stretches of a surface's edges that are seen, in view coordinates. */
  List<Rims.Rim> of(Surface s, List<Polygon> visible) {
    Seen last = seen[s.index()];
    if (last == null || last.of != visible) {
      last = new Seen(visible, look(s, visible));
      seen[s.index()] = last;
    }
    return last.rims;
  }

  private List<Rims.Rim> look(Surface s, List<Polygon> visible) {
    List<Rims.Rim> rims = pictures(s);
    List<List<Spans.Span>> along = new Outline(visible).along(rims);
    List<Rims.Rim> out = new ArrayList<>();
    for (int i = 0; i < rims.size(); i++) {
      for (Segment at : Spans.union(along.get(i)).on(rims.get(i).at())) {
        out.add(rims.get(i).at(at));
      }
    }
    return out;
  }

  private List<Rims.Rim> pictures(Surface s) {
    List<Rims.Rim> known = pictures[s.index()];
    if (known == null) {
      known = Lines.pictures(s, Rims.of(s.part()));
      pictures[s.index()] = known;
    }
    return known;
  }
}
