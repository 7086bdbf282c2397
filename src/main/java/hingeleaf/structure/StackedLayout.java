package hingeleaf.structure;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Label;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;

/**
 * The pieces of stacked frames from finished sizes: a back, and frames of tab | side | panel | side
 * | tab whose sides fold back and whose tabs are glued to the layer behind.
 *
 * <p>Tabs folded in lie behind their own frame and all four folds are mountains; tabs folded out
 * lie beside it, their folds are valleys, and each frame is narrower than the layer behind by two
 * tabs.
 */
final class StackedLayout {
  private static final double QUARTER = Math.PI / 2;

  /**
   * Finished sizes, mm.
   *
   * @param frames from the back forwards
   */
  record Sizes(
      double width,
      double height,
      Axes axes,
      double tab,
      boolean tabsIn,
      Layer back,
      List<Layer> frames,
      String glue) {}

  /**
   * One layer.
   *
   * @param side depth of the stage behind it; not used for the back
   * @param openings centred frame coordinates: from the panel's centre
   * @param grain which way it should run in the piece
   * @param own sizes that are not the card's
   */
  record Layer(
      String name,
      double side,
      List<Ring> openings,
      Stock stock,
      Grain grain,
      String origin,
      OwnSizes own) {
    /** A layer of the card's own sizes. */
    Layer(String name, double side, List<Ring> openings, Stock stock, Grain grain, String origin) {
      this(name, side, openings, stock, grain, origin, OwnSizes.NONE);
    }
  }

  private final Sizes sizes;
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Join> joins = new ArrayList<>();
  private final List<Surface> surfaces = new ArrayList<>();

  private StackedLayout(Sizes sizes) {
    this.sizes = sizes;
  }

  /** Pieces, joins and the panels that more can be fixed to, back first. */
  record Laid(
      List<Piece> pieces, List<Join> joins, List<Surface> surfaces, List<Card.Root> roots) {}

  static Laid of(Sizes sizes) {
    StackedLayout layout = new StackedLayout(sizes);
    layout.back();
    for (int i = 0; i < sizes.frames().size(); i++) {
      layout.frame(i + 1, sizes.frames().get(i));
    }
    Surface back = layout.surfaces.get(0);
    Vec2 centre = back.box().centre();
    Rigid pose = Rigid.translation(new Vec3(-centre.x(), -centre.y(), 0));
    return new Laid(
        List.copyOf(layout.pieces),
        List.copyOf(layout.joins),
        List.copyOf(layout.surfaces),
        List.of(new Card.Root(back.piece(), back.panel(), pose)));
  }

  /** Width of the panel of a layer across its sides; 0 is the back. */
  static double across(Sizes s, int layer) {
    double full = s.axes() == Axes.LEFT_RIGHT ? s.width() : s.height();
    double usual = s.tabsIn() ? full : full - 2 * s.tab() * layer;
    return layer(s, layer).own().across(s.axes(), usual);
  }

  /** Length of the panel of a layer along its sides; 0 is the back. */
  static double along(Sizes s, int layer) {
    double usual = s.axes() == Axes.LEFT_RIGHT ? s.height() : s.width();
    return layer(s, layer).own().along(s.axes(), usual);
  }

  /** A layer by its place; 0 is the back. */
  static Layer layer(Sizes s, int layer) {
    return layer == 0 ? s.back() : s.frames().get(layer - 1);
  }

  private void back() {
    Layer back = sizes.back();
    Box box = sizes.axes().box(0, 0, across(sizes, 0), along(sizes, 0));
    Region shape = panelShape(box, back);
    Label label = new Label("panel", inside(box, back.openings()));
    pieces.add(Piece.flat("back", "back", back.stock(), back.grain(), shape, label, back.origin()));
    surfaces.add(surface("back", box, back, 0));
  }

  private Surface surface(String piece, Box box, Layer layer, int order) {
    Vec2 centre = box.centre();
    List<Ring> openings = layer.openings().stream().map(r -> r.moved(centre)).toList();
    return new Surface(
        layer.name(), piece, "panel", box, openings, List.of(), layer.stock(), order);
  }

  private static Region panelShape(Box outline, Layer layer) {
    Vec2 centre = outline.centre();
    return new Region(
        Ring.rectangle(outline.minX(), outline.minY(), outline.maxX(), outline.maxY()),
        layer.openings().stream().map(r -> r.moved(centre)).toList());
  }

  /** A point of the panel's material near its lower left corner, clear of every opening. */
  private static Vec2 inside(Box box, List<Ring> openings) {
    double border = Math.min(box.width(), box.height()) / 2;
    for (Ring r : openings) {
      Box o = r.moved(box.centre()).box();
      border = Math.min(border, Math.min(o.minX() - box.minX(), o.minY() - box.minY()));
    }
    double step = Math.max(border, 1e-3) / 2;
    return new Vec2(box.minX() + step, box.minY() + step);
  }

