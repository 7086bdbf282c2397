package hingeleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.finding.Problem;
import hingeleaf.geom.Overlay;
import hingeleaf.stock.BuiltInBench;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an eye sees, against similar triangles worked out by hand. */
class EyeSightTest {
  /** Opening 130 in a panel of 150: its border of 10 leaves 2 of each 12 mm tab. */
  private static final String TABS =
      """
      hingeleaf: 1
      title: tabs
      unit: mm
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: 12
          tab: 12
          frames:
            - {name: near, aperture: {square: 130}, stock: navy-300}
      """;

  private static Pack pack(String more) {
    return SamplePacks.of(TABS + more, BuiltInBench.metric(), 1);
  }

  private static EyeSight.Tab left(Pack pack, Eye eye) {
    return EyeSight.of(pack, eye).tabs().stream()
        .filter(t -> t.panel().equals("tab-left"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void tabsShowAsSimilarTrianglesSay() {
    Pack pack = pack("");
    double far = Double.POSITIVE_INFINITY;
    assertThat(left(pack, new Eye(0, 0, far)).shows()).isCloseTo(2, within(1e-6));
    // The tab lies 12 behind the opening; its edge is 63 from the middle: 65 - 63 * 400 / 412.
    assertThat(left(pack, new Eye(0, 0, 400)).shows())
        .isCloseTo(65 - 63 * 400 / 412.0, within(1e-6));
    double turned = 2 + 12 * Math.tan(Math.toRadians(20));
    assertThat(left(pack, new Eye(Math.toRadians(20), 0, far)).shows())
        .isCloseTo(turned, within(1e-6));
  }

  @Test
  void aPartBehindAFrameIsCoveredByWhatCrossesItsEdge() {
    // The square of 20 has its middle on the opening's edge at x = 65: half of it is covered.
    Pack pack =
        pack(
            "cut-outs:\n  - {name: moon, on: back, at: [65, 0], outline: {square: 20}, stock: red-220}\n");
    EyeSight.Part moon = EyeSight.of(pack, new Eye(0, 0, Double.POSITIVE_INFINITY)).parts().get(0);
    assertThat(moon.name()).isEqualTo("moon");
    // The tab's 2 mm inside the opening lie in front of the back too: 8 of 20 are seen.
    assertThat(moon.share()).isCloseTo(8 / 20.0, within(1e-6));
    double covered = moon.covered().values().stream().mapToDouble(Overlay::area).sum();
    assertThat(covered).isCloseTo(12 * 20, within(1e-3));
    List<Problem> found = pack.firstProblems();
    assertThat(found).anyMatch(p -> p.kind().equals("part-covered") && p.part().equals("moon"));
  }

  @Test
  void movesWithTheEye() {
    Pack pack =
        pack(
            "cut-outs:\n  - {name: moon, on: back, at: [50, 0], outline: {square: 20}, stock: red-220}\n");
    double far = Double.POSITIVE_INFINITY;
    assertThat(EyeSight.of(pack, new Eye(0, 0, far)).parts()).isEmpty();
    // Seen from the left at 30 degrees the frame's edge, 12 in front, slides 12 tan 30 over it.
    EyeSight.Answer left = EyeSight.of(pack, new Eye(Math.toRadians(30), 0, far));
    EyeSight.Answer right = EyeSight.of(pack, new Eye(Math.toRadians(-30), 0, far));
    assertThat(left.parts().size() + right.parts().size()).isEqualTo(1);
  }

  @Test
  void whatAPartCarriesDoesNotCoverIt() {
    Pack pack =
        pack(
            "cut-outs:\n"
                + "  - {name: boat, on: back, outline: {square: 30}, stock: red-220}\n"
                + "  - {name: sail, on: boat, outline: {square: 10}, stock: cream-220}\n");
    assertThat(EyeSight.of(pack, new Eye(0, 0, Double.POSITIVE_INFINITY)).parts()).isEmpty();
  }

  @Test
  void aDoorIsThereToBeOpened() {
    Pack pack =
        pack(
            "mechanisms:\n"
                + "  - door: {name: hatch, on: back, width: 40, height: 40, stock: red-220}\n"
                + "cut-outs:\n"
                + "  - {name: key, on: back, outline: {square: 10}, stock: cream-220}\n"
                + "  - {name: knob, on: hatch, outline: {square: 5}, stock: cream-220}\n");
    assertThat(EyeSight.of(pack, new Eye(0, 0, Double.POSITIVE_INFINITY)).parts()).isEmpty();
  }

  @Test
  void whatShouldBeHiddenAndShowsIsTold() {
    Pack pack =
        pack(
            "cut-outs:\n"
                + "  - {name: key, on: back, outline: {square: 30}, stock: red-220, seen: hidden}\n"
                + "words:\n"
                + "  - {text: Ahoy, on: back, at: [66, 30], height: 6}\n");
    List<EyeSight.Part> parts = EyeSight.of(pack, new Eye(0, 0, Double.POSITIVE_INFINITY)).parts();
    assertThat(parts).extracting(EyeSight.Part::name).containsExactly("key", "Ahoy");
    assertThat(parts.get(0).share()).isCloseTo(1, within(1e-9));
  }
}
