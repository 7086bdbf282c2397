package hingeleaf.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets and skew linkages (see {@link SpatialSamples} for the sources). */
class SpatialTest {
  private static Budget budget() {
    return Budget.of(5_000_000);
  }

  @ParameterizedTest
  @CsvSource({"2,2", "3,3", "4,3", "5,6"})
  void miuraFromAFoldedPose(int nx, int ny) {
    Sample s = SpatialSamples.miura(nx, ny, 0.6, 0.05, 0.3, 0.9, 1.3, Math.PI / 2 - 0.01);
    assertThat(Linkage.of(s.mechanism(), budget()).mobility(budget())).isEqualTo(1);
    DriveTest.check(s);
  }

  @ParameterizedTest
  @CsvSource({"2,2", "3,3", "4,3"})
  void miuraFromTheFlatSheetNearRoughAngles(int nx, int ny) {
    DriveTest.check(SpatialSamples.miura(nx, ny, 0, 0.1, 0.3, 0.9, 1.3));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void miuraDisguised(long seed) {
    DriveTest.check(Disguise.of(SpatialSamples.miura(3, 3, 0.6, 0.1, 0.9, 1.4), seed));
    DriveTest.check(Disguise.of(SpatialSamples.miura(3, 2, 0, 0.2, 0.9), seed));
  }

  @Test
  void bennettMovesThoughTheCountSaysItCannot() {
    double start = 1.2;
    Sample s = SpatialSamples.bennett(start);
    Linkage l = Linkage.of(s.mechanism(), budget());
    assertThat(l.bodies()).isEqualTo(4);
    assertThat(l.mobility(budget())).isEqualTo(1);
    double second = SpatialSamples.bennettTurn(0.6, 1.1, start);
    for (double t : new double[] {0.4, 0.9, 1.9, 2.6}) {
      Drive d = l.drive(Map.of("j0", t - start), Map.of(), budget());
      assertThat(d.reached()).as(d.why()).isTrue();
      assertThat(d.posed().gap()).isLessThan(1e-11);
      double want = SpatialSamples.bennettTurn(0.6, 1.1, t) - second;
      assertThat(d.posed().values().get(1)).isCloseTo(want, within(1e-9));
      assertThat(d.posed().values().get(2)).isCloseTo(-(t - start), within(1e-9));
    }
  }

  @Test
  void bricardMovesInSixFold() {
    double start = 1.3;
    Sample s = SpatialSamples.bricard(start);
    Linkage l = Linkage.of(s.mechanism(), budget());
    assertThat(l.mobility(budget())).isEqualTo(1);
    double other = SpatialSamples.bricardTurn(start);
    for (double t : new double[] {1.0, 1.6, 2.0}) {
      Drive d = l.drive(Map.of("j0", t - start), Map.of(), budget());
      assertThat(d.reached()).as(d.why()).isTrue();
      assertThat(d.posed().gap()).isLessThan(1e-11);
      assertThat(d.posed().values().get(2)).isCloseTo(t - start, within(1e-9));
      assertThat(d.posed().values().get(1))
          .isCloseTo(SpatialSamples.bricardTurn(t) - other, within(1e-9));
    }
  }

  @Test
  void aCubeCornerIsRigid() {
    Linkage l = Linkage.of(SpatialSamples.cubeCorner().mechanism(), budget());
    assertThat(l.mobility(budget())).isZero();
    Drive d = l.drive(Map.of("x", 0.1), Map.of(), budget());
    assertThat(d.reached()).isFalse();
    assertThat(d.why()).contains("fold x").contains("held fast");
  }
}
