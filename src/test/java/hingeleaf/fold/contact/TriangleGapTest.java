package hingeleaf.fold.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Triangle and surface distances against an independent model: the distance of two convex sets is
 * the minimum of a convex quadratic, here found by projected alternation over barycentric weights
 * (von Neumann's alternating projections, which converge for convex sets).
 */
class TriangleGapTest {
  @Test
  void distance_isTheConvexMinimum() {
    Random random = new Random(41);
    TriangleGap gap = new TriangleGap();
    int pierced = 0;
    for (int n = 0; n < 4000; n++) {
      double[] a = triangle(random, 0);
      double[] b = triangle(random, n % 3 == 0 ? 0 : 6);
      double got = gap.of(a, 0, b, 0, 1e9);
      double want = alternating(a, b);
      assertThat(got).as("pair %d", n).isCloseTo(want, within(got == 0 ? 0.05 : 1e-3));
      assertThat(got).isLessThanOrEqualTo(want + 1e-9);
      pierced += got == 0 ? 1 : 0;
    }
    assertThat(pierced).isBetween(50, 1300);
  }

  @Test
  void noLessThanTheBound_answersTheBound() {
    double[] a = {0, 0, 0, 1, 0, 0, 0, 1, 0};
    double[] b = {0, 0, 5, 1, 0, 5, 0, 1, 5};
    assertThat(new TriangleGap().of(a, 0, b, 0, 3)).isEqualTo(3);
    assertThat(new TriangleGap().of(a, 0, b, 0, 9)).isCloseTo(5, within(1e-12));
  }

  @Test
  void tree_findsWhatTryingAllPairsFinds() {
    Random random = new Random(42);
    ShellGap gap = new ShellGap();
    for (int n = 0; n < 60; n++) {
      Shell a = soup(random, 37);
      Shell b = soup(random, 23);
      Rigid pose =
          Rigid.rotation(Vec3.ZERO, vector(random, 1), random.nextDouble() * 6)
              .then(Rigid.translation(vector(random, n % 2 == 0 ? 10 : 60)));
      double got = gap.of(a, b, pose, 1e9);
      double want = 1e9;
      TriangleGap one = new TriangleGap();
      double[] moved = new double[9];
      for (int j = 0; j < b.size(); j++) {
        for (int k = 0; k < 9; k += 3) {
          Shell.apply(pose, b.corners, 9 * j + k, moved, k);
        }
        for (int i = 0; i < a.size(); i++) {
          want = Math.min(want, one.of(a.corners, 9 * i, moved, 0, 1e9));
        }
      }
      assertThat(got).isBetween(want, want / (1 - ShellGap.SLACK) + 1e-12);
      assertThat(gap.boxes(a, b, pose)).isLessThanOrEqualTo(want + 1e-12);
    }
  }

  private static Shell soup(Random random, int n) {
    List<double[]> all = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec3 at = vector(random, 20);
      double[] t = triangle(random, 0);
      for (int k = 0; k < 9; k++) {
        t[k] += k % 3 == 0 ? at.x() : k % 3 == 1 ? at.y() : at.z();
      }
      all.add(t);
    }
    return Shell.of(all);
  }

  private static Vec3 vector(Random r, double size) {
    return new Vec3(r.nextGaussian() * size, r.nextGaussian() * size, r.nextGaussian() * size);
  }

  private static double[] triangle(Random random, double away) {
    double[] t = new double[9];
    for (int i = 0; i < 9; i++) {
      t[i] = random.nextGaussian() * 3 + (i % 3 == 0 ? away : 0);
    }
    return t;
  }

  private static double alternating(double[] a, double[] b) {
    Vec3 p = corner(a, 0);
    double d = 0;
    for (int i = 0; i < 6000; i++) {
      Vec3 q = nearest(b, p);
      Vec3 next = nearest(a, q);
      d = next.distance(q);
      if (next.distance(p) < 1e-13) {
        break;
      }
      p = next;
    }
    return d;
  }

  private static Vec3 corner(double[] t, int k) {
    return new Vec3(t[3 * k], t[3 * k + 1], t[3 * k + 2]);
  }

  /** Nearest point of a triangle: the foot in its plane if inside, else the nearest on an edge. */
  private static Vec3 nearest(double[] t, Vec3 p) {
    Vec3 a = corner(t, 0);
    Vec3 n = corner(t, 1).minus(a).cross(corner(t, 2).minus(a)).unit();
    Vec3 foot = p.minus(n.times(p.minus(a).dot(n)));
    boolean inside = true;
    Vec3 best = a;
    for (int k = 0; k < 3; k++) {
      Vec3 u = corner(t, k);
      Vec3 e = corner(t, (k + 1) % 3).minus(u);
      inside &= e.cross(foot.minus(u)).dot(n) >= 0;
      double s = Math.max(0, Math.min(1, p.minus(u).dot(e) / e.dot(e)));
      Vec3 on = u.plus(e.times(s));
      best = on.distance(p) < best.distance(p) ? on : best;
    }
    return inside ? foot : best;
  }
}
