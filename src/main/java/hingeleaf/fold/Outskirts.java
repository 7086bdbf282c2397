package hingeleaf.fold;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Panel;
import hingeleaf.geom.Box;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/**
 * The few points of a card that decide its footprint in any pose: the corners of the convex hulls
 * of its panels, without panels that are glued wholly inside another.
 *
 * <p>For trying thousands of poses; a footprint from these equals that from all points.
 */
final class Outskirts {
  private final List<Rim> rims = new ArrayList<>();

  /** The corners of a panel, and the box around them where they were looked at last. */
  private static final class Rim {
    private final int facet;
    private final List<Vec3> corners;
    private @Nullable Rigid last;
    private Box box = new Box(0, 0, 0, 0);

    Rim(int facet, List<Vec3> corners) {
      this.facet = facet;
      this.corners = corners;
    }

    Box box(Rigid motion) {
      if (motion != last) {
        List<Vec2> seen = new ArrayList<>(corners.size());
        for (Vec3 corner : corners) {
          Vec3 p = motion.apply(corner);
          seen.add(new Vec2(p.x(), p.y()));
        }
        box = Box.around(seen);
        last = motion;
      }
      return box;
    }
  }

  Outskirts(MadeCard made) {
    boolean[] inside = new boolean[made.panels().size()];
    for (Mechanism.Bond b : made.mechanism().bonds()) {
      inside[b.a()] |= within(made.panels().get(b.a()), made.panels().get(b.b()));
    }
    for (int i = 0; i < inside.length; i++) {
      if (!inside[i]) {
        Panel p = made.panels().get(i);
        List<Vec2> hull = hull(p.region().outer().points());
        rims.add(new Rim(i, hull.stream().map(p.made()::apply).toList()));
      }
    }
  }

  /**
   * The box around some panels in the world's x and y; endless where there are none.
   *
   * @param motions of all panels; one that is the very same as before is not looked at again
   * @param which panels, by their indices
   */
  Box footprint(List<Rigid> motions, IntPredicate which) {
    double x0 = Double.POSITIVE_INFINITY;
    double y0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double y1 = Double.NEGATIVE_INFINITY;
    for (Rim rim : rims) {
      if (!which.test(rim.facet)) {
        continue;
      }
      Box box = rim.box(motions.get(rim.facet));
      x0 = Math.min(x0, box.minX());
      y0 = Math.min(y0, box.minY());
      x1 = Math.max(x1, box.maxX());
      y1 = Math.max(y1, box.maxY());
    }
    return new Box(x0, y0, x1, y1);
  }

  /**
   * Whether one panel lies inside the box of another that is a rectangle, in its plane or over it.
   */
  private static boolean within(Panel part, Panel bearer) {
    Box box = bearer.region().box();
    if (Math.abs(bearer.region().outer().area() - box.width() * box.height()) > 1e-6) {
      return false;
    }
    Rigid toBearer = part.made().then(bearer.made().inverse());
    for (Vec2 p : part.region().outer().points()) {
      Vec3 q = toBearer.apply(p);
      if (q.x() < box.minX() || q.x() > box.maxX() || q.y() < box.minY() || q.y() > box.maxY()) {
        return false;
      }
    }
    return true;
  }

  /** Andrew's monotone chain (Information Processing Letters 9(5), 1979), anticlockwise. */
  static List<Vec2> hull(List<Vec2> points) {
    List<Vec2> sorted =
        points.stream()
            .distinct()
            .sorted(java.util.Comparator.comparingDouble(Vec2::x).thenComparingDouble(Vec2::y))
            .toList();
    List<Vec2> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int start = hull.size();
      for (int i = 0; i < sorted.size(); i++) {
        Vec2 p = sorted.get(pass == 0 ? i : sorted.size() - 1 - i);
        while (hull.size() >= start + 2 && turnsRight(hull, p)) {
          hull.remove(hull.size() - 1);
        }
        hull.add(p);
      }
      hull.remove(hull.size() - 1);
    }
    return hull;
  }

  private static boolean turnsRight(List<Vec2> hull, Vec2 p) {
    Vec2 a = hull.get(hull.size() - 2);
    Vec2 b = hull.get(hull.size() - 1);
    return b.minus(a).cross(p.minus(a)) <= 0;
  }
}