  private void frame(int order, Layer layer) {
    Axes ax = sizes.axes();
    double w = across(sizes, order);
    double v = along(sizes, order);
    double[] u = lines(layer, w);
    Box panel = ax.box(u[2], 0, u[3], v);
    Vec2 centre = panel.centre();
    Region shape =
        new Region(
            ax.ring(ax.box(0, 0, u[5], v)),
            layer.openings().stream().map(r -> r.moved(centre)).toList());
    pieces.add(
        new Piece(
            layer.name(),
            layer.name(),
            layer.stock(),
            layer.grain(),
            shape,
            List.of(),
            scores(u, v),
            labels(u, v, panel, layer),
            List.of(),
            layer.origin()));
    Surface behind = surfaces.get(order - 1);
    glueTabs(layer, behind, u, v);
    surfaces.add(surface(layer.name(), panel, layer, order));
  }

  /** The lines across the piece: its edge, four scores, its other edge. */
  private double[] lines(Layer layer, double panel) {
    OwnSizes own = layer.own();
    double[] widths = {
      own.tab(0, sizes.tab()),
      own.side(0, layer.side()),
      panel,
      own.side(1, layer.side()),
      own.tab(1, sizes.tab())
    };
    double[] u = new double[6];
    for (int i = 0; i < 5; i++) {
      u[i + 1] = u[i] + widths[i];
    }
    return u;
  }

  private List<Score> scores(double[] u, double v) {
    Axes ax = sizes.axes();
    double tabFold = sizes.tabsIn() ? -QUARTER : QUARTER;
    return List.of(
        new Score("tab-" + ax.first(), ax.line(u[1], v), tabFold),
        new Score("side-" + ax.first(), ax.line(u[2], v), -QUARTER),
        new Score("side-" + ax.second(), ax.line(u[3], v), -QUARTER),
        new Score("tab-" + ax.second(), ax.line(u[4], v), tabFold));
  }

  private List<Label> labels(double[] u, double v, Box panel, Layer layer) {
    Axes ax = sizes.axes();
    return List.of(
        new Label("tab-" + ax.first(), ax.at((u[0] + u[1]) / 2, v / 2)),
        new Label("side-" + ax.first(), ax.at((u[1] + u[2]) / 2, v / 2)),
        new Label("panel", inside(panel, layer.openings())),
        new Label("side-" + ax.second(), ax.at((u[3] + u[4]) / 2, v / 2)),
        new Label("tab-" + ax.second(), ax.at((u[4] + u[5]) / 2, v / 2)));
  }

  /**
   * Glues both tabs to the layer behind. A tab folded in meets it with its good face; one folded
   * out with its back.
   */
  private void glueTabs(Layer layer, Surface behind, double[] u, double v) {
    Axes ax = sizes.axes();
    Face face = sizes.tabsIn() ? Face.FRONT : Face.BACK;
    String[] names = {ax.first(), ax.second()};
    double[] tabScore = {u[1], u[4]};
    Box[] tabs = {ax.box(0, 0, u[1], v), ax.box(u[4], 0, u[5], v)};
    double[] landing = landing(layer, behind, u[1], u[5] - u[4]);
    Box[] strips = strips(landing, behind, v, u[1], u[5] - u[4]);
    Surface landed = behind;
    for (int i = 0; i < 2; i++) {
      Patch a =
          new Patch(
              layer.name(),
              "tab-" + names[i],
              face,
              Region.of(ax.ring(tabs[i])),
              ax.at(tabScore[i], 0),
              ax.at(0, 1));
      Patch b =
          new Patch(
              behind.piece(),
              behind.panel(),
              Face.FRONT,
              Region.of(ax.ring(strips[i])),
              ax.at(landing[i], 0),
              ax.at(0, 1));
      String id = layer.name() + "/tab-" + names[i];
      joins.add(new Join.Glue(id, a, b, 0, sizes.glue(), layer.origin()));
      landed = landed.withStrip(taken(strips[i], behind.box(), i == 0));
    }
    surfaces.set(behind.order(), landed);
  }

  /** Where the folds of both tabs stand on the layer behind. */
  private double[] landing(Layer layer, Surface behind, double first, double second) {
    Axes ax = sizes.axes();
    List<Double> in = layer.own().setIn();
    double beside = sizes.tabsIn() ? 0 : 1;
    return new double[] {
      ax.minU(behind.box()) + beside * first + in.get(0),
      ax.maxU(behind.box()) - beside * second - in.get(1)
    };
  }

  /** What the tabs cover of the layer behind; what reaches out over it covers nothing. */
  private Box[] strips(double[] at, Surface behind, double v, double first, double second) {
    Axes ax = sizes.axes();
    Box b = behind.box();
    double inwards = sizes.tabsIn() ? 1 : -1;
    double[][] ends = {{at[0], at[0] + inwards * first}, {at[1], at[1] - inwards * second}};
    double along = Math.min(v, ax.along(b));
    Box[] strips = new Box[2];
    for (int i = 0; i < 2; i++) {
      double from = Math.max(ax.minU(b), Math.min(ends[i][0], ends[i][1]));
      double to = Math.min(ax.maxU(b), Math.max(ends[i][0], ends[i][1]));
      strips[i] = ax.box(from, 0, Math.max(to, from), along);
    }
    return strips;
  }

  /** A strip with what is left between it and the panel's edge, where nothing else can be glued. */
  private Box taken(Box strip, Box panel, boolean first) {
    Axes ax = sizes.axes();
    double end = ax.along(panel);
    return first
        ? ax.box(ax.minU(panel), 0, ax.maxU(strip), end)
        : ax.box(ax.minU(strip), 0, ax.maxU(panel), end);
  }
}
