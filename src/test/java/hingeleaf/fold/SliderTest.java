package hingeleaf.fold;

import static hingeleaf.fold.Sample.v;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.geom.Vec3;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Sliders and pivots beside folds. */
class SliderTest {
  private static final double CRANK = 20;
  private static final double ROD = 50;

  private static Budget budget() {
    return Budget.of(1_000_000);
  }

  private static Mechanism.Facet strip(String id, Vec3 p, Vec3 q) {
    Vec3 up = v(0, 30, 0);
    return new Mechanism.Facet(id, List.of(p, q, q.plus(up), p.plus(up)), List.of(), 0);
  }

  /** A crank that lies along x, a rod on, and a block in a guide along x. */
  private static Mechanism sliderCrank(double least, double most) {
    Vec3 o = v(0, 0, 0);
    Vec3 a = v(0, 0, CRANK);
    Vec3 b = v(Math.sqrt(ROD * ROD - CRANK * CRANK), 0, 0);
    Vec3 up = v(0, 30, 0);
    List<Joint> joints =
        List.of(
            new Joint.Hinge("crank", 0, 1, o, o.plus(up), Double.NaN),
            new Joint.Hinge("knee", 1, 2, a, a.plus(up), Double.NaN),
            new Joint.Hinge("pin", 2, 3, b, b.plus(up), Double.NaN),
            new Joint.Slider("guide", 0, 3, v(1, 0, 0), least, most));
    return new Mechanism(
        List.of(
            strip("base", v(-10, 0, 0), o),
            strip("crank", o, a),
            strip("rod", a, b),
            strip("block", b, b.plus(v(10, 0, 0)))),
        joints,
        List.of(),
        List.of(0));
  }

  /** x = r cos t + sqrt(l^2 - r^2 sin^2 t), t from the guide (elementary slider-crank). */
  @Test
  void aSliderCrankFollowsItsFormula() {
    Linkage l = Linkage.of(sliderCrank(-100, 100), budget());
    assertThat(l.mobility(budget())).isEqualTo(1);
    double start = Math.sqrt(ROD * ROD - CRANK * CRANK);
    for (double turn : new double[] {-1.2, -0.4, 0.7, 1.3, 1.5}) {
      Drive d = l.drive(Map.of("crank", turn), Map.of(), budget());
      assertThat(d.reached()).as(d.why()).isTrue();
      double t = Math.PI / 2 - turn;
      double x = CRANK * Math.cos(t) + Math.sqrt(ROD * ROD - Math.pow(CRANK * Math.sin(t), 2));
      assertThat(d.posed().values().get(3)).isCloseTo(x - start, within(1e-9));
      assertThat(d.posed().gap()).isLessThan(1e-11);
    }
  }

  @Test
  void theBlockCanDriveTheCrank() {
    Linkage l = Linkage.of(sliderCrank(-100, 100), budget());
    double start = Math.sqrt(ROD * ROD - CRANK * CRANK);
    Drive d = l.drive(Map.of("guide", 15.0), Map.of(), budget());
    assertThat(d.reached()).as(d.why()).isTrue();
    // Law of cosines in the triangle crank, rod, guide.
    double x = start + 15;
    double t = Math.acos((CRANK * CRANK + x * x - ROD * ROD) / (2 * CRANK * x));
    assertThat(d.posed().values().get(0)).isCloseTo(Math.PI / 2 - t, within(1e-9));
  }

  /** Crank and rod stretched straight: the block can go no further than 70. */
  @Test
  void theBlockStopsWhereTheCrankIsStretched() {
    Linkage l = Linkage.of(sliderCrank(-100, 100), budget());
    Drive d = l.drive(Map.of("guide", 40.0), Map.of(), budget());
    assertThat(d.reached()).isFalse();
    double most = CRANK + ROD - Math.sqrt(ROD * ROD - CRANK * CRANK);
    assertThat(d.posed().values().get(3)).isCloseTo(most, within(1e-6));
    assertThat(d.why()).contains("guide").contains("mm");
  }

  @Test
  void aGuideStopsTheBlock() {
    Linkage l = Linkage.of(sliderCrank(-100, 12), budget());
    Drive d = l.drive(Map.of("guide", 15.0), Map.of(), budget());
    assertThat(d.reached()).isFalse();
    assertThat(d.why()).contains("it stops at 12.000000 mm");
  }

  /** A wheel on its seat is in no loop: it turns alone, and rests at either stop. */
  @Test
  void aWheelTurnsBetweenItsStops() {
    Mechanism m =
        new Mechanism(
            List.of(
                strip("seat", v(0, 0, 0), v(40, 0, 0)), strip("wheel", v(0, 0, 1), v(40, 0, 1))),
            List.of(new Joint.Pivot("wheel", 0, 1, v(20, 15, 0), v(0, 0, 1), -1, 2)),
            List.of(),
            List.of(0));
    Linkage l = Linkage.of(m, budget());
    assertThat(l.mobility(budget())).isEqualTo(1);
    Drive d = l.drive(Map.of("wheel", 0.5), Map.of(), budget());
    Vec3 hub = d.posed().motions().get(1).apply(v(20, 15, 1));
    assertThat(hub.distance(v(20, 15, 1))).isLessThan(1e-12);
    assertThat(l.drive(Map.of("wheel", 3.0), Map.of(), budget()).reached()).isFalse();
    Rests rests = l.rests(false, budget());
    assertThat(rests.choices().get(0).ways())
        .extracting(w -> w.values().get(0))
        .contains(-1.0, 2.0);
  }

  /** Rests with a slider: the block is drawn until its guide stops it. */
  @Test
  void aSliderRestsAtItsStops() {
    Rests rests = Linkage.of(sliderCrank(-8, 12), budget()).rests(true, budget());
    List<Double> guide =
        rests.choices().get(0).ways().stream().map(w -> w.values().get(3)).toList();
    assertThat(guide).anySatisfy(x -> assertThat(x).isCloseTo(12, within(1e-9)));
    assertThat(guide).anySatisfy(x -> assertThat(x).isCloseTo(-8, within(1e-9)));
  }
}
