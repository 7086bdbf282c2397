package hingeleaf.fold.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contact on the way of stacked frames against closed forms. A stage of depth d sheared by theta
 * from upright carries its frame sideways by d sin(theta) at a height of d cos(theta), so a frame
 * of solid card meets an ornament of height T at theta = acos(T/d) (elementary). Navy card of the
 * built-in bench is 0.28 mm thick.
 */
class ContactTest {
  private static final double CARD = 0.28;

  private static String ornament(double at, double width, double height) {
    return String.format(
        Locale.ROOT,
        "cut-outs:\n  - {name: boat, on: back, at: [%s, 0], outline: {rect: [%s, 30]},"
            + " stock: navy-220, raised-by: %s}\n",
        at,
        width,
        Math.rint((height - CARD) * 1e6) / 1e6);
  }

  /** Radians from upright at a share of the way in which one stage goes a quarter turn. */
  private static double theta(Touch t) {
    return t.share() * Math.PI / 2;
  }

  @ParameterizedTest
  @CsvSource({
    // depth, height, acos(height / depth) at full precision
    "12.7, 2, 1.4126577185378013",
    "12.7, 5, 1.1661422614810169",
    "12.7, 8.5, 0.8375417333500245",
    "12.7, 12, 0.3335626515533346",
    "25.4, 3, 1.4524097454266298",
    "10, 1, 1.4706289056333368",
    "12, 2.28, 1.37964",
  })
  void solidCard_comesDownOnTheOrnament(double depth, double height, double contact) {
    MadeCard made =
        Designs.card(Designs.stage(180, 100, depth, "plain: yes", ornament(0, 20, height)));
    for (int lean : new int[] {-1, 1}) {
      Way way = Contact.way(made, Designs.leaning(made, lean), 0.1);
      assertThat(way.blocked()).isFalse();
      assertThat(way.order()).isEqualTo(Order.TOGETHER);
      Touch t = touch(way, "boat/panel", "far/panel");
      assertThat(t.kind()).isEqualTo(Touch.Kind.RESTS_ON);
      assertThat(t.height()).isCloseTo(height, within(1e-9));
      // 1e-3 mm counts as touching: 1e-3 / (d sin theta) rad too early at most.
      double early = 2e-3 / (depth * Math.sin(contact));
      assertThat(theta(t)).isBetween(contact - early - 1e-5, contact + 1e-5);
    }
  }

  @Test
  void worked_raisedBoatUnderSolidCard_stopsAt79Degrees() {
    // Trade case: height 2.28 (foam 2, card 0.28), side 12: 79.05 degrees, 2.28 proud, 11.78 over.
    MadeCard made = Designs.card(Designs.stage(150, 150, 12, "plain: yes", ornament(0, 55, 2.28)));
    Touch t = touch(Contact.way(made, Designs.leaning(made, 1), 0.1), "boat/panel", "far/panel");
    assertThat(Math.toDegrees(theta(t))).isCloseTo(79.05, within(0.01));
    assertThat(12 * Math.cos(theta(t))).isCloseTo(2.28, within(0.002));
    assertThat(12 * Math.sin(theta(t))).isCloseTo(11.78, within(0.005));
  }

  @ParameterizedTest
  @CsvSource({
    // The frame's panel is 180 wide and its opening runs from 20 to 160, so from -70 to 70.
    // ornament from, to; depth, height; lean; what happens
    "-49, -29, 12.7, 2, 1, nothing",
    "-69, -54, 12.7, 2, 1, rests",
    "-69, -54, 12.7, 2, -1, nothing",
    "61, 69, 12.7, 2, -1, rests",
    "61, 69, 12.7, 2, 1, nothing",
    "-64, -49, 25.4, 3, 1, rests",
    // low and wholly inside the opening until its edge runs into it: asin(edge / d)
    "-65, -50, 12.7, 11.9, 1, jams",
  })
  void opening_letsAnOrnamentThrough_orComesDownOnIt(
      double from, double to, double depth, double height, int lean, String what) {
    MadeCard made =
        Designs.card(
            Designs.stage(
                180,
                100,
                depth,
                "aperture: {rect: [140, 60]}",
                ornament((from + to) / 2, to - from, height)));
    Way way = Contact.way(made, Designs.leaning(made, lean), 0.1);
    switch (what) {
      case "nothing" -> assertThat(way.touches()).isEmpty();
      case "rests" -> {
        Touch t = touch(way, "boat/panel", "far/panel");
        assertThat(t.kind()).isEqualTo(Touch.Kind.RESTS_ON);
        assertThat(theta(t)).isCloseTo(Math.acos(height / depth), within(2e-4));
      }
      default -> {
        Touch t = touch(way, "boat/panel", "far/panel");
        assertThat(t.kind()).isEqualTo(Touch.Kind.JAMS);
        // Down to 11.9 the frame has gone 4.43 mm, so the edge at -70 is still 0.57 mm short of it.
        assertThat(theta(t)).isCloseTo(Math.asin(5 / 12.7), within(2e-4));
        assertThat(t.over()).isCloseTo(12.7 - 5, within(0.01));
        assertThat(t.towards().x()).isCloseTo(1, within(1e-9));
      }
    }
  }

