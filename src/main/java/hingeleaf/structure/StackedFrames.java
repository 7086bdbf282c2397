package hingeleaf.structure;

import hingeleaf.design.Attachments;
import hingeleaf.design.Form;
import hingeleaf.design.FormField;
import hingeleaf.design.Range;
import hingeleaf.design.ShapeForm;
import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.geom.Box;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Shapes;
import hingeleaf.measure.Length;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Stacked frames: a back, and frames one behind the other, each standing off the layer behind it on
 * two sides with glue tabs.
 */
final class StackedFrames implements Structure {
  private static final int MOST_FRAMES = 12;
  private static final double LARGEST = 1000;

  /** A tab narrower than this holds badly: common practice, no source. */
  static final double LEAST_TAB_MM = 6;

  /** How much wider each border is than that of the frame in front, when nobody says. */
  private static final double NESTING_MM = 6;

  private static final Form FRAME =
      Form.of(
          "frames",
          "a frame",
          "one frame, from the back forwards",
          FormField.name("what you call it").required(),
          ShapeForm.field("aperture", "its opening; left out: nested in the one in front"),
          FormField.reference("stock", "a paper of the bench", "left out: the card's own"),
          FormField.yesNo("plain", "yes for a frame without an opening").usually("no"),
          OwnSizes.WIDTH,
          OwnSizes.HEIGHT,
          OwnSizes.SIDES,
          OwnSizes.TABS,
          OwnSizes.SET_IN,
          Attachments.emboss());

  private static final Form BACK =
      Form.of(
          "back",
          "the back",
          "the layer that everything stands on",
          ShapeForm.field("aperture", "an opening in the back"),
          FormField.reference("stock", "a paper of the bench", "left out: the card's own"),
          OwnSizes.WIDTH,
          OwnSizes.HEIGHT);

  static final Form FORM =
      Form.of(
          "stacked-frames",
          "stacked frames",
          "frames one behind the other on sides that fold flat",
          FormField.length("width", Range.from(20, LARGEST), "of the card, standing")
              .required()
              .example("150", "6"),
          FormField.length("height", Range.from(20, LARGEST), "of the card, standing")
              .required()
              .example("150", "6"),
          FormField.reference("stock", "a paper of the bench", "what back and frames are cut from")
              .required()
              .example("white-300"),
          FormField.lengths(
                  "side", Range.from(1, 200), "depth of the stages; or a list, from the back")
              .usually("10 mm", "1/2 in")
              .example("10", "1/2"),
          FormField.length("tab", Range.from(1, 100), "width of the glue tabs")
              .usually("10 mm", "1/2 in")
              .example("10", "1/2"),
          FormField.word(
                  "tabs",
                  "which way the glue tabs fold",
                  "in: behind their own frame",
                  "out: beside it; every frame is then two tabs narrower than the layer behind")
              .usually("in"),
          FormField.word(
                  "sides",
                  "where the sides stand",
                  "left-right: at the left and right edges",
                  "top-bottom: at the top and bottom edges")
              .usually("left-right"),
          FormField.reference("glue", "a glue of the bench", "left out: the bench's first"),
          FormField.group("back", BACK, BACK.says()),
          FormField.forms("frames", FRAME, 1, MOST_FRAMES, "from the back forwards")
              .required()
              .example(
                  "- {name: far, aperture: {circle: 90}}\n"
                      + "- {name: middle, aperture: {circle: 106}}\n"
                      + "- {name: near, aperture: {circle: 120}}",
                  "- {name: far, aperture: {circle: 3 1/2}}\n"
                      + "- {name: middle, aperture: {circle: 4 1/8}}\n"
                      + "- {name: near, aperture: {circle: 4 3/4}}"));

  @Override
  public Form form() {
    return FORM;
  }

  @Override
  public List<Values> pressable(Values v) {
    return v.forms("frames");
  }

  @Override
  public void build(Values v, Workshop shop) {
    new Build(v, shop).run();
  }

  /** One run over one design. */
  private static final class Build {
    private final Values v;
    private final Workshop shop;
    private final Assembly card;
    private final Bearings say;

    Build(Values v, Workshop shop) {
      this.v = v;
      this.shop = shop;
      this.card = shop.card();
      this.say = shop.bearings();
    }

