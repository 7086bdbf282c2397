package hingeleaf.sight;

import hingeleaf.card.Face;
import hingeleaf.card.Ink;
import hingeleaf.card.Patch;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * A scene looked at one way: what of it is seen, as disjoint polygons and lines.
 *
 * <p>The same sight can be asked again while parts come and go, as a card grows step by step; what
 * an earlier answer has worked out is kept, so that it costs what is new in it. Not to be shared by
 * threads.
 */
public final class Sight {
  private final Camera camera;
  private final List<Surface> surfaces = new ArrayList<>();
  private final Hiding hiding;
  private final SeenRims rims;
  private final @Nullable Answer[] answers;
  private final Map<Integer, Relief> reliefs = new HashMap<>();
  private BitSet covered = new BitSet();
  private Drawn drawn = new Drawn(new BitSet(), Set.of(), List.of());
  private Silhouette silhouette = Silhouette.NONE;

  private Sight(Scene scene, Look look) {
    this.camera = Camera.of(look);
    for (Placed part : scene.parts()) {
      surfaces.add(Surface.of(surfaces.size(), part, camera));
    }
    this.hiding = new Hiding(surfaces);
    this.rims = new SeenRims(surfaces.size());
    this.answers = new Answer[surfaces.size()];
  }

  /** A scene of which some parts at a time are to be looked at. */
  public static Sight of(Scene scene, Look look) {
    return new Sight(scene, look);
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
    return of(scene, look).view(p -> true, marks);
  }

  /** The placed panels as this sight has them before anything hides them. */
  List<Surface> surfaces() {
    return surfaces;
  }

  /** What is seen of one of them while all are there. */
  List<Polygon> visible(Surface s) {
    BitSet all = new BitSet();
    all.set(0, surfaces.size());
    return hiding.visible(s.index(), all);
  }

  /** What a part shows of itself: its polygons and where they stand from back to front. */
  private record Shown(boolean window, double depth, int index, List<VisiblePolygon> polygons) {}

  /**
   * What is seen while only some of the parts are there; the same as of a scene that keeps only
   * them.
   *
   * @param which the parts that are there
   * @param marks pieces and patches that are not in the scene are passed over
   */
  public View view(Predicate<Placed> which, Marks marks) {
    BitSet there = there(which);
    List<List<Polygon>> visible = new ArrayList<>();
    List<Shown> shown = new ArrayList<>();
    Marked marked = new Marked(marks);
    for (Surface s : surfaces) {
      List<Polygon> left =
          there.get(s.index()) ? hiding.visible(s.index(), there) : List.<Polygon>of();
      visible.add(left);
      shown.addAll(show(s, left, marked));
    }
    shown.sort(
        Comparator.comparing(Shown::window)
            .thenComparing(Comparator.comparingDouble(Shown::depth).reversed())
            .thenComparingInt(Shown::index));
    List<VisiblePolygon> polygons = shown.stream().flatMap(s -> s.polygons.stream()).toList();
    List<VisibleLine> lines = lines(there, visible, marks);
    return new View(polygons, lines, box(polygons, lines));
  }

  /**
   * The visible areas alone of some parts, while only some are there; far quicker than a whole
   * view.
   *
   * @param which the parts that are there
   * @param asked the parts whose areas are wanted
   */
  public List<VisiblePolygon> areas(Predicate<Placed> which, Predicate<Placed> asked) {
    BitSet there = there(which);
    Marked marked = new Marked(Marks.NONE);
    List<VisiblePolygon> out = new ArrayList<>();
    for (Surface s : listed(there)) {
      if (asked.test(s.part())) {
        show(s, hiding.visible(s.index(), there), marked).forEach(p -> out.addAll(p.polygons));
      }
    }
    return out;
  }

  /**
   * Whether nothing hides anything of some parts: quicker to tell than what is seen of them.
   *
   * @param which the parts that are there
   * @param asked the parts that are asked about
   */
  public boolean clear(Predicate<Placed> which, Predicate<Placed> asked) {
    BitSet there = there(which);
    return surfaces.stream()
        .filter(s -> asked.test(s.part()))
        .allMatch(
            s ->
                there.get(s.index())
                    && !s.shape().isEmpty()
                    && hiding.before(s.index(), there).isEmpty());
  }

  /**
   * Whether so much of a part is seen for certain, looked at from far away: quicker to tell than
   * what is seen of it. False where it is in doubt, and where more than one part is asked about.
   *
   * @param which the parts that are there
   * @param asked the part that is asked about
   * @param share of the part's area, more than 0
   */
  public boolean shows(Predicate<Placed> which, Predicate<Placed> asked, double share) {
    BitSet there = there(which);
    List<Surface> all = surfaces.stream().filter(s -> asked.test(s.part())).toList();
    if (!camera.parallel() || all.size() != 1 || !there.get(all.get(0).index())) {
      return false;
    }
    Surface s = all.get(0);
    return s.shape() instanceof Polygon p
        && !p.isEmpty()
        && Glimpse.sure(
            p, hiding.hiders(s.index(), hiding.before(s.index(), there)), share * p.getArea());
  }

  private BitSet there(Predicate<Placed> which) {
    BitSet there = new BitSet();
    surfaces.stream().filter(s -> which.test(s.part())).forEach(s -> there.set(s.index()));
    return there;
  }

  /** The lines of the last view. */
  private record Drawn(BitSet there, Set<String> fresh, List<VisibleLine> lines) {}

