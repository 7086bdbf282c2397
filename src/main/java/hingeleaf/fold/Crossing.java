package hingeleaf.fold;

import hingeleaf.card.Mechanism;
import hingeleaf.card.Posed;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Whether panels of no thickness pass through each other in one pose: each goes through the plane
 * of the other, and they do so in the same stretch of line. Panels that touch, lie on each other,
 * or were written crossing in the reference pose do not count. A look at single poses, to prefer
 * one branch before another; what happens between them and what thickness does is not seen here.
 */
final class Crossing {
  /** Piercing by less than this is touching: a tenth of thin paper, mm. */
  private static final double TOUCH_MM = 0.01;

  /** Pairs grow as the square; larger mechanisms are not looked at. */
  private static final int MOST_PANELS = 300;

  private final Mechanism mechanism;
  private final Bodies bodies;
  private final Set<Long> before = new HashSet<>();

  Crossing(Mechanism mechanism, Bodies bodies) {
    this.mechanism = mechanism;
    this.bodies = bodies;
    List<Rigid> still = new ArrayList<>();
    mechanism.facets().forEach(f -> still.add(Rigid.IDENTITY));
    List<Panel> panels = panels(still);
    for (int a = 0; a < panels.size(); a++) {
      for (int b = a + 1; b < panels.size(); b++) {
        if (crosses(panels, a, b)) {
          before.add(key(a, b));
        }
      }
    }
  }

  /** A panel in a pose: rings, plane and box. */
  private record Panel(List<List<Vec3>> rings, Vec3 normal, Vec3 low, Vec3 high) {}

  boolean in(Posed posed) {
    List<Panel> panels = panels(posed.motions());
    for (int a = 0; a < panels.size(); a++) {
      for (int b = a + 1; b < panels.size(); b++) {
        if (crosses(panels, a, b) && !before.contains(key(a, b))) {
          return true;
        }
      }
    }
    return false;
  }

  private long key(int a, int b) {
    return (long) a * mechanism.facets().size() + b;
  }

  private List<Panel> panels(List<Rigid> motions) {
    List<Panel> out = new ArrayList<>();
    for (int f = 0; f < motions.size() && motions.size() <= MOST_PANELS; f++) {
      Rigid m = motions.get(f);
      List<List<Vec3>> rings = new ArrayList<>();
      rings.add(mechanism.facets().get(f).outline().stream().map(m::apply).toList());
      for (List<Vec3> h : mechanism.facets().get(f).holes()) {
        rings.add(h.stream().map(m::apply).toList());
      }
      out.add(panel(rings));
    }
    return out;
  }

  private static Panel panel(List<List<Vec3>> rings) {
    List<Vec3> o = rings.get(0);
    Vec3 n = Vec3.ZERO;
    double inf = Double.POSITIVE_INFINITY;
    Vec3 low = new Vec3(inf, inf, inf);
    Vec3 high = low.times(-1);
    for (int i = 0; i < o.size(); i++) {
      Vec3 p = o.get(i);
      n = n.plus(p.minus(o.get(0)).cross(o.get((i + 1) % o.size()).minus(o.get(0))));
      low = new Vec3(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()), Math.min(low.z(), p.z()));
      high =
          new Vec3(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()), Math.max(high.z(), p.z()));
    }
    return new Panel(rings, n.length() > 0 ? n.unit() : n, low, high);
  }

  private boolean crosses(List<Panel> panels, int a, int b) {
    if (bodies.ofFacet[a] == bodies.ofFacet[b]) {
      return false;
    }
    Panel p = panels.get(a);
    Panel q = panels.get(b);
    Vec3 gap = p.low.minus(q.high);
    Vec3 back = q.low.minus(p.high);
    if (Math.max(Math.max(gap.x(), gap.y()), gap.z()) > 0
        || Math.max(Math.max(back.x(), back.y()), back.z()) > 0) {
      return false;
    }
    Vec3 line = p.normal.cross(q.normal);
    if (line.length() < 1e-6) {
      return false;
    }
    Vec3 u = line.unit();
    return overlap(spans(p, q, u), spans(q, p, u));
  }

  /**
   * Where a panel goes through the plane of another, as stretches of the line in which the two
   * planes meet: start and end, in turn, ascending. None where it only touches the plane, or where
   * a corner on the plane makes it hard to tell.
   */
  private static double[] spans(Panel panel, Panel through, Vec3 line) {
    Vec3 at = through.rings.get(0).get(0);
    double[] out = new double[8];
    int n = 0;
    for (List<Vec3> ring : panel.rings) {
      for (int i = 0; i < ring.size(); i++) {
        Vec3 p = ring.get(i);
        Vec3 q = ring.get((i + 1) % ring.size());
        double u = p.minus(at).dot(through.normal);
        double v = q.minus(at).dot(through.normal);
        if (Math.min(Math.abs(u), Math.abs(v)) > TOUCH_MM && u * v < 0) {
          out = n < out.length ? out : Arrays.copyOf(out, 2 * n);
          out[n++] = p.plus(q.minus(p).times(u / (u - v))).dot(line);
        }
      }
    }
    Arrays.sort(out, 0, n);
    return n % 2 == 0 ? Arrays.copyOf(out, n) : new double[0];
  }

  private static boolean overlap(double[] a, double[] b) {
    for (int i = 0; i + 1 < a.length; i += 2) {
      for (int k = 0; k + 1 < b.length; k += 2) {
        if (Math.min(a[i + 1], b[k + 1]) - Math.max(a[i], b[k]) > TOUCH_MM) {
          return true;
        }
      }
    }
    return false;
  }
}
