package hingeleaf.fold;

import static hingeleaf.fold.Sample.v;
import static java.lang.Math.PI;
import static java.lang.Math.atan;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;
import static java.lang.Math.tan;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Sheets and skew linkages with known motion, each with its source. */
final class SpatialSamples {
  private SpatialSamples() {}

  /**
   * Corner (i, j) of a Miura sheet with unit cell sides a, b and acute angle g, folded to dihedral
   * parameter t between 0 (flat) and pi/2 (M. Schenk and S. D. Guest, PNAS 110(9), 2013,
   * 3276-3281).
   */
  static Vec3 miuraCorner(int i, int j, double a, double b, double g, double t) {
    double h = a * sin(t) * sin(g);
    double l = a * sqrt(1 - sin(t) * sin(t) * sin(g) * sin(g));
    double root = sqrt(1 + cos(t) * cos(t) * tan(g) * tan(g));
    double s = b * cos(t) * tan(g) / root;
    double w = b / root;
    return v(i * s, j * l + (i % 2 == 0 ? 0 : w), j % 2 == 0 ? 0 : h);
  }

  /** A Miura sheet whose reference pose is {@code from}; asks for the poses {@code to}. */
  static Sample miura(int nx, int ny, double from, double... to) {
    Sample s = new Sample();
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < ny; j++) {
        s.panel(i + "," + j, cell(i, j, from).toArray(new Vec3[0]));
      }
    }
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < ny; j++) {
        List<Vec3> c = cell(i, j, from);
        if (i + 1 < nx) {
          s.fold("x" + i + "," + j, i + "," + j, (i + 1) + "," + j, c.get(1), c.get(2));
        }
        if (j + 1 < ny) {
          s.fold("y" + i + "," + j, i + "," + j, i + "," + (j + 1), c.get(2), c.get(3));
        }
      }
    }
    s.fixed("0,0");
    for (double t : to) {
      ask(s, nx, ny, from, t);
    }
    return s;
  }

  private static List<Vec3> cell(int i, int j, double t) {
    return List.of(
        miuraCorner(i, j, 30, 40, 1.1, t),
        miuraCorner(i + 1, j, 30, 40, 1.1, t),
        miuraCorner(i + 1, j + 1, 30, 40, 1.1, t),
        miuraCorner(i, j + 1, 30, 40, 1.1, t));
  }

  /** Poses relative to the first cell, which stays. */
  private static void ask(Sample s, int nx, int ny, double from, double t) {
    Rigid back = frame(cell(0, 0, t)).inverse().then(frame(cell(0, 0, from)));
    Map<String, List<Vec3>> points = new TreeMap<>();
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < ny; j++) {
        points.put(i + "," + j, cell(i, j, t).stream().map(back::apply).toList());
      }
    }
    Map<String, Double> turn = new TreeMap<>();
    for (Sample.Fold f : s.folds) {
      turn.put(f.id(), angle(f, s, points));
    }
    String lead = "x0,0";
    Map<String, Double> near = new TreeMap<>();
    turn.forEach((id, x) -> near.put(id, x * 1.02 + (id.startsWith("x") ? 0.02 : -0.01)));
    s.ask(Map.of(lead, turn.getOrDefault(lead, 0.0)), from == 0 ? near : Map.of(), points, turn);
  }

  static Rigid frame(List<Vec3> quad) {
    Vec3 x = quad.get(1).minus(quad.get(0)).unit();
    Vec3 z = x.cross(quad.get(3).minus(quad.get(0))).unit();
    return Rigid.frame(quad.get(0), x, z.cross(x), z);
  }

  /** The turn of panel b against panel a between the reference and the given corners. */
  private static double angle(Sample.Fold f, Sample s, Map<String, List<Vec3>> now) {
    Rigid ma = motion(s.panels.getOrDefault(f.a(), List.of()), now.getOrDefault(f.a(), List.of()));
    Rigid mb = motion(s.panels.getOrDefault(f.b(), List.of()), now.getOrDefault(f.b(), List.of()));
    Rigid rel = mb.then(ma.inverse());
    Vec3 u = f.to().minus(f.from()).unit();
    Vec3 p = u.cross(Math.abs(u.x()) < 0.8 ? v(1, 0, 0) : v(0, 1, 0)).unit();
    Vec3 q = rel.turn(p);
    return Math.atan2(u.dot(p.cross(q)), p.dot(q));
  }

  static Rigid motion(List<Vec3> before, List<Vec3> after) {
    return frame(before).inverse().then(frame(after));
  }

  /**
   * A closed chain of skew axes, one after another by Denavit-Hartenberg: turn by {@code turn[i]}
   * about z, move by {@code length[i]} along x, twist by {@code twist[i]} about x. Every link is
   * two triangles, one on each of its axes, glued along their common normal.
   */
  static Sample chain(double[] turn, double[] length, double[] twist) {
    int n = turn.length;
    Rigid t = Rigid.IDENTITY;
    Vec3[] at = new Vec3[n + 1];
    Vec3[] along = new Vec3[n + 1];
    for (int i = 0; i <= n; i++) {
      at[i] = t.apply(v(0, 0, 0));
      along[i] = t.turn(v(0, 0, 1)).times(20);
      if (i < n) {
        Rigid step =
            Rigid.rotation(v(0, 0, 0), v(1, 0, 0), twist[i])
                .then(Rigid.translation(v(length[i], 0, 0)))
                .then(Rigid.rotation(v(0, 0, 0), v(0, 0, 1), turn[i]));
        t = step.then(t);
      }
    }
    Sample s = new Sample();
    for (int i = 0; i < n; i++) {
      int k = (i + 1) % n;
      s.panel("p" + i, at[i].minus(along[i]), at[i].plus(along[i]), at[k]);
      s.panel("q" + i, at[k].minus(along[k]), at[k].plus(along[k]), at[i]);
      s.glue("p" + i, "q" + i);
    }
    for (int i = 0; i < n; i++) {
      int before = (i + n - 1) % n;
      s.fold("j" + i, "q" + before, "p" + i, at[i].minus(along[i]), at[i].plus(along[i]));
    }
    return s.fixed("q" + (n - 1));
  }

  /**
   * Bennett's linkage: opposite links equal, sin(twist)/length the same for all; tan(t1/2)
   * tan(t2/2) = sin((b + a)/2) / sin((b - a)/2) (G. T. Bennett, Engineering 76, 1903; K. H. Hunt,
   * Kinematic Geometry of Mechanisms, 1978).
   *
   * @return the second turn for a first turn
   */
  static double bennettTurn(double a, double b, double t1) {
    return 2 * atan(sin((b + a) / 2) / sin((b - a) / 2) / tan(t1 / 2));
  }

  static Sample bennett(double t1) {
    double a = 0.6;
    double b = 1.1;
    double la = 30;
    double lb = la * sin(b) / sin(a);
    double t2 = bennettTurn(a, b, t1);
    Sample s =
        chain(
            new double[] {t1, t2, -t1, -t2},
            new double[] {la, lb, la, lb},
            new double[] {a, b, a, b});
    return s;
  }

  /** All turns of a threefold-symmetric Bricard linkage (twists pi/2 and -pi/2) for one of them. */
  static double bricardTurn(double t) {
    // cos t + cos u + cos t cos u = 0 (Y. Chen, Z. You, T. Tarnai, Int. J. Solids and Structures
    // 42(8), 2005, for twist pi/2).
    return Math.acos(-cos(t) / (1 + cos(t)));
  }

  static Sample bricard(double t) {
    double u = bricardTurn(t);
    double q = PI / 2;
    return chain(
        new double[] {t, u, t, u, t, u},
        new double[] {40, 40, 40, 40, 40, 40},
        new double[] {q, -q, q, -q, q, -q});
  }

  /** Three squares round a corner of a cube: their folds meet in one point, so it is rigid. */
  static Sample cubeCorner() {
    Vec3 o = v(0, 0, 0);
    Vec3 x = v(50, 0, 0);
    Vec3 y = v(0, 50, 0);
    Vec3 z = v(0, 0, 50);
    Sample s = new Sample();
    s.panel("xy", o, x, x.plus(y), y)
        .panel("yz", o, y, y.plus(z), z)
        .panel("zx", o, z, z.plus(x), x);
    s.fold("x", "zx", "xy", o, x).fold("y", "xy", "yz", o, y).fold("z", "yz", "zx", o, z);
    return s.fixed("xy");
  }

  static List<Double> closing(Sample s) {
    List<Double> gaps = new ArrayList<>();
    for (Sample.Fold f : s.folds) {
      List<Vec3> a = s.panels.getOrDefault(f.a(), List.of());
      gaps.add(Math.min(a.get(0).distance(f.from()), a.get(0).distance(f.to())));
    }
    return gaps;
  }
}
