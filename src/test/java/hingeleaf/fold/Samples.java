package hingeleaf.fold;

import static hingeleaf.fold.Sample.v;
import static java.lang.Math.PI;
import static java.lang.Math.acos;
import static java.lang.Math.atan;
import static java.lang.Math.atan2;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;
import static java.lang.Math.tan;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Mechanisms whose poses are known in closed form, each with its source. */
final class Samples {
  private Samples() {}

  static List<Sample> all() {
    return List.of(
        stage(150, 107, 10.7),
        boxTube(100, 70, 120),
        vFold(30, 75),
        vFold(45, 60),
        parallelBox(30, 40),
        fourWalls(),
        concertina(3),
        degree4(70, 50),
        degree4(100, 35));
  }

  /**
   * One frame on two equal sides with tabs glued to both frames. A parallelogram (elementary): the
   * frame keeps its direction and moves by d sin t across and d (1 - cos t) down.
   */
  static Sample stage(double w, double h, double d) {
    Sample s = new Sample();
    s.panel("back", v(0, 0, 0), v(w, 0, 0), v(w, h, 0), v(0, h, 0));
    s.panel("front", v(0, 0, d), v(w, 0, d), v(w, h, d), v(0, h, d));
    for (String side : List.of("L", "R")) {
      double x = side.equals("L") ? 0 : w;
      double in = side.equals("L") ? 8 : w - 8;
      s.panel("wall" + side, v(x, 0, 0), v(x, 0, d), v(x, h, d), v(x, h, 0));
      s.panel("lo" + side, v(x, 0, 0), v(in, 0, 0), v(in, h, 0), v(x, h, 0));
      s.panel("hi" + side, v(x, 0, d), v(in, 0, d), v(in, h, d), v(x, h, d));
      s.fold("a" + side, "lo" + side, "wall" + side, v(x, 0, 0), v(x, h, 0));
      s.fold("b" + side, "wall" + side, "hi" + side, v(x, 0, d), v(x, h, d));
      s.glue("lo" + side, "back").glue("hi" + side, "front");
    }
    s.fixed("back");
    for (double t : new double[] {-PI / 2, -1.3, -0.5, 0, 1e-3, 0.9, PI / 2 - 1e-3, PI / 2}) {
      double x = d * sin(t);
      double z = d * cos(t);
      s.ask(
          Map.of("aL", t),
          Map.of(),
          Map.of("front", List.of(v(x, 0, z), v(w + x, 0, z), v(w + x, h, z), v(x, h, z))),
          Map.of("aL", t, "bL", -t, "aR", t, "bR", -t));
    }
    return s;
  }

  /** A tube of four walls with a strip parallel to the front: two parallelograms share a wall. */
  static Sample boxTube(double w, double d, double h) {
    Sample s = new Sample();
    s.panel("front", v(0, 0, 0), v(w, 0, 0), v(w, 0, h), v(0, 0, h));
    s.panel("right", v(w, 0, 0), v(w, d, 0), v(w, d, h), v(w, 0, h));
    s.panel("back", v(0, d, 0), v(w, d, 0), v(w, d, h), v(0, d, h));
    s.panel("left", v(0, 0, 0), v(0, d, 0), v(0, d, h), v(0, 0, h));
    s.fold("fr", "front", "right", v(w, 0, 0), v(w, 0, h));
    s.fold("rb", "right", "back", v(w, d, 0), v(w, d, h));
    s.fold("bl", "back", "left", v(0, d, 0), v(0, d, h));
    s.fold("lf", "left", "front", v(0, 0, 0), v(0, 0, h));
    for (double y : new double[] {20, 45}) {
      String n = y == 20 ? "1" : "2";
      s.panel("strip" + n, v(0, y, 60), v(w, y, 60), v(w, y, 90), v(0, y, 90));
      s.panel("tl" + n, v(0, y, 60), v(0, y + 8, 60), v(0, y + 8, 90), v(0, y, 90));
      s.panel("tr" + n, v(w, y, 60), v(w, y + 8, 60), v(w, y + 8, 90), v(w, y, 90));
      s.fold("sl" + n, "tl" + n, "strip" + n, v(0, y, 60), v(0, y, 90));
      s.fold("sr" + n, "strip" + n, "tr" + n, v(w, y, 60), v(w, y, 90));
      s.glue("tl" + n, "left").glue("tr" + n, "right");
    }
    s.fixed("front");
    for (double t : new double[] {-PI / 2, -1, -0.2, 0.4, 1.3, PI / 2}) {
      // The side wall (0, d) turned by t about the fold.
      double x = -d * sin(t);
      double y = d * cos(t);
      s.ask(
          Map.of("fr", t),
          Map.of(),
          Map.of(
              "back", List.of(v(x, y, 0), v(w + x, y, 0), v(w + x, y, h), v(x, y, h)),
              "left", List.of(v(0, 0, 0), v(x, y, 0), v(x, y, h), v(0, 0, h))),
          Map.of("sl1", -t, "sr2", t));
    }
    return s;
  }

