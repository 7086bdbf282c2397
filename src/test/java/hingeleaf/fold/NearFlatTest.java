package hingeleaf.fold;

import static hingeleaf.fold.Sample.v;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Vec3;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reference poses at, and a hair off, singular states: a parallelogram (elementary). */
class NearFlatTest {
  private static final double W = 150;
  private static final double D = 12;

  private static Budget budget() {
    return Budget.of(2_000_000);
  }

  /** Four panels round a parallelogram whose side leans {@code t} from upright. */
  static Sample leaning(double t) {
    Sample s = new Sample();
    Vec3 up = v(0, 100, 0);
    double x = D * Math.sin(t);
    double z = D * Math.cos(t);
    Vec3[] p = {v(0, 0, 0), v(W, 0, 0), v(W + x, 0, z), v(x, 0, z)};
    for (int i = 0; i < 4; i++) {
      Vec3 q = p[(i + 1) % 4];
      s.panel("p" + i, p[i], q, q.plus(up), p[i].plus(up));
      s.fold("j" + i, "p" + (i + 3) % 4, "p" + i, p[i], p[i].plus(up));
    }
    return s.fixed("p0");
  }

  /** Turns the side from one lean to another and looks where the front's corner went. */
  private static void turn(double from, double to) {
    Sample s = leaning(from);
    Drive d =
        Linkage.of(s.mechanism(), budget()).drive(Map.of("j0", from - to), Map.of(), budget());
    assertThat(d.reached()).as("%s to %s: %s", from, to, d.why()).isTrue();
    Vec3 corner = v(D * Math.sin(from), 0, D * Math.cos(from));
    Vec3 got = d.posed().motions().get(2).apply(corner);
    assertThat(got.distance(v(D * Math.sin(to), 0, D * Math.cos(to))))
        .as("%s to %s", from, to)
        .isLessThan(1e-9);
    assertThat(d.posed().gap()).isLessThan(1e-11);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 3e-3, 0.01, 0.05, 0.3})
  void aReferenceNearFlatStaysOnItsBranch(double off) {
    double flat = Math.PI / 2;
    for (double to : new double[] {-flat, -flat + 1e-3, -1, 0.3, flat - 0.02, flat - 1e-3, flat}) {
      turn(flat - off, to);
      turn(-flat + off, to);
    }
  }

  @Test
  void outOfFlatTheParallelogramIsMeant() {
    turn(Math.PI / 2, 1);
    turn(Math.PI / 2, -Math.PI / 2);
    turn(-Math.PI / 2, 1e-3);
  }

  @Test
  void aFlatStageIsOneFreedomThoughItLooksLikeTwo() {
    Linkage l = Linkage.of(leaning(Math.PI / 2).mechanism(), budget());
    assertThat(l.regular(budget())).isFalse();
    assertThat(l.mobility(budget())).isEqualTo(1);
    assertThat(l.freedomsAt(l.at(new double[4]))).isEqualTo(2);
  }

  /** Law of cosines: the two links beyond a fold stretched straight end its travel. */
  @Test
  void anUnreachableDriveNamesTheTurningPoint() {
    Sample s = new Sample();
    Vec3 up = v(0, 30, 0);
    Vec3[] p = {v(0, 0, 0), v(60, 0, 0), v(50, 0, 40), v(0, 0, 25)};
    for (int i = 0; i < 4; i++) {
      Vec3 q = p[(i + 1) % 4];
      s.panel("p" + i, p[i], q, q.plus(up), p[i].plus(up));
      s.fold("j" + i, "p" + (i + 3) % 4, "p" + i, p[i], p[i].plus(up));
    }
    s.fixed("p0");
    double a = p[1].distance(p[2]);
    double b = p[2].distance(p[3]);
    double now = Math.acos((a * a + b * b - (60 * 60 + 25 * 25)) / (2 * a * b));
    double open = Math.acos((a * a + b * b - 85 * 85) / (2 * a * b));
    double shut = Math.acos((a * a + b * b - 35 * 35) / (2 * a * b));
    Linkage l = Linkage.of(s.mechanism(), budget());
    for (double sign : new double[] {-1, 1}) {
      Drive d = l.drive(Map.of("j2", sign * 2), Map.of(), budget());
      assertThat(d.reached()).isFalse();
      assertThat(d.why()).contains("fold j2 cannot be brought to");
      double travel = Math.abs(d.posed().values().get(2));
      double want = Math.abs(travel - (open - now)) < 0.01 ? open - now : now - shut;
      assertThat(travel).isCloseTo(want, within(1e-9));
      assertThat(d.posed().gap()).isLessThan(1e-11);
    }
  }

  /** Two drives on one freedom: fine where they agree, told where they do not. */
  @Test
  void tooManyDrivesMustAgree() {
    Linkage l = Linkage.of(leaning(0).mechanism(), budget());
    assertThat(l.drive(Map.of("j0", 0.4, "j2", 0.4), Map.of(), budget()).reached()).isTrue();
    Drive d = l.drive(Map.of("j0", 0.4, "j2", 0.5), Map.of(), budget());
    assertThat(d.reached()).isFalse();
    assertThat(d.why()).contains("the nearest is");
  }

  /** Fewer drives than freedoms: the least turn from the reference, whatever the path. */
  @Test
  void whatIsNotDrivenTurnsLeast() {
    Sample s = Samples.concertina(1);
    Linkage l = Linkage.of(s.mechanism(), budget());
    Drive d = l.drive(Map.of("0La", 0.3, "0Ra", -0.3), Map.of(), budget());
    assertThat(d.reached()).isTrue();
    // Symmetric drives, symmetric answer, and no neighbour of it turns less.
    assertThat(d.posed().values().get(1)).isCloseTo(-d.posed().values().get(4), within(1e-9));
    double least = squares(d);
    for (double by : new double[] {-0.02, 0.02}) {
      double knee = d.posed().values().get(1) + by;
      Drive other = l.drive(Map.of("0La", 0.3, "0Ra", -0.3, "0Lm", knee), Map.of(), budget());
      assertThat(other.reached()).isTrue();
      assertThat(squares(other)).isGreaterThan(least);
    }
  }

  private static double squares(Drive d) {
    return d.posed().values().stream().mapToDouble(x -> x * x).sum();
  }
}
