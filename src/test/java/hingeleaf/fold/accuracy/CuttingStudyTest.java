package hingeleaf.fold.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Rest;
import hingeleaf.fold.Budget;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.Linkage;
import hingeleaf.fold.Rests;
import hingeleaf.geom.Vec3;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stages that are not cut true: closed forms, the engine, and the statistics of trials. */
class CuttingStudyTest {
  @ParameterizedTest
  @CsvSource({
    // Far side longer by delta; jam heights by the law of cosines at 40 digits (worked elsewhere).
    "0.01, 0.5108595737525392",
    "0.05, 1.1432612277810234",
    "0.1, 1.6184835407253644",
    "0.25, 2.566942037981318",
    "0.5, 3.6487323068016884",
    "1.0, 5.212073326382969",
    "2.0, 7.515732990603806",
  })
  void longerFarSide_jamsAtTheClosedForm(double delta, double height) {
    FourBar stage = new FourBar(150, 12, 150, 12 + delta);
    assertThat(stage.jamHeight(1)).isCloseTo(height, within(1e-9));
    assertThat(stage.misfit(1)).isCloseTo(-delta, within(1e-12));
    // mirrored: the same stage seen from the other end
    FourBar mirrored = new FourBar(150, 12 + delta, 150, 12);
    assertThat(mirrored.jamHeight(-1)).isCloseTo(height, within(1e-9));
  }

  @Test
  void samePieces_gluedStandingJam_gluedFlatLieFlat() {
    // Trade case: panel 150.5 on hinges 150 apart, sides 12: 3.30 mm up, or a tab 0.5 mm over.
    FourBar standing = new FourBar(150, 12, 150.5, 12);
    assertThat(standing.jamHeight(1)).isCloseTo(3.30, within(0.006));
    assertThat(standing.jamHeight(-1)).isCloseTo(3.30, within(0.006));
    FourBar flat = standing.gluedFlat(1);
    assertThat(flat.jamHeight(1)).isZero();
    assertThat(flat.base() - standing.base()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void jamHeights_areThoseOfTheEngine() {
    Random random = new Random(7);
    int compared = 0;
    for (int n = 0; n < 24; n++) {
      FourBar links =
          new FourBar(
              100 + random.nextDouble(),
              12 + random.nextDouble(),
              100 + random.nextDouble(),
              12 + random.nextDouble());
      Mechanism m = mechanism(links);
      Linkage linkage = Linkage.of(m, Budget.of(1_000_000));
      Rests rests = linkage.rests(false, Budget.of(1_000_000));
      for (int lean : new int[] {-1, 1}) {
        double near = lean > 0 ? links.first() : links.second();
        double far = lean > 0 ? links.second() : links.first();
        if (links.panel() - far >= links.base() - near) {
          continue; // the far side is stopped by the table, of which a bare linkage knows nothing
        }
        compared++;
        assertThat(heights(linkage, rests, m))
            .as("%s leaning %d", links, lean)
            .anySatisfy(h -> assertThat(h).isCloseTo(links.jamHeight(lean), within(1e-6)));
      }
    }
    assertThat(compared).isGreaterThan(12);
  }

  /** How high the higher of the two upper folds stands in each rest. */
  private static List<Double> heights(Linkage linkage, Rests rests, Mechanism m) {
    Rests.Choice only = rests.choices().get(0);
    return java.util.stream.IntStream.range(0, only.ways().size())
        .mapToObj(i -> linkage.rest(rests, new int[] {i}))
        .map(
            p ->
                m.facets().get(2).outline().stream()
                    .mapToDouble(c -> p.motions().get(2).apply(c).z())
                    .max()
                    .orElseThrow())
        .toList();
  }

  /** A four-bar in the pose in which its first side is upright. */
  private static Mechanism mechanism(FourBar f) {
    double dx = f.base();
    double dz = -f.first();
    double apart = Math.hypot(dx, dz);
    // upper right fold from circles about the upper left fold and the right foot
    double along = (f.panel() * f.panel() - f.second() * f.second() + apart * apart) / (2 * apart);
    double off = Math.sqrt(f.panel() * f.panel() - along * along);
    double x = along * dx / apart - off * dz / apart;
    double z = f.first() + along * dz / apart + off * dx / apart;
    Vec3[] at = {
      new Vec3(0, 0, 0), new Vec3(0, 0, f.first()), new Vec3(x, 0, z), new Vec3(f.base(), 0, 0)
    };
    List<Mechanism.Facet> facets =
        List.of(
            strip("ground", at[0], at[3]),
            strip("first", at[0], at[1]),
            strip("panel", at[1], at[2]),
            strip("second", at[2], at[3]));
    int[][] pairs = {{0, 1}, {1, 2}, {2, 3}, {3, 0}};
    List<Joint> joints = new java.util.ArrayList<>();
    for (int i = 0; i < 4; i++) {
      joints.add(
          new Joint.Hinge(
              "fold" + i,
              pairs[i][0],
              pairs[i][1],
              at[i],
              at[i].plus(new Vec3(0, 50, 0)),
              Double.NaN));
    }
    return new Mechanism(facets, joints, List.of(), List.of(0));
  }

  private static Mechanism.Facet strip(String id, Vec3 a, Vec3 b) {
    Vec3 up = new Vec3(0, 50, 0);
    return new Mechanism.Facet(id, List.of(a, b, b.plus(up), a.plus(up)), List.of(), 0.3);
  }

  @Test
  void effects_countTheSecondSideTwice_onACutBack_andOnceOnAnIdenticalFrame() {
    // misfit leaning right = 2 u3 - u1 - u4 - base; the base of the first stage is the back's cut
    // width, of the others the same settings' u3 - u2, so they give u3 + u2 - u1 - u4.
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 3, 0.356);
    Rest right = leaning(made, 1);
    CuttingReport r = CuttingStudy.of(made, right, 1);
    assertThat(r.parts()).hasSize(3);
    assertThat(r.parts().get(0).effects().stream().map(CuttingReport.Effect::perMm))
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
        .containsExactly(-1.0, 0.0, 2.0, -1.0, -1.0);
    assertThat(r.parts().get(0).effects().get(4).fold()).isEqualTo("edge of back");
    assertThat(r.parts().get(1).effects().stream().map(CuttingReport.Effect::perMm))
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
        .containsExactly(-1.0, 1.0, 1.0, -1.0);
    assertThat(r.parts().get(0).worstMisfit()).isCloseTo(5, within(1e-9));
    assertThat(r.parts().get(1).worstMisfit()).isCloseTo(4, within(1e-9));
    assertThat(r.watch()).isEqualTo("far/side-right");
  }

  @Test
  void trials_agreeWithTheExactDistribution() {
    // One stage leaning right: the misfit is 2 e3 - e1 - e4 - ec with four uniform errors. The
    // chance that it is within 1 mm, by integrating that density numerically.
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 1, 0.356);
    CuttingReport r = CuttingStudy.of(made, leaning(made, 1), 1);
    double exact = chanceWithin(1.0);
    assertThat(exact).isBetween(r.lands().least(), r.lands().most());
    assertThat(r.trials()).isEqualTo(2000);
    assertThat(r.lands().most() - r.lands().least()).isLessThan(0.05);
  }

