package hingeleaf.paper.pack;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.BookStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Gluing masks at true size: laid on a panel edge to edge, marked through with a pin. The pricks
 * lie under the parts, so nothing of them is seen afterwards.
 */
final class MaskChapter {
  /** How far inside a part's edge its pricks are, mm. */
  private static final double INSIDE = 2;

  /** In a smaller part a name would lie over the pricks, mm. */
  private static final double LEAST_NAMED_INSIDE = 16;

  private static final double ROOM = 4;
  private static final double OVERLAP = 10;
  private static final Pen EDGE = Pen.solid(0.18, Look.INK);
  private static final Pen PART = Pen.dashed(0.13, Look.QUIET, 8, 8);

  private final Pack pack;
  private final BookStyle style;

  MaskChapter(Pack pack, BookStyle style) {
    this.pack = pack;
    this.style = style;
  }

  void add(List<Block> all) {
    Map<List<Object>, List<Join.Glue>> byPanel = new LinkedHashMap<>();
    for (Join j : pack.card().joins()) {
      if (j instanceof Join.Glue g && pack.card().piece(g.a().piece()).scores().isEmpty()) {
        byPanel
            .computeIfAbsent(
                List.of(g.b().piece(), g.b().panel(), g.b().face()), k -> new ArrayList<>())
            .add(g);
      }
    }
    if (byPanel.isEmpty()) {
      return;
    }
    all.add(new Block.NewPage());
    all.add(new Block.Heading(2, "Gluing masks"));
    all.add(
        Block.Paragraph.of(
            "True size. Cut a mask out along its whole line, lay it on the panel edge to edge, good"
                + " face up unless it says otherwise, and prick through every ringed point with a"
                + " pin. The pricks come to lie under the part; draw no lines."));
    byPanel.values().forEach(glues -> mask(glues, all));
  }

  private void mask(List<Join.Glue> glues, List<Block> all) {
    Placement at = Placement.of(pack.made(), glues);
    Box panel = at.panel();
    List<Mark> marks = new ArrayList<>();
    Vec2 by = new Vec2(-panel.minX(), -panel.minY());
    outline(panel, marks);
    for (int i = 0; i < glues.size(); i++) {
      part(at.parts().get(i).moved(by), glues.get(i).a().piece(), panel, marks);
    }
    bottom(panel, marks);
    String name = at.base().piece().name();
    String face = glues.get(0).b().face() == Face.FRONT ? "good face up" : "turned over, back up";
    tiles(name + ", " + face, panel.width(), panel.height(), marks, all);
  }

  private static void outline(Box panel, List<Mark> marks) {
    double w = panel.width();
    double h = panel.height();
    marks.add(new Mark.Stroke(Path.rectangle(0, 0, w, h), EDGE));
    double[][] ticks = {
      {w / 2, 0, w / 2, 4}, {w / 2, h, w / 2, h - 4}, {0, h / 2, 4, h / 2}, {w, h / 2, w - 4, h / 2}
    };
    for (double[] t : ticks) {
      marks.add(new Mark.Stroke(Path.line(new Vec2(t[0], t[1]), new Vec2(t[2], t[3])), EDGE));
    }
  }

  /** On a ground of its own, for a part may end here. */
  private void bottom(Box panel, List<Mark> marks) {
    String words = "bottom edge";
    Vec2 at = new Vec2(panel.width() / 2 + 3, 1.5);
    double wide = style.fonts().width(words, Weight.ITALIC, Look.TINY);
    marks.add(
        new Mark.Fill(
            Path.rectangle(at.x() - 0.5, 0.6, at.x() + wide + 0.5, Look.TINY + 1.4), "#ffffff"));
    marks.add(new Mark.Words(words, at, Look.TINY, Weight.ITALIC, Anchor.START, Look.QUIET, 0));
  }

