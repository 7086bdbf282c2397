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
import hingeleaf.finding.Want;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * What the stays of a stack share: places along an edge of its layers, slits in their borders, a
 * tab glued on a layer, and what a stay catches.
 *
 * <p>A stay's own piece lies with its glue tab at the top and runs down from it; x goes along the
 * edge of the stack. The edge is one of the two that have no sides.
 */
final class StayParts {
  /** A slit is longer than its tongue by this, so that it slips in: common practice, no source. */
  static final double PLAY_MM = 1;

  /** The least depth of a tongue that holds: common practice, no source. */
  static final double LEAST_TONGUE_MM = 4;

  final Workshop shop;
  final Values v;
  final Stack stack;
  final String name;
  final Stock stock;
  private final String edge;
  private final double at;

  private StayParts(Workshop shop, Values v, Stack stack, Stock stock, String edge) {
    this.shop = shop;
    this.v = v;
    this.stack = stack;
    this.stock = stock;
    this.edge = edge;
    this.name = v.text("name");
    this.at = takes(v, "at") ? shop.mm(v, "at") : 0;
  }

  /**
   * The table of a stay: its name first, what is its own, its paper last.
   *
   * @param word the word for it in files: "base-tab"
   * @param title how a sentence calls one: "a base tab"
   */
  static Form form(String word, String title, String says, FormField... own) {
    List<FormField> all = new ArrayList<>();
    all.add(FormField.name("what you call it").required().example("stay"));
    all.addAll(List.of(own));
    all.add(
        FormField.reference("stock", "a paper of the bench", "what it is cut from")
            .required()
            .example("white-300"));
    return new Form(word, title, says, all);
  }

  static FormField tab() {
    return FormField.length("tab", Range.from(6, 50), "width of the strip that is glued");
  }

  /**
   * @param usual which edges it takes when nobody says
   */
  static FormField edge(String usual) {
    return FormField.word(
        "edge",
        "at which edge of the card it runs, one without sides; left out: " + usual,
        "bottom: below the card",
        "top: above it",
        "left: at its left",
        "right: at its right");
  }

  static FormField at() {
    return FormField.length(
            "at",
            Range.from(-500, 500),
            "how far right of, or above, the middle of that edge its own middle sits")
        .usually("0 mm");
  }

  /**
   * Makes ready; reports an unknown paper, or an edge at which the sides stand.
   *
   * @param upright the edge where the sides stand left and right and nobody says, else the other
   */
  static Optional<StayParts> of(Values v, Workshop shop, String upright, String other) {
    Stack stack = shop.card().stack();
    Optional<Stock> stock = shop.stock(v, "stock", v.text("name"));
    if (stack == null || stock.isEmpty()) {
      return Optional.empty();
    }
    boolean sideways = stack.axes() == Axes.LEFT_RIGHT;
    String edge = takes(v, "edge") && v.has("edge") ? v.text("edge") : sideways ? upright : other;
    boolean free = sideways == (edge.equals("bottom") || edge.equals("top"));
    if (!free) {
      shop.card()
          .report(
              v.problem(
                  "stay-at-sides",
                  v.text("name"),
                  "edge",
                  v.text("name")
                      + ": the sides of this card stand at its "
                      + edge
                      + " edge - a stay goes at "
                      + (sideways ? "bottom or top" : "left or right")));
      return Optional.empty();
    }
    return Optional.of(new StayParts(shop, v, stack, stock.get(), edge));
  }

  /** Whether this sort of stay has such a key. */
  private static boolean takes(Values v, String key) {
    return v.formOf().fields().stream().anyMatch(f -> f.key().equals(key));
  }

  Surface layer(int i) {
    return shop.card().surface(stack.layers().get(i)).orElseThrow();
  }

  Surface front() {
    return layer(stack.frames());
  }

  /** From the edge into the layers. */
  Vec2 inward() {
    return switch (edge) {
      case "bottom" -> new Vec2(0, 1);
      case "top" -> new Vec2(0, -1);
      case "left" -> new Vec2(1, 0);
      default -> new Vec2(-1, 0);
    };
  }