  /**
   * Two facets over a centre fold, glue lines at angle a to it and facet angle g, in degrees. The
   * ridge stands in the bisecting plane at angle b to the fold, where cos a cos b + sin a sin b
   * cos(opening/2) = cos g (spherical law of cosines).
   */
  static Sample vFold(double aDeg, double gDeg) {
    double a = Math.toRadians(aDeg);
    double g = Math.toRadians(gDeg);
    double p = 80;
    double r = 90;
    Sample s = new Sample();
    double open = PI / 2;
    Vec3 o = v(0, 60, 0);
    s.panel("L", v(0, 0, 0), leaf(100, 0, -open), leaf(100, 150, -open), v(0, 150, 0));
    s.panel("R", v(0, 0, 0), leaf(100, 0, open), leaf(100, 150, open), v(0, 150, 0));
    Vec3 footL = o.plus(leaf(p * sin(a), p * cos(a), -open));
    Vec3 footR = o.plus(leaf(p * sin(a), p * cos(a), open));
    Vec3 tip = o.plus(ridge(a, g, open, r));
    s.panel("fL", o, footL, tip).panel("fR", o, footR, tip);
    s.fold("gutter", "L", "R", v(0, 0, 0), v(0, 150, 0));
    s.fold("cL", "L", "fL", o, footL).fold("ridge", "fL", "fR", o, tip);
    s.fold("cR", "fR", "R", o, footR);
    s.fixed("L");
    for (double now : new double[] {0, 1e-3, 0.02, 0.5, 1.2, 2.4, PI - 0.1}) {
      // The left leaf stays, so the bisecting frame turns about the fold.
      Rigid turn = Rigid.rotation(v(0, 0, 0), v(0, 1, 0), (now - open) / 2);
      Vec3 moved = turn.apply(o.plus(ridge(a, g, now, r)));
      Vec3 right = turn.apply(o.plus(leaf(p * sin(a), p * cos(a), now)));
      s.ask(
          Map.of("gutter", now - open),
          Map.of(),
          Map.of("fL", List.of(o, footL, moved), "fR", List.of(o, right, moved)),
          Map.of());
    }
    return s;
  }

  /** A point of a leaf that leans half the opening to the right (or left) of the z axis. */
  private static Vec3 leaf(double out, double up, double opening) {
    return v(out * sin(opening / 2), up, out * cos(opening / 2));
  }

  private static Vec3 ridge(double a, double g, double opening, double r) {
    double c = cos(opening / 2);
    double b =
        atan2(sin(a) * c, cos(a)) + acos(cos(g) / sqrt(cos(a) * cos(a) + sin(a) * sin(a) * c * c));
    return v(0, r * cos(b), r * sin(b));
  }