  private static void part(Region part, String name, Box panel, List<Mark> marks) {
    marks.add(new Mark.Stroke(Path.of(part.outer()), PART));
    Box field = new Box(0, 0, panel.width(), panel.height());
    for (Vec2 p : pricks(part)) {
      if (p.x() >= field.minX() && p.x() <= field.maxX() && p.y() >= 0 && p.y() <= field.maxY()) {
        marks.add(new Mark.Stroke(Path.circle(p, 1.1), EDGE));
        marks.add(new Mark.Fill(Path.circle(p, 0.25), Look.INK));
      }
    }
    Box box = part.box();
    double middle = box.centre().y() - Look.TINY * 0.33;
    double below = box.minY() - 1.6 * Look.TINY; // clear of the rings too
    double beside = below > Look.TINY ? below : box.maxY() + 0.8 * Look.TINY;
    boolean small = Math.min(box.width(), box.height()) < LEAST_NAMED_INSIDE;
    Vec2 at = new Vec2(box.centre().x(), small ? beside : middle);
    marks.add(new Mark.Words(name, at, Look.TINY, Weight.ITALIC, Anchor.MIDDLE, Look.QUIET, 0));
  }

  /** Where to prick: under the corners of a rectangle, under the four ends of any other shape. */
  static List<Vec2> pricks(Region part) {
    Box box = part.box();
    Box in = box.grown(-Math.min(INSIDE, Math.min(box.width(), box.height()) / 4));
    List<Vec2> corners =
        List.of(
            new Vec2(in.minX(), in.minY()),
            new Vec2(in.maxX(), in.minY()),
            new Vec2(in.maxX(), in.maxY()),
            new Vec2(in.minX(), in.maxY()));
    if (corners.stream().allMatch(part::contains)) {
      return corners;
    }
    for (double inside : new double[] {INSIDE, INSIDE / 2, INSIDE / 4}) {
      List<Region> core = Overlay.grown(List.of(part), -inside);
      if (!core.isEmpty()) {
        return ends(core);
      }
    }
    return List.of();
  }

  /** The points that lie furthest left, right, down and up. */
  private static List<Vec2> ends(List<Region> core) {
    List<Vec2> all = core.stream().flatMap(r -> r.outer().points().stream()).toList();
    List<Vec2> ends = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      Vec2 end = end(new Ring(all), side);
      if (ends.stream().allMatch(e -> e.distance(end) > INSIDE)) {
        ends.add(end);
      }
    }
    return ends;
  }

  /** The point of a ring that lies furthest left, right, down or up. */
  private static Vec2 end(Ring ring, int side) {
    Vec2 best = ring.points().get(0);
    for (Vec2 p : ring.points()) {
      double gain =
          switch (side) {
            case 0 -> best.x() - p.x();
            case 1 -> p.x() - best.x();
            case 2 -> best.y() - p.y();
            default -> p.y() - best.y();
          };
      best = gain > 1e-9 ? p : best;
    }
    return best;
  }

  /** One figure, or several windows that overlap where a panel is larger than the page. */
  private void tiles(String name, double w, double h, List<Mark> marks, List<Block> all) {
    double wide = style.width() - 2 * ROOM;
    double high = style.height() - 40;
    if (w > wide && w <= high && h <= wide) {
      // Turned a quarter it fits one page; the words on it tell which edge is the bottom.
      UnaryOperator<Vec2> turned = p -> new Vec2(h - p.y(), p.x());
      List<Mark> quarter = marks.stream().map(m -> m.mapped(turned, Math.PI / 2)).toList();
      tiles(name + ", a quarter turned", h, w, quarter, all);
      return;
    }
    int columns = count(w, wide);
    int rows = count(h, high);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        double x = column * (wide - OVERLAP);
        double y = row * (high - OVERLAP);
        Box window = new Box(x, y, Math.min(w, x + wide), Math.min(h, y + high));
        String of =
            rows * columns == 1
                ? ""
                : ", part "
                    + (row * columns + column + 1)
                    + " of "
                    + rows * columns
                    + " (parts overlap: lay the lines upon each other and tape)";
        all.add(
            new Block.Together(
                List.of(
                    new Block.Heading(3, "Mask for " + name + of),
                    new Block.Figure(tile(window, marks, name), ""))));
      }
    }
  }

  private static int count(double length, double window) {
    return length <= window ? 1 : (int) Math.ceil((length - OVERLAP) / (window - OVERLAP));
  }

  private static Drawing tile(Box window, List<Mark> marks, String name) {
    Vec2 by = new Vec2(ROOM - window.minX(), ROOM - window.minY());
    Box seen = new Box(0, 0, window.width() + 2 * ROOM, window.height() + 2 * ROOM);
    List<Mark> moved = List.of(new Mark.Group(marks, by));
    return Drawing.plain(seen.width(), seen.height(), name, List.of(new Mark.Window(seen, moved)));
  }
}