  String edge() {
    return edge;
  }

  /**
   * A point of a layer, in its piece's coordinates.
   *
   * @param along from the stay's own middle, rightwards or upwards
   * @param in from the edge inwards
   */
  Vec2 point(Surface layer, double along, double in) {
    Box b = layer.box();
    Vec2 c = b.centre();
    double s = at + along;
    return switch (edge) {
      case "bottom" -> new Vec2(c.x() + s, b.minY() + in);
      case "top" -> new Vec2(c.x() + s, b.maxY() - in);
      case "left" -> new Vec2(b.minX() + in, c.y() + s);
      default -> new Vec2(b.maxX() - in, c.y() + s);
    };
  }

  /** A rectangle of a layer at the edge. */
  Region area(Surface layer, double half, double from, double to) {
    Box b = Box.around(List.of(point(layer, -half, from), point(layer, half, to)));
    return Region.of(Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()));
  }

  /**
   * What a stay needs of a layer at its edge.
   *
   * @param what needs it: "the slit for its tongue"
   * @param half of its length along the edge, mm
   * @param key of the stay's size that says how far in it goes
   * @param size that key's value, mm
   * @param deep how much card it needs at such a size, mm
   */
  record Need(
      Surface layer, String what, double half, String key, double size, DoubleUnaryOperator deep) {
    /** Something that needs as much card as it is deep. */
    static Need of(Surface layer, String what, double half, String key, double size) {
      return new Need(layer, what, half, key, size, x -> x);
    }

    /** A slit half as far in as its tongue is long, with the layer's least border beyond it. */
    static Need slit(Surface layer, String what, double half, String key, double tongue) {
      double border = layer.stock().leastBorder();
      return new Need(layer, what, half, key, tongue, x -> Math.max(x, x / 2 + border));
    }

    private Need atMost(String sized, double most) {
      return key.equals(sized)
          ? new Need(layer, what, half, key, Math.min(size, most), deep)
          : this;
    }
  }

  /** Whether the layers have the card; reports the first that has not, and what would do. */
  boolean room(List<Need> needs) {
    Optional<Need> first = needs.stream().filter(n -> !fits(n, 0)).findFirst();
    first.ifPresent(n -> shop.card().report(pastBorder(n, needs)));
    return first.isEmpty();
  }

  private Problem pastBorder(Need need, List<Need> needs) {
    List<String> advice = new ArrayList<>();
    List<Want> wants = new ArrayList<>();
    smaller(need, needs, advice, wants);
    moved(needs, advice, wants);
    advice.add("make that opening smaller");
    double deep = need.deep().applyAsDouble(need.size());
    String message =
        name
            + ": "
            + need.what()
            + " needs "
            + shop.bearings().say(deep)
            + " of card, "
            + shop.bearings().say(2 * need.half())
            + " long, at the "
            + edge
            + " edge of "
            + need.layer().name()
            + ", and would come into an opening or past the edge - "
            + String.join(", or ", advice);
    return v.problem("stay-past-border", name, need.key(), message)
        .wanting(wants.toArray(Want[]::new));
  }

  private boolean fits(Need n, double along) {
    Region there = area(n.layer(), n.half(), 0, n.deep().applyAsDouble(n.size()));
    Vec2 by = new Vec2(Math.abs(inward().y()) * along, Math.abs(inward().x()) * along);
    Region rounded = there.moved(by).map(StayParts::rounded);
    return Overlay.within(List.of(rounded), List.of(n.layer().material()));
  }

  /** The largest size with which everything fits. */
  private void smaller(Need need, List<Need> needs, List<String> advice, List<Want> wants) {
    double most = Math.ceil(need.size() / STEP_MM - 1) * STEP_MM;
    for (; most >= least(need.key()); most -= STEP_MM) {
      double tried = most;
      if (needs.stream().allMatch(n -> fits(n.atMost(need.key(), tried), 0))) {
        advice.add("make its " + need.key() + " " + shop.bearings().say(most) + " or less");
        wants.add(Want.atMost(v.path(need.key()), most));
        return;
      }
    }
  }

  /** No smaller size holds, and none is offered that the design would not take, mm. */
  private static double least(String key) {
    return key.equals("height") ? SlotLock.LEAST_HEIGHT_MM : LEAST_TONGUE_MM;
  }

  /** The nearest place along the edge at which everything fits. */
  private void moved(List<Need> needs, List<String> advice, List<Want> wants) {
    boolean level = inward().x() == 0;
    for (double by = STEP_MM; takes(v, "at") && by <= FARTHEST_MM; by += STEP_MM) {
      for (double to : new double[] {by, -by}) {
        if (needs.stream().allMatch(n -> fits(n, to))) {
          String way = level ? (to > 0 ? "to the right" : "to the left") : to > 0 ? "up" : "down";
          advice.add("move it " + shop.bearings().say(by) + " " + way);
          String path = v.path("at");
          wants.add(to > 0 ? Want.atLeast(path, at + to) : Want.atMost(path, at + to));
          return;
        }
      }
    }
  }

  /** Advice is on this step, mm. */
  private static final double STEP_MM = 0.5;

  /** A stay is not moved farther, mm. */
  private static final double FARTHEST_MM = 60;

  private static Vec2 rounded(Vec2 p) {
    return new Vec2(Math.rint(p.x() * 1e7) / 1e7, Math.rint(p.y() * 1e7) / 1e7);
  }

  /** Cuts a slit into a layer. */
  void slit(Surface layer, Segment slit) {
    Piece host = shop.card().piece(layer.piece()).orElseThrow();
    shop.card().replace(host.slit(List.of(slit)));
  }

  /** Whether its name is free; adds the piece then. */
  boolean piece(
      Region shape, List<Segment> slits, List<Score> scores, List<Label> labels, Grain grain) {
    return shop.card()
        .add(
            new Piece(name, name, stock, grain, shape, slits, scores, labels, List.of(), v.path()));
  }

  /**
   * Glues the tab of the piece on a face of a layer, its fold along the edge.
   *
   * @param own the face of the tab that takes the glue
   * @param tab in the piece's coordinates; its lower edge is the fold
   * @param foldIn how far in from the edge the fold lies
   */
  void glueTab(Face own, Box tab, Surface layer, Face face, double foldIn) {
    Vec2 fold = new Vec2((tab.minX() + tab.maxX()) / 2, tab.minY());
    Vec2 along = own == face ? inward().left() : inward().left().times(-1);
    String glue =
        shop.bearings().bench().glues().stream().findFirst().map(g -> g.name()).orElse("");
    Region area = area(layer, tab.width() / 2, foldIn, foldIn + tab.height());
    Region taken = Region.of(Ring.rectangle(tab.minX(), tab.minY(), tab.maxX(), tab.maxY()));
    Patch a = new Patch(name, "tab", own, taken, fold, new Vec2(1, 0));
    Patch b = new Patch(layer.piece(), layer.panel(), face, area, point(layer, 0, foldIn), along);
    shop.card().add(new Join.Glue(name + "/tab", a, b, 0, glue, v.path()));
  }

  /**
   * Something that the stay catches while it is set.
   *
   * @return id of the passage
   */
  String catches(String panel, Box own, String piece, String other, Region area) {
    String id = name + "/" + panel + " in " + piece + "/" + other;
    Region tongue = Region.of(Ring.rectangle(own.minX(), own.minY(), own.maxX(), own.maxY()));
    Patch a = new Patch(name, panel, Face.BACK, tongue, own.centre(), new Vec2(1, 0));
    Vec2 along = inward().left().times(-1);
    Patch b = new Patch(piece, other, Face.FRONT, area, area.box().centre(), along);
    shop.card().add(new Join.Passage(id, a, b, v.path()));
    return id;
  }

  void stay(String word, List<String> catches, Map<String, Double> away, double play) {
    shop.card().add(new hingeleaf.card.Stay(name, word, catches, away, null, play));
  }
}
