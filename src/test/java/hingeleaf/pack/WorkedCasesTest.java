package hingeleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Piece;
import hingeleaf.card.Rest;
import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Edit;
import hingeleaf.design.TextEdit;
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
 * A stack worked through by hand: 150 x 150, sides 12, tabs 12 folded in, openings round 90, round
 * 110 and square 130, card of 300 g/m2. The expected figures are that working, not ours.
 */
class WorkedCasesTest {
  private static final String STACK =
      """
      hingeleaf: 1
      title: Worked
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: 12
          tab: 12
          frames:
            - {name: far, aperture: {circle: 90}}
            - {name: middle, aperture: {circle: 110}}
            - {name: near, aperture: {square: 130}}
      """;

  private static Pack pack(String yaml) {
    DesignDocument.Outcome read =
        DesignDocument.read("w", yaml.getBytes(StandardCharsets.UTF_8), Structures.FORMS);
    return pack(((DesignDocument.Outcome.Right) read).document());
  }

  private static Pack pack(DesignDocument design) {
    return Pack.of(
        new Pack.Inputs(
            design,
            Map.of(),
            BuiltInBench.metric(),
            (text, h) -> List.of(Region.of(Ring.rectangle(-9, -h / 2, 9, h / 2))),
            new Wants(MakerUnits.of(Unit.MM), false, 1, false)));
  }

  private static Problem only(Pack pack, String kind) {
    List<Problem> found = pack.problems().stream().filter(p -> p.kind().equals(kind)).toList();
    assertThat(found).as("%s in %s", kind, pack.problems()).hasSize(1);
    return found.get(0);
  }

  private static double[] size(Pack pack, String piece) {
    Piece p = pack.card().piece(piece);
    return new double[] {p.width(), p.height()};
  }

  @Test
  void piecesAre198By150_andWeigh23point65Grams() {
    Pack pack = pack(STACK);
    for (String frame : List.of("far", "middle", "near")) {
      assertThat(size(pack, frame)).containsExactly(198, 150);
    }
    assertThat(pack.card().mass()).isCloseTo(23.65, within(0.005));
  }

  @Test
  void tabsOfTheNearFrameShowTwoMillimetres_andEitherCureCures() {
    Pack pack = pack(STACK);
    Problem p = only(pack, "tab-shows");
    assertThat(p.part()).isEqualTo("near");
    assertThat(p.numbers().get("shows")).isCloseTo(2, within(1e-6));
    assertThat(p.message())
        .contains("show 2 mm inside its opening")
        .contains("126 mm or less")
        .contains("the tabs 10 mm");
    assertThat(p.wants()).hasSize(2);
    for (Want w : p.wants()) {
      Edit edit =
          TextEdit.apply(
              pack.inputs().design().tree(),
              new Change.Put(w.parameter(), MakerUnits.of(Unit.MM).number(w.most())));
      DesignDocument.Outcome read =
          DesignDocument.read(((Edit.Done) edit).tree(), Structures.FORMS);
      Pack mended = pack(((DesignDocument.Outcome.Right) read).document());
      assertThat(mended.problems()).as("%s", w).noneMatch(q -> q.kind().equals("tab-shows"));
    }
  }

  @Test
  void matsLeaveTheGlueStripsFree() {
    // On the back, far and middle at most 126 wide, less 1 mm a side; nothing lands on near.
    Pack pack =
        pack(
            STACK
                + "mats:\n"
                + "  - {name: m0, on: back, stock: kraft-220}\n"
                + "  - {name: m1, on: far, stock: kraft-220}\n"
                + "  - {name: m3, on: near, stock: kraft-220}\n");
    assertThat(size(pack, "m0")).containsExactly(124, 148);
    assertThat(size(pack, "m1")).containsExactly(124, 148);
    assertThat(size(pack, "m3")).containsExactly(148, 148);
    assertThat(pack.card().piece("m1").apertures()).hasSize(1);
  }

  @Test
  void aMatOneMillimetreTooWideCoversAGlueStrip() {
    String mats = "mats:\n  - {name: m, on: back, stock: kraft-220, width: %s, height: 100}\n";
    assertThat(pack(STACK + mats.formatted("126")).blocked()).isFalse();
    Pack wide = pack(STACK + mats.formatted("127"));
    assertThat(wide.blocked()).isTrue();
    assertThat(only(wide, "mat-over-glue-strip").message()).contains("126 x 150 mm or less");
  }

  @Test
  void aBoatOverTheOpeningHasNothingToBeGluedTo() {
    String boat =
        "cut-outs:\n  - {name: boat, on: %s, at: [0, -8], outline: {circle: 55}, stock: navy-220}\n";
    assertThat(only(pack(STACK + boat.formatted("far")), "nothing-to-glue-to").part())
        .isEqualTo("boat");
    assertThat(pack(STACK + boat.formatted("back")).blocked()).isFalse();
    Pack hung =
        pack(
            STACK
                + "windows:\n  - {name: pane, on: far, stock: acetate}\n"
                + boat.formatted("pane"));
    assertThat(hung.blocked()).isFalse();
  }

  @Test
  void aWindowReachesFiveMillimetresPastItsOpening() {
    Pack pack = pack(STACK + "windows:\n  - {name: pane, on: far, stock: acetate}\n");
    // common practice, no source: aperture + 5 mm a side
    assertThat(size(pack, "pane")).containsExactly(new double[] {100, 100}, within(0.01));
  }

  @Test
  void allLeaningLeftIs186Wide_alternating162() {
    List<Rest> states = pack(STACK).flats().states();
    assertThat(states).hasSize(8);
    for (Rest r : states) {
      double sum = 0;
      double most = 0;
      double least = 0;
      for (int lean : r.leans()) {
        sum += 12 * lean;
        most = Math.max(most, sum);
        least = Math.min(least, sum);
      }
      assertThat(r.width()).as("%s", r.leans()).isCloseTo(150 + most - least, within(1e-9));
    }
    assertThat(states.stream().mapToDouble(Rest::width).max()).hasValueCloseTo(186.0, within(1e-9));
    assertThat(states.get(0).width()).isCloseTo(162, within(1e-9));
  }

  @Test
  void sidesOf12And18And12_leaningLeftRightLeft_needWidthPlus18() {
    Pack pack = pack(STACK.replace("side: 12", "side: [12, 18, 12]"));
    Rest zigzag =
        pack.flats().states().stream()
            .filter(r -> r.leans().equals(List.of(-1, 1, -1)))
            .findFirst()
            .orElseThrow();
    assertThat(zigzag.width()).isCloseTo(150 + 18, within(1e-9));
  }

  @Test
  void leastFootprintStaysWithinTwiceTheLongestSide_forAnySides() {
    // A folded carpenter's ruler fits into twice its longest link (Hopcroft, Joseph & Whitesides,
    // SIAM J. Comput. 14(2), 1985): the layers' offsets are such a ruler.
    java.util.Random random = new java.util.Random(1985);
    for (int trial = 0; trial < 12; trial++) {
      int[] s = random.ints(3, 6, 40).toArray();
      Pack pack =
          pack(STACK.replace("side: 12", "side: [" + s[0] + ", " + s[1] + ", " + s[2] + "]"));
      int longest = Math.max(s[0], Math.max(s[1], s[2]));
      assertThat(pack.flats().states().get(0).width() - 150)
          .as("%d %d %d", s[0], s[1], s[2])
          .isLessThanOrEqualTo(2 * longest + 1e-9)
          .isGreaterThanOrEqualTo(longest - 1e-9);
    }
  }
}
