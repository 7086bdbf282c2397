package hingeleaf.pack;

import hingeleaf.card.Ink;
import hingeleaf.card.Panel;
import hingeleaf.card.Piece;
import hingeleaf.design.Values;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.sight.Look;
import hingeleaf.sight.Placed;
import hingeleaf.sight.Scene;
import hingeleaf.sight.Showing;
import hingeleaf.sight.Sight;
import hingeleaf.sight.VisiblePolygon;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * What an eye in front of a card sees of the parts for which the maker said how much should show,
 * and of glue tabs that nobody should see.
 *
 * <p>What a part itself carries does not cover it: a sail on a boat belongs to the boat. Nor does a
 * door cover what is behind it: it is there to be opened.
 */
public final class EyeSight {
  /** A strip narrower than this is not noticed, mm: common practice, no source. */
  private static final double SHOWS_MM = 0.2;

  /** Less than this share of a part is not missed: common practice, no source. */
  private static final double MISSED = 0.005;

  private final Pack pack;
  private final Scene scene;
  private final Eye eye;

  /** Paths in the design of doors and of all that stands on them. */
  private final Set<String> doors;

  /** What there is of the card with its doors taken off. */
  private final Predicate<Placed> open;

  private final Sight sight;

  private EyeSight(Pack pack, Eye eye) {
    this.pack = pack;
    this.scene = pack.scene();
    this.eye = eye;
    Set<String> names = new HashSet<>();
    Set<String> paths = new HashSet<>();
    for (Values.Choice m : pack.inputs().design().mechanisms()) {
      if (m.variant().equals("door")) {
        names.add(m.form().text("name"));
        paths.add(m.form().path());
      }
    }
    Set<String> cutIn = Set.copyOf(names);
    paths.addAll(standing(names));
    this.doors = paths;
    this.open = p -> !paths.contains(p.piece().origin()) && !cutIn.contains(p.panel().name());
    this.sight = Sight.of(scene, eye.look(middle()));
  }

  /**
   * The answer to one eye.
   *
   * @param parts those of which too much is covered, or too much shows, in the design's order
   * @param tabs glue tabs that show in the opening of their own frame, told apart from what lies
   *     behind by their colour
   */
  public record Answer(List<Part> parts, List<Tab> tabs) {
    public Answer {
      parts = List.copyOf(parts);
      tabs = List.copyOf(tabs);
    }

    /** How many complaints there are. */
    public int count() {
      return parts.size() + tabs.size();
    }
  }

  /**
   * A part that does not show as it should.
   *
   * @param name as the maker calls it
   * @param piece id of the piece that it is, or is printed on
   * @param origin its path in the design
   * @param wanted how much should show: {@code all}, {@code some} or {@code hidden}
   * @param share of it that shows, 0 to 1
   * @param covered what does not show of it, by the panel's name, in piece coordinates; of a part
   *     that should be hidden, what shows
   */
  public record Part(
      String name,
      String piece,
      String origin,
      String wanted,
      double share,
      Map<String, List<Region>> covered) {}

  /**
   * A glue tab that shows.
   *
   * @param piece id of its frame
   * @param panel its name
   * @param shows how far it reaches into the opening, mm
   * @param regions what shows of the tab, in piece coordinates
   */
  public record Tab(String piece, String panel, double shows, List<Region> regions) {}

  /** Looks at the made card of a pack that gives one. */
  public static Answer of(Pack pack, Eye eye) {
    EyeSight sight = new EyeSight(pack, eye);
    return new Answer(sight.parts(), sight.tabs());
  }

  /** Only the parts, seen straight on from far away. */
  static List<Part> straightOn(Pack pack) {
    return new EyeSight(pack, new Eye(0, 0, Double.POSITIVE_INFINITY)).parts();
  }

