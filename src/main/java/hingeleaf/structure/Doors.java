package hingeleaf.structure;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Label;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.design.Form;
import hingeleaf.design.FormField;
import hingeleaf.design.Range;
import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Shapes;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Length;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Doors: a leaf of its own glued along one edge to the front of a panel, or cut into the panel by a
 * slit and a score. They open towards the viewer and lie flat closed.
 */
final class Doors {
  private static final double LARGEST = 1000;

  /** The strip by which a leaf of its own is glued: a narrower one holds badly, no source. */
  private static final double TAB_MM = 8;

  private static final Vec2 ALONG = new Vec2(1, 0);

  static final Form FORM =
      Form.of(
          "door",
          "a door",
          "a leaf that opens towards the viewer",
          FormField.name("what you call it").required().example("shutter"),
          FormField.reference("on", "a panel or of a part glued before", "what it is hung on")
              .required()
              .example("back"),
          FormField.word(
                  "hinge",
                  "at which edge it is hung",
                  "left: opens to the left",
                  "right: opens to the right",
                  "top: opens upwards",
                  "bottom: opens downwards")
              .usually("left"),
          FormField.length("width", Range.positive(LARGEST), "of the leaf")
              .required()
              .example("30", "1 1/4"),
          FormField.length("height", Range.positive(LARGEST), "of the leaf")
              .required()
              .example("50", "2"),
          FormField.point("at", LARGEST, "how far right of and above the panel's middle it sits")
              .usually("[0, 0]"),
          FormField.word(
                  "shape", "its outline", "square: a rectangle", "arched: with a half-round top")
              .usually("square"),
          FormField.reference(
              "stock", "a paper of the bench", "a leaf of its own; left out: cut into the panel"),
          FormField.length(
              "handle", Range.from(2, 50), "width of a half-round tongue at its free edge"));

  /** The mechanism for the list of all. */
  static final class Door implements Structure {
    @Override
    public Form form() {
      return FORM;
    }

    @Override
    public void build(Values values, Workshop shop) {
      new Doors(values, shop).hang();
    }
  }

  private final Workshop shop;
  private final Values v;
  private final String name;
  private final String hinge;

  private Doors(Values v, Workshop shop) {
    this.v = v;
    this.shop = shop;
    this.name = v.text("name");
    this.hinge = v.text("hinge");
  }

  /** Hangs one door; reports what keeps it from being hung. */
  private void hang() {
    Optional<Surface> on = shop.surface(v, "on", name);
    if (on.isEmpty()) {
      return;
    }
    double w = shop.mm(v, "width");
    double h = shop.mm(v, "height");
    boolean arched = v.text("shape").equals("arched");
    if (arched && hinge.equals("top") || arched && upright() && h <= w / 2 + 1) {
      shop.card()
          .report(
              v.problem(
                  "no-straight-edge",
                  name,
                  "hinge",
                  name
                      + ": an arched leaf has no straight edge there to fold along - hang it at"
                      + " another edge, make it higher, or make it square"));
      return;
    }
    Ring leaf = arched ? Shapes.arch(w, h) : Shapes.rectangle(w, h);
    List<Length> at = v.lengths("at");
    Vec2 offset = new Vec2(shop.mm("at", at.get(0)), shop.mm("at", at.get(1)));
    Ring placed = leaf.moved(on.get().point(offset));
    if (!v.has("stock")) {
      cutIn(on.get(), placed);
      return;
    }
    shop.stock(v, "stock", name).ifPresent(s -> own(on.get(), placed, s));
  }

  private boolean upright() {
    return hinge.equals("left") || hinge.equals("right");
  }

  /** The straight edge at which the leaf is hung: the longest piece of its outline on that line. */
  private Segment fold(Ring leaf) {
    Box b = leaf.box();
    double line =
        switch (hinge) {
          case "left" -> b.minX();
          case "right" -> b.maxX();
          case "top" -> b.maxY();
          default -> b.minY();
        };
    List<Vec2> on =
        leaf.points().stream()
            .filter(p -> Math.abs((upright() ? p.x() : p.y()) - line) < 1e-9)
            .toList();
    double low = on.stream().mapToDouble(p -> upright() ? p.y() : p.x()).min().orElseThrow();
    double high = on.stream().mapToDouble(p -> upright() ? p.y() : p.x()).max().orElseThrow();
    return upright() ? Segment.of(line, low, line, high) : Segment.of(low, line, high, line);
  }

