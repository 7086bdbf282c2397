package hingeleaf.sight;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * The lines of a view: edges of panels where their panel is seen beside them, folds once however
 * many of their panels are seen, slits, crossings, and panels seen edge-on.
 *
 * <p>The outline of a visible polygon consists of edges of its panel, of edges of what hides it,
 * and of crossings. So an edge is seen just where it is part of that outline.
 */
final class Lines {
  private final List<Surface> surfaces;
  private final Shown shown;
  private final Marks marks;
  private final List<Draft> drafts = new ArrayList<>();
  private final Map<String, List<Draft>> shared = new LinkedHashMap<>();

  /**
   * A line before its stroke is known.
   *
   * @param index of the surface that it belongs to
   */
  record Draft(Rims.Rim rim, int index, boolean inner) {
    Segment at() {
      return rim.at();
    }
  }

  /**
   * What is there to be drawn.
   *
   * @param there the surfaces that are there
   * @param visible what is seen of each of all surfaces; nothing of those that are not there
   * @param silhouette of those that are there
   */
  record Shown(
      List<Surface> there,
      List<List<Polygon>> visible,
      List<Hiding.Crease> creases,
      Silhouette silhouette) {}

  /**
   * @param surfaces all, by their indices
   */
  Lines(List<Surface> surfaces, Shown shown, Marks marks) {
    this.surfaces = surfaces;
    this.shown = shown;
    this.marks = marks;
  }

  List<VisibleLine> all(SeenRims seen) {
    for (Surface s : shown.there) {
      List<Polygon> visible = shown.visible.get(s.index());
      if (!visible.isEmpty()) {
        rims(s, seen.of(s, visible));
      }
    }
    shared.values().forEach(this::merge);
    slits();
    crossings();
    List<Draft> once = once();
    List<VisibleLine> lines = new ArrayList<>();
    once.forEach(d -> ink(d, shown.silhouette.along(d.at()), lines));
    for (Draft d : new Edgewise(shown.there, once).seen()) {
      ink(d, shown.silhouette.outside(d.at()), lines);
    }
    return lines;
  }