    void run() {
      Optional<Stock> stock = shop.stock(v, "stock", "");
      Optional<String> glue = glue();
      Optional<List<Double>> sides = sides();
      if (stock.isEmpty() || glue.isEmpty() || sides.isEmpty()) {
        return;
      }
      StackedLayout.Sizes sizes = sizes(stock.get(), glue.get(), sides.get());
      if (!card.blocked() && checked(sizes)) {
        lay(sizes);
      }
    }

    private Optional<String> glue() {
      if (!v.has("glue")) {
        return say.bench().glues().stream().findFirst().map(g -> g.name());
      }
      String name = v.text("glue");
      if (say.bench().glue(name).isEmpty()) {
        card.report(v.problem("unknown-glue", "", "glue", "the bench has no glue `" + name + "`"));
        return Optional.empty();
      }
      return Optional.of(name);
    }

    /** One depth for each stage. */
    private Optional<List<Double>> sides() {
      int stages = v.forms("frames").size();
      List<Length> given = v.lengths("side");
      if (v.perStage("side") && given.size() != stages) {
        card.report(
            v.problem(
                "sides-do-not-match",
                "",
                "side",
                "side lists "
                    + given.size()
                    + " depths for "
                    + stages
                    + " frames - give one for each, from the back, or a single one for all"));
        return Optional.empty();
      }
      List<Double> sides = new ArrayList<>();
      for (int i = 0; i < stages; i++) {
        sides.add(shop.mm("side", given.get(v.perStage("side") ? i : 0)));
      }
      return Optional.of(sides);
    }

    private StackedLayout.Sizes sizes(Stock stock, String glue, List<Double> sides) {
      double width = shop.mm(v, "width");
      double height = shop.mm(v, "height");
      double tab = shop.mm(v, "tab");
      Axes axes = v.text("sides").equals("left-right") ? Axes.LEFT_RIGHT : Axes.TOP_BOTTOM;
      boolean in = v.text("tabs").equals("in");
      List<Values> frames = v.forms("frames");
      List<StackedLayout.Layer> layers = new ArrayList<>();
      for (int i = 0; i < frames.size(); i++) {
        Values f = frames.get(i);
        String name = f.text("name");
        List<Ring> openings = List.of();
        if (f.has("aperture")) {
          openings = shop.shape(f, "aperture", name).map(Workshop::opening).orElse(List.of());
        } else if (!f.yes("plain")) {
          openings =
              nested(width, height, in ? 0 : 2 * tab * (i + 1), tab, axes, frames.size() - i);
        }
        Stock own = f.has("stock") ? shop.stock(f, "stock", name).orElse(stock) : stock;
        layers.add(
            new StackedLayout.Layer(
                name, sides.get(i), openings, own, grain(axes), f.path(), OwnSizes.of(f, shop)));
      }
      return new StackedLayout.Sizes(width, height, axes, tab, in, back(stock), layers, glue);
    }

    /** Folds that are worked often run along the grain: it lies along the sides. */
    private static Grain grain(Axes axes) {
      return axes == Axes.LEFT_RIGHT ? Grain.HEIGHT : Grain.WIDTH;
    }

    /** A rectangle whose border grows from the front backwards, on the trimmer's marks. */
    private List<Ring> nested(
        double width, double height, double narrower, double tab, Axes axes, int fromFront) {
      double border = say.nearest(tab + NESTING_MM * (fromFront - 1));
      double w = width - (axes == Axes.LEFT_RIGHT ? narrower : 0) - 2 * border;
      double h = height - (axes == Axes.TOP_BOTTOM ? narrower : 0) - 2 * border;
      return w > 0 && h > 0 ? List.of(Shapes.rectangle(w, h)) : List.of();
    }

    private StackedLayout.Layer back(Stock stock) {
      List<Ring> openings = List.of();
      Stock own = stock;
      String origin = v.path();
      OwnSizes sizes = OwnSizes.NONE;
      if (v.has("back")) {
        Values b = v.form("back");
        origin = v.path("back");
        sizes = OwnSizes.ofBack(b, shop);
        own = b.has("stock") ? shop.stock(b, "stock", "back").orElse(stock) : stock;
        if (b.has("aperture")) {
          openings = shop.shape(b, "aperture", "back").map(Workshop::opening).orElse(List.of());
        }
      }
      return new StackedLayout.Layer("back", 0, openings, own, Grain.ANY, origin, sizes);
    }

