package hingeleaf.paper;

import hingeleaf.card.Label;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Names written inside the panels of a piece, upright or along the panel, where there is room. */
public final class PanelNames {
  private static final double CLEAR = 1.5;

  private PanelNames() {}

  /** One line of words for each panel that has room for its name. */
  public static List<Mark> of(SeenPiece piece, double size, String colour, Fonts fonts) {
    List<Segment> walls = walls(piece);
    List<Mark> marks = new ArrayList<>();
    for (Label label : piece.labels()) {
      name(label, piece.shape(), walls, size, colour, fonts).ifPresent(marks::add);
    }
    return marks;
  }

  private static Optional<Mark> name(
      Label label,
      Region shape,
      List<Segment> walls,
      double size,
      String colour,
      Fonts fonts) {
    Box room = room(label.at(), walls);
    double length = fonts.width(label.name(), Weight.ITALIC, size) + 2 * CLEAR;
    double high = size + CLEAR;
    for (Vec2 c : List.of(room.centre(), new Vec2(room.centre().x(), label.at().y()))) {
      if (shape.contains(c) && free(c, length, high, walls)) {
        return Optional.of(words(label, new Vec2(c.x(), c.y() - size * 0.33), size, colour, 0));
      }
    }
    for (Vec2 c : List.of(room.centre(), new Vec2(label.at().x(), room.centre().y()))) {
      if (shape.contains(c) && free(c, high, length, walls)) {
        Vec2 at = new Vec2(c.x() + size * 0.33, c.y());
        return Optional.of(words(label, at, size, colour, Math.PI / 2));
      }
    }
    return Optional.empty();
  }

  /** Whether no edge or score comes into a field. */
  private static boolean free(Vec2 c, double wide, double high, List<Segment> walls) {
    Box field = new Box(c.x() - wide / 2, c.y() - high / 2, c.x() + wide / 2, c.y() + high / 2);
    return walls.stream().noneMatch(w -> meets(w, field));
  }

  /** Whether a segment comes into a box, by clipping (Liang and Barsky 1984). */
  private static boolean meets(Segment s, Box box) {
    Vec2 d = s.to().minus(s.from());
    double[] p = {-d.x(), d.x(), -d.y(), d.y()};
    double[] q = {
      s.from().x() - box.minX(),
      box.maxX() - s.from().x(),
      s.from().y() - box.minY(),
      box.maxY() - s.from().y()
    };
    double in = 0;
    double out = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0 && q[i] < 0) {
        return false;
      }
      if (p[i] < 0) {
        in = Math.max(in, q[i] / p[i]);
      } else if (p[i] > 0) {
        out = Math.min(out, q[i] / p[i]);
      }
    }
    return in <= out;
  }

  private static Mark words(Label label, Vec2 at, double size, String colour, double turn) {
    return new Mark.Words(label.name(), at, size, Weight.ITALIC, Anchor.MIDDLE, colour, turn);
  }

  /** How far one can go from a point left, right, down and up before an edge or a score. */
  static Box room(Vec2 p, List<Segment> walls) {
    double x0 = p.x() - 1e4;
    double x1 = p.x() + 1e4;
    double y0 = p.y() - 1e4;
    double y1 = p.y() + 1e4;
    for (Segment w : walls) {
      Vec2 a = w.from();
      Vec2 b = w.to();
      if ((a.y() > p.y()) != (b.y() > p.y())) {
        double x = a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
        x0 = x <= p.x() ? Math.max(x0, x) : x0;
        x1 = x > p.x() ? Math.min(x1, x) : x1;
      }
      if ((a.x() > p.x()) != (b.x() > p.x())) {
        double y = a.y() + (p.x() - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
        y0 = y <= p.y() ? Math.max(y0, y) : y0;
        y1 = y > p.y() ? Math.min(y1, y) : y1;
      }
    }
    return new Box(x0, y0, x1, y1);
  }

  private static List<Segment> walls(SeenPiece piece) {
    List<Segment> walls = new ArrayList<>(piece.slits());
    piece.scores().forEach(s -> walls.add(s.at()));
    edges(piece.shape().outer(), walls);
    piece.shape().holes().forEach(h -> edges(h, walls));
    return walls;
  }

  private static void edges(Ring ring, List<Segment> walls) {
    for (int i = 0; i < ring.points().size(); i++) {
      walls.add(
          new Segment(ring.points().get(i), ring.points().get((i + 1) % ring.points().size())));
    }
  }
}
