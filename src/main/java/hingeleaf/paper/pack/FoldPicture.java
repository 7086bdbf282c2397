package hingeleaf.paper.pack;

import hingeleaf.card.Panel;
import hingeleaf.card.PanelLayout;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.figure.Arrow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one piece is folded, seen along its folds: every panel is a line, and an arrow shows the way
 * that each has gone from where it lay.
 */
final class FoldPicture {
  private static final double ROOM = 11;
  private static final double PARALLEL = 1e-6;
  private static final Pen PEN = Pen.solid(0.25, Look.ACCENT);
  private static final Pen LAY = Pen.dashed(0.18, Look.QUIET, 8, 6);
  private static final Pen LIES = new Pen(0.7, List.of(), Look.INK, true);

  private final Piece piece;
  private final PanelLayout layout;
  private final Map<String, Panel> panels = new HashMap<>();
  private final List<Mark> marks = new ArrayList<>();

  FoldPicture(Pack pack, String id) {
    this.piece = pack.card().piece(id);
    this.layout = PanelLayout.of(piece);
    pack.made().panels().stream()
        .filter(p -> p.piece().equals(id))
        .forEach(p -> panels.put(p.name(), p));
  }

  /** The profile; empty for a piece whose folds do not all run one way. */
  Optional<Drawing> profile(double width) {
    Vec3 axis = axis(layout.folds().get(0));
    if (layout.folds().stream().anyMatch(f -> axis(f).cross(axis).length() > PARALLEL)) {
      return Optional.empty();
    }
    Vec3 out = panel(middle()).made().normal();
    Vec3 right = axis.cross(out).unit();
    Vec3 across = right.x() + right.y() < 0 ? right.times(-1) : right;
    Flat flat = new Flat(across, out, middle());
    Box box = flat.box();
    double scale = Math.min(1, (width - 2 * ROOM) / box.width());
    Vec2 move = new Vec2(ROOM - box.minX() * scale, ROOM - box.minY() * scale);
    layout.folds().forEach(f -> arrow(f, flat, scale, move));
    for (int i = 0; i < layout.panels().size(); i++) {
      Segment s = flat.made(i);
      marks.add(
          new Mark.Stroke(Path.line(at(s.from(), scale, move), at(s.to(), scale, move)), LIES));
    }
    double y = at(flat.made(middle()).from(), scale, move).y();
    double x = box.width() * scale / 2 + ROOM;
    marks.add(words("good face", new Vec2(x, y + 2)));
    marks.add(words("plain back", new Vec2(x, y - 2 - Look.SMALL * 0.7)));
    return Optional.of(
        Drawing.plain(
            box.width() * scale + 2 * ROOM, box.height() * scale + 2 * ROOM, piece.name(), marks));
  }

  private static Mark words(String text, Vec2 at) {
    return new Mark.Words(text, at, Look.SMALL, Weight.ITALIC, Anchor.MIDDLE, Look.QUIET, 0);
  }

  private Vec3 axis(PanelLayout.Fold f) {
    Panel p = panel(f.right());
    Segment s = f.score().at();
    return p.made().apply(s.to()).minus(p.made().apply(s.from())).unit();
  }

  private Panel panel(int i) {
    Panel p = panels.get(layout.panels().get(i).name());
    if (p == null) {
      throw new IllegalStateException(piece.id() + " has no such panel");
    }
    return p;
  }

  /** The largest panel, which stays where it is. */
  private int middle() {
    int best = 0;
    for (int i = 1; i < layout.panels().size(); i++) {
      Box b = layout.panels().get(i).region().box();
      Box o = layout.panels().get(best).region().box();
      best = b.width() * b.height() > o.width() * o.height() ? i : best;
    }
    return best;
  }

  /** Panels as lines, seen along the folds. */
  private final class Flat {
    private final Vec3 across;
    private final Vec3 out;
    private final int middle;

    Flat(Vec3 across, Vec3 out, int middle) {
      this.across = across;
      this.out = out;
      this.middle = middle;
    }

    Vec2 see(Vec3 p) {
      return new Vec2(p.dot(across), p.dot(out));
    }

    Segment made(int panel) {
      return as(panel, panel);
    }

    /** A panel as it would lie, had it not been folded away from another. */
    Segment as(int panel, int plane) {
      List<Vec2> seen = new ArrayList<>();
      for (Vec2 p : layout.panels().get(panel).region().outer().points()) {
        seen.add(see(panel(plane).made().apply(p)));
      }
      Vec2 from = seen.get(0);
      Vec2 to = from;
      for (Vec2 p : seen) {
        for (Vec2 q : seen) {
          if (p.distance(q) > from.distance(to) + 1e-9) {
            from = p;
            to = q;
          }
        }
      }
      return new Segment(from, to);
    }

    /** All panels made, and all as they lay flat. */
    Box box() {
      List<Vec2> points = new ArrayList<>();
      for (int i = 0; i < layout.panels().size(); i++) {
        points.addAll(List.of(made(i).from(), made(i).to()));
        Segment lay = as(i, middle);
        points.addAll(List.of(lay.from(), lay.to()));
      }
      return Box.around(points);
    }
  }

  /** From where a panel lay in the plane of its neighbour to where it is. */
  private void arrow(PanelLayout.Fold fold, Flat flat, double scale, Vec2 move) {
    boolean left = outer(fold.left()) >= outer(fold.right());
    int moves = left ? fold.left() : fold.right();
    int stays = left ? fold.right() : fold.left();
    Vec2 hinge = flat.see(panel(moves).made().apply(fold.score().at().from()));
    Vec2 lay = far(flat.as(moves, stays), hinge);
    Vec2 is = far(flat.made(moves), hinge);
    Vec2 h = at(hinge, scale, move);
    Vec2 a = at(lay, scale, move);
    Vec2 b = at(is, scale, move);
    marks.add(new Mark.Stroke(Path.line(h, a), LAY));
    if (a.distance(b) > 2) {
      double turn = a.minus(h).cross(b.minus(h));
      marks.addAll(Arrow.of(a, b, turn > 0 ? -0.2 : 0.2, PEN));
    }
  }

  private static Vec2 far(Segment s, Vec2 from) {
    return s.from().distance(from) > s.to().distance(from) ? s.from() : s.to();
  }

  private static Vec2 at(Vec2 p, double scale, Vec2 move) {
    return p.times(scale).plus(move);
  }

  /** How far from the middle of the piece a panel lies. */
  private double outer(int panel) {
    Vec2 middle = piece.box().centre();
    return layout.panels().get(panel).region().box().centre().distance(middle);
  }
}
