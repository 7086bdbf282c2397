package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.Piles;
import hingeleaf.fold.contact.Designs;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The work that stays and leaves make, and what they add to the flat card. */
class StayPlanTest {
  private static MadeCard made(String mechanisms) {
    return Designs.card(
        Designs.stack(
            150,
            150,
            12,
            "    - {name: far, aperture: {rect: [70, 70]}}\n    - {name: near, aperture: {rect: [90, 90]}}\n",
            mechanisms.isEmpty() ? "" : "mechanisms:\n" + mechanisms));
  }

  private static List<Step> steps(String mechanisms) {
    Bench bench = BuiltInBench.metric();
    var card = made(mechanisms).card();
    CutList cuts = CutList.of(card.pieces(), bench);
    return WorkPlan.of(card, cuts, ScoreChart.of(cuts, bench), bench, MakerUnits.of(Unit.MM))
        .steps();
  }

  private static int number(List<Step> steps, String title) {
    return steps.stream()
        .filter(s -> s.title().startsWith(title))
        .mapToInt(Step::number)
        .findFirst()
        .orElseThrow(() -> new AssertionError(title + " is not among " + steps));
  }

  @ParameterizedTest
  @ValueSource(strings = {"base-tab", "belly-strip", "slot-lock", "fold-down-brace"})
  void everyStayIsSetAndLetGoAgain_beforeTheLastTrial(String sort) {
    List<Step> steps = steps("  - " + sort + ": {name: stay, stock: white-300}\n");
    Step set = steps.get(steps.size() - 2);
    assertThat(set.kind()).isEqualTo(Step.Kind.FINISH);
    assertThat(set.title()).isEqualTo("Set “stay” and let it go again");
    assertThat(set.whole()).contains("To set it: ").contains("Before posting: ");
    assertThat(steps.get(steps.size() - 1).kind()).isEqualTo(Step.Kind.CHECK);
    // The stay adds one paper at most to what the papers stack to standing: two sides, three
    // papers.
    assertThat(steps.get(steps.size() - 1).check()).contains("about 25 mm deep");
  }

  @Test
  void braceIsHungBeforeItsStageIsClosed_strapsBehindTheCardLast() {
    List<Step> steps =
        steps(
            "  - fold-down-brace: {name: brace, stock: white-300}\n"
                + "  - fold-down-brace: {name: second, on: far, stock: white-300}\n"
                + "  - belly-strip: {name: belly, stock: white-300}\n");
    int far = number(steps, "Glue the left tab of “far”");
    int near = number(steps, "Glue the left tab of “near”");
    assertThat(number(steps, "Hang “brace”")).isLessThan(far);
    assertThat(number(steps, "Hang “second”")).isBetween(far, near);
    assertThat(number(steps, "Hang “belly”")).isGreaterThan(number(steps, "Close “near”"));
  }

  @Test
  void leafIsHungBeforeTheNextFrameIsClosedOverIt() {
    List<Step> steps =
        steps(
            "  - door: {name: gate, on: back, width: 30, height: 40, stock: navy-220}\n"
                + "  - base-tab: {name: stay, stock: white-300}\n");
    assertThat(number(steps, "Hang “gate”"))
        .isLessThan(number(steps, "Glue the left tab of “far”"));
  }

  @Test
  void slitOfALayerIsToldByItsPlace() {
    List<Step> steps = steps("  - belly-strip: {name: stay, stock: white-300, at: 5}\n");
    Step open = steps.stream().filter(s -> s.kind() == Step.Kind.OPEN).findFirst().orElseThrow();
    // 20 wide and 1 to slip in, 5 right of the middle of a panel that begins 10 + 12 in.
    assertThat(open.whole())
        .contains(
            "near: slit 21 mm long, level, its end 91.5 mm from the left edge and 145 mm from the"
                + " lower");
  }

  @ParameterizedTest
  @ValueSource(strings = {"base-tab", "belly-strip", "slot-lock", "fold-down-brace"})
  void flatCardHoldsItsStay(String sort) {
    MadeCard with = made("  - " + sort + ": {name: stay, stock: white-300}\n");
    double areas = with.panels().stream().mapToDouble(p -> p.region().area()).sum();
    Rest best = FlatStates.of(with, 8).states().get(0);
    MadeCard without = made("");
    Rest bare =
        FlatStates.of(without, 8).states().stream()
            .filter(r -> r.leans().equals(best.leans()))
            .findFirst()
            .orElseThrow();
    // Sum over all spots of area times layers is the area of all papers, the stay's among them.
    Piles.Pile pile = Piles.of(with, best.posed(), best.posed());
    assertThat(pile.layered()).isCloseTo(areas, within(0.5));
    assertThat(best.limp()).isBetween(bare.limp(), bare.limp() + 3 * 0.356 + 1e-9);
    assertThat(best.width()).isCloseTo(bare.width(), within(1e-9));
    assertThat(best.height()).isCloseTo(bare.height(), within(1e-9));
  }
}
