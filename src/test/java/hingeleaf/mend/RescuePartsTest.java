package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.finding.Level;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.stock.BuiltInBench;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Leaves, stays and windows that came out otherwise. Places are worked out by hand from the sizes;
 * the designs are the examples and some of our own.
 */
class RescuePartsTest {
  private static final String STACK =
      """
      hingeleaf: 1
      title: Of our own
      unit: mm
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: 15
          tab: 10
          frames:
            - {name: far, aperture: {circle: 90}}
            - {name: near, aperture: {circle: 110}}
      mechanisms:
      """;

  private static final String SHUTTER =
      """
      hingeleaf: 1
      title: Shutter
      unit: mm
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: 15
          tab: 10
          frames:
            - {name: near, aperture: {rect: [40, 60], at: [40, 0]}}
      mechanisms:
        - door: {name: shutter, on: near, hinge: left, width: 30, height: 50, at: [-30, 0]}
      """;

  private static Pack house() {
    return SamplePacks.example("open-house.yaml");
  }

  private static Pack supper() {
    return SamplePacks.example("harvest-supper.yaml");
  }

  private static Pack pack(String yaml) {
    return SamplePacks.of(yaml, BuiltInBench.metric(), 1);
  }

  private static Rescued rescued(Pack start, String measured, String... cut) {
    MeasureReader.Outcome read =
        MeasureReader.read(start, List.of(measured.split(" ")), List.of(cut));
    assertThat(read).as(measured).isInstanceOf(MeasureReader.Outcome.Read.class);
    Rescue.Outcome outcome = Rescue.of(start, ((MeasureReader.Outcome.Read) read).measures());
    assertThat(outcome).as("%s: %s", measured, outcome).isInstanceOf(Rescue.Outcome.Done.class);
    return ((Rescue.Outcome.Done) outcome).rescued();
  }

  private static Rescued.Row row(Rescued r, String piece) {
    return r.rows().stream().filter(x -> x.piece().equals(piece)).findFirst().orElseThrow();
  }

  /** Nothing graver than a note is found that the old card had not. */
  private static void good(Rescued r, String what) {
    assertThat(r.appeared().stream().filter(p -> p.level() != Level.NOTES)).as(what).isEmpty();
  }

