package hingeleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Edit;
import hingeleaf.design.TextEdit;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.structure.Structures;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What is told about the way flat: provoked by a design of our own, and mended by following the
 * advice to the letter. Invented designs.
 */
class WayFindingsTest {
  private static final String FRAMES =
      "    - {name: far, plain: yes}\n    - {name: near, aperture: {rect: [120, 80]}}\n";

  private static String design(String cutOut) {
    return "hingeleaf: 1\ntitle: t\nbase:\n  stacked-frames:\n    width: 150\n    height: 100\n"
        + "    stock: white-300\n    side: [15, 15]\n    tab: 10\n    frames:\n"
        + FRAMES
        + "cut-outs:\n  - "
        + cutOut
        + "\n";
  }

  private static Pack pack(DesignDocument.Outcome read) {
    DesignDocument design = ((DesignDocument.Outcome.Right) read).document();
    Wants wants = new Wants(MakerUnits.of(Unit.MM), false, 1, false);
    return Pack.of(
        new Pack.Inputs(
            design,
            Map.of(),
            BuiltInBench.metric(),
            (text, h) -> List.of(Region.of(Ring.rectangle(-9, -h / 2, 9, h / 2))),
            wants));
  }

  private static Pack pack(String yaml) {
    return pack(DesignDocument.read("t", yaml.getBytes(StandardCharsets.UTF_8), Structures.FORMS));
  }

  private static Pack changed(Pack pack, String path, double mm) {
    Edit edit =
        TextEdit.apply(
            pack.inputs().design().tree(), new Change.Put(path, MakerUnits.of(Unit.MM).number(mm)));
    return pack(DesignDocument.read(((Edit.Done) edit).tree(), Structures.FORMS));
  }

  private static Problem only(Pack pack, String kind) {
    List<Problem> found = pack.problems().stream().filter(p -> p.kind().equals(kind)).toList();
    assertThat(found).as("%s in %s", kind, pack.problems()).hasSize(1);
    return found.get(0);
  }

  private static List<String> kinds(Pack pack) {
    return pack.problems().stream()
        .filter(p -> p.level() != Level.NOTES)
        .map(Problem::kind)
        .sorted()
        .toList();
  }

  /** Follows each want on its own; each must cure the finding and bring nothing new. */
  private static void eachWantCures(Pack pack, Problem p) {
    List<String> left = kinds(pack).stream().filter(k -> !k.equals(p.kind())).toList();
    for (Want w : p.wants()) {
      double to = Double.isFinite(w.most()) ? w.most() : w.least();
      assertThat(kinds(changed(pack, w.parameter(), to))).as("%s", w).isEqualTo(left);
    }
  }

  @Test
  void sideOverAnOrnament_isToldOnce_andMendedByItsAdvice() {
    Pack pack =
        pack(
            design(
                    "{name: post, on: far, at: [0, 0], outline: {rect: [128, 60]},"
                        + " stock: navy-220, raised-by: 2}")
                .replace("tab: 10", "tab: 6"));
    Problem p = only(pack, "jams");
    // symmetrical, so it may lean either way
    assertThat(p.message())
        .isIn(
            "post: the left side of near closes over it on the way flat, and it is in the way"
                + " - move it 4.5 mm to the right, or glue it on without foam",
            "post: the right side of near closes over it on the way flat, and it is in the way"
                + " - move it 4.5 mm to the left, or glue it on without foam");
    assertThat(p.part()).isEqualTo("post");
    assertThat(p.place()).isNotNull();
    assertThat(p.wants()).hasSize(2);
    eachWantCures(pack, p);
  }

  @Test
  void ornamentThroughTheFrameInFront_isTold_andMendedByItsAdvice() {
    Pack pack =
        pack(
            design(
                "{name: mast, on: back, outline: {rect: [14, 60]}, stock: navy-220,"
                    + " raised-by: 16}"));
    Problem p = only(pack, "stands-through");
    assertThat(p.message()).contains("stands 16.28 mm high and goes through far");
    assertThat(p.wants()).hasSize(1);
    eachWantCures(pack, p);
  }

  @Test
  void apertureEdgeAgainstAnOrnament_isTold_andMendedByItsAdvice() {
    // Inside the near frame's opening, whose edge comes 15 mm over: only 4 mm are left beside it.
    Pack pack =
        pack(
            design(
                "{name: hill, on: far, at: [0, 0], outline: {rect: [112, 60]}, stock: navy-220,"
                    + " raised-by: 14.5}"));
    Problem p = only(pack, "jams");
    assertThat(p.message()).contains("the edge of the opening of near runs into it");
    assertThat(p.numbers().get("over")).isBetween(10.5, 11.5);
    assertThat(p.wants()).isNotEmpty();
    eachWantCures(pack, p);
  }

  @Test
  void doorThatHardlyOpens_isTold_andMendedByItsAdvice() {
    Pack pack =
        pack(
            design("{name: dot, on: back, outline: {circle: 10}, stock: navy-220}")
                    .replace("plain: yes", "aperture: {rect: [20, 20], at: [-40, 0]}")
                + "mechanisms:\n  - door: {name: flap, on: back, hinge: left, width: 30,"
                + " height: 40, at: [30, 0]}\n");
    Problem p = only(pack, "door-opens-little");
    // asin(15 / 30): the frame in front is 15 mm away
    assertThat(p.message()).startsWith("flap: it opens only 30 degrees, until it meets far - ");
    assertThat(p.numbers().get("square")).isBetween(14.0, 15.0);
    assertThat(p.wants()).hasSize(1);
    eachWantCures(pack, p);
    assertThat(GoodToKnow.of(pack)).anyMatch(s -> s.startsWith("flap opens to 30 degrees"));
  }

  @Test
  void layersThatRestOnAnOrnament_areNoFault() {
    Pack pack =
        pack(
            design(
                "{name: boat, on: back, outline: {rect: [40, 40]}, stock: navy-220,"
                    + " raised-by: 2}"));
    assertThat(kinds(pack)).doesNotContain("jams", "stands-through", "crosses");
    assertThat(pack.touches()).isPresent();
    assertThat(pack.touches().get().touches()).hasSize(1);
    assertThat(pack.words("near/side-left")).isEqualTo("the left side of near");
  }
}
