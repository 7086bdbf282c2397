package hingeleaf.fold;

import hingeleaf.card.Mechanism;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

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
  private final int[] large;
  private final Set<Long> before = new HashSet<>();
  private final List<Panel> still = new ArrayList<>();

  Crossing(Mechanism mechanism, Bodies bodies) {
    this.mechanism = mechanism;
    this.bodies = bodies;
    this.large = large(mechanism);
    for (int f : large) {
      still.add(new Panel(mechanism.facets().get(f), Rigid.IDENTITY));
    }
    for (int a = 0; a < large.length; a++) {
      for (int b = a + 1; b < large.length; b++) {
        if (crosses(still, a, b)) {
          before.add(key(a, b));
        }
      }
    }
  }

  /** The panels that are large enough to go through another; none of too many. */
  private static int[] large(Mechanism m) {
    return m.facets().size() > MOST_PANELS
        ? new int[0]
        : IntStream.range(0, m.facets().size())
            .filter(f -> !new Panel(m.facets().get(f), Rigid.IDENTITY).small())
            .toArray();
  }

  /** A panel in a pose: its plane and box; its holes are moved only when they are asked for. */
  private static final class Panel {
    private final Mechanism.Facet facet;
    private final Rigid motion;
    private final List<Vec3> outline;
    private final Vec3 normal;
    private final Vec3 low;
    private final Vec3 high;

    Panel(Mechanism.Facet facet, Rigid motion) {
      this.facet = facet;
      this.motion = motion;
      this.outline = moved(facet.outline());
      Vec3 o = outline.get(0);
      Vec3 n = Vec3.ZERO;
      double inf = Double.POSITIVE_INFINITY;
      double[] least = {inf, inf, inf};
      double[] most = {-inf, -inf, -inf};
      for (int i = 0; i < outline.size(); i++) {
        Vec3 p = outline.get(i);
        n = n.plus(p.minus(o).cross(outline.get((i + 1) % outline.size()).minus(o)));
        widen(p, least, most);
      }
      this.normal = n.length() > 0 ? n.unit() : n;
      this.low = new Vec3(least[0], least[1], least[2]);
      this.high = new Vec3(most[0], most[1], most[2]);
    }

    boolean small() {
      return high.minus(low).length() < TOUCH_MM;
    }

    private static void widen(Vec3 p, double[] least, double[] most) {
      double[] c = {p.x(), p.y(), p.z()};
      for (int k = 0; k < 3; k++) {
        least[k] = Math.min(least[k], c[k]);
        most[k] = Math.max(most[k], c[k]);
      }
    }

    private List<Vec3> moved(List<Vec3> ring) {
      List<Vec3> out = new ArrayList<>(ring.size());
      for (Vec3 p : ring) {
        out.add(motion.apply(p));
      }
      return out;
    }

    /** Whether some of it lies on either side of a plane by more than a touch. */
    boolean pierces(Vec3 at, Vec3 across) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (Vec3 p : outline) {
        double u = p.minus(at).dot(across);
        least = Math.min(least, u);
        most = Math.max(most, u);
      }
      return least < -TOUCH_MM && most > TOUCH_MM;
    }

    List<List<Vec3>> rings() {
      List<List<Vec3>> rings = new ArrayList<>();
      rings.add(outline);
      facet.holes().forEach(h -> rings.add(moved(h)));
      return rings;
    }
  }

  boolean in(List<Rigid> motions) {
    List<Panel> panels = panels(motions);
    for (int a = 0; a < panels.size(); a++) {
      for (int b = a + 1; b < panels.size(); b++) {
        // Two that have moved as one lie to each other as they did.
        boolean asOne = panels.get(a).motion == panels.get(b).motion;
        if (!asOne && crosses(panels, a, b) && !before.contains(key(a, b))) {
          return true;
        }
      }
    }
    return false;
  }

  private long key(int a, int b) {
    return (long) a * large.length + b;
  }

  private List<Panel> panels(List<Rigid> motions) {
    List<Panel> out = new ArrayList<>();
    for (int i = 0; i < large.length; i++) {
      Rigid motion = motions.get(large[i]);
      boolean moved = motion != Rigid.IDENTITY;
      out.add(moved ? new Panel(mechanism.facets().get(large[i]), motion) : still.get(i));
    }
    return out;
  }

  private boolean crosses(List<Panel> panels, int a, int b) {
    if (bodies.ofFacet[large[a]] == bodies.ofFacet[large[b]]) {
      return false;
    }
    Panel p = panels.get(a);
    Panel q = panels.get(b);
    if (beyond(p.low, q.high) || beyond(q.low, p.high)) {
      return false;
    }
    Vec3 line = p.normal.cross(q.normal);
    if (line.length() < 1e-6) {
      return false;
    }
    if (!p.pierces(q.outline.get(0), q.normal) || !q.pierces(p.outline.get(0), p.normal)) {
      return false;
    }
    Vec3 u = line.unit();
    return overlap(spans(p, q, u), spans(q, p, u));
  }

  private static boolean beyond(Vec3 low, Vec3 high) {
    return low.x() > high.x() || low.y() > high.y() || low.z() > high.z();
  }

  /**
   * Where a panel goes through the plane of another, as stretches of the line in which the two
   * planes meet: start and end, in turn, ascending. None where it only touches the plane, or where
   * a corner on the plane makes it hard to tell.
   */
  private static double[] spans(Panel panel, Panel through, Vec3 line) {
    Vec3 at = through.outline.get(0);
    double[] out = new double[8];
    int n = 0;
    for (List<Vec3> ring : panel.rings()) {
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