  /** P(|2 e3 - e1 - e4 - ec| <= x) for uniform errors within 1: a grid of midpoints. */
  private static double chanceWithin(double x) {
    int n = 60;
    long in = 0;
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        for (int c = 0; c < n; c++) {
          double rest = 2 * mid(a, n) - mid(b, n) - mid(c, n);
          double low = Math.max(-1, rest - x);
          double high = Math.min(1, rest + x);
          in += Math.round(Math.max(0, high - low) / 2 * 1_000_000);
        }
      }
    }
    return in / 1e6 / n / n / n;
  }

  private static double mid(int i, int n) {
    return -1 + (2.0 * i + 1) / n;
  }

  @Test
  void carefulHands_doBetter_andTheSameSeedTellsTheSame() {
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 3, 0.356);
    Rest rest = leaning(made, 1);
    CuttingReport careful = CuttingStudy.of(made, rest, 0.05);
    CuttingReport average = CuttingStudy.of(made, rest, 1);
    assertThat(careful.standing().share()).isEqualTo(1);
    assertThat(average.standing().share()).isLessThan(0.5);
    assertThat(CuttingStudy.of(made, rest, 1)).isEqualTo(average);
    assertThatThrownBy(() -> CuttingStudy.of(made, rest, 0))
        .hasMessage("the accuracy must be more than 0, it is 0.0");
  }

  private static Rest leaning(MadeCard made, int lean) {
    return FlatStates.of(made, 16).states().stream()
        .filter(r -> r.leans().stream().allMatch(l -> l == lean))
        .findFirst()
        .orElseThrow();
  }
}
