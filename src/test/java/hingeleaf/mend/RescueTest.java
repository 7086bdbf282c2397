package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.finding.Level;
import hingeleaf.fold.accuracy.StageFit;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.stock.BuiltInBench;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Pieces that came out otherwise. Sizes of the fitted card are checked against the condition that a
 * four-bar lies flat: leaning to its second side where the feet stand panel + first - second apart
 * (both sides and the panel on one line; any textbook on mechanisms, "change point").
 */
class RescueTest {
  /** As in the worked case: three frames of 150, sides and tabs of 12. */
  private static Pack start() {
    return SamplePacks.of(SamplePacks.stack(""), BuiltInBench.metric(), 1);
  }

  private static Rescued rescued(Pack start, List<String> measured, String... cut) {
    MeasureReader.Outcome read = MeasureReader.read(start, measured, List.of(cut));
    assertThat(read).isInstanceOf(MeasureReader.Outcome.Read.class);
    Rescue.Outcome outcome = Rescue.of(start, ((MeasureReader.Outcome.Read) read).measures());
    assertThat(outcome).as("%s", outcome).isInstanceOf(Rescue.Outcome.Done.class);
    return ((Rescue.Outcome.Done) outcome).rescued();
  }

  private static Rescued.Row row(Rescued r, String piece) {
    return r.rows().stream().filter(x -> x.piece().equals(piece)).findFirst().orElseThrow();
  }

  private static List<String> graves(Pack pack) {
    return pack.problems().stream()
        .filter(p -> p.level() != Level.NOTES)
        .map(p -> p.message())
        .toList();
  }

  /** Every stage of the new card closes flat one way, worked out here from its pieces. */
  private static void liesFlat(Pack pack) {
    assertThat(graves(pack)).isEmpty();
    for (StageFit s : StageFit.of(pack.made())) {
      double right = s.links().first() + s.links().panel() - s.links().second();
      double left = s.links().second() + s.links().panel() - s.links().first();
      double off = Math.min(Math.abs(right - s.links().base()), Math.abs(left - s.links().base()));
      assertThat(off).as(s.piece()).isCloseTo(0, within(1e-3));
    }
  }

