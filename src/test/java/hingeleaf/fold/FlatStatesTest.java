package hingeleaf.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Flats;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.structure.SampleStacks;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Flat states of cards, by the engine, against the closed form of a shearing stage. */
class FlatStatesTest {
  @Test
  void engineAndClosedFormAgree_onEveryPatternListed() {
    for (int frames = 1; frames <= 3; frames++) {
      MadeCard made = SampleStacks.plain(150, 120, 12, 12, frames, 0.356);
      Flats engine = FlatStates.of(made, 8);
      Flats closed = ShearForm.of(made, 8);
      assertThat(engine.count()).isEqualTo(1L << frames);
      assertThat(engine.complete()).isTrue();
      assertThat(engine.states()).hasSameSizeAs(closed.states());
      for (Rest rest : engine.states()) {
        Rest same =
            closed.states().stream()
                .filter(r -> r.leans().equals(rest.leans()))
                .findFirst()
                .orElseThrow();
        assertThat(rest.width()).isCloseTo(same.width(), within(1e-9));
        assertThat(rest.height()).isCloseTo(same.height(), within(1e-9));
        assertThat(rest.limp()).isCloseTo(same.limp(), within(1e-9));
        assertThat(rest.rigid()).isCloseTo(same.rigid(), within(1e-9));
      }
    }
  }

  @Test
  void leastFootprint_neverExceedsCardPlusTheLongestSide() {
    // A folded carpenter's ruler fits twice its longest link (Hopcroft, Joseph & Whitesides, SIAM
    // J.
    // Comput. 14(2), 1985); the layers' offsets are such a ruler's joints, so the card's footprint
    // stays within its width plus 2 x the deepest side. With equal sides, alternating needs one
    // side.
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 3, 0.356);
    Rest best = FlatStates.of(made, 8).states().get(0);
    assertThat(best.width()).isCloseTo(162, within(1e-9));
    assertThat(best.width() - 150).isLessThanOrEqualTo(2 * 12);
  }

  @Test
  void outskirtsHaveTheFootprintOfAllPoints() {
    MadeCard made = SampleStacks.plain(150, 120, 12, 12, 3, 0.356);
    Outskirts outskirts = new Outskirts(made);
    for (Rest r : FlatStates.of(made, 8).states()) {
      Box all = Piles.footprint(made, r.posed());
      Box few = outskirts.footprint(r.posed().motions(), i -> true);
      assertThat(few.width()).isCloseTo(all.width(), within(1e-9));
      assertThat(few.height()).isCloseTo(all.height(), within(1e-9));
    }
  }

  @Test
  void hullOfASquareWithPointsInsideAndOnItsEdges_isItsCorners() {
    List<Vec2> points =
        List.of(
            new Vec2(0, 0),
            new Vec2(1, 0),
            new Vec2(2, 0),
            new Vec2(2, 2),
            new Vec2(0, 2),
            new Vec2(1, 1));
    assertThat(Outskirts.hull(points))
        .containsExactly(new Vec2(0, 0), new Vec2(2, 0), new Vec2(2, 2), new Vec2(0, 2));
  }

  @Test
  void firstOfTheList_isSmallestThenThinnest() {
    List<Rest> states = FlatStates.of(SampleStacks.plain(150, 150, 12, 12, 3, 0.3), 8).states();
    for (int i = 1; i < states.size(); i++) {
      double before = states.get(i - 1).width() * states.get(i - 1).height();
      double here = states.get(i).width() * states.get(i).height();
      assertThat(here).isGreaterThanOrEqualTo(before - 1);
      if (Math.abs(here - before) < 0.5) {
        assertThat(states.get(i).rigid()).isGreaterThanOrEqualTo(states.get(i - 1).rigid() - 1e-9);
      }
    }
    assertThat(states.get(states.size() - 1).width()).isCloseTo(186, within(1e-9));
  }

  /**
   * Theorem of the carpenter's ruler laid along a line (Hopcroft, Joseph &amp; Whitesides 1985): a
   * pattern of leans reaches from its least to its largest sum of signed depths. All patterns are
   * tried here by these sums alone.
   */
  @Test
  void listedAreTheLeastOfAll_whateverTheDepths() {
    Random random = new Random(11);
    for (int round = 0; round < 12; round++) {
      List<Double> sides = new ArrayList<>();
      for (int i = 0; i < 4 + round % 4; i++) {
        sides.add(4.0 + random.nextInt(9));
      }
      Flats flats = FlatStates.of(SampleStacks.ofDepths(120, 100, sides, 4), 8);
      List<Double> widths = new ArrayList<>();
      for (int leans = 0; leans < 1 << sides.size(); leans++) {
        widths.add(120 + reach(sides, leans));
      }
      Collections.sort(widths);
      assertThat(flats.complete()).isTrue();
      assertThat(flats.count()).isEqualTo(widths.size());
      assertThat(flats.states()).hasSize(4);
      for (int i = 0; i < 4; i++) {
        assertThat(flats.states().get(i).width())
            .as(sides + ", number " + i)
            .isCloseTo(widths.get(i), within(1e-9));
      }
    }
  }

  private static double reach(List<Double> sides, int leans) {
    double at = 0;
    double least = 0;
    double most = 0;
    for (int i = 0; i < sides.size(); i++) {
      at += (leans >> i & 1) == 1 ? sides.get(i) : -sides.get(i);
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return most - least;
  }
}
