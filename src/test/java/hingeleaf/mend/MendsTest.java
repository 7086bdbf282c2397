package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.design.DesignDocument;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.fold.contact.Order;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.stock.SampleBenches;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Each kind of finding about the card as it really is: provoked, mended by its own advice as the
 * tool itself makes the change, and looked at again. Invented designs.
 */
class MendsTest {
  private static final String FRAMES =
      "    - {name: far, plain: yes}\n    - {name: near, aperture: {rect: [120, 80]}}\n";

  private static String design(String side, String frames, String more) {
    return "hingeleaf: 1\ntitle: t\nbase:\n  stacked-frames:\n    width: 150\n    height: 100\n"
        + "    stock: white-300\n    side: "
        + side
        + "\n    tab: 10\n    frames:\n"
        + frames
        + more;
  }

  private static String cutOut(String name, String on, String at, String rect, double raised) {
    return "  - {name: "
        + name
        + ", on: "
        + on
        + at
        + ", outline: {rect: "
        + rect
        + "}, stock: navy-220, raised-by: "
        + raised
        + ", seen: any}\n";
  }

  private static Pack pack(String yaml) {
    return SamplePacks.of(yaml, BuiltInBench.metric(), 1);
  }

  private static List<Problem> of(Pack pack, String kind) {
    return pack.problems().stream().filter(p -> p.kind().equals(kind)).toList();
  }

  /** Makes every mend offered, each on its own; the finding must go and nothing graver come. */
  private static List<Mend> mended(Pack pack, String kind) {
    List<Problem> found = of(pack, kind);
    assertThat(found).as("%s in %s", kind, pack.problems()).isNotEmpty();
    List<Mend> mends = Mends.of(pack, found.get(0));
    assertThat(mends).as("mends of %s", found.get(0).message()).isNotEmpty();
    for (Mend mend : mends) {
      Trial trial = Trial.of(pack.inputs().design().tree(), mend.changes());
      assertThat(trial).as(mend.words()).isInstanceOf(Trial.Read.class);
      DesignDocument changed = ((Trial.Read) trial).design();
      Pack after = Trial.pack(pack, changed);
      assertThat(graver(after)).as(mend.words()).doesNotContain(kind);
      assertThat(graver(pack)).as(mend.words()).containsAll(graver(after));
    }
    return mends;
  }

  private static List<String> graver(Pack pack) {
    return pack.problems().stream()
        .filter(p -> p.level() != Level.NOTES)
        .map(Problem::kind)
        .toList();
  }

  @Test
  void sideOverAnOrnament_isMovedOrGluedFlat() {
    Pack pack =
        pack(
            design("[15, 15]", FRAMES, "cut-outs:\n" + cutOut("post", "far", "", "[128, 60]", 2))
                .replace("tab: 10", "tab: 6"));
    List<Mend> mends = mended(pack, "jams");
    assertThat(mends).hasSize(2);
    assertThat(mends.get(0).words()).matches("move it 4\\.5 mm to the (left|right)");
    assertThat(mends.get(1).words()).isEqualTo("glue it on without foam");
  }

  @Test
  void ornamentThroughTheLayerInFront_isRaisedLess() {
    Pack pack =
        pack(
            design(
                "[15, 15]",
                FRAMES,
                "cut-outs:\n" + cutOut("mast", "back", ", at: [-10, 4]", "[14, 60]", 16)));
    List<Mend> mends = mended(pack, "stands-through");
    assertThat(mends.get(0).words()).startsWith("raise it by 1");
  }

  @Test
  void doorThatHardlyOpens_isMadeNarrower() {
    String frames =
        "    - {name: far, aperture: {rect: [20, 20], at: [-40, 0]}}\n"
            + "    - {name: near, aperture: {rect: [120, 80]}}\n";
    Pack pack =
        pack(
            design(
                "[15, 15]",
                frames,
                "mechanisms:\n  - door: {name: flap, on: back, hinge: left, width: 30, height: 40,"
                    + " at: [30, 0]}\n"));
    mended(pack, "door-opens-little");
  }

  @Test
  void panelTooWideForItsFeet_isGluedFlatWhereItFalls() {
    // Worked case: panel 150.5 on hinges 150 apart, sides 12: glued standing it jams 3.30 mm up;
    // glued flat its second tab overhangs by 0.5 mm and it lies flat. The same pieces.
    String frames =
        "    - {name: far, plain: yes, width: 150.5}\n"
            + "    - {name: near, aperture: {rect: [120, 80]}, width: 150.5}\n";
    Pack standing = pack(design("12", frames, ""));
    Problem p = of(standing, "misfit").get(0);
    assertThat(p.level()).isEqualTo(Level.WARNS); // 0.5 mm is between one and two thicknesses
    assertThat(p.message()).contains("does not lie flat by 0.5 mm and jams 3.3 mm up");
    List<Mend> mends = mended(standing, "misfit");
    assertThat(mends).hasSize(1);
    Trial.Read flat =
        (Trial.Read) Trial.of(standing.inputs().design().tree(), mends.get(0).changes());
    assertThat(flat.text()).contains("set-in: [0, -0.5]");
    Pack glued = Trial.pack(standing, flat.design());
    assertThat(glued.card().pieces()).isEqualTo(standing.card().pieces());
    assertThat(of(glued, "misfit")).isEmpty();
  }

