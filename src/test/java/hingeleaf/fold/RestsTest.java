package hingeleaf.fold;

import static hingeleaf.fold.Sample.v;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Posed;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RestsTest {
  private static Budget budget() {
    return Budget.of(5_000_000);
  }

  /** A stack of stages, each frame on two sides; the last frames of stages are one panel. */
  static Sample stack(int stages, double w, double h, double d) {
    Sample s = new Sample();
    for (int i = 0; i <= stages; i++) {
      double z = i * d;
      s.panel("f" + i, v(0, 0, z), v(w, 0, z), v(w, h, z), v(0, h, z));
    }
    for (int i = 0; i < stages; i++) {
      for (String e : List.of("L", "R")) {
        double x = e.equals("L") ? 0 : w;
        double z = i * d;
        s.panel(i + e, v(x, 0, z), v(x, 0, z + d), v(x, h, z + d), v(x, h, z));
        s.fold("a" + i + e, "f" + i, i + e, v(x, 0, z), v(x, h, z));
        s.fold("b" + i + e, i + e, "f" + (i + 1), v(x, 0, z + d), v(x, h, z + d));
      }
    }
    return s.fixed("f0");
  }

  /** Change-point parallelogram (McCarthy and Soh, Geometric Design of Linkages, 2011, ch. 2). */
  @Test
  void aStageLeansLeftOrRight() {
    Linkage l = Linkage.of(stack(1, 150, 150, 12).mechanism(), budget());
    Rests rests = l.rests(false, budget());
    assertThat(rests.complete()).isTrue();
    assertThat(rests.count()).isEqualTo(2);
    List<Double> shifts = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Posed p = l.rest(rests, new int[] {i});
      Vec3 corner = p.motions().get(1).apply(v(0, 0, 12));
      assertThat(corner.z()).isCloseTo(0, within(1e-12));
      assertThat(p.gap()).isLessThan(1e-12);
      shifts.add(corner.x());
    }
    assertThat(shifts).containsExactlyInAnyOrder(-12.0, 12.0);
  }

  @Test
  void twelveStagesAreCountedAndComposed() {
    Linkage l = Linkage.of(stack(12, 150, 100, 12).mechanism(), budget());
    Rests rests = l.rests(false, budget());
    assertThat(rests.choices()).hasSize(12);
    assertThat(rests.count()).isEqualTo(4096);
    int[] pick = new int[12];
    for (int i = 0; i < 12; i += 2) {
      pick[i] = 1;
    }
    Posed p = l.rest(rests, pick);
    Vec3 last = p.motions().get(12).apply(v(0, 0, 144));
    assertThat(last.x()).isCloseTo(0, within(1e-10));
    assertThat(last.z()).isCloseTo(0, within(1e-10));
    assertThat(p.gap()).isLessThan(1e-11);
  }

  @Test
  void ranksWithoutBuildingTheProduct() {
    Linkage l = Linkage.of(stack(12, 150, 100, 12).mechanism(), budget());
    Rests rests = l.rests(false, budget());
    List<int[]> best = rests.ranked((c, w) -> w.direction() > 0 ? c + 1.0 : 0, 4);
    assertThat(best).hasSize(4);
    List<Double> sums = new ArrayList<>();
    for (int[] pick : best) {
      double sum = 0;
      for (int c = 0; c < 12; c++) {
        sum += rests.choices().get(c).ways().get(pick[c]).direction() > 0 ? c + 1 : 0;
      }
      sums.add(sum);
    }
    // The least sums of distinct numbers from 1..12: none, 1, 2, and 3 (alone or as 1 + 2).
    assertThat(sums).containsExactly(0.0, 1.0, 2.0, 3.0);
  }

  @Test
  void aTubeFoldsToEitherSide() {
    Linkage l = Linkage.of(Samples.boxTube(100, 70, 120).mechanism(), budget());
    Rests rests = l.rests(false, budget());
    assertThat(rests.count()).isEqualTo(2);
    assertThat(rests.choices().get(0).ways()).allMatch(RestState::coplanar);
  }

  @Test
  void aFlatVertexFoldsUpInFourWays() {
    Linkage l = Linkage.of(Samples.degree4(70, 50).mechanism(), budget());
    Rests rests = l.rests(true, budget());
    // Unfolded, and two modes each with mountains and valleys exchanged; the closed states of a
    // mode and its mirror are the same place for the panels, and so are folds of pi and -pi.
    assertThat(rests.choices()).hasSize(1);
    assertThat(rests.choices().get(0).ways()).allMatch(RestState::coplanar);
    assertThat(rests.count()).isGreaterThanOrEqualTo(2);
  }

  @Test
  void aConcertinaGapLiesFlat() {
    Linkage l = Linkage.of(Samples.concertina(2).mechanism(), budget());
    Rests rests = l.rests(false, budget());
    assertThat(rests.choices()).hasSize(2);
    for (Rests.Choice c : rests.choices()) {
      assertThat(c.ways()).isNotEmpty();
      assertThat(c.ways()).allMatch(RestState::coplanar);
    }
  }

  @Test
  void fourWallsHaveNoChoice() {
    Rests rests = Linkage.of(Samples.fourWalls().mechanism(), budget()).rests(false, budget());
    assertThat(rests.choices()).isEmpty();
    assertThat(rests.complete()).isTrue();
  }
}
