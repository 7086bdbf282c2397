package hingeleaf.sight;

import hingeleaf.geom.Segment;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Parts of a straight line as parameter intervals within 0 to 1.
 *
 * @param parts disjoint, in ascending order
 */
record Spans(List<Span> parts) {
  /** An interval with {@code from < to}. */
  record Span(double from, double to) {}

  private static final Spans NONE = new Spans(List.of());
  private static final Spans WHOLE = new Spans(List.of(new Span(0, 1)));

  Spans {
    parts = List.copyOf(parts);
  }

  static Spans none() {
    return NONE;
  }

  static Spans whole() {
    return WHOLE;
  }

  /** The union of intervals in any order; what lies outside 0 to 1 is cut off. */
  static Spans union(List<Span> any) {
    if (any.isEmpty()) {
      return NONE;
    }
    List<Span> sorted = new ArrayList<>(any);
    sorted.sort(Comparator.comparingDouble(Span::from).thenComparingDouble(Span::to));
    List<Span> out = new ArrayList<>();
    for (Span s : sorted) {
      double from = Math.max(0, s.from);
      double to = Math.min(1, s.to);
      int last = out.size() - 1;
      if (last >= 0 && from <= out.get(last).to) {
        out.set(last, new Span(out.get(last).from, Math.max(to, out.get(last).to)));
      } else if (from < to) {
        out.add(new Span(from, to));
      }
    }
    return new Spans(out);
  }

  /**
   * Where a line runs along another, within the sliver tolerance; nothing where they only meet or
   * cross.
   */
  static Spans shared(Segment line, Segment other) {
    if (apart(line, other)) {
      return NONE;
    }
    double dx = line.to().x() - line.from().x();
    double dy = line.to().y() - line.from().y();
    double length = Math.sqrt(dx * dx + dy * dy); // exact scaling, as hypot does, is slow
    double ux = dx / length;
    double uy = dy / length;
    double ax = other.from().x() - line.from().x();
    double ay = other.from().y() - line.from().y();
    double bx = other.to().x() - line.from().x();
    double by = other.to().y() - line.from().y();
    double ta = ax * ux + ay * uy;
    double tb = bx * ux + by * uy;
    double t0 = Math.max(0, Math.min(ta, tb));
    double t1 = Math.min(length, Math.max(ta, tb));
    if (!(t1 - t0 >= Tolerance.SLIVER_MM)) {
      return NONE;
    }
    double oa = ux * ay - uy * ax;
    double slope = (ux * by - uy * bx - oa) / (tb - ta);
    if (Math.abs(oa + slope * (t0 - ta)) > Tolerance.SLIVER_MM
        || Math.abs(oa + slope * (t1 - ta)) > Tolerance.SLIVER_MM) {
      return NONE;
    }
    boolean first = t0 < Tolerance.SLIVER_MM;
    boolean last = t1 > length - Tolerance.SLIVER_MM;
    return new Spans(List.of(new Span(first ? 0 : t0 / length, last ? 1 : t1 / length)));
  }

  private static boolean apart(Segment p, Segment q) {
    double near = Tolerance.SLIVER_MM;
    return Math.max(p.from().x(), p.to().x()) + near < Math.min(q.from().x(), q.to().x())
        || Math.max(q.from().x(), q.to().x()) + near < Math.min(p.from().x(), p.to().x())
        || Math.max(p.from().y(), p.to().y()) + near < Math.min(q.from().y(), q.to().y())
        || Math.max(q.from().y(), q.to().y()) + near < Math.min(p.from().y(), p.to().y());
  }

  Spans plus(Spans o) {
    if (o.parts.isEmpty() || parts.isEmpty()) {
      return parts.isEmpty() ? o : this;
    }
    List<Span> all = new ArrayList<>(parts);
    all.addAll(o.parts);
    return union(all);
  }

  Spans minus(Spans o) {
    if (o.parts.isEmpty() || parts.isEmpty()) {
      return this;
    }
    List<Span> out = new ArrayList<>();
    for (Span s : parts) {
      double from = s.from;
      for (Span cut : o.parts) {
        if (cut.from > from && cut.from < s.to) {
          out.add(new Span(from, cut.from));
        }
        from = cut.to > from && cut.from < s.to ? cut.to : from;
      }
      if (from < s.to) {
        out.add(new Span(from, s.to));
      }
    }
    return new Spans(out);
  }

  Spans and(Spans o) {
    return parts.isEmpty() || o.parts.isEmpty() ? NONE : minus(whole().minus(o));
  }

  boolean isEmpty() {
    return parts.isEmpty();
  }

  private boolean isWhole() {
    return parts.size() == 1 && parts.get(0).from == 0 && parts.get(0).to == 1;
  }

  /** These parts of a line, those shorter than the sliver tolerance dropped. */
  List<Segment> on(Segment line) {
    if (parts.isEmpty() || isWhole()) {
      return parts.isEmpty() || line.length() < Tolerance.SLIVER_MM ? List.of() : List.of(line);
    }
    Vec2 d = line.to().minus(line.from());
    List<Segment> out = new ArrayList<>();
    for (Span s : parts) {
      Segment part =
          new Segment(
              s.from == 0 ? line.from() : line.from().plus(d.times(s.from)),
              s.to == 1 ? line.to() : line.from().plus(d.times(s.to)));
      if (part.length() >= Tolerance.SLIVER_MM) {
        out.add(part);
      }
    }
    return out;
  }
}