  @Test
  void misfitUpToOneThicknessIsANote() {
    String frames =
        "    - {name: far, plain: yes, width: 150.25}\n"
            + "    - {name: near, aperture: {rect: [120, 80]}, width: 150.25}\n";
    Problem p = of(pack(design("12", frames, "")), "misfit").get(0);
    assertThat(p.level()).isEqualTo(Level.NOTES);
  }

  @Test
  void tabsThatShow_areMendedByASmallerOpeningOrNarrowerTabs() {
    // Worked case: an opening of 130 on 150 leaves a border of 10 for tabs of 12.
    String yaml = SamplePacks.stack("").replace("square: 126", "square: 130");
    List<Mend> mends = mended(pack(yaml), "tab-shows");
    assertThat(mends)
        .extracting(Mend::words)
        .contains("make the opening 126 mm", "make the tab 10 mm");
  }

  @Test
  void layersThatRestOnAnOrnament_areNoFindingAtAll() {
    Pack pack =
        pack(design("[15, 15]", FRAMES, "cut-outs:\n" + cutOut("boat", "back", "", "[40, 40]", 2)));
    assertThat(graver(pack)).isEmpty();
    assertThat(pack.touches().orElseThrow().touches()).hasSize(1);
  }

  @Test
  void cardThatMustBeLaidFlatInOrder_isTold_andLiesFlatSo() {
    // Stages of 10 and 12 leaning left and right, which goes as a Large Letter where leaning one
    // way would be too long: all at once the hook under near goes 2 mm to the right on its way down
    // and meets the post, whose flank is 0.8 mm beside it, below its top. Near first, it is past
    // the post while its foot is still above it.
    String frames =
        "    - {name: far, aperture: {rect: [240, 60]}}\n    - {name: near, plain: yes}\n";
    String yaml =
        design(
                "[10, 12]",
                frames,
                "cut-outs:\n"
                    + cutOut("post", "back", ", at: [1.3, 0]", "[0.5, 40]", 10.72)
                    + cutOut("hook", "near, face: back", "", "[0.5, 40]", 9.52))
            .replace("width: 150", "width: 320");
    Pack pack = SamplePacks.of(yaml, SampleBenches.in("GB"), 1);
    assertThat(pack.flats().states().get(pack.best()).leans()).containsExactly(-1, 1);
    assertThat(of(pack, "flat-in-order")).hasSize(1);
    assertThat(of(pack, "flat-in-order").get(0).message())
        .startsWith("lay this card flat one frame at a time, from the front");
    assertThat(of(pack, "jams")).isEmpty();
    assertThat(pack.touches().orElseThrow().order()).isEqualTo(Order.FRONT_FIRST);
  }

  @Test
  void twoOrnamentsInOnePlace_areMovedApartOrRaised() {
    // Side by side 20 wide, their middles 15 apart: 5 to move. Navy card is 0.28 thick.
    Pack pack =
        pack(
            design(
                "[15, 15]",
                FRAMES,
                "cut-outs:\n"
                    + cutOut("hill", "back", "", "[20, 30]", 0)
                    + cutOut("tree", "back", ", at: [15, 2]", "[20, 30]", 0)));
    Problem p = of(pack, "parts-overlap").get(0);
    assertThat(p.message())
        .contains("tree: it lies over the edge of hill")
        .contains("move it 5 mm to the right, or raise it by 0.5 mm or more");
    assertThat(mended(pack, "parts-overlap")).hasSize(2);
  }

  @Test
  void ornamentWhollyOnAnother_liesWell() {
    Pack pack =
        pack(
            design(
                "[15, 15]",
                FRAMES,
                "cut-outs:\n"
                    + cutOut("hill", "back", "", "[40, 40]", 0)
                    + cutOut("tree", "back", "", "[20, 30]", 0)
                    + cutOut("bird", "back", ", at: [25, 0]", "[20, 10]", 2)));
    assertThat(of(pack, "parts-overlap")).isEmpty();
  }

  @Test
  void ornamentOverAGlueStrip_isMovedOffIt() {
    // The strip at the right edge begins at 75 - 10 = 65; the ornament reaches to 60 + 10 = 70.
    Pack pack =
        pack(
            design(
                "[15, 15]",
                FRAMES,
                "cut-outs:\n" + cutOut("moon", "back", ", at: [60, 0]", "[20, 20]", 0)));
    Problem p = of(pack, "over-glue-strip").get(0);
    assertThat(p.message()).contains("move it 5 mm to the left");
    assertThat(mended(pack, "over-glue-strip")).hasSize(1);
  }

  @Test
  void ornamentOverTheStripOfALowerEdge_isMovedUp() {
    Pack pack =
        pack(
            design(
                    "[15, 15]",
                    FRAMES,
                    "cut-outs:\n" + cutOut("moon", "back", ", at: [0, -35]", "[20, 20]", 0))
                .replace("tab: 10", "tab: 10\n    sides: top-bottom"));
    assertThat(of(pack, "over-glue-strip").get(0).message()).contains("move it 5 mm up");
    mended(pack, "over-glue-strip");
  }
}
