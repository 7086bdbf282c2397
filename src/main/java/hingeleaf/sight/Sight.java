package hingeleaf.sight;

import hingeleaf.card.Face;
import hingeleaf.card.Ink;
import hingeleaf.card.Patch;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Looks at a scene: what of it is seen, as disjoint polygons and lines. */
public final class Sight {
  private final Marks marks;
  private final Camera camera;
  private final List<Surface> surfaces = new ArrayList<>();
  private final Map<String, List<Patch>> glued = new HashMap<>();

  private Sight(Scene scene, Look look, Marks marks) {
    this.marks = marks;
    this.camera = Camera.of(look);
    for (Placed part : scene.parts()) {
      surfaces.add(Surface.of(surfaces.size(), part, camera));
    }
    for (Patch p : marks.glued()) {
      glued.computeIfAbsent(p.piece() + "/" + p.panel(), k -> new ArrayList<>()).add(p);
    }
  }

  /** What is seen, nothing marked. */
  public static View look(Scene scene, Look look) {
    return look(scene, look, Marks.NONE);
  }

  /**
   * What is seen, with new pieces and glue pointed out.
   *
   * @param marks pieces and patches that are not in the scene are passed over
   */
  public static View look(Scene scene, Look look, Marks marks) {
    return new Sight(scene, look, marks).view();
  }

  /** What a part shows of itself: its polygons and where they stand from back to front. */
  private record Shown(boolean window, double depth, int index, List<VisiblePolygon> polygons) {}

  private View view() {
    Hiding hiding = new Hiding(surfaces);
    List<List<Polygon>> visible = new ArrayList<>();
    List<Shown> shown = new ArrayList<>();
    for (Surface s : surfaces) {
      List<Polygon> left = hiding.visible(s.index());
      visible.add(left);
      for (Polygon p : left) {
        shown.add(show(s, p));
      }
    }
    shown.sort(
        Comparator.comparing(Shown::window)
            .thenComparing(Comparator.comparingDouble(Shown::depth).reversed())
            .thenComparingInt(Shown::index));
    List<VisiblePolygon> polygons = shown.stream().flatMap(s -> s.polygons.stream()).toList();
    List<VisibleLine> lines = new Lines(surfaces, visible, hiding, marks).all();
    return new View(polygons, lines, box(polygons, lines));
  }

  private Shown show(Surface s, Polygon p) {
    boolean window = !s.opaque();
    Face face = s.face();
    List<VisiblePolygon> out = new ArrayList<>();
    var kind = window ? VisiblePolygon.Kind.WINDOW : VisiblePolygon.Kind.PAPER;
    VisiblePolygon paper = polygon(s, p, kind, s.part().id(), s.colour(face));
    out.add(paper);
    Geometry whole = p;
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(p);
    for (Ink ink : s.part().piece().inks()) {
      if (ink.face() == face || window) {
        for (Region r : ink.regions()) {
          for (Polygon q : within(s, r, prepared, whole)) {
            out.add(polygon(s, q, VisiblePolygon.Kind.INK, ink.name(), ink.colour()));
          }
        }
      }
    }
    for (Patch patch : glued.getOrDefault(s.part().id(), List.of())) {
      if (patch.face() == face) {
        for (Polygon q : within(s, patch.area(), prepared, whole)) {
          out.add(polygon(s, q, VisiblePolygon.Kind.GLUE, s.part().id(), s.colour(face)));
        }
      }
    }
    return new Shown(window, paper.depth(), s.index(), out);
  }

  /** What is seen of an area of a piece inside a visible polygon of one of its panels. */
  private static List<Polygon> within(
      Surface s, Region area, PreparedGeometry prepared, Geometry whole) {
    Geometry picture = s.picture(area);
    if (!picture.getEnvelopeInternal().intersects(whole.getEnvelopeInternal())) {
      return List.of();
    }
    return Shapes.polygons(prepared.covers(picture) ? picture : Shapes.and(picture, whole));
  }

  private VisiblePolygon polygon(
      Surface s, Polygon p, VisiblePolygon.Kind kind, String part, String colour) {
    Region region = Shapes.region(p);
    Point inside = p.getInteriorPoint();
    Vec2 at = new Vec2(inside.getX(), inside.getY());
    double nearness = s.plane().at(at.x(), at.y());
    return new VisiblePolygon(
        part,
        s.part().piece().id(),
        s.part().panel().name(),
        s.face(),
        kind,
        region,
        region.map(s::onPiece),
        -camera.height(camera.unproject(at, nearness)),
        Math.abs(s.facing()),
        colour,
        marks.fresh().contains(s.part().piece().id()));
  }

  private static Box box(List<VisiblePolygon> polygons, List<VisibleLine> lines) {
    List<Vec2> points = new ArrayList<>();
    polygons.forEach(p -> points.addAll(p.region().outer().points()));
    lines.forEach(l -> points.addAll(List.of(l.at().from(), l.at().to())));
    return points.isEmpty() ? new Box(0, 0, 0, 0) : Box.around(points);
  }
}
