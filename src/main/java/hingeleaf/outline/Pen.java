package hingeleaf.outline;

import hingeleaf.geom.Vec2;
import hingeleaf.outline.Subpath.Segment;
import java.util.ArrayList;
import java.util.List;

/** Draws lines, curves and arcs into subpaths, counting what it draws. */
final class Pen {
  /** More pieces of lines than this are no outline that anybody cuts. */
  static final int MOST = 200_000;

  /**
   * Widest piece of an arc that becomes one cubic: at a sixteenth of a turn the cubic is within
   * 7e-8 of the radius (the error of 2.7e-4 at a quarter falls with the sixth power).
   */
  private static final double WIDEST = Math.PI / 8;

  private final List<Subpath> done = new ArrayList<>();
  private List<Segment> current = new ArrayList<>();
  private Vec2 start = Vec2.ZERO;
  private Vec2 at = Vec2.ZERO;
  private int drawn;

  Pen(int drawnBefore) {
    this.drawn = drawnBefore;
  }

  Vec2 at() {
    return at;
  }

  Vec2 start() {
    return start;
  }

  int drawn() {
    return drawn;
  }

  void move(Vec2 to) {
    lift(false);
    start = to;
    at = to;
  }

  void line(Vec2 to) throws Refusal {
    add(Segment.line(to));
  }

  void cubic(Vec2 handle1, Vec2 handle2, Vec2 to) throws Refusal {
    add(Segment.cubic(handle1, handle2, to));
  }

  /** A quadratic, raised to a cubic exactly. */
  void quadratic(Vec2 handle, Vec2 to) throws Refusal {
    Vec2 h1 = at.plus(handle.minus(at).times(2.0 / 3));
    Vec2 h2 = to.plus(handle.minus(to).times(2.0 / 3));
    cubic(h1, h2, to);
  }

  void close() {
    lift(true);
    at = start;
  }

  List<Subpath> lifted() {
    lift(false);
    return done;
  }

  private void lift(boolean closed) {
    if (!current.isEmpty()) {
      done.add(new Subpath(start, current, closed));
    }
    current = new ArrayList<>();
  }

  private void add(Segment s) throws Refusal {
    if (++drawn > MOST) {
      throw new Refusal("too-many-points", "this drawing has more than 200,000 points");
    }
    current.add(s);
    at = s.end();
  }

  /**
   * An elliptical arc from here, by SVG 1.1 appendix F.6.5 (from end points to centre) and F.6.6
   * (radii too small are enlarged, radii of 0 make a line).
   */
  void arc(double rx, double ry, double degrees, boolean large, boolean sweep, Vec2 to)
      throws Refusal {
    double a = Math.abs(rx);
    double b = Math.abs(ry);
    if (at.equals(to)) {
      return;
    }
    if (a == 0 || b == 0) {
      line(to);
      return;
    }
    Affine turn = Affine.rotate(degrees);
    Affine back = Affine.rotate(-degrees);
    Vec2 half = back.apply(at.minus(to).times(0.5));
    double over = Math.sqrt(sq(half.x() / a) + sq(half.y() / b));
    if (over > 1) {
      a *= over;
      b *= over;
    }
    Vec2 unit = new Vec2(half.x() / a, half.y() / b); // half the chord, on the unit circle
    double k = Math.sqrt(Math.max(0, 1 / unit.dot(unit) - 1)) * (large == sweep ? -1 : 1);
    Vec2 c = new Vec2(unit.y(), -unit.x()).times(k);
    Vec2 centre = turn.apply(new Vec2(c.x() * a, c.y() * b)).plus(at.plus(to).times(0.5));
    double from = Math.atan2(unit.y() - c.y(), unit.x() - c.x());
    double until = Math.atan2(-unit.y() - c.y(), -unit.x() - c.x());
    double angle = until - from;
    if (sweep && angle < 0) {
      angle += 2 * Math.PI;
    } else if (!sweep && angle > 0) {
      angle -= 2 * Math.PI;
    }
    Affine place = Affine.translate(centre.x(), centre.y()).times(turn).times(Affine.scale(a, b));
    pieces(place, from, angle, to);
  }

  private static double sq(double x) {
    return x * x;
  }

  /** Cubics along an arc of the unit circle, mapped; handles at 4/3 tan(h/4) of the radius. */
  private void pieces(Affine place, double from, double angle, Vec2 to) throws Refusal {
    int n = Math.max(1, (int) Math.ceil(Math.abs(angle) / WIDEST - 1e-9));
    double h = angle / n;
    double k = 4.0 / 3 * Math.tan(h / 4);
    for (int i = 0; i < n; i++) {
      double t0 = from + i * h;
      double t1 = t0 + h;
      Vec2 p0 = new Vec2(Math.cos(t0), Math.sin(t0));
      Vec2 p1 = new Vec2(Math.cos(t1), Math.sin(t1));
      Vec2 end = i + 1 == n ? to : place.apply(p1);
      cubic(
          place.apply(p0.plus(p0.left().times(k))), place.apply(p1.minus(p1.left().times(k))), end);
    }
  }
}
