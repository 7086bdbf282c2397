package hingeleaf.fold;

import static hingeleaf.fold.Sample.v;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Theorems and worked figures from outside, each with its source. */
class OutsideChecksTest {
  private static Budget budget() {
    return Budget.of(2_000_000);
  }

  private static Drive drive(Sample s, Map<String, Double> to, Map<String, Double> near) {
    return Linkage.of(s.mechanism(), budget()).drive(to, near, budget());
  }

  /**
   * Maekawa's theorem: at a vertex that is folded flat, mountains and valleys differ by two (J.
   * Justin 1986; T. Kasahara and T. Takahama, Origami for the Connoisseur, 1987).
   */
  @ParameterizedTest
  @CsvSource({"c0, 70, 50", "c1, 70, 50", "c0, 100, 35", "c1, 40, 60"})
  void mountainsAndValleysDifferByTwo(String lead, double a, double b) {
    Drive d = drive(Samples.degree4(a, b), Map.of(lead, 3.0), Map.of());
    assertThat(d.reached()).isTrue();
    double sum = d.posed().values().stream().mapToDouble(Math::signum).sum();
    assertThat(Math.abs(sum)).isEqualTo(2);
  }

  /** Kawasaki-Justin: without opposite sectors that add up to a half turn nothing folds flat. */
  @Test
  void aVertexThatBreaksKawasakiDoesNotFoldFlat() {
    double[] sector = {Math.toRadians(80), Math.toRadians(85), Math.toRadians(95), 0};
    sector[3] = 2 * Math.PI - sector[0] - sector[1] - sector[2];
    Sample s = vertex(sector);
    Linkage l = Linkage.of(s.mechanism(), budget());
    Drive d = l.drive(Map.of("c0", Math.PI), Map.of(), budget());
    boolean flat =
        d.reached()
            && d.posed().values().stream()
                .allMatch(x -> Math.abs(Math.IEEEremainder(x, Math.PI)) < 1e-6);
    assertThat(flat).isFalse();
    // It moves all the same.
    assertThat(l.drive(Map.of("c0", 0.5), Map.of(), budget()).reached()).isTrue();
  }

  private static Sample vertex(double[] sector) {
    Sample s = new Sample();
    Vec3[] rim = new Vec3[sector.length];
    double at = 0;
    for (int i = 0; i < rim.length; i++) {
      rim[i] = v(50 * Math.cos(at), 50 * Math.sin(at), 0);
      at += sector[i];
    }
    for (int i = 0; i < rim.length; i++) {
      s.panel("s" + i, v(0, 0, 0), rim[i], rim[(i + 1) % rim.length]);
    }
    for (int i = 0; i < rim.length; i++) {
      s.fold("c" + i, "s" + (i + rim.length - 1) % rim.length, "s" + i, v(0, 0, 0), rim[i]);
    }
    return s.fixed("s" + (rim.length - 1));
  }