  @Test
  void narrowLeaf_isStillGood_andItsFoldStaysInPlace() {
    // 30 wide with its middle at -15.5: the fold at -30.5; 29 wide from there: middle at -16.
    Rescued r = rescued(house(), "left-leaf.width=29");
    Rescued.Row leaf = row(r, "left-leaf");
    assertThat(leaf.verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(leaf.width()).isEqualTo(29);
    assertThat(leaf.flatWidth()).isEqualTo(40); // 8 of strip, 29 of leaf, half a tongue of 6
    assertThat(leaf.words()).isEmpty();
    assertThat(r.text())
        .contains("name: left-leaf, on: house, hinge: left, width: 29, height: 84, at: [-16, -10]");
    assertThat(row(r, "right-leaf").verdict()).isEqualTo(Rescued.Verdict.AS_DESIGNED);
    assertThat(r.sight()).anyMatch(s -> s.endsWith("more of table shows"));
    good(r, "narrow");
  }

  @Test
  void leafThatOverlapsTheOther_isGluedFurtherOut() {
    // 32 from -30.5 ends at 1.5; the other begins at 0.5.
    Rescued r = rescued(house(), "left-leaf.width=32", "left-leaf", "right-leaf", "house");
    Rescued.Row leaf = row(r, "left-leaf");
    assertThat(leaf.verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(leaf.words()).contains("glue it on").contains("to the left of where it was");
    assertThat(row(r, "right-leaf").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "house").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    good(r, "wide");
  }

  @Test
  void leafFarTooWide_isTrimmedToTheDesign() {
    Rescued r = rescued(house(), "left-leaf.width=45");
    assertThat(row(r, "left-leaf").verdict()).isEqualTo(Rescued.Verdict.TRIM);
    assertThat(row(r, "left-leaf").width()).isEqualTo(30);
    assertThat(r.text()).isEqualTo(house().inputs().design().tree().source().text());
    good(r, "far too wide");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "left-leaf.height=60|with a height of 60 mm it no longer covers what it was made for",
        "left-leaf.handle=1|with a handle of 1 mm it does not hold; it needs 2 mm or more",
        "stay.tongue=3|with a tongue of 3 mm it does not hold; it needs 4 mm or more",
        "stay.tab=5|with a tab of 5 mm it does not hold; it needs 6 mm or more",
      })
  void partOfNoUse_isRecut(String measured, String why) {
    Rescued r = rescued(house(), measured);
    String name = measured.substring(0, measured.indexOf('.'));
    assertThat(row(r, name).verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(r, name).words()).isEqualTo(why);
    assertThat(r.text()).isEqualTo(house().inputs().design().tree().source().text());
    good(r, measured);
  }

  @Test
  void stayOfAnotherWidth_getsOtherSlits() {
    // A slit is 1 mm longer than its tongue.
    Rescued open = rescued(house(), "stay.width=42", "stay");
    assertThat(row(open, "stay").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(open, "house").verdict()).isEqualTo(Rescued.Verdict.CUT_OTHERWISE);
    assertThat(row(open, "house").words()).isEmpty();
    Rescued cut = rescued(house(), "stay.width=42", "stay", "house");
    assertThat(row(cut, "house").verdict()).isEqualTo(Rescued.Verdict.TRIM);
    assertThat(row(cut, "house").words()).isEqualTo("make its slit 43 mm long");
    Rescued narrow = rescued(house(), "stay.width=39", "stay", "house");
    assertThat(row(narrow, "house").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    for (Rescued r : List.of(open, cut, narrow)) {
      good(r, "stay");
    }
  }

  @Test
  void tongueThatMissesSlitsAlreadyCut() {
    // The slit is at half the tongue: a tongue of 5 instead of 8 would want it 1.5 mm lower.
    Rescued shorter = rescued(house(), "stay.tongue=5", "stay", "house", "hall");
    assertThat(row(shorter, "stay").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(shorter, "stay").words()).contains("misses the slits that are cut already");
    Rescued longer = rescued(house(), "stay.tongue=12", "stay", "house", "hall");
    assertThat(row(longer, "stay").verdict()).isEqualTo(Rescued.Verdict.TRIM);
    Rescued free = rescued(house(), "stay.tongue=5", "stay");
    assertThat(row(free, "stay").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(free, "house").verdict()).isEqualTo(Rescued.Verdict.CUT_OTHERWISE);
  }

  @Test
  void stayThatTheCardHasOutgrown_isRecut() {
    // Stages of 15 become 12.5: the strip has to be 2.5 mm shorter, 1 mm is borne.
    Rescued r = rescued(house(), "house.side=12.5", "house", "stay");
    assertThat(row(r, "house").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "stay").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(r, "stay").words()).contains("no longer fit the depth of the card");
    good(r, "outgrown");
    Rescued near = rescued(house(), "house.side=14.5", "house", "stay");
    assertThat(row(near, "stay").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(near, "stay").flatHeight()).isEqualTo(51); // as it is, not as it would be
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "belly-strip: {name: stay, stock: white-300}|stay.hook=9",
        "belly-strip: {name: stay, stock: white-300}|stay.width=22",
        "slot-lock: {name: stay, stock: white-300}|stay.past=4",
        "slot-lock: {name: stay, stock: white-300}|stay.height=9",
        "fold-down-brace: {name: stay, stock: white-300}|stay.tab=9",
      })
  void everySortOfStay_isMeasuredByItsOwnKeys(String stay, String measured) {
    Pack start = pack(STACK + "  - " + stay + "\n");
    Rescued r = rescued(start, measured, "stay");
    assertThat(row(r, "stay").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(r.text()).contains(measured.substring(5).replace("=", ": "));
    good(r, measured);
  }

  @Test
  void slotLockOfNotchesForAnotherDepth_isRecut() {
    Pack start = pack(STACK + "  - slot-lock: {name: stay, stock: white-300}\n");
    Rescued r = rescued(start, "near.side=14", "near", "stay");
    assertThat(row(r, "stay").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    good(r, "notches");
  }

  @Test
  void slotLockInThickerPaperThanItWasNotchedFor_isRecut() {
    // Notches are 0.2 mm wider than the paper of 0.356 mm; 0.6 does not go in, 0.38 does.
    Pack start = pack(STACK + "  - slot-lock: {name: stay, stock: white-300}\n");
    Rescued thick = rescued(start, "white-300.thickness=0.6", "stay");
    assertThat(row(thick, "stay").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    Rescued usual = rescued(start, "white-300.thickness=0.38", "stay");
    assertThat(row(usual, "stay").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
  }

  @Test
  void narrowWindow_isStillGood_whileItReachesPastTheOpening() {
    // The opening is 3 1/4 wide; 3 1/2 laps it by 1/8 on both sides.
    Rescued r = rescued(supper(), "pane.width=3.5");
    assertThat(row(r, "pane").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "pane").width()).isCloseTo(3.5 * 25.4, within(1e-9));
    assertThat(r.text()).contains("stock: acetate, width: 3 1/2, height: 3}");
    good(r, "narrow");
  }

  @Test
  void windowNarrowerThanTheOpening_isRecut_andALargeOneTrimmed() {
    Rescued small = rescued(supper(), "pane.width=3.25");
    assertThat(row(small, "pane").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(small, "pane").words())
        .contains("3 1/4 in wide, it does not reach past the opening of barn")
        .contains("make it 3 3/8 in or more"); // 3 1/4 and twice 1 mm, up to a sixteenth
    good(small, "small");
    Rescued large = rescued(supper(), "pane.width=8");
    assertThat(row(large, "pane").verdict()).isEqualTo(Rescued.Verdict.TRIM);
    assertThat(row(large, "pane").width()).isLessThan(6.5 * 25.4);
    good(large, "large");
  }

  @Test
  void openingThatCameOutWider_mayNeedAnotherWindow() {
    Rescued fits = rescued(supper(), "barn.aperture.width=3.5", "barn", "pane");
    assertThat(row(fits, "pane").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    Rescued not = rescued(supper(), "barn.aperture.width=3.75", "barn", "pane");
    assertThat(row(not, "pane").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(not, "pane").width())
        .isCloseTo(4.125 * 25.4, within(1e-9)); // 3 3/4 and twice 3/16
    good(not, "wider");
  }

  @Test
  void doorCutIntoAFrame_isMeasuredByItsName() {
    // Its fold at -45; 29 wide from there: middle at -30.5.
    Rescued r = rescued(pack(SHUTTER), "shutter.width=29");
    assertThat(row(r, "near").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(r.text()).contains("width: 29, height: 50, at: [-30.5, 0]");
    good(r, "shutter");
    Rescued wide = rescued(pack(SHUTTER), "shutter.width=75");
    assertThat(row(wide, "near").verdict()).isEqualTo(Rescued.Verdict.RECUT);
    assertThat(row(wide, "near").words()).contains("shutter").contains("edge or opening");
    good(wide, "wide shutter");
  }

  @Test
  void frameWithADoorCutIntoIt_hasItsSidesAndTabs() {
    Rescued r = rescued(pack(SHUTTER), "near.width=149 near.side.left=16");
    assertThat(row(r, "near").verdict()).isEqualTo(Rescued.Verdict.STILL_GOOD);
    assertThat(row(r, "near").scores()).containsExactly(10.0, 26.0, 175.0, 190.0);
    good(r, "sides");
  }

  /** Random slips of all that hangs on a card: always an answer, and never a new fault. */
  @Test
  void randomSlips_neverBringAFault() {
    Random random = new Random(6);
    Pack start = house();
    String[] all = {
      "left-leaf.width=30",
      "right-leaf.width=30",
      "left-leaf.height=84",
      "stay.width=40",
      "stay.tongue=8",
      "stay.tab=12",
      "house.width=150",
      "house.side.left=15",
      "wall.width=128",
      "table.width=44"
    };
    for (int n = 0; n < 10; n++) {
      String one = slip(random, all[random.nextInt(all.length)]);
      String other = slip(random, all[random.nextInt(all.length)]);
      boolean both =
          !one.substring(0, one.indexOf('=')).equals(other.substring(0, other.indexOf('=')));
      String measured = both ? one + " " + other : one;
      good(rescued(start, measured), measured);
    }
  }

  private static String slip(Random random, String measure) {
    int equals = measure.indexOf('=');
    double mm = Double.parseDouble(measure.substring(equals + 1)) + random.nextInt(33) / 4.0 - 4;
    return measure.substring(0, equals + 1) + mm;
  }
}
