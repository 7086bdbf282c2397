package hingeleaf.sight;

import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Lines of one sort that join end to end, to be drawn in one go with clean corners.
 *
 * @param points in view coordinates, mm; two or more, the first not repeated where closed
 * @param closed whether the last point joins the first
 * @param kind of all lines
 * @param stroke of all lines
 * @param part of all lines
 * @param name of the score for a fold; empty else
 * @param fresh whether the piece is new at this step
 */
public record VisiblePath(
    List<Vec2> points,
    boolean closed,
    VisibleLine.Kind kind,
    VisibleLine.Stroke stroke,
    String part,
    String name,
    boolean fresh) {
  public VisiblePath {
    points = List.copyOf(points);
  }

  /** What lines must share to be joined. */
  private static List<Object> sort(VisibleLine l) {
    return List.of(l.kind(), l.stroke(), l.part(), l.name(), l.fresh());
  }

  /** Joins lines into paths, in the order in which each sort first comes. */
  static List<VisiblePath> chain(Collection<VisibleLine> lines) {
    Map<List<Object>, List<VisibleLine>> sorts = new LinkedHashMap<>();
    for (VisibleLine l : lines) {
      sorts.computeIfAbsent(sort(l), k -> new ArrayList<>()).add(l);
    }
    List<VisiblePath> out = new ArrayList<>();
    for (List<VisibleLine> same : sorts.values()) {
      chain(same.get(0), same.stream().map(VisibleLine::at).toList(), out);
    }
    return out;
  }

  private static void chain(VisibleLine like, List<Segment> segments, List<VisiblePath> out) {
    Map<Vec2, Segment> byStart = new HashMap<>();
    Set<Vec2> ends = new HashSet<>();
    for (Segment s : segments) {
      byStart.putIfAbsent(s.from(), s);
      ends.add(s.to());
    }
    Set<Segment> used = new HashSet<>();
    for (Segment s : segments) {
      if (!ends.contains(s.from())) {
        follow(like, s, byStart, used, out);
      }
    }
    for (Segment s : segments) {
      follow(like, s, byStart, used, out);
    }
  }

  private static void follow(
      VisibleLine like,
      Segment first,
      Map<Vec2, Segment> byStart,
      Set<Segment> used,
      List<VisiblePath> out) {
    List<Vec2> points = new ArrayList<>();
    Segment s = first;
    while (s != null && used.add(s)) {
      points.add(s.from());
      first = s;
      s = byStart.get(s.to());
    }
    if (!points.isEmpty()) {
      boolean closed = first.to().equals(points.get(0));
      if (!closed) {
        points.add(first.to());
      }
      out.add(
          new VisiblePath(
              points, closed, like.kind(), like.stroke(), like.part(), like.name(), like.fresh()));
    }
  }
}