  /** A box on a two-leaf base, l out on the left and r on the right: a parallelogram. */
  static Sample parallelBox(double l, double r) {
    Sample s = new Sample();
    s.panel("L", v(0, 0, 0), v(-100, 0, 0), v(-100, 140, 0), v(0, 140, 0));
    s.panel("R", v(0, 0, 0), v(0, 0, 100), v(0, 140, 100), v(0, 140, 0));
    s.panel("fL", v(-l, 40, 0), v(-l, 40, r), v(-l, 90, r), v(-l, 90, 0));
    s.panel("fR", v(0, 40, r), v(-l, 40, r), v(-l, 90, r), v(0, 90, r));
    s.fold("gutter", "L", "R", v(0, 0, 0), v(0, 140, 0));
    s.fold("cL", "L", "fL", v(-l, 40, 0), v(-l, 90, 0));
    s.fold("ridge", "fL", "fR", v(-l, 40, r), v(-l, 90, r));
    s.fold("cR", "fR", "R", v(0, 40, r), v(0, 90, r));
    s.fixed("L");
    for (double t : new double[] {-PI / 2, -1.4, -0.7, 0.3, 1.1, PI / 2}) {
      double x = r * sin(t);
      double z = r * cos(t);
      s.ask(
          Map.of("gutter", t),
          Map.of(),
          Map.of(
              "fR", List.of(v(x, 40, z), v(x - l, 40, z), v(x - l, 90, z), v(x, 90, z)),
              "fL", List.of(v(-l, 40, 0), v(x - l, 40, z), v(x - l, 90, z), v(-l, 90, 0))),
          Map.of("cL", t, "ridge", -t, "cR", t));
    }
    return s;
  }

  /** A frame on four walls: two crossed parallelograms lock each other (elementary); rigid. */
  static Sample fourWalls() {
    Sample s = new Sample();
    s.panel("lo", v(0, 0, 0), v(100, 0, 0), v(100, 80, 0), v(0, 80, 0));
    s.panel("hi", v(0, 0, 12), v(100, 0, 12), v(100, 80, 12), v(0, 80, 12));
    Vec3[] c = {v(0, 0, 0), v(100, 0, 0), v(100, 80, 0), v(0, 80, 0)};
    Vec3 up = v(0, 0, 12);
    for (int i = 0; i < 4; i++) {
      Vec3 p = c[i];
      Vec3 q = c[(i + 1) % 4];
      s.panel("w" + i, p, q, q.plus(up), p.plus(up));
      s.fold("l" + i, "lo", "w" + i, p, q).fold("h" + i, "w" + i, "hi", p.plus(up), q.plus(up));
    }
    return s.fixed("lo");
  }