  /** Lines do not depend on glue, so a piece that is glued twice is lined once. */
  private List<VisibleLine> lines(BitSet there, List<List<Polygon>> visible, Marks marks) {
    if (!drawn.there.equals(there) || !drawn.fresh.equals(marks.fresh())) {
      Lines.Shown shown =
          new Lines.Shown(listed(there), visible, hiding.creases(there), silhouette(there));
      drawn = new Drawn(there, marks.fresh(), new Lines(surfaces, shown, marks).all(rims));
    }
    return drawn.lines;
  }

  /** What is marked, findable by panel. */
  private static final class Marked {
    private final Set<String> fresh;
    private final Map<String, List<Patch>> glued = new HashMap<>();

    Marked(Marks marks) {
      this.fresh = marks.fresh();
      for (Patch p : marks.glued()) {
        glued.computeIfAbsent(p.piece() + "/" + p.panel(), k -> new ArrayList<>()).add(p);
      }
    }
  }

  private List<Surface> listed(BitSet which) {
    return which.stream().mapToObj(surfaces::get).toList();
  }

  /** The silhouette of the parts that are there, grown from the last one where it can be. */
  private Silhouette silhouette(BitSet there) {
    BitSet gone = (BitSet) covered.clone();
    gone.andNot(there);
    Silhouette before = gone.isEmpty() ? silhouette : Silhouette.NONE;
    BitSet fresh = (BitSet) there.clone();
    if (gone.isEmpty()) {
      fresh.andNot(covered);
    }
    covered = there;
    silhouette = before.with(listed(fresh));
    return silhouette;
  }

  /** What a surface showed the last time, and what that was about. */
  private record Answer(
      List<Polygon> visible, boolean fresh, List<Patch> glued, List<Shown> shown) {
    boolean isOf(List<Polygon> polygons, boolean marked, List<Patch> patches) {
      return visible == polygons && fresh == marked && glued == patches;
    }
  }

  /** What is seen of a surface; from memory where neither that nor its marks have changed. */
  private List<Shown> show(Surface s, List<Polygon> visible, Marked marked) {
    boolean fresh = marked.fresh.contains(s.part().piece().id());
    List<Patch> glued = marked.glued.getOrDefault(s.part().id(), List.of());
    Answer last = answers[s.index()];
    if (last == null || !last.isOf(visible, fresh, glued)) {
      List<Shown> shown = visible.stream().map(p -> show(s, p, marked)).toList();
      last = new Answer(visible, fresh, glued, shown);
      answers[s.index()] = last;
    }
    return last.shown;
  }

  private Shown show(Surface s, Polygon p, Marked marked) {
    boolean window = !s.opaque();
    Face face = s.face();
    List<VisiblePolygon> out = new ArrayList<>();
    var kind = window ? VisiblePolygon.Kind.WINDOW : VisiblePolygon.Kind.PAPER;
    VisiblePolygon paper = polygon(s, p, kind, s.part().id(), s.colour(face), marked);
    out.add(paper);
    Geometry whole = p;
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(p);
    for (Ink ink : s.part().piece().inks()) {
      if (ink.face() == face || window) {
        for (Region r : ink.regions()) {
          for (Polygon q : within(s, r, prepared, whole)) {
            out.add(polygon(s, q, VisiblePolygon.Kind.INK, ink.name(), ink.colour(), marked));
          }
        }
      }
    }
    relief(
        s,
        face,
        (slope, r) -> {
          for (Polygon q : within(s, r, prepared, whole)) {
            out.add(polygon(s, q, slope, s.part().id(), s.colour(face), marked));
          }
        });
    for (Patch patch : marked.glued.getOrDefault(s.part().id(), List.of())) {
      if (patch.face() == face) {
        for (Polygon q : within(s, patch.area(), prepared, whole)) {
          out.add(polygon(s, q, VisiblePolygon.Kind.GLUE, s.part().id(), s.colour(face), marked));
        }
      }
    }
    return new Shown(window, paper.depth(), s.index(), out);
  }

  /** The slopes of what is pressed into a panel; most cards have none. */
  private void relief(Surface s, Face face, BiConsumer<VisiblePolygon.Kind, Region> each) {
    if (s.part().piece().embossing().isPresent()) {
      Relief relief = reliefs.computeIfAbsent(s.index(), i -> Relief.of(s.part(), face));
      relief.lit().forEach(r -> each.accept(VisiblePolygon.Kind.LIT, r));
      relief.shaded().forEach(r -> each.accept(VisiblePolygon.Kind.SHADED, r));
    }
  }

  /** What is seen of an area of a piece inside a visible polygon of one of its panels. */
  private static List<Polygon> within(
      Surface s, Region area, PreparedGeometry prepared, Geometry whole) {
    Geometry picture = s.picture(area);
    if (!picture.getEnvelopeInternal().intersects(whole.getEnvelopeInternal())) {
      return List.of();
    }
    return Shapes.polygons(
        prepared.containsProperly(picture) ? picture : Shapes.and(picture, whole));
  }

  private VisiblePolygon polygon(
      Surface s, Polygon p, VisiblePolygon.Kind kind, String part, String colour, Marked marked) {
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
        marked.fresh.contains(s.part().piece().id()));
  }

  private static Box box(List<VisiblePolygon> polygons, List<VisibleLine> lines) {
    List<Vec2> points = new ArrayList<>();
    polygons.forEach(p -> points.addAll(p.region().outer().points()));
    for (VisibleLine l : lines) {
      points.add(l.at().from());
      points.add(l.at().to());
    }
    return points.isEmpty() ? new Box(0, 0, 0, 0) : Box.around(points);
  }
}
