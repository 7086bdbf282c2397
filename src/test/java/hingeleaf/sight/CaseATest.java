package hingeleaf.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Face;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A worked card: 150 x 150, sides 12, tabs 12 folded in, apertures round 90, round 110, square 130,
 * whose near frame has a border of 10 and so shows its tabs. Figures by similar triangles: a sight
 * line through an edge {@code a} of the opening, from an eye at {@code (x, D)} before its plane,
 * meets the plane {@code s} behind at {@code a + s (a - x) / D}.
 */
class CaseATest {
  private static final Vec3 OPENING = new Vec3(0, 0, 36);
  private static final double INNER_EDGE_OF_TAB = 63;

  private static List<Showing> showing(Stacks stack, Look look) {
    Scene scene = stack.scene();
    return Showing.of(scene, look).stream().filter(s -> s.part().contains("tab")).toList();
  }

  private static double onTab(double edge, double eyeX, double eyeZ) {
    return edge + 12 * (edge - eyeX) / eyeZ - INNER_EDGE_OF_TAB;
  }

  @Test
  void tabsShowTwoMillimetresSeenStraightOn() {
    List<Showing> seen = showing(Stacks.caseA(), Look.straightOn());
    assertThat(seen).extracting(Showing::part).containsExactly("near/tab 1", "near/tab 2");
    for (Showing s : seen) {
      assertThat(s.through()).isEqualTo("near/panel");
      assertThat(s.depth()).isCloseTo(2, within(1e-6));
      assertThat(s.inOpening()).isCloseTo(2, within(1e-6));
      assertThat(s.area()).isCloseTo(2 * 130, within(1e-4));
      assertThat(s.face()).isEqualTo(Face.BACK);
      assertThat(s.colour()).isEqualTo("#f0f0f0");
    }
  }

  @Test
  void tabsShowMoreFromAnEyeOnTheAxis() {
    List<Showing> seen = showing(Stacks.caseA(), Look.fromEye(OPENING, 400, 0, 0));
    assertThat(seen).hasSize(2);
    for (Showing s : seen) {
      assertThat(s.depth()).isCloseTo(3.95, within(1e-6));
      assertThat(s.depth()).isCloseTo(onTab(65, 0, 400), within(1e-6));
    }
  }

  @Test
  void theFarTabShowsMostFromTheSide() {
    double a = Math.toRadians(20);
    List<Showing> seen = showing(Stacks.caseA(), Look.fromEye(OPENING, 400, -a, 0));
    assertThat(seen).extracting(Showing::part).containsExactly("near/tab 2");
    double exact = onTab(65, -400 * Math.sin(a), 400 * Math.cos(a));
    assertThat(seen.get(0).depth()).isCloseTo(8.44, within(0.005));
    assertThat(seen.get(0).depth()).isCloseTo(exact, within(1e-6));
  }

  @ParameterizedTest(name = "{0} mm away, {1} degrees aside: opening {2}")
  @CsvSource({"0, 0, 126", "400, 0, 122.33", "400, 20, 113.64"})
  void theStripInTheOpeningIsTheCure(double distance, double degrees, double opening) {
    Look look =
        distance == 0
            ? Look.straightOn()
            : Look.fromEye(OPENING, distance, -Math.toRadians(degrees), 0);
    List<Showing> seen = showing(Stacks.caseA(), look);
    Showing worst = seen.get(seen.size() - 1);
    assertThat(130 - 2 * worst.inOpening()).isCloseTo(opening, within(0.005));

    assertThat(showing(withNear(opening - 0.02), look)).isEmpty();
    assertThat(showing(withNear(opening + 0.1), look)).isNotEmpty();
  }

  private static Stacks withNear(double opening) {
    Stacks s = new Stacks();
    s.back();
    s.frame("far", Stacks.circle(45, 120));
    s.frame("middle", Stacks.circle(55, 120));
    s.frame("near", Ring.rectangle(-opening / 2, -opening / 2, opening / 2, opening / 2));
    return s;
  }

  @Test
  void whatLiesBehindTheTabIsTold() {
    Showing onMiddle = showing(Stacks.caseA(), Look.straightOn()).get(0);
    assertThat(onMiddle.colour()).isEqualTo("#f0f0f0");
    assertThat(onMiddle.behind()).containsExactly("#ffffff");
    Stacks alone = new Stacks();
    alone.back();
    alone.frame("only", Stacks.circle(70, 60));
    assertThat(showing(alone, Look.straightOn()).get(0).behind()).containsExactly("#a08060");
  }

  @Test
  void aRoundOpeningShowsTabsDeepestInTheMiddle() {
    Stacks s = new Stacks();
    s.back();
    s.frame("only", Stacks.circle(70, 4000));
    Showing tab = showing(s, Look.straightOn()).get(0);
    assertThat(tab.depth()).isCloseTo(70 - 63, within(1e-3));
    // Area of a circular segment: r2 acos(h / r) - h sqrt(r2 - h2).
    double segment = 4900 * Math.acos(0.9) - 63 * Math.sqrt(4900 - 63 * 63);
    assertThat(tab.area()).isCloseTo(segment, within(0.02));
  }

  @Test
  void aTabOutsideTheOpeningIsNoShowing() {
    assertThat(showing(withNear(120), Look.straightOn())).isEmpty();
    assertThat(showing(withNear(130), Look.fromBehind())).isEmpty();
  }

  @Test
  void sharesOfEachPart() {
    Scene scene = Stacks.caseA().scene();
    List<Seen> seen = Seen.of(scene, Sight.look(scene, Look.straightOn()));
    assertThat(share(seen, "near/panel")).isCloseTo(1, within(1e-9));
    assertThat(share(seen, "near/tab 1")).isCloseTo(2.0 * 130 / (12 * 150), within(1e-6));
    assertThat(share(seen, "near/side 1")).isZero();
    assertThat(share(seen, "far/tab 1")).isZero();
    double round90 = 60 * 45 * 45 * Math.sin(2 * Math.PI / 120);
    assertThat(share(seen, "back/back")).isCloseTo(round90 / (150 * 150), within(1e-6));
  }

  private static double share(List<Seen> seen, String part) {
    return seen.stream().filter(s -> s.part().equals(part)).findFirst().orElseThrow().share();
  }
}