  @Test
  void narrowPanelWithOneDeepSide_isStillGood_andWhatStandsOnItFollows() {
    // 13 + 149 = 12 + 150: on a back of 150 it lies flat leaning right.
    Rescued r = rescued(start(), List.of("far.width=149", "far.side.left=13"));
    assertThat(row(r, "far").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "far").words()).contains("lay the frame flat to the right");
    assertThat(row(r, "back").verdict()).isEqualTo(Rescued.Verdict.AS_DESIGNED);
    assertThat(row(r, "middle").verdict()).isEqualTo(Rescued.Verdict.CUT_OTHERWISE);
    assertThat(row(r, "middle").width()).isEqualTo(149);
    assertThat(row(r, "middle").flatWidth()).isEqualTo(197); // 149 + 2 x 12 + 2 x 12
    assertThat(row(r, "middle").scores()).containsExactly(12.0, 24.0, 173.0, 185.0);
    liesFlat(r.pack());
  }

  @Test
  void onePanelShort_andNothingElseCut_makesAllAsNarrow() {
    Rescued r = rescued(start(), List.of("far.width=149"));
    for (String piece : List.of("back", "middle", "near")) {
      assertThat(row(r, piece).verdict()).as(piece).isEqualTo(Rescued.Verdict.CUT_OTHERWISE);
      assertThat(row(r, piece).width()).as(piece).isEqualTo(149);
    }
    assertThat(r.text()).contains("width: 149").doesNotContain("side-depths");
    assertThat(r.post()).anyMatch(s -> s.startsWith("folded flat: 185 x 150 mm"));
    liesFlat(r.pack());
  }

  @Test
  void cutPiecesTooUnlike_oneIsRecut() {
    Rescued r = rescued(start(), List.of("far.width=147"), "far", "middle");
    assertThat(row(r, "far").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(r, "far").words()).contains("misses the cut pieces beside it");
    assertThat(row(r, "middle").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "far").width()).isEqualTo(150);
    liesFlat(r.pack());
  }

  @Test
  void shortFrame_othersAreTrimmedOrCutAsHigh() {
    Rescued r = rescued(start(), List.of("far.height=149"), "back", "far", "middle");
    assertThat(row(r, "far").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "middle").verdict()).isEqualTo(Rescued.Verdict.TRIM);
    assertThat(row(r, "back").verdict()).isEqualTo(Rescued.Verdict.TRIM);
    assertThat(row(r, "near").verdict()).isEqualTo(Rescued.Verdict.CUT_OTHERWISE);
    assertThat(row(r, "near").height()).isEqualTo(149);
    liesFlat(r.pack());
  }

  @Test
  void farTooShort_isRecut_andTheOthersKeepTheirHeight() {
    Rescued r = rescued(start(), List.of("far.height=140"));
    assertThat(row(r, "far").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(r, "near").height()).isEqualTo(150);
  }

  @Test
  void openingTooWide_costsSight_andIsHelpedByNarrowerTabs() {
    // Tabs of 12 on a border of (150 - 128) / 2 = 11.
    Rescued r = rescued(start(), List.of("far.aperture=128"));
    assertThat(row(r, "far").verdict()).isIn(Rescued.Verdict.STILL_GOOD, Rescued.Verdict.TRIM);
    assertThat(row(r, "middle").verdict()).isEqualTo(Rescued.Verdict.CUT_OTHERWISE);
    assertThat(row(r, "middle").scores().get(0)).isEqualTo(11);
    assertThat(r.sight()).contains("far is now hidden"); // behind the opening of 110 in front
    assertThat(graves(r.pack())).isEmpty();
  }

  @Test
  void tabUnderSixMillimetres_isRecut() {
    Rescued r = rescued(start(), List.of("near.tab.left=5"));
    assertThat(row(r, "near").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(r, "near").words()).contains("under 6 mm holds badly");
  }

  /** A design tells tabs up to 100 mm, and a card of 20 mm or more. */
  @Test
  void sizesThatNoDesignTells_areRecut() {
    for (String measured : List.of("far.tab=101", "far.width=15", "far.side=0.5")) {
      Rescued r = rescued(start(), List.of(measured));
      assertThat(row(r, "far").verdict()).as(measured).isEqualTo(Rescued.Verdict.RECUT);
      assertThat(r.text()).isEqualTo(start().inputs().design().tree().source().text());
    }
  }

  @Test
  void sidesTooUnlike_areRecut() {
    // atan(8 / 150) = 3.05 degrees
    Rescued r = rescued(start(), List.of("far.side.left=20"));
    assertThat(row(r, "far").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(r, "far").words()).contains("3.1 degrees");
  }

  @Test
  void measuredThickness_goesToPilesAndPost() {
    Pack start = start();
    Rescued r = rescued(start, List.of("white-300.thickness=0.41"));
    double was = start.flats().states().get(start.best()).rigid();
    double is = r.pack().flats().states().get(r.pack().best()).rigid();
    double t = start.card().piece("far").stock().thickness();
    assertThat(is / was).isCloseTo(0.41 / t, within(1e-9)); // all layers are of this paper
    assertThat(r.bench()).containsExactly("thickness 0.41 mm at the stock white-300");
    assertThat(r.text()).isEqualTo(start.inputs().design().tree().source().text());
  }

  @Test
  void measuredDie_givesItsOpeningToThePieceThatItCuts() {
    // The built-in bench has a die circle-90, which cuts the opening of far.
    Rescued r = rescued(start(), List.of("die.circle-90.cut=91.5"));
    assertThat(r.text()).contains("{name: far, aperture: {circle: 91.5}}");
    assertThat(row(r, "far").verdict()).isEqualTo(Rescued.Verdict.CUT_OTHERWISE);
    assertThat(r.bench()).containsExactly("cut 91.5 x 91.5 mm at the die circle-90");
  }

  @Test
  void commentsAndOrderOfTheDesignStay() {
    String yaml =
        SamplePacks.stack("# the end\n")
            .replace("tab: 12", "tab: 12   # wide enough")
            .replace("square: 126", "square: 124");
    Pack start = SamplePacks.of(yaml, BuiltInBench.metric(), 1);
    Rescued r = rescued(start, List.of("far.width=149", "far.side.left=13"));
    assertThat(r.text())
        .isEqualTo(
            yaml.replace("{circle: 90}}", "{circle: 90}, width: 149, side-depths: [13, 12]}")
                .replace("{circle: 110}}", "{circle: 110}, width: 149}")
                .replace("{square: 124}}", "{square: 124}, width: 149}"));
  }

  @Test
  void sidesAtTopAndBottom_areMeasuredByThoseWords() {
    String yaml = SamplePacks.stack("").replace("tab: 12", "tab: 12\n    sides: top-bottom");
    Pack start = SamplePacks.of(yaml, BuiltInBench.metric(), 1);
    Rescued r = rescued(start, List.of("far.height=149", "far.side.bottom=13"));
    assertThat(row(r, "far").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "middle").height()).isEqualTo(149);
    liesFlat(r.pack());
  }

  @Test
  void tabsFoldedOut_areFittedToo() {
    String yaml =
        SamplePacks.stack("")
            .replace("tab: 12", "tab: 12\n    tabs: out")
            .replace("width: 150", "width: 222")
            .replace("square: 126", "square: 90")
            .replace("circle: 110", "circle: 90");
    Pack start = SamplePacks.of(yaml, BuiltInBench.metric(), 1);
    assertThat(graves(start)).isEmpty();
    Rescued r = rescued(start, List.of("far.width=197"), "far"); // 198 designed
    assertThat(row(r, "far").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    liesFlat(r.pack());
  }

  @Test
  void inchesStayInches_andWhatIsUntouchedStaysAsDesigned() {
    Pack start = SamplePacks.example("harvest-supper.yaml");
    Rescued r = rescued(start, List.of("barn.width=6 7/16")); // sides at top and bottom
    assertThat(r.text()).contains("width: 6 7/16");
    assertThat(row(r, "barn").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "field").verdict()).isEqualTo(Rescued.Verdict.CUT_OTHERWISE);
    assertThat(row(r, "hare").verdict()).isEqualTo(Rescued.Verdict.AS_DESIGNED);
    assertThat(row(r, "pane").verdict()).isEqualTo(Rescued.Verdict.AS_DESIGNED);
  }

  /** Random slips: always an answer, always a card that lies flat or a piece to recut. */
  @Test
  void randomSlips_alwaysEndInACardThatIsGood() {
    Random random = new Random(20);
    Pack start = start();
    for (int n = 0; n < 4; n++) {
      List<String> measured =
          List.of(
              "far.width=" + slip(random, 150),
              "middle.side.right=" + slip(random, 12),
              "middle.width=" + slip(random, 150));
      Rescued r = rescued(start, measured, "far", "middle", n % 2 == 0 ? "near" : "back");
      assertThat(graves(r.pack())).as("%s", measured).isEmpty();
      for (Rescued.Row row : r.rows()) {
        boolean kept = row.verdict() == Rescued.Verdict.STILL_GOOD;
        if (kept && row.piece().equals("far")) {
          assertThat(measured.get(0)).isEqualTo("far.width=" + Said.yaml(r.pack(), row.width()));
        }
      }
    }
  }

  private static String slip(Random random, int mm) {
    return String.valueOf(mm + random.nextInt(13) / 4.0 - 1.5).replaceAll("\\.0$", "");
  }
}