    private boolean checked(StackedLayout.Sizes s) {
      if (s.tab() < LEAST_TAB_MM - 1e-9) {
        card.report(
            Problem.warns(
                    "narrow-tab",
                    "",
                    v.path("tab"),
                    "the glue tabs are "
                        + say.say(s.tab())
                        + " wide - under "
                        + say.say(LEAST_TAB_MM)
                        + " they hold badly")
                .at(v.place("tab"))
                .wanting(Want.atLeast(v.path("tab"), LEAST_TAB_MM)));
      }
      boolean good = true;
      for (int i = 0; i <= s.frames().size(); i++) {
        good &= panelLeft(s, i);
      }
      for (int i = 0; good && i <= s.frames().size(); i++) {
        good &= openingFits(s, i);
      }
      for (int i = 0; good && i < s.frames().size(); i++) {
        good &= tabLands(s, i);
      }
      return good;
    }

    private StackedLayout.Layer layer(StackedLayout.Sizes s, int i) {
      return StackedLayout.layer(s, i);
    }

    private Values where(int i) {
      return i == 0 ? (v.has("back") ? v.form("back") : v) : v.forms("frames").get(i - 1);
    }

    private Problem blocks(String kind, int layer, String key, String name, String message) {
      Values w = where(layer);
      boolean has = w.formOf().fields().stream().anyMatch(f -> f.key().equals(key));
      return has
          ? w.problem(kind, name, key, message)
          : Problem.blocks(kind, name, w.path(), message).at(w.place());
    }

    /** Tabs folded out make every frame narrower; some panel must be left. */
    private boolean panelLeft(StackedLayout.Sizes s, int i) {
      double across = StackedLayout.across(s, i);
      double least = 2 * s.tab();
      if (across >= least) {
        return true;
      }
      String name = layer(s, i).name();
      card.report(
          blocks(
              "no-panel-left",
              i,
              "name",
              name,
              name
                  + ": with tabs of "
                  + say.say(s.tab())
                  + (s.tabsIn() ? "" : " folded out")
                  + " its panel would be "
                  + say.say(Math.max(0, across))
                  + " wide, less than two tabs - make the card wider or the tabs narrower"));
      return false;
    }

    private Box panel(StackedLayout.Sizes s, int i) {
      double across = StackedLayout.across(s, i);
      double along = StackedLayout.along(s, i);
      return s.axes().box(-across / 2, -along / 2, across / 2, along / 2);
    }

    private boolean openingFits(StackedLayout.Sizes s, int i) {
      StackedLayout.Layer layer = layer(s, i);
      Box panel = panel(s, i);
      for (Ring r : layer.openings()) {
        Box o = r.box();
        double border =
            Math.min(
                Math.min(o.minX() - panel.minX(), panel.maxX() - o.maxX()),
                Math.min(o.minY() - panel.minY(), panel.maxY() - o.maxY()));
        double least = layer.stock().leastBorder();
        if (border < least - 1e-9) {
          card.report(openingTooLarge(i, layer, o, panel, border, least));
          return false;
        }
      }
      return true;
    }

    private Problem openingTooLarge(
        int i, StackedLayout.Layer layer, Box o, Box panel, double border, double least) {
      String opening = say.units().size(o.width(), o.height());
      String whole = say.units().size(panel.width(), panel.height());
      String what =
          border < 0
              ? layer.name() + ": its opening of " + opening + " reaches past its panel of " + whole
              : layer.name()
                  + ": its opening of "
                  + opening
                  + " leaves a border of "
                  + say.say(border)
                  + " on a panel of "
                  + whole
                  + ", but "
                  + layer.stock().title()
                  + " needs "
                  + say.say(least);
      return blocks(
              border < 0 ? "opening-past-panel" : "thin-border",
              i,
              "aperture",
              layer.name(),
              what
                  + " - make the opening "
                  + say.say(2 * (least - border))
                  + " smaller"
                  + (centred(o, panel) ? "" : ", or move it to the middle"))
          .with(Map.of("border", border, "least", least));
    }