  @Test
  void thinPartsMetBetweenTwoPoses_areFound() {
    // Two posts 0.2 mm wide, 6.5 on the back and 6.3 under the frame, 1 mm apart: they meet once
    // 12 sin(theta) = 0.8 and are past each other at 1.2, between two of 24 even poses.
    MadeCard made =
        Designs.card(
            Designs.stage(
                150,
                100,
                12,
                "plain: yes",
                "cut-outs:\n"
                    + "  - {name: post, on: back, at: [1, 0], outline: {rect: [0.2, 100]},"
                    + " stock: navy-220, raised-by: 6.22}\n"
                    + "  - {name: hook, on: far, face: back, at: [0, 0], outline: {rect: [0.2, 100]},"
                    + " stock: navy-220, raised-by: 6.02}\n"));
    Way way = Contact.way(made, Designs.leaning(made, 1), 0.1);
    assertThat(way.blocked()).isTrue();
    Touch t = way.faults().get(0);
    assertThat(t.kind()).isEqualTo(Touch.Kind.JAMS);
    assertThat(theta(t)).isCloseTo(Math.asin(0.8 / 12), within(2e-4));
    assertThat(t.share()).isBetween(1 / 24.0, 2 / 24.0);
    Way away = Contact.way(made, Designs.leaning(made, -1), 0.1);
    assertThat(away.blocked()).isFalse();
  }

  @Test
  void sideThatClosesOverAnOrnament_jams_andTheRemediesFreeIt() {
    // Two stages of 12 leaning right: the near frame's left side comes down on the far frame's
    // front from its left edge at -75 to -63. An ornament from -64 to -50 leaves 1 mm too little.
    String frames =
        "    - {name: far, plain: yes}\n    - {name: near, aperture: {rect: [130, 80]}}\n";
    MadeCard made = Designs.card(Designs.stack(150, 100, 12, frames, post(-57, 2)));
    Rest rest = Designs.leaning(made, 1, 1);
    Way way = Contact.way(made, rest, 0.1);
    assertThat(way.blocked()).isTrue();
    Touch t = touch(way, "post/panel", "near/side-left");
    assertThat(t.kind()).isEqualTo(Touch.Kind.JAMS);
    // the side, at angle a off the panel, meets the corner 11 mm from its fold, 2.28 high
    assertThat(Math.PI / 2 - theta(t)).isCloseTo(Math.atan2(2.28, 11), within(1e-3));
    Remedy remedy = way.remedies().get(0);
    assertThat(remedy.part()).isEqualTo("post/panel");
    Remedy.Move move = remedy.move();
    assertThat(move).isNotNull();
    assertThat(move.right()).isEqualTo(1.0 + 0.5);
    MadeCard moved = Designs.card(Designs.stack(150, 100, 12, frames, post(-57 + 1.5, 2)));
    assertThat(Contact.way(moved, Designs.leaning(moved, 1, 1), 0.1).blocked()).isFalse();
    MadeCard less = Designs.card(Designs.stack(150, 100, 12, frames, post(-57 + 0.5, 2)));
    assertThat(Contact.way(less, Designs.leaning(less, 1, 1), 0.1).blocked()).isTrue();
    // Thinner: two thicknesses of 0.356 are swallowed.
    Double height = remedy.height();
    assertThat(height).isNotNull();
    assertThat(height).isBetween(0.28, 2 * 0.356);
    // and the other way round the ornament is free of the sides
    assertThat(Contact.way(made, Designs.leaning(made, -1, -1), 0.1).blocked()).isFalse();
  }

  private static String post(double at, double raised) {
    return "cut-outs:\n  - {name: post, on: far, at: ["
        + at
        + ", 0], outline: {rect: [14, 60]}, stock: navy-220, raised-by: "
        + raised
        + "}\n";
  }

  @Test
  void ornamentHigherThanItsStage_standsThroughFromTheStart() {
    MadeCard made = Designs.card(Designs.stage(150, 100, 12, "plain: yes", ornament(0, 20, 14)));
    Way way = Contact.way(made, Designs.leaning(made, 1), 0.1);
    Touch t = way.faults().get(0);
    assertThat(t.kind()).isEqualTo(Touch.Kind.STANDS_THROUGH);
    assertThat(t.share()).isZero();
    Remedy remedy = way.remedies().get(0);
    assertThat(remedy.height()).isNotNull();
    assertThat(remedy.height()).isBetween(11.0, 12.0);
  }

  @Test
  void emptyStack_touchesNothing_inAnyRest() {
    MadeCard made = hingeleaf.structure.SampleStacks.plain(150, 100, 12, 10, 3, 0.356);
    for (Rest rest : hingeleaf.fold.FlatStates.of(made, 8).states()) {
      Way way = Contact.way(made, rest, 0.1);
      assertThat(way.touches()).as("%s", rest.leans()).isEmpty();
      assertThat(way.close()).isEmpty();
    }
  }

  private static Touch touch(Way way, String part, String against) {
    return way.touches().stream()
        .filter(t -> t.part().equals(part) && t.against().equals(against))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no such touch in " + way));
  }
}