  private List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    for (String list : List.of("mats", "cut-outs", "words")) {
      for (Values v : pack.inputs().design().values().forms(list)) {
        part(v).ifPresent(parts::add);
      }
    }
    return parts;
  }

  /** The middle of the card's front: of all that stands foremost. */
  private Vec3 middle() {
    List<Vec3> all = new ArrayList<>();
    pack.made().mechanism().facets().forEach(f -> all.addAll(f.outline()));
    Box box = Box.around(all.stream().map(p -> new Vec2(p.x(), p.y())).toList());
    double z = all.stream().mapToDouble(Vec3::z).max().orElse(0);
    return new Vec3(box.centre().x(), box.centre().y(), z);
  }

  private Optional<Part> part(Values v) {
    String wanted = v.text("seen");
    if (wanted.equals("any") || v.text("face").equals("back")) {
      return Optional.empty();
    }
    Body body = body(v.path());
    Predicate<Placed> there = wanted.equals("hidden") ? p -> true : bare(v);
    if (!body.ink && !wanted.equals("hidden") && sight.clear(there, body::isOf)) {
      return Optional.empty();
    }
    if (!body.ink && wanted.equals("some") && sight.shows(there, body::isOf, MISSED)) {
      return Optional.empty();
    }
    Map<String, List<Region>> visible = body.visible(sight.areas(there, body::isOf));
    double whole = body.panels.values().stream().mapToDouble(Overlay::area).sum();
    double seen = visible.values().stream().mapToDouble(Overlay::area).sum();
    double share = whole > 0 ? Math.min(1, seen / whole) : 1;
    boolean fault =
        switch (wanted) {
          case "all" -> share < 1 - MISSED;
          case "some" -> share < MISSED;
          default -> share > MISSED;
        };
    if (!fault) {
      return Optional.empty();
    }
    Map<String, List<Region>> marked = wanted.equals("hidden") ? visible : body.rest(visible);
    return Optional.of(new Part(body.name, body.piece, v.path(), wanted, share, marked));
  }

  /** What is there without doors and without what stands on the part. */
  private Predicate<Placed> bare(Values part) {
    Set<String> gone = standing(new HashSet<>(Set.of(name(part))));
    Predicate<Placed> rest = p -> !gone.contains(p.piece().origin());
    return doors.contains(part.path()) ? rest : rest.and(open);
  }

  /** Paths of all that stands on parts of these names, directly or not. */
  private Set<String> standing(Set<String> names) {
    Set<String> paths = new HashSet<>();
    for (String list : List.of("mats", "cut-outs", "words")) {
      for (Values v : pack.inputs().design().values().forms(list)) {
        if (names.contains(v.text("on"))) {
          paths.add(v.path());
          names.add(name(v));
        }
      }
    }
    return paths;
  }

  /** What others stand on it by; nothing stands on words. */
  private static String name(Values v) {
    return v.path().startsWith("words") ? v.path() : v.text("name");
  }

  /** What is asked about: the panels of a piece, or one of its inks. */
  private record Body(String name, String piece, boolean ink, Map<String, List<Region>> panels) {

    boolean isOf(Placed p) {
      return p.piece().id().equals(piece);
    }

    Map<String, List<Region>> visible(List<VisiblePolygon> areas) {
      Map<String, List<Region>> all = new TreeMap<>();
      for (VisiblePolygon p : areas) {
        boolean face =
            p.kind() == VisiblePolygon.Kind.PAPER || p.kind() == VisiblePolygon.Kind.WINDOW;
        boolean mine =
            (ink ? p.kind() == VisiblePolygon.Kind.INK : face) && p.piece().equals(piece);
        if (mine && panels.containsKey(p.panel()) && (!ink || p.part().equals(name))) {
          all.computeIfAbsent(p.panel(), k -> new ArrayList<>()).add(p.onPiece());
        }
      }
      all.replaceAll((panel, regions) -> Overlay.union(regions));
      return all;
    }

    Map<String, List<Region>> rest(Map<String, List<Region>> visible) {
      Map<String, List<Region>> all = new TreeMap<>();
      panels.forEach(
          (panel, regions) ->
              all.put(panel, Overlay.difference(regions, visible.getOrDefault(panel, List.of()))));
      return all;
    }
  }

  private Body body(String origin) {
    Map<String, List<Region>> panels = new TreeMap<>();
    for (Piece p : pack.card().pieces()) {
      if (p.origin().equals(origin)) {
        for (Panel panel : pack.made().panels()) {
          if (panel.piece().equals(p.id())) {
            panels.put(panel.name(), List.of(panel.region()));
          }
        }
        return new Body(p.name(), p.id(), false, panels);
      }
    }
    for (Piece p : pack.card().pieces()) {
      for (Ink ink : p.inks()) {
        if (ink.origin().equals(origin)) {
          for (Panel panel : pack.made().panels()) {
            if (panel.piece().equals(p.id())) {
              List<Region> here =
                  ink.regions().stream().filter(r -> panel.region().box().holds(r.box())).toList();
              panels.put(panel.name(), here);
            }
          }
          return new Body(ink.name(), p.id(), true, panels);
        }
      }
    }
    throw new IllegalStateException("the card has no " + origin);
  }

  private List<Tab> tabs() {
    List<Tab> all = new ArrayList<>();
    for (Showing s : Showing.of(scene, eye.look(middle()))) {
      int cut = s.part().lastIndexOf('/');
      String panel = s.part().substring(cut + 1);
      boolean alike = s.behind().stream().allMatch(s.colour()::equals);
      if (panel.startsWith("tab-") && s.inOpening() > SHOWS_MM && !alike) {
        List<Region> regions =
            sight.areas(p -> true, p -> p.id().equals(s.part())).stream()
                .filter(p -> p.kind() == VisiblePolygon.Kind.PAPER)
                .filter(p -> behind(s.through(), p.region()))
                .map(VisiblePolygon::onPiece)
                .toList();
        all.add(new Tab(s.part().substring(0, cut), panel, s.inOpening(), regions));
      }
    }
    return all;
  }

  /** Whether a part of the view lies, in part at least, in an opening of a panel. */
  private boolean behind(String panel, Region seen) {
    Look look = eye.look(middle());
    for (Placed p : scene.parts()) {
      if (p.id().equals(panel)) {
        for (Ring hole : p.panel().region().holes()) {
          List<Vec2> ring = new ArrayList<>();
          hole.points().forEach(q -> look.picture(p.pose().apply(q)).ifPresent(ring::add));
          Region opening = Region.of(new Ring(ring));
          if (!Overlay.intersection(seen, opening).isEmpty()) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
