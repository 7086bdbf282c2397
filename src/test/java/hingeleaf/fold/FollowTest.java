package hingeleaf.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class FollowTest {
  @Test
  void followsASliderBackAndForthAndIntoFlat() {
    Sample s = Samples.stage(150, 100, 12);
    Follow f = Follow.of(Linkage.of(s.mechanism(), Budget.of(10_000)), List.of("aL"), 10_000);
    for (int i = 0; i <= 200; i++) {
      // To flat on the left and back, in steps of about a degree.
      double t = -Math.PI / 2 * Math.sin(Math.PI * i / 200);
      assertThat(f.to(t)).isTrue();
      // A parallelogram: the other joints turn by the same angle. Nearer than 1e-3 rad to flat
      // the error may grow as 3e-14 over the distance from flat.
      double off = Math.PI / 2 + t;
      double bound = off < 1e-9 ? 1e-12 : 1e-12 + 3e-14 / off;
      for (int j = 0; j < 4; j++) {
        assertThat(Math.abs(f.values()[j])).isCloseTo(Math.abs(t), within(bound));
      }
      assertThat(f.posed().gap()).isLessThan(1e-11);
    }
  }

  @Test
  void staysWhereItWasWhenItCannotFollow() {
    Sample s = SpatialSamples.bricard(1.3);
    Follow f = Follow.of(Linkage.of(s.mechanism(), Budget.of(10_000)), List.of("j0"), 100_000);
    assertThat(f.to(0.5)).isTrue();
    double[] before = f.values().clone();
    assertThat(f.to(1.5)).isFalse();
    assertThat(f.values()).isEqualTo(before);
    assertThat(f.to(0.5)).isTrue();
    assertThat(f.values()[1]).isCloseTo(before[1], within(1e-9));
  }

  @Test
  void followsASheet() {
    Sample s = SpatialSamples.miura(6, 5, 0.6, 0.7, 0.8, 0.9, 1.0);
    Follow f = Follow.of(Linkage.of(s.mechanism(), Budget.of(100_000)), List.of("x0,0"), 100_000);
    for (Sample.Ask a : s.asks) {
      assertThat(f.to(a.drive().getOrDefault("x0,0", 0.0))).isTrue();
      for (int j = 0; j < s.folds.size(); j++) {
        double want = a.folds().getOrDefault(s.folds.get(j).id(), 9.0);
        assertThat(f.values()[j]).isCloseTo(want, within(1e-9));
      }
    }
  }
}