  /** A leaf and a strip beside it in one piece, the strip glued to the panel's front. */
  private void own(Surface on, Ring placed, Stock stock) {
    Segment fold = fold(placed);
    Box strip = strip(fold);
    Region tab = Region.of(rectangle(strip));
    if (!Overlay.within(List.of(tab), List.of(on.material()))) {
      shop.card()
          .report(
              v.problem(
                  "nothing-to-glue-to",
                  name,
                  "at",
                  name
                      + ": beside its hinge "
                      + on.name()
                      + " has not the "
                      + shop.bearings().say(TAB_MM)
                      + " of card that its strip is glued to - move it, or hang it at another"
                      + " edge"));
      return;
    }
    List<Region> parts = new ArrayList<>(List.of(tab, Region.of(placed)));
    if (v.has("handle")) {
      parts.add(Region.of(Shapes.circle(shop.mm(v, "handle")).moved(handle(placed.box()))));
    }
    Region whole = Overlay.union(parts).get(0);
    Vec2 corner = new Vec2(-whole.box().minX(), -whole.box().minY());
    Segment score = new Segment(fold.from().plus(corner), fold.to().plus(corner));
    Vec2 middle = strip.centre();
    Box leaf = placed.moved(corner).box();
    Piece piece =
        new Piece(
            name,
            name,
            stock,
            Grain.ANY,
            whole.moved(corner),
            List.of(),
            List.of(new Score("hinge", score, 0)),
            List.of(new Label("tab", middle.plus(corner)), new Label("leaf", leaf.centre())),
            List.of(),
            v.path());
    if (!shop.card().add(piece)) {
      return;
    }
    String glue =
        shop.bearings().bench().glues().stream().findFirst().map(g -> g.name()).orElse("");
    Patch a = new Patch(name, "tab", Face.BACK, tab.moved(corner), middle.plus(corner), ALONG);
    Patch b = new Patch(on.piece(), on.panel(), Face.FRONT, tab, middle, ALONG);
    shop.card().add(new Join.Glue(name + "/tab", a, b, 0, glue, v.path()));
    shop.card().add(new Surface(name, name, "leaf", leaf, List.of(), List.of(), stock, on.order()));
  }

  private static Ring rectangle(Box b) {
    return Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY());
  }

  private Box strip(Segment fold) {
    Vec2 p = fold.from();
    Vec2 q = fold.to();
    return switch (hinge) {
      case "left" -> new Box(p.x() - TAB_MM, p.y(), p.x(), q.y());
      case "right" -> new Box(p.x(), p.y(), p.x() + TAB_MM, q.y());
      case "top" -> new Box(p.x(), p.y(), q.x(), p.y() + TAB_MM);
      default -> new Box(p.x(), p.y() - TAB_MM, q.x(), p.y());
    };
  }

  /** The middle of the free edge. */
  private Vec2 handle(Box b) {
    Vec2 c = b.centre();
    return switch (hinge) {
      case "left" -> new Vec2(b.maxX(), c.y());
      case "right" -> new Vec2(b.minX(), c.y());
      case "top" -> new Vec2(c.x(), b.minY());
      default -> new Vec2(c.x(), b.maxY());
    };
  }

  /** A slit round three sides and a score along the fourth, in the panel itself. */
  private void cutIn(Surface on, Ring placed) {
    Region leaf = Region.of(placed);
    double border = on.stock().leastBorder();
    Box b = placed.box().grown(border);
    if (!Overlay.within(List.of(Region.of(rectangle(b))), List.of(on.material()))) {
      shop.card()
          .report(
              v.problem(
                  "door-past-panel",
                  name,
                  "at",
                  name
                      + ": cut into "
                      + on.name()
                      + " it would reach within "
                      + shop.bearings().say(border)
                      + " of an edge or opening - move it or make it smaller"));
      return;
    }
    Optional<Surface> other =
        shop.card().surfacesOf(on.piece()).stream()
            .filter(s -> !s.panel().equals(on.panel()) && overlap(s.box(), placed.box()))
            .findFirst();
    if (other.isPresent()) {
      shop.card()
          .report(
              v.problem(
                  "doors-overlap",
                  name,
                  "at",
                  name
                      + ": it would be cut through "
                      + other.get().name()
                      + " - move it, make one of the two smaller, or give it a stock of its own"));
      return;
    }
    Piece host = shop.card().piece(on.piece()).orElseThrow();
    Segment fold = fold(placed);
    List<Segment> slits = new ArrayList<>();
    List<Vec2> p = placed.points();
    for (int i = 0; i < p.size(); i++) {
      Segment s = new Segment(p.get(i), p.get((i + 1) % p.size()));
      if (Math.abs(fold.side(s.from())) > 1e-9 || Math.abs(fold.side(s.to())) > 1e-9) {
        slits.add(s);
      }
    }
    List<Label> labels = new ArrayList<>();
    for (Label l : host.labels()) {
      labels.add(leaf.contains(l.at()) ? new Label(l.name(), beside(on, placed)) : l);
    }
    labels.add(new Label(name, placed.box().centre()));
    shop.card().replace(host.slit(slits).folded(new Score(name, fold, 0), labels));
    shop.card()
        .add(
            new Surface(
                name,
                on.piece(),
                name,
                placed.box(),
                List.of(),
                List.of(),
                on.stock(),
                on.order()));
    if (v.has("handle")) {
      shop.card()
          .report(
              Problem.notes(
                  "no-handle",
                  name,
                  v.path("handle"),
                  name + ": a door cut into its panel has no tongue; lift it with a fingernail"));
    }
  }

  private static boolean overlap(Box a, Box b) {
    double eps = Tolerance.LENGTH_MM;
    return Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX()) > eps
        && Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY()) > eps;
  }

  private static Vec2 beside(Surface on, Ring leaf) {
    List<Region> rest = Overlay.difference(List.of(on.material()), List.of(Region.of(leaf)));
    return rest.get(0).inside();
  }
}
