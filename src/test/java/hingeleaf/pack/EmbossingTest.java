package hingeleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Embossing;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.plan.CutList;
import hingeleaf.plan.Step;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.stock.SampleBenches;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Embossing by the trade's rules (common practice, no source): it draws a panel in by up to 1 %, so
 * it is cut larger and trimmed; before scoring; never across a score or under glue. The built-in
 * bench has folders of 105 x 148 and 150 x 150 and a machine 152 wide.
 */
class EmbossingTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static String mat(String more) {
    return "mats:\n  - {name: sea, on: back, stock: kraft-220, " + more + "}\n";
  }

  private static String near(String folder) {
    return SamplePacks.stack("")
        .replace("{square: 126}}", "{square: 126}, emboss: " + folder + "}");
  }

  private static Pack pack(String design) {
    return SamplePacks.of(design, BuiltInBench.metric(), 1);
  }

  private static List<String> kinds(Pack pack) {
    return pack.problems().stream().map(Problem::kind).toList();
  }

  @ParameterizedTest
  @CsvSource({
    // finished, mark of the trimmer, blank: 1 % more, at least 1 mm, up to the next mark; by hand
    "150, 1, 152", // 151.5
    "198, 1, 200", // 199.98
    "100, 1, 101", // 101
    "50, 1, 51", // 50.5, but at least 51
    "45.5, 1, 47", // 46.5
    "140, 0.5, 141.5", // 141.4
    "146.05, 1.5875, 147.6375", // 5 3/4 in: 147.51, up to 5 13/16 in
    "127, 1.5875, 128.5875", // 5 in: 128.27, up to 5 1/16 in
  })
  void blankIsOnePerCentLargerAndOnAMark(double finished, double mark, double blank) {
    assertThat(Embossing.blank(finished, mark)).isEqualTo(blank, Offset.offset(1e-6));
  }

  @Test
  void blankIsCutThenPressedThenTrimmed_andOnlyThenScored() {
    List<Step> steps = pack(near("emboss-150")).work().steps();
    List<Step.Kind> near =
        steps.stream().filter(s -> s.pieces().contains("near")).map(Step::kind).toList();
    assertThat(near)
        .containsExactly(
            Step.Kind.BLANK,
            Step.Kind.EMBOSS,
            Step.Kind.CUT,
            Step.Kind.OPEN,
            Step.Kind.SCORE,
            Step.Kind.FOLD,
            Step.Kind.GLUE_TAB,
            Step.Kind.CLOSE_FLAT);
    assertThat(steps)
        .filteredOn(s -> s.kind() == Step.Kind.BLANK)
        .singleElement()
        .satisfies(s -> assertThat(s.whole()).contains("200 x 152 mm"));
    assertThat(steps)
        .filteredOn(s -> s.kind() == Step.Kind.EMBOSS)
        .singleElement()
        .satisfies(
            s -> {
              // The pattern of 150 in the middle of 200 x 152.
              assertThat(s.whole()).contains("25 mm from the left edge", "1 mm from the lower");
              assertThat(s.dries()).isEqualTo(10);
              assertThat(s.check()).contains("198 x 150 mm");
            });
  }

  @Test
  void sheetsHoldTheBlankAndNotThePiece() {
    Pack pack = pack(SamplePacks.stack(mat("width: 100, height: 140, emboss: emboss-a6")));
    CutList.Line sea =
        pack.cuts().lines().stream().filter(l -> l.names().equals("sea")).findFirst().orElseThrow();
    assertThat(List.of(sea.blankWidth(), sea.blankHeight())).containsExactly(101.0, 142.0);
    assertThat(sea.piece().width()).isEqualTo(100, EXACT);
    var job =
        pack.sheets().stream()
            .filter(s -> s.order().stock().name().equals("kraft-220"))
            .findFirst()
            .orElseThrow()
            .order()
            .job();
    assertThat(job.pieces())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.w()).isEqualTo(101_000_000);
              assertThat(p.h()).isEqualTo(142_000_000);
            });
  }

  @Test
  void cutOutIsCutFromItsEmbossedBlank() {
    String boat =
        "cut-outs:\n  - {name: moon, on: back, at: [0, 0], outline: {circle: 40}, stock: navy-220,"
            + " raised-by: 2, emboss: emboss-a6}\n";
    List<Step> moon =
        pack(SamplePacks.stack(boat)).work().steps().stream()
            .filter(s -> s.pieces().contains("moon"))
            .toList();
    assertThat(moon)
        .extracting(Step::kind)
        .containsExactly(Step.Kind.BLANK, Step.Kind.EMBOSS, Step.Kind.SHAPE, Step.Kind.CUT_OUT);
    assertThat(moon.get(0).whole()).contains("41 x 41 mm");
    assertThat(moon.get(2).whole()).contains("from its embossed blank");
  }

  @Test
  void patternThickensThePanel_soThePostKnows() {
    double plain = pack(SamplePacks.stack("")).posting().first().parcel().rigid();
    double pressed = pack(near("emboss-150")).posting().first().parcel().rigid();
    // The bench's folders add 0.8 mm.
    assertThat(pressed - plain).isEqualTo(0.8, Offset.offset(1e-6));
  }

  @Test
  void patternOverTheStripsOfTheNextFrameIsTold() {
    // far: the tabs of middle land on 12 mm at either edge of its 150, so 126 is free.
    String far =
        SamplePacks.stack("").replace("{circle: 90}}", "{circle: 90}, emboss: emboss-150}");
    assertThat(pack(far).problems())
        .filteredOn(p -> p.kind().equals("emboss-over-glue"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.level()).isEqualTo(Level.WARNS);
              assertThat(p.message()).contains("glue of middle", "126 x 150 mm or less");
            });
    // A folder of 105 x 148 leaves them alone.
    assertThat(kinds(pack(far.replace("emboss-150", "emboss-a6"))))
        .doesNotContain("emboss-over-glue", "emboss-across-score");
  }

  @Test
  void patternAcrossAScoreIsTold() {
    // On a card 130 wide a pattern of 150 runs over both sides' scores.
    String narrow = near("emboss-150").replace("width: 150", "width: 130");
    narrow = narrow.replace("circle: 110", "circle: 90").replace("square: 126", "square: 106");
    assertThat(kinds(pack(narrow))).contains("emboss-across-score");
    assertThat(kinds(pack(near("emboss-150")))).doesNotContain("emboss-across-score");
  }

  @Test
  void folderSmallerThanTheMatIsTold_onAFrameItIsOnlyKnown() {
    String large = mat("width: 120, height: 148, emboss: emboss-a6");
    assertThat(pack(SamplePacks.stack(large)).problems())
        .filteredOn(p -> p.kind().equals("emboss-smaller"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.level()).isEqualTo(Level.WARNS);
              // (120 - 105) / 2
              assertThat(p.numbers().get("across")).isEqualTo(7.5, EXACT);
            });
    assertThat(pack(near("emboss-a6")).problems())
        .filteredOn(p -> p.kind().equals("emboss-smaller"))
        .singleElement()
        .satisfies(p -> assertThat(p.level()).isEqualTo(Level.NOTES));
  }

  @Test
  void machineMustTakeTheBlank() {
    // 151 high: 152.51, so 153 as cut, and the other way it is longer still.
    String high = near("emboss-150").replace("height: 150", "height: 151");
    Problem p =
        pack(high).problems().stream()
            .filter(q -> q.kind().equals("machine-too-narrow"))
            .findFirst()
            .orElseThrow();
    assertThat(p.level()).isEqualTo(Level.BLOCKS);
    assertThat(p.numbers().get("needs")).isEqualTo(153, EXACT);
    assertThat(p.place()).isNotNull();
    assertThat(pack(high).blocked()).isTrue();
    Bench none = SampleBenches.withoutMachine();
    assertThat(SamplePacks.of(near("emboss-150"), none, 1).problems())
        .extracting(Problem::message)
        .anyMatch(m -> m.contains("no machine on the bench"));
  }

  @Test
  void unknownFolderIsToldWithTheNearestName() {
    Problem p =
        pack(near("emboss-15")).problems().stream()
            .filter(q -> q.level() == Level.BLOCKS)
            .findFirst()
            .orElseThrow();
    assertThat(p.kind()).isEqualTo("unknown-embossing-folder");
    assertThat(p.message()).contains("did you mean `emboss-150`?");
  }

  @Test
  void pieceThatDiffersOnlyByItsPatternIsCutApart() {
    String alike = near("emboss-150").replace("{circle: 110}", "{square: 126}");
    assertThat(pack(alike).cuts().lines())
        .filteredOn(l -> l.piece().scores().size() == 4)
        .extracting(CutList.Line::names)
        .contains("middle", "near");
  }
}