  /**
   * Belcastro and Hull (Linear Algebra and its Applications 348, 2002, 273-282): the rotations
   * about the creases of a vertex, where the creases lie in the flat sheet, multiply to nothing.
   */
  @ParameterizedTest
  @ValueSource(ints = {4, 5, 6, 8})
  void theRotationsRoundAVertexMultiplyToNothing(int n) {
    double[] sector = new double[n];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sector[i] = 1 + 0.3 * Math.sin(2.3 * i);
      sum += sector[i];
    }
    for (int i = 0; i < n; i++) {
      sector[i] *= 2 * Math.PI / sum;
    }
    Sample s = vertex(sector);
    Drive d = drive(s, Map.of("c1", 0.6), Map.of());
    assertThat(d.reached()).as(d.why()).isTrue();
    Rigid all = Rigid.IDENTITY;
    for (int i = 0; i < n; i++) {
      all = Rigid.rotation(v(0, 0, 0), s.folds.get(i).to(), d.posed().values().get(i)).then(all);
    }
    for (Vec3 p : new Vec3[] {v(1, 0, 0), v(0, 1, 0), v(0, 0, 1)}) {
      assertThat(all.apply(p).distance(p)).isLessThan(1e-12);
    }
  }

  /**
   * A degree-n vertex has n - 3 freedoms (spherical count; Chiang, Kinematics of Spherical
   * Mechanisms, 1988), though each flat one looks freer.
   */
  @ParameterizedTest
  @CsvSource({"4, 1", "5, 2", "6, 3"})
  void aVertexHasThreeFewerFreedomsThanCreases(int n, int freedoms) {
    double[] sector = new double[n];
    java.util.Arrays.fill(sector, 2 * Math.PI / n);
    sector[0] += 0.1;
    sector[1] -= 0.1;
    Linkage l = Linkage.of(vertex(sector).mechanism(), budget());
    Drive d = l.drive(Map.of("c0", 0.4), Map.of(), budget());
    assertThat(d.reached()).as(d.why()).isTrue();
    assertThat(l.freedomsAt(d.posed())).isEqualTo(freedoms);
  }

  /**
   * One stage, near side 12 and far side 12 + delta, near side laid flat: the front jams at height
   * sqrt(W^2 - x^2), x = (W^2 - d2^2 + (W - d)^2) / (2 (W - d)) (law of cosines).
   */
  @ParameterizedTest
  @CsvSource({
    "0.01, 0.5108595737525392",
    "0.1, 1.6184835407253644",
    "0.5, 3.6487323068016884",
    "2.0, 7.515732990603806"
  })
  void unequalSidesJamAtTheHeightOfTheLawOfCosines(double delta, double height) {
    double w = 150;
    double d = 12;
    double e = 12 + delta;
    // Upright near side; the far fold on the circles of radius e round (w, 0) and w round (0, d).
    double[] far = circles(0, d, w, w, 0, e);
    Sample s = new Sample();
    Vec3 up = v(0, 100, 0);
    Vec3[] p = {v(0, 0, 0), v(w, 0, 0), v(far[0], 0, far[1]), v(0, 0, d)};
    for (int i = 0; i < 4; i++) {
      Vec3 q = p[(i + 1) % 4];
      s.panel("p" + i, p[i], q, q.plus(up), p[i].plus(up));
      s.fold("j" + i, "p" + (i + 3) % 4, "p" + i, p[i], p[i].plus(up));
    }
    s.fixed("p0");
    // Panel 3 is the near side; laid flat towards +x it turns a quarter about the first fold.
    double sign = -1;
    Drive d1 = drive(s, Map.of("j0", sign * Math.PI / 2), Map.of());
    assertThat(d1.reached()).as(d1.why()).isTrue();
    Vec3 near = d1.posed().motions().get(3).apply(p[3]);
    Vec3 jam = d1.posed().motions().get(1).apply(p[2]);
    assertThat(near.distance(v(d, 0, 0))).isLessThan(1e-9);
    assertThat(Math.abs(jam.z())).isCloseTo(height, within(1e-9));
  }

  /** The upper crossing of two circles. */
  private static double[] circles(
      double x0, double y0, double r0, double x1, double y1, double r1) {
    double dx = x1 - x0;
    double dy = y1 - y0;
    double l = Math.hypot(dx, dy);
    double a = (r0 * r0 - r1 * r1 + l * l) / (2 * l);
    double h = Math.sqrt(r0 * r0 - a * a);
    return new double[] {x0 + (a * dx - h * dy) / l, y0 + (a * dy + h * dx) / l};
  }

  /**
   * The crossed parallelogram. With sides d at angles a and b to the base W, a coupler of length W
   * wants W (cos b - cos a) + d (1 - cos(a - b)) = 0: either a = b, or tan(b/2) / tan(a/2) = -(W +
   * d) / (W - d) (elementary; change points in McCarthy and Soh 2011, ch. 2).
   */
  @Test
  void theCrossedBranchIsThereToo() {
    double w = 150;
    double d = 12;
    Sample s = Samples.stage(w, 100, d);
    double t = 0.5;
    // Near side end in the cross-section, and the far fold on the two circles, lower crossing.
    Map<String, Double> near = Map.of("aL", t, "bL", -0.35, "aR", 2.75, "bR", -2.65);
    Drive r = drive(s, Map.of("aL", t), near);
    assertThat(r.reached()).as(r.why()).isTrue();
    Vec3 lo = r.posed().motions().get(1).apply(v(0, 0, d));
    Vec3 hi = r.posed().motions().get(1).apply(v(w, 0, d));
    // Far side: 12 from its fold, 150 from the near one's end, on the other side of the base.
    assertThat(hi.distance(v(w, 0, 0))).isCloseTo(d, within(1e-10));
    assertThat(lo.distance(hi)).isCloseTo(w, within(1e-10));
    assertThat(hi.z()).isNegative();
    assertThat(r.posed().gap()).isLessThan(1e-11);
    double a = Math.PI / 2 - t;
    double b = Math.atan2(hi.z(), hi.x() - w);
    double ratio = Math.tan(b / 2) / Math.tan(a / 2);
    assertThat(ratio).isCloseTo(-(w + d) / (w - d), within(1e-9));
  }

  @Test
  void aSpentBudgetIsToldNotHung() {
    Sample s = Samples.concertina(3);
    Linkage l = Linkage.of(s.mechanism(), budget());
    Drive d = l.drive(Map.of("0La", 0.4), Map.of(), Budget.of(3));
    assertThat(d.reached()).isFalse();
    assertThat(d.why()).contains("more steps than allowed");
    assertThat(l.rests(false, Budget.of(3)).complete()).isFalse();
  }

  @Test
  void aStopSignalEndsTheWork() {
    Linkage l = Linkage.of(Samples.concertina(3).mechanism(), budget());
    Drive d = l.drive(Map.of("0La", 0.4), Map.of(), Budget.of(1_000_000, () -> true));
    assertThat(d.reached()).isFalse();
  }
}
