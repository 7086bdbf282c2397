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

  /**
   * One line of words for each panel that has room for its name; none for a piece of one panel,
   * which has its own name.
   */
  public static List<Mark> of(SeenPiece piece, double size, String colour, Fonts fonts) {
    if (piece.labels().size() < 2) {
      return List.of();
    }
    List<Segment> walls = walls(piece);
    List<Mark> marks = new ArrayList<>();
    for (Label label : piece.labels()) {
      double length = fonts.width(label.name(), Weight.ITALIC, size);
      place(label.at(), length, size, piece.shape(), walls)
          .ifPresent(p -> marks.add(words(label.name(), p, size, colour)));
    }
    return marks;
  }

  /** Where a name stands: its middle, and whether it runs up the page. */
  private record Place(Vec2 at, boolean upright) {}

  /** The first of three places that is clear: mid-panel, mid-border, where the label is. */
  private static Optional<Place> place(
      Vec2 label, double length, double size, Region shape, List<Segment> walls) {
    Vec2 first = onPaper(label, shape, walls);
    Vec2 middle = room(first, walls).centre();
    Vec2 border = onPaper(middle, shape, walls);
    for (Vec2 p : List.of(middle, room(border, walls).centre(), border, first)) {
      for (boolean upright : new boolean[] {false, true}) {
        double w = (upright ? size : length) / 2 + CLEAR / 2;
        double h = (upright ? length : size) / 2 + CLEAR / 2;
        Box box = new Box(p.x() - w, p.y() - h, p.x() + w, p.y() + h);
        if (shape.contains(p) && walls.stream().noneMatch(s -> crosses(s, box))) {
          return Optional.of(new Place(p, upright));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a part of a segment lies in a box (Liang and Barsky 1984). */
  private static boolean crosses(Segment s, Box box) {
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
      if (p[i] == 0) {
        if (q[i] < 0) {
          return false;
        }
      } else if (p[i] < 0) {
        in = Math.max(in, q[i] / p[i]);
      } else {
        out = Math.min(out, q[i] / p[i]);
      }
    }
    return in <= out;
  }

  /** A point over an aperture goes to the middle of the widest border that it looks at. */
  private static Vec2 onPaper(Vec2 p, Region shape, List<Segment> walls) {
    if (shape.contains(p)) {
      return p;
    }
    Box hole = room(p, walls);
    double step = 1e-6;
    List<Vec2> rims =
        List.of(
            new Vec2(p.x(), hole.minY() - step),
            new Vec2(p.x(), hole.maxY() + step),
            new Vec2(hole.minX() - step, p.y()),
            new Vec2(hole.maxX() + step, p.y()));
    Vec2 best = p;
    double widest = 0;
    for (int i = 0; i < rims.size(); i++) {
      Box border = room(rims.get(i), walls);
      double wide = i < 2 ? border.height() : border.width();
      if (shape.contains(rims.get(i)) && wide > widest + step) {
        widest = wide;
        best = i < 2 ? new Vec2(p.x(), border.centre().y()) : new Vec2(border.centre().x(), p.y());
      }
    }
    return best;
  }

  private static Mark words(String name, Place place, double size, String colour) {
    double down = size * 0.33;
    Vec2 base =
        place.upright() ? place.at().plus(new Vec2(down, 0)) : place.at().minus(new Vec2(0, down));
    double turn = place.upright() ? Math.PI / 2 : 0;
    return new Mark.Words(name, base, size, Weight.ITALIC, Anchor.MIDDLE, colour, turn);
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
