package hingeleaf.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Mechanism;
import hingeleaf.card.Posed;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Poses against closed forms (see {@link Samples} for the sources), plain and disguised. */
class DriveTest {
  private static final long STEPS = 1_000_000;

  @TestFactory
  List<DynamicTest> closedForms() {
    List<DynamicTest> tests = new ArrayList<>();
    int i = 0;
    for (Sample s : Samples.all()) {
      tests.add(DynamicTest.dynamicTest("sample " + i++, () -> check(s)));
    }
    return tests;
  }

  @TestFactory
  List<DynamicTest> disguised() {
    List<DynamicTest> tests = new ArrayList<>();
    int i = 0;
    for (Sample s : Samples.all()) {
      for (long seed = 0; seed < 12; seed++) {
        Sample d = Disguise.of(s, 1000 * i + seed);
        tests.add(DynamicTest.dynamicTest("sample " + i + " seed " + seed, () -> check(d)));
      }
      i++;
    }
    return tests;
  }

  static void check(Sample s) {
    Mechanism m = s.mechanism();
    Linkage linkage = Linkage.of(m, Budget.of(STEPS));
    for (Sample.Ask a : s.asks) {
      Drive d = linkage.drive(a.drive(), a.near(), Budget.of(STEPS));
      assertThat(d.reached()).as("%s %s", a.drive(), d.why()).isTrue();
      assertThat(d.posed().gap()).as("gap at %s", a.drive()).isLessThan(1e-11);
      a.points().forEach((id, o) -> points(m, d.posed(), id, o, a));
      for (int j = 0; j < m.joints().size(); j++) {
        Double want = a.folds().get(m.joints().get(j).id());
        if (want != null) {
          assertThat(d.posed().values().get(j))
              .as("%s at %s", m.joints().get(j).id(), a.drive())
              .isCloseTo(want, within(1e-9));
        }
      }
    }
  }

  private static void points(Mechanism m, Posed posed, String id, List<Vec3> want, Sample.Ask ask) {
    for (int f = 0; f < m.facets().size(); f++) {
      if (m.facets().get(f).id().equals(id)) {
        for (int k = 0; k < want.size(); k++) {
          Vec3 got = posed.motions().get(f).apply(m.facets().get(f).outline().get(k));
          assertThat(got.distance(want.get(k)))
              .as("%s corner %d at %s", id, k, ask.drive())
              .isLessThan(1e-9);
        }
      }
    }
  }

  static Drive drive(Sample s, Map<String, Double> targets) {
    return Linkage.of(s.mechanism(), Budget.of(STEPS)).drive(targets, Map.of(), Budget.of(STEPS));
  }
}