  /** The drafts without what others draw already, the inner ones after all others. */
  private List<Draft> once() {
    List<Draft> sorted = new ArrayList<>(drafts);
    sorted.sort(Comparator.comparing(Draft::inner));
    Envelope[] boxes = new Envelope[sorted.size()];
    HPRtree tree = new HPRtree();
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = Outline.box(sorted.get(i).at());
      tree.insert(boxes[i], i);
    }
    List<Draft> out = new ArrayList<>();
    List<Spans.Span> taken = new ArrayList<>();
    for (int i = 0; i < boxes.length; i++) {
      Draft d = sorted.get(i);
      int place = i;
      taken.clear();
      tree.query(
          boxes[i],
          found -> {
            int j = (Integer) found;
            if (j < place) {
              taken.addAll(Spans.shared(d.at(), sorted.get(j).at()).parts());
            }
          });
      Spans free = Spans.whole().minus(Spans.union(taken));
      for (Segment at : free.on(d.at())) {
        out.add(at.equals(d.at()) ? d : new Draft(d.rim.at(at), d.index, d.inner));
      }
    }
    return out;
  }

  private void ink(Draft d, Spans outline, List<VisibleLine> out) {
    Spans free = d.inner ? Spans.none() : outline;
    free.on(d.at()).forEach(s -> out.add(line(d, s, VisibleLine.Stroke.SILHOUETTE)));
    var rest = d.inner ? VisibleLine.Stroke.INNER : VisibleLine.Stroke.EDGE;
    Spans.whole().minus(free).on(d.at()).forEach(s -> out.add(line(d, s, rest)));
  }

  private VisibleLine line(Draft d, Segment at, VisibleLine.Stroke stroke) {
    Placed part = surfaces.get(d.index).part();
    String name = d.rim.kind() == VisibleLine.Kind.FOLD ? d.rim.line() : "";
    boolean fresh = marks.fresh().contains(part.piece().id());
    return new VisibleLine(at, d.rim.kind(), stroke, part.id(), name, fresh);
  }

  /** Notes where the edges of a surface are seen. */
  private void rims(Surface s, List<Rims.Rim> seen) {
    for (Rims.Rim rim : seen) {
      Draft draft = new Draft(rim, s.index(), false);
      if (rim.shared()) {
        shared.computeIfAbsent(key(s, rim), k -> new ArrayList<>()).add(draft);
      } else {
        drafts.add(draft);
      }
    }
  }

  private static String key(Surface s, Rims.Rim rim) {
    return s.part().piece().id() + "/" + rim.line();
  }

  /** The pictures of lines of a piece; those behind the viewer or along the sight left out. */
  static List<Rims.Rim> pictures(Surface s, List<Rims.Rim> rims) {
    List<Rims.Rim> out = new ArrayList<>();
    for (Rims.Rim r : rims) {
      Ends ends = Ends.of(r.at(), s.part().pose(), s.camera());
      if (ends != null && ends.length() > Tolerance.LENGTH_MM) {
        out.add(r.at(new Segment(ends.from.at(), ends.to.at())));
      }
    }
    return out;
  }

  /** The picture of a straight line with its nearness at both ends. */
  record Ends(Camera.Spot from, Camera.Spot to) {
    static @Nullable Ends of(Segment s, Rigid pose, Camera camera) {
      Vec3 a = pose.apply(s.from());
      Vec3 b = pose.apply(s.to());
      double ra = camera.room(a);
      double rb = camera.room(b);
      if (ra < 0 && rb < 0) {
        return null;
      }
      Vec3 cut = a.plus(b.minus(a).times(ra < 0 || rb < 0 ? ra / (ra - rb) : 0));
      return new Ends(camera.project(ra < 0 ? cut : a), camera.project(rb < 0 ? cut : b));
    }

    double length() {
      return from.at().distance(to.at());
    }

    Segment at() {
      return new Segment(from.at(), to.at());
    }
  }

  /** Draws a line between panels once: lightly where both of them are seen. */
  private void merge(List<Draft> same) {
    for (Draft d : same) {
      Spans once = Spans.whole();
      Spans both = Spans.none();
      for (Draft o : same) {
        Spans along = o.index == d.index ? Spans.none() : Spans.shared(d.at(), o.at());
        both = both.plus(along);
        once = o.index < d.index ? once.minus(along) : once;
      }
      for (Segment at : once.minus(both).on(d.at())) {
        drafts.add(new Draft(d.rim.at(at), d.index, false));
      }
      for (Segment at : once.and(both).on(d.at())) {
        drafts.add(new Draft(d.rim.at(at), d.index, true));
      }
    }
  }

  /** Slits that end inside a panel, which are no edges. */
  private void slits() {
    for (Surface s : shown.there) {
      if (shown.visible.get(s.index()).isEmpty() || s.part().piece().slits().isEmpty()) {
        continue;
      }
      for (Rims.Rim line : pictures(s, Rims.inside(s.part()))) {
        if (line.kind() == VisibleLine.Kind.CUT) {
          slit(s, line);
        }
      }
    }
  }

  private void slit(Surface s, Rims.Rim line) {
    Spans seen = Spans.none();
    for (Polygon p : shown.visible.get(s.index())) {
      seen = seen.plus(Edgewise.inside(line.at(), p));
    }
    for (Draft d : shared.getOrDefault(key(s, line), List.of())) {
      seen = seen.minus(Spans.shared(line.at(), d.at()));
    }
    seen.on(line.at()).forEach(at -> drafts.add(new Draft(line.at(at), s.index(), true)));
  }

  /** Where panels pass through each other. */
  private void crossings() {
    for (Hiding.Crease crease : shown.creases) {
      Segment axis = axis(crease);
      if (axis.length() > Tolerance.SLIVER_MM) {
        Rims.Rim rim = new Rims.Rim(axis, VisibleLine.Kind.CROSSING, "");
        List<Spans.Span> seen = new ArrayList<>();
        for (int i : List.of(crease.first(), crease.second())) {
          seen.addAll(new Outline(shown.visible.get(i)).along(List.of(rim)).get(0));
        }
        for (Segment s : Spans.union(seen).on(axis)) {
          drafts.add(new Draft(rim.at(s), crease.first(), false));
        }
      }
    }
  }

  /** The line of a crease through the common box of both pictures. */
  private Segment axis(Hiding.Crease crease) {
    var box = surfaces.get(crease.first()).box();
    box = box.intersection(surfaces.get(crease.second()).box());
    box.expandBy(Tolerance.TOUCH_MM);
    Camera.Slope f = crease.line();
    Vec2 gradient = new Vec2(f.a(), f.b());
    Vec2 middle = new Vec2(box.centre().x, box.centre().y);
    double k = f.at(middle.x(), middle.y()) / gradient.dot(gradient);
    Vec2 on = middle.minus(gradient.times(k));
    Vec2 along = gradient.left().unit().times(box.getDiameter());
    return new Segment(on.minus(along), on.plus(along));
  }
}