    /** Whether an opening stands in the middle already, where moving it gains nothing. */
    private static boolean centred(Box opening, Box panel) {
      return opening.centre().minus(panel.centre()).length() < 1e-6;
    }

    /** A tab must find card under its whole width, along its whole length. */
    private boolean tabLands(StackedLayout.Sizes s, int i) {
      StackedLayout.Layer behind = layer(s, i);
      StackedLayout.Layer frame = layer(s, i + 1);
      double border = acrossBorder(s, i, behind);
      for (int k = 0; k < 2; k++) {
        double tab = frame.own().tab(k, s.tab());
        double in = frame.own().setIn().get(k);
        if (tab + Math.max(0, in) > border + 1e-9) {
          card.report(tabWiderThanBorder(s, i, tab, in, border));
          return false;
        }
        if (in < 0 && tab + in < Math.min(tab, LEAST_TAB_MM) - 1e-9) {
          card.report(tabPastEdge(s, i, tab, -in, k));
          return false;
        }
      }
      return true;
    }

    private Problem tabWiderThanBorder(
        StackedLayout.Sizes s, int i, double tab, double in, double border) {
      StackedLayout.Layer behind = layer(s, i);
      StackedLayout.Layer frame = layer(s, i + 1);
      double reach = tab + Math.max(0, in);
      double most = Math.max(0, border - Math.max(0, in));
      boolean own = frame.own().tabs() != null;
      String path = own ? where(i + 1).path("tab-widths") : v.path("tab");
      return blocks(
              "tab-wider-than-border",
              i,
              "aperture",
              frame.name(),
              frame.name()
                  + ": its glue tabs are "
                  + say.say(tab)
                  + " wide"
                  + (in > 0 ? " and set in by " + say.say(in) : "")
                  + ", but the border of "
                  + behind.name()
                  + " that they land on is "
                  + say.say(border)
                  + " - make the opening of "
                  + behind.name()
                  + " "
                  + say.say(2 * (reach - border))
                  + " smaller, or the tabs "
                  + say.say(most)
                  + " or less")
          .with(Map.of("tab", tab, "border", border))
          .wanting(Want.atMost(path, most));
    }

    private Problem tabPastEdge(StackedLayout.Sizes s, int i, double tab, double out, int which) {
      StackedLayout.Layer frame = layer(s, i + 1);
      return blocks(
              "tab-past-edge",
              i + 1,
              "set-in",
              frame.name(),
              frame.name()
                  + ": its "
                  + (which == 0 ? "first" : "second")
                  + " glue tab reaches "
                  + say.say(out)
                  + " out over the edge, so that only "
                  + say.say(Math.max(0, tab - out))
                  + " of it is glued - at least "
                  + say.say(LEAST_TAB_MM)
                  + " must lie on card")
          .with(Map.of("tab", tab, "out", out))
          .wanting(Want.atLeast(where(i + 1).path("set-in", which), LEAST_TAB_MM - tab));
    }

    /** The narrowest border of a layer at the edges on which the next one's tabs land. */
    private double acrossBorder(StackedLayout.Sizes s, int i, StackedLayout.Layer layer) {
      Box panel = panel(s, i);
      double border = s.axes().across(panel) / 2;
      for (Ring r : layer.openings()) {
        Box o = r.box();
        border =
            Math.min(
                border,
                Math.min(
                    s.axes().minU(o) - s.axes().minU(panel),
                    s.axes().maxU(panel) - s.axes().maxU(o)));
      }
      return border;
    }

    private void lay(StackedLayout.Sizes sizes) {
      StackedLayout.Laid laid = StackedLayout.of(sizes);
      laid.roots().forEach(card::root);
      laid.pieces().forEach(card::add);
      laid.joins().forEach(card::add);
      laid.surfaces().forEach(card::add);
      card.stack(Stack.of(sizes, sidePaths(sizes.frames().size())));
    }

    private List<String> sidePaths(int stages) {
      List<String> paths = new ArrayList<>();
      for (int i = 0; i < stages; i++) {
        paths.add(v.perStage("side") ? v.path("side", i) : v.path("side"));
      }
      return paths;
    }
  }
}
