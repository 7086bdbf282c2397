package hingeleaf.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Posed;
import hingeleaf.geom.Box;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import hingeleaf.structure.SampleStacks;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Piles of stacked frames laid flat by the closed form of a shearing stage: theta from upright
 * moves the layer in front by x = d sin(theta), z = d cos(theta) (parallelogram four-bar,
 * elementary).
 */
class PilesTest {
  @Test
  void allLeaningLeft_is186Wide_fiveLayers() {
    // Worked by hand: W + 3 d = 150 + 36; strips of 12 with 2, 4, 5, 5 layers from -36, 4 over the
    // middle, then 5, 4, 3; the sum of layers x width is 744 = 150 + 3 x 198.
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 3, 0.356);
    Posed flat = sheared(made, List.of(-1, -1, -1), Math.PI / 2);
    Box box = Piles.footprint(made, flat);
    assertThat(box.width()).isCloseTo(186, within(1e-9));
    assertThat(box.height()).isCloseTo(150, within(1e-9));
    assertThat(box.minX()).isCloseTo(-75 - 36, within(1e-9));
    Piles.Pile pile = Piles.of(made, flat, sheared(made, List.of(-1, -1, -1), Math.PI / 2 - 0.01));
    assertThat(pile.layers()).isEqualTo(5);
    assertThat(pile.limp()).isCloseTo(5 * 0.356, within(1e-9));
    assertThat(pile.layered()).isCloseTo(744 * 150, within(0.1));
    assertThat(pile.acyclic()).isTrue();
    // Rigid: from the back up, every tab and panel of the three frames can lie over one another in
    // one chain at the left: back, tab, side, far, tab, side, middle, tab, side, near.
    assertThat(pile.rigid()).isGreaterThanOrEqualTo(pile.limp());
    assertThat(pile.chain().get(0)).isEqualTo("back/panel");
    assertThat(pile.chain().get(pile.chain().size() - 1)).isEqualTo("near/panel");
  }

  @Test
  void alternating_needsOneSideMore_notThree() {
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 3, 0.356);
    assertThat(Piles.footprint(made, sheared(made, List.of(-1, 1, -1), Math.PI / 2)).width())
        .isCloseTo(162, within(1e-9));
  }

  @Test
  void layeredAreaEqualsSumOfPanelAreas_forEveryPattern() {
    MadeCard made = SampleStacks.plain(140, 100, 9, 8, 3, 0.3);
    double areas = made.panels().stream().mapToDouble(p -> p.region().area()).sum();
    for (int bits = 0; bits < 8; bits++) {
      List<Integer> leans =
          List.of((bits & 1) == 0 ? -1 : 1, (bits & 2) == 0 ? -1 : 1, (bits & 4) == 0 ? -1 : 1);
      Piles.Pile pile =
          Piles.of(
              made, sheared(made, leans, Math.PI / 2), sheared(made, leans, Math.PI / 2 - 0.01));
      assertThat(pile.layered()).as("leans %s", leans).isCloseTo(areas, within(0.1));
      assertThat(pile.acyclic()).isTrue();
    }
  }

  /** Every stage sheared by theta from upright, left (-1) or right (1). */
  static Posed sheared(MadeCard made, List<Integer> leans, double theta) {
    List<Rigid> motions = new ArrayList<>();
    for (var panel : made.panels()) {
      int stage = SampleStacks.stage(panel.piece());
      double d = SampleStacks.side(made);
      double x = 0;
      double z = 0;
      for (int k = 0; k < stage; k++) {
        x += leans.get(k) * d * Math.sin(theta);
        z += d * Math.cos(theta) - d;
      }
      motions.add(motion(made, panel, stage, leans, theta, new Vec3(x, 0, z)));
    }
    List<Double> zero = made.mechanism().joints().stream().map((Joint j) -> 0.0).toList();
    return new Posed(motions, zero, 0);
  }

  private static Rigid motion(
      MadeCard made,
      hingeleaf.card.Panel panel,
      int stage,
      List<Integer> leans,
      double theta,
      Vec3 moved) {
    if (panel.name().equals("panel") || stage == 0) {
      return Rigid.translation(moved);
    }
    // Tabs move with the layer behind; sides turn about their foot by lean x theta about y.
    double d = SampleStacks.side(made);
    int lean = leans.get(stage - 1);
    Vec3 behind = moved.minus(new Vec3(lean * d * Math.sin(theta), 0, d * Math.cos(theta) - d));
    if (panel.name().startsWith("tab")) {
      return Rigid.translation(behind);
    }
    double x = panel.made().apply(panel.region().box().centre()).x();
    double foot = d * (stage - 1);
    Rigid turn = Rigid.rotation(new Vec3(x, 0, foot), new Vec3(x, 1, foot), lean * theta);
    return turn.then(Rigid.translation(behind));
  }

  /**
   * All leaning left, with tabs as wide as sides: W + n d wide; the sum of layers x width is that
   * of the pieces, W + n (W + 2 d + 2 t); and n + 2 layers at most, as in the worked case (strips
   * counted by hand for one, two and three stages).
   */
  @ParameterizedTest
  @CsvSource({
    "150, 150, 12, 3", // the worked case: 186, 5 layers, 744
    "150, 150, 12, 1",
    "150, 150, 12, 2",
    "148, 105, 8, 3",
    "177.8, 127, 12.7, 3", // 7 x 5 in, sides of 1/2 in
    "177.8, 127, 12.7, 2",
    "100, 100, 10, 1",
    "210, 148, 15, 3",
    "90, 140, 6.35, 2",
  })
  void allLeaningLeft_isTheSumOfItsPieces(double width, double height, double side, int frames) {
    MadeCard made = SampleStacks.plain(width, height, side, side, frames, 0.3);
    List<Integer> left = List.of(-1, -1, -1).subList(0, frames);
    Posed flat = sheared(made, left, Math.PI / 2);
    assertThat(Piles.footprint(made, flat).width()).isCloseTo(width + frames * side, within(1e-9));
    Piles.Pile pile = Piles.of(made, flat, sheared(made, left, Math.PI / 2 - 0.01));
    assertThat(pile.layers()).isEqualTo(frames + 2);
    assertThat(pile.layered() / height)
        .isCloseTo(width + frames * (width + 4 * side), within(1e-3));
  }
}