  /** Frames on pleated sides: each gap a planar loop of six folds with three freedoms. */
  static Sample concertina(int gaps) {
    double w = 120;
    double h = 90;
    double side = 15;
    double rise = side * sqrt(3) / 2;
    Sample s = new Sample();
    Map<String, List<Vec3>>[] at = frames(gaps, w, h, side, 0);
    at[0].forEach((id, o) -> s.panel(id, o.toArray(new Vec3[0])));
    for (int i = 0; i < gaps; i++) {
      for (String e : List.of("L", "R")) {
        double x = e.equals("L") ? 0 : w;
        double out = e.equals("L") ? -side / 2 : w + side / 2;
        double z = 2 * rise * i;
        s.fold(i + e + "a", "f" + i, i + e + "1", v(x, 0, z), v(x, h, z));
        s.fold(i + e + "m", i + e + "1", i + e + "2", v(out, 0, z + rise), v(out, h, z + rise));
        s.fold(
            i + e + "b", i + e + "2", "f" + (i + 1), v(x, 0, z + 2 * rise), v(x, h, z + 2 * rise));
      }
    }
    s.fixed("f0");
    for (double t : new double[] {0.4, 0.1, -0.3, -0.9, -PI / 3}) {
      Map<String, Double> drive = new TreeMap<>();
      for (int i = 0; i < gaps; i++) {
        drive.put(i + "La", t);
        drive.put(i + "Lm", -2 * t);
        drive.put(i + "Ra", -t);
      }
      s.ask(drive, Map.of(), frames(gaps, w, h, side, t)[0], Map.of());
    }
    return s;
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Map<String, List<Vec3>>[] frames(
      int gaps, double w, double h, double side, double t) {
    // The pleat leans 30 degrees outwards in the reference pose; folding by t stands it up.
    double x = side * sin(PI / 6 - t);
    double z = side * cos(PI / 6 - t);
    Map<String, List<Vec3>> out = new TreeMap<>();
    for (int i = 0; i <= gaps; i++) {
      double b = 2 * z * i;
      out.put("f" + i, List.of(v(0, 0, b), v(w, 0, b), v(w, h, b), v(0, h, b)));
      for (String e : i < gaps ? List.of("L", "R") : List.<String>of()) {
        double s = e.equals("L") ? 0 : w;
        double m = e.equals("L") ? -x : w + x;
        out.put(i + e + "1", List.of(v(s, 0, b), v(m, 0, b + z), v(m, h, b + z), v(s, h, b)));
        out.put(
            i + e + "2",
            List.of(v(m, 0, b + z), v(s, 0, b + 2 * z), v(s, h, b + 2 * z), v(m, h, b + z)));
      }
    }
    return new Map[] {out};
  }

  /**
   * A flat-foldable vertex of degree 4 with sectors a, b, pi - a, pi - b (Kawasaki-Justin), flat in
   * the reference pose. Opposite folds are equal or opposite, and the tangents of half the fold
   * angles are in ratio p (R. J. Lang and L. Howell, J. Mechanisms Robotics 10(2) 021004, 2018).
   */
  static Sample degree4(double aDeg, double bDeg) {
    double a = Math.toRadians(aDeg);
    double b = Math.toRadians(bDeg);
    double[] sector = {a, b, PI - a, PI - b};
    Sample s = new Sample();
    double at = 0;
    Vec3[] rim = new Vec3[4];
    for (int i = 0; i < 4; i++) {
      rim[i] = v(60 * cos(at), 60 * sin(at), 0);
      at += sector[i];
    }
    for (int i = 0; i < 4; i++) {
      s.panel("s" + i, v(0, 0, 0), rim[i], rim[(i + 1) % 4]);
    }
    for (int i = 0; i < 4; i++) {
      s.fold("c" + i, "s" + (i + 3) % 4, "s" + i, v(0, 0, 0), rim[i]);
    }
    s.fixed("s3");
    double p1 = cos((a + b) / 2) / cos((a - b) / 2);
    double p2 = sin((a - b) / 2) / sin((a + b) / 2);
    for (double t : new double[] {0.15, 0.8, 1.9, 2.9, PI}) {
      double u = t == PI ? PI * Math.signum(p1) : 2 * atan(p1 * tan(t / 2));
      vertex(s, "c0", t, new double[] {t, -u, t, u}, rim);
      double w = t == PI ? PI * Math.signum(p2) : 2 * atan(p2 * tan(t / 2));
      vertex(s, "c1", t, new double[] {w, t, -w, t}, rim);
    }
    return s;
  }

  private static void vertex(Sample s, String driven, double t, double[] folds, Vec3[] rim) {
    Map<String, Double> all = new TreeMap<>();
    Map<String, Double> near = new TreeMap<>();
    Rigid motion = Rigid.IDENTITY;
    Map<String, List<Vec3>> points = new TreeMap<>();
    for (int i = 0; i < 4; i++) {
      all.put("c" + i, folds[i]);
      near.put("c" + i, folds[i] + (i % 2 == 0 ? 0.03 : -0.02));
      motion = Rigid.rotation(v(0, 0, 0), rim[i], folds[i]).then(motion);
      if (i < 3) {
        points.put("s" + i, List.of(v(0, 0, 0), motion.apply(rim[i]), motion.apply(rim[i + 1])));
      }
    }
    s.ask(Map.of(driven, t), near, points, all);
  }
}
