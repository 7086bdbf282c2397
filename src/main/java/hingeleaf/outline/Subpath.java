package hingeleaf.outline;

import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a path, from where the pen is set down to where it is lifted.
 *
 * @param closed whether the drawing closes it by itself
 */
record Subpath(Vec2 start, List<Segment> segments, boolean closed) {
  Subpath {
    segments = List.copyOf(segments);
  }

  /** A piece of a line; straight where the two handles are null. */
  record Segment(Vec2 handle1, Vec2 handle2, Vec2 end, boolean straight) {
    static Segment line(Vec2 end) {
      return new Segment(end, end, end, true);
    }

    static Segment cubic(Vec2 handle1, Vec2 handle2, Vec2 end) {
      return new Segment(handle1, handle2, end, false);
    }

    Segment map(Affine by) {
      return new Segment(by.apply(handle1), by.apply(handle2), by.apply(end), straight);
    }
  }

  Subpath map(Affine by) {
    return new Subpath(by.apply(start), segments.stream().map(s -> s.map(by)).toList(), closed);
  }

  Vec2 end() {
    return segments.isEmpty() ? start : segments.get(segments.size() - 1).end();
  }

  /** How many chords of equal parameter keep a curve within {@code tolerance} of itself. */
  static int chords(Vec2 from, Segment s, double tolerance) {
    if (s.straight()) {
      return 1;
    }
    // |B''| <= 6 max(|p0 - 2 p1 + p2|, |p1 - 2 p2 + p3|); a chord is off by at most h^2 |B''| / 8
    double bend =
        Math.max(
            from.minus(s.handle1().times(2)).plus(s.handle2()).length(),
            s.handle1().minus(s.handle2().times(2)).plus(s.end()).length());
    return (int) Math.min(1e9, Math.max(1, Math.ceil(Math.sqrt(0.75 * bend / tolerance))));
  }

  /** How many corners {@link #flat} would yield. */
  long corners(double tolerance) {
    long n = 1;
    Vec2 from = start;
    for (Segment s : segments) {
      n += chords(from, s, tolerance);
      from = s.end();
    }
    return n;
  }

  /** The corners of straight edges within {@code tolerance} of the line, its start first. */
  List<Vec2> flat(double tolerance) {
    List<Vec2> out = new ArrayList<>();
    out.add(start);
    Vec2 from = start;
    for (Segment s : segments) {
      int n = chords(from, s, tolerance);
      for (int i = 1; i < n; i++) {
        out.add(on(from, s, (double) i / n));
      }
      out.add(s.end());
      from = s.end();
    }
    return out;
  }

  private static Vec2 on(Vec2 from, Segment s, double t) {
    double u = 1 - t;
    return from.times(u * u * u)
        .plus(s.handle1().times(3 * u * u * t))
        .plus(s.handle2().times(3 * u * t * t))
        .plus(s.end().times(t * t * t));
  }
}
