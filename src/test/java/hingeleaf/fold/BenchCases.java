package hingeleaf.fold;

import static hingeleaf.fold.Sample.v;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Mechanisms to time, as something that moves back and forth a little at a time. */
public final class BenchCases {
  private static final long STEPS = 100_000_000;

  private BenchCases() {}

  /** One pose a call, warm. */
  public interface Stepper {
    boolean step();
  }

  /** 31 bodies, 36 folds, 6 planar loops: frames on pleated sides. */
  public static Stepper planar() {
    List<String> drivers = new ArrayList<>();
    List<Double> rate = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Collections.addAll(drivers, i + "La", i + "Lm", i + "Ra");
      Collections.addAll(rate, 1.0, -2.0, -1.0);
    }
    return follow(Samples.concertina(6), drivers, rate, 0.2);
  }

  /** 31 bodies, 36 folds, 6 general loops, each a linkage of its own. */
  public static Stepper generalParts() {
    return six(SpatialSamples.bricard(1.3), "j0");
  }

  /** 24 bodies, 24 folds, 6 spherical loops: six V-folds on six centre folds. */
  public static Stepper sphericalParts() {
    return six(Samples.vFold(45, 60), "gutter");
  }

  private static Stepper six(Sample one, String lead) {
    Sample all = new Sample();
    List<String> drivers = new ArrayList<>();
    List<Double> rate = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      String k = "k" + i;
      Vec3 off = v(200.0 * i, 0, 0);
      one.panels.forEach(
          (id, o) -> all.panel(k + id, o.stream().map(p -> p.plus(off)).toArray(Vec3[]::new)));
      one.folds.forEach(
          f -> all.fold(k + f.id(), k + f.a(), k + f.b(), f.from().plus(off), f.to().plus(off)));
      one.glue.forEach(g -> all.glue(k + g[0], k + g[1]));
      all.fixed(k + one.fixed.get(0));
      drivers.add(k + lead);
      rate.add(1.0);
    }
    return follow(all, drivers, rate, 0.2);
  }

  /** A Miura sheet of n x n panels: all folds hang on one. */
  public static Stepper sheet(int n) {
    Sample s = SpatialSamples.miura(n, n, 0.6);
    return follow(s, List.of("x0,0"), List.of(1.0), 0.1);
  }

  private static Stepper follow(Sample s, List<String> drivers, List<Double> rate, double reach) {
    Linkage l = Linkage.of(s.mechanism(), Budget.of(STEPS));
    Follow f = Follow.of(l, drivers, STEPS);
    double[] values = new double[drivers.size()];
    int[] i = {0};
    return () -> {
      double t = reach * Math.sin(0.05 * i[0]++);
      for (int k = 0; k < values.length; k++) {
        values[k] = t * rate.get(k);
      }
      return f.to(values);
    };
  }

  /** 24 triangles round 6 inner corners with folds held so that all six loops hang together. */
  public static Stepper coupled() {
    Sample s = triangles(3, 4, 5);
    Linkage l = Linkage.of(s.mechanism(), Budget.of(STEPS));
    Part part = l.parts().get(0);
    int n = s.folds.size();
    double[] zero = new double[n];
    List<Integer> joints = new ArrayList<>();
    for (int j : part.joints()) {
      joints.add(j);
    }
    Random random = new Random(3);
    for (int trial = 0; trial < 2000; trial++) {
      Collections.shuffle(joints, random);
      int free = part.size() - part.rows();
      boolean[] held = new boolean[n];
      joints.subList(0, free).forEach(j -> held[j] = true);
      Solver solver = new Solver(part, held, zero, false);
      double[] q = zero.clone();
      if (solver.together() == part.rows() && solver.solve(q) && solver.ratio > 1e-2) {
        return stepper(part, solver, joints.get(0), n);
      }
    }
    throw new IllegalStateException("no coupled choice of held folds found");
  }

  private static Stepper stepper(Part part, Solver solver, int lead, int n) {
    double[] q = new double[n];
    int[] i = {0};
    return () -> {
      q[lead] = 0.02 * Math.sin(0.05 * i[0]++);
      return solver.solve(q) && part.size() > 0;
    };
  }

  /** A sheet of triangles over a jittered grid, never flat. */
  static Sample triangles(int nx, int ny, long seed) {
    Random r = new Random(seed);
    Vec3[][] p = new Vec3[nx + 1][ny + 1];
    for (int i = 0; i <= nx; i++) {
      for (int j = 0; j <= ny; j++) {
        p[i][j] = v(10 * i + 2 * r.nextDouble(), 10 * j + 2 * r.nextDouble(), 5 * r.nextDouble());
      }
    }
    Sample s = new Sample();
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < ny; j++) {
        String at = i + "," + j;
        s.panel("a" + at, p[i][j], p[i + 1][j], p[i + 1][j + 1]);
        s.panel("b" + at, p[i][j], p[i + 1][j + 1], p[i][j + 1]);
        s.fold("d" + at, "a" + at, "b" + at, p[i][j], p[i + 1][j + 1]);
        if (j > 0) {
          s.fold("h" + at, "a" + at, "b" + i + "," + (j - 1), p[i][j], p[i + 1][j]);
        }
        if (i > 0) {
          s.fold("v" + at, "b" + at, "a" + (i - 1) + "," + j, p[i][j], p[i][j + 1]);
        }
      }
    }
    return s.fixed("a0,0");
  }

  /** The stage that the physics engine is compared on; see {@code SideBySide}. */
  public static double stageError(double t) {
    Sample s = Samples.stage(150, 100, 12);
    Linkage l = Linkage.of(s.mechanism(), Budget.of(STEPS));
    Drive d = l.drive(java.util.Map.of("aL", t), java.util.Map.of(), Budget.of(STEPS));
    Rigid front = d.posed().motions().get(1);
    Vec3 want = v(12 * Math.sin(t), 0, 12 * Math.cos(t));
    return Math.max(front.apply(v(0, 0, 12)).distance(want), d.posed().gap());
  }
}
