package hingeleaf.fold.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.MadeCard;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Leaves with a thickness at their jambs and before each other, and leaves that go through an
 * opening at a gap g: elementary trigonometry. A leaf of width w and thickness t that turns about a
 * line e before its edge sweeps sqrt((e + w)^2 + t^2), most at atan(t / (e + w)); open by phi it
 * crosses a plane at gap g at x0 + g / tan(phi), first at asin(g / w) where its tip is at x0 +
 * sqrt(w^2 - g^2). The figures were worked out beforehand to 40 digits.
 */
class MeetingTest {
  @ParameterizedTest
  @CsvSource({
    "60, 0, 0, 60, 0, 0",
    "60, 2, 0, 60.03332407921454, 0.033324079214537526, 0.033320995878247196",
    "60, 2, 1, 61.032778078668514, 0.03277807866851476, 0.03277514440407577",
    "60, 2, 2, 62.03224967708329, 0.03224967708329051, 0.03224688243525392",
    "45, 1.5, 3, 48.023431780746364, 0.02343178074636515, 0.031239833430268277"
  })
  void cornerSweepsItsRadius(
      double w, double t, double e, double radius, double clearance, double worst) {
    Corner c = new Corner(w, t, e);
    assertThat(c.radius()).isCloseTo(radius, within(1e-12));
    assertThat(c.clearance()).isCloseTo(clearance, within(1e-12));
    assertThat(c.worst()).isCloseTo(worst, within(1e-12));
    double[] far = c.rear(worst);
    assertThat(far[0]).as("farthest along the wall").isCloseTo(radius, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "60, 2, 0, 0.26179938779914946, 58.47318766754914, 13.597291053573109, 2.0444504226559026",
    "60, 2, 0, 0.7853981633974483, 43.840620433565945, 41.012193308819754, 17.57359312880715",
    "60, 2, 0, 1.5707963267948966, 2, 60, 60",
    "60, 2, 1, 0.26179938779914946, 59.43911349383821, 13.85611009867563, 2.0785245963668344",
    "60, 2, 2, 0.26179938779914946, 60.40503932012727, 14.11492914377815, 2.112598770077766",
    "45, 1.5, 3, 0.26179938779914946, 46.75266822952906, 10.974425425487395, 1.6355603381247221",
    "45, 1.5, 3, 3.141592653589793, -48, 1.5, 96"
  })
  void cornerIsWhereTrigonometryPutsIt(
      double w, double t, double e, double phi, double x, double z, double clear) {
    Corner c = new Corner(w, t, e);
    assertThat(c.rear(phi)).containsExactly(new double[] {x, z}, within(1e-9));
    assertThat(c.clear(phi)).isCloseTo(clear, within(1e-9));
  }

  /** A leaf of 60 hung at x = -30 behind a frame at gap 12.7 with an opening from a to b of it. */
  private static Swing behind(double a, double b) {
    double middle = (a + b) / 2 - 30;
    return Contact.swings(
            Designs.card(
                Designs.stack(
                    200,
                    100,
                    12.7,
                    "    - {name: middle, plain: yes}\n    - {name: near, aperture: {rect: ["
                        + (b - a)
                        + ", 60], at: ["
                        + middle
                        + ", 0]}}\n",
                    "mechanisms:\n  - door: {name: gate, on: middle, hinge: left, width: 60,"
                        + " height: 40}\n")))
        .get(0);
  }

  @Test
  void wideOpening_letsTheLeafThrough_andThatIsTold() {
    Swing s = behind(-30, 62);
    assertThat(s.opens()).isGreaterThan(Math.PI / 2);
    assertThat(s.passes()).containsExactly("near/panel");
    // Behind a lid on the near frame the tip rests at its first crossing, asin(12.7 / 60).
    assertThat(s.ajar()).isCloseTo(0.21327995141803505, within(1e-9));
    // Past a right angle it comes to lean on the opening's edge 30 before the hinge.
    assertThat(s.opens()).isCloseTo(Math.PI - Math.atan2(12.7, 30), within(1e-3));
  }

  @Test
  void openingThatEndsBeforeTheTip_stopsItAtTheFirstCrossing() {
    // The tip crosses 58.64 from the hinge, beyond the opening's edge at 55.
    Swing s = behind(5, 55);
    assertThat(s.opens()).isCloseTo(0.21327995141803505, within(2e-4));
    assertThat(s.against()).isEqualTo("near/panel");
    assertThat(s.passes()).isEmpty();
  }

  @Test
  void openingJustWiderThanTheTip_letsItThroughToTheHinge() {
    // 59 is beyond 58.64; an edge at the hinge stops the leaf at a right angle, x = g / tan(90).
    Swing s = behind(0, 59);
    assertThat(s.opens()).isCloseTo(Math.PI / 2, within(1e-3));
    assertThat(s.passes()).containsExactly("near/panel");
  }

  private static MadeCard pair(double half, String one, String two) {
    return Designs.card(
        Designs.stage(
            150,
            100,
            12,
            "plain: yes",
            "mechanisms:\n  - door: {name: one, on: far, hinge: left, width: 30, height: 50, at: [-"
                + half
                + ", 0]"
                + one
                + "}\n  - door: {name: two, on: far, hinge: right, width: 30, height: 50, at: ["
                + half
                + ", 0]"
                + two
                + "}\n"));
  }

  @Test
  void pair_needsWhatBothCornersSweep() {
    List<Meeting> meet =
        Contact.meetings(pair(15.5, ", stock: white-300", ", stock: white-300, handle: 8"));
    assertThat(meet).hasSize(1);
    Meeting m = meet.get(0);
    assertThat(m.gap()).isCloseTo(1, within(1e-9));
    assertThat(m.need()).isCloseTo(2 * (Math.sqrt(900 + 0.356 * 0.356) - 30), within(1e-12));
    assertThat(m.binds()).isFalse();
    // Its half-round tongue of 8 reaches 4 past the edge and over the other leaf.
    assertThat(m.laps()).isEqualTo("two");
  }

  @Test
  void leavesThatOverlapBind_evenIfOneIsCutIn() {
    Meeting m = Contact.meetings(pair(14, "", ", stock: white-300")).get(0);
    assertThat(m.gap()).isCloseTo(-2, within(1e-9));
    assertThat(m.binds()).isTrue();
  }

  @Test
  void leavesOnOneSide_orFarApart_doNotMeet() {
    assertThat(Contact.meetings(pair(25, "", ""))).isEmpty();
    MadeCard above =
        Designs.card(
            Designs.stage(
                150,
                150,
                12,
                "plain: yes",
                "mechanisms:\n  - door: {name: one, on: far, hinge: left, width: 30, height: 40,"
                    + " at: [-15.5, 30]}\n  - door: {name: two, on: far, hinge: right, width: 30,"
                    + " height: 40, at: [15.5, -30]}\n"));
    assertThat(Contact.meetings(above)).isEmpty();
  }

  @Test
  void doorsOnTheForemostFrame_stayShutInABox() {
    assertThat(Contact.swings(pair(15.5, "", ""))).allMatch(s -> s.ajar() < 1e-12);
  }
}
