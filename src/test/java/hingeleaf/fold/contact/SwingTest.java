package hingeleaf.fold.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import hingeleaf.fold.FlatStates;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How far doors open, against elementary trigonometry: a leaf hung at x = 0 and opened by phi
 * crosses a plane in front at gap g at x = g / tan(phi), once phi >= asin(g / w).
 */
class SwingTest {
  private static String stack(String nearOpening, String door) {
    return Designs.stack(
        150,
        100,
        12,
        "    - {name: middle, plain: yes}\n    - {name: near, aperture: " + nearOpening + "}\n",
        "mechanisms:\n  - door: " + door + "\n");
  }

  @Test
  void edgeTenLeftOfTheHinge_stopsTheLeafAt129Degrees() {
    // Trade case: hinge at x = 20, edge of the near frame at x = 10, gap 12.
    MadeCard made =
        Designs.card(
            stack(
                "{rect: [50, 60], at: [35, 0]}",
                "{name: shutter, on: middle, hinge: left, width: 30, height: 40, at: [35, 0]}"));
    List<Swing> swings = Contact.swings(made);
    assertThat(swings).hasSize(1);
    Swing s = swings.get(0);
    assertThat(Math.toDegrees(s.opens()))
        .isCloseTo(180 - Math.toDegrees(Math.atan2(12, 10)), within(0.02));
    assertThat(s.against()).isEqualTo("near/panel");
    assertThat(s.leaf()).isEqualTo("middle/shutter");
    assertThat(s.reach()).isCloseTo(30, within(1e-9));
    assertThat(s.square()).isCloseTo(30, within(1e-9));
  }

  @Test
  void solidFrameInFront_stopsTheLeafAtArcsineOfTheGap() {
    String near = "{rect: [20, 20], at: [-40, 0]}";
    MadeCard made =
        Designs.card(
            stack(
                near,
                "{name: flap, on: middle, hinge: bottom, width: 30, height: 25, at: [30, 0]}"));
    Swing s = Contact.swings(made).get(0);
    assertThat(s.opens()).isCloseTo(Math.asin(12.0 / 25), within(2e-4));
    // It opens to a right angle if it reaches no further than the gap.
    assertThat(s.square()).isBetween(11.4, 12.0);
    MadeCard less =
        Designs.card(
            stack(
                near,
                "{name: flap, on: middle, hinge: bottom, width: 30, height: 11.5, at: [30, 0]}"));
    assertThat(Contact.swings(less).get(0).opens()).isEqualTo(Math.PI);
  }

  @Test
  void leafOfItsOwn_opensAsOneCutIn_andLiesFlatClosed() {
    MadeCard made =
        Designs.card(
            stack(
                "{rect: [50, 60], at: [35, 0]}",
                "{name: shutter, on: middle, hinge: left, width: 30, height: 40, at: [35, 0],"
                    + " stock: navy-220, shape: arched, handle: 6}"));
    Swing s = Contact.swings(made).get(0);
    assertThat(s.door()).isEqualTo("shutter");
    assertThat(Math.toDegrees(s.opens())).isCloseTo(129.8, within(0.05));
    for (Rest rest : FlatStates.of(made, 8).states()) {
      assertThat(rest.leans()).hasSize(2);
    }
    assertThat(FlatStates.of(made, 8).count()).isEqualTo(4);
    assertThat(Contact.way(made, FlatStates.of(made, 8).states().get(0), 0.1).faults()).isEmpty();
  }

  @Test
  void leafCutIn_liesFlatClosed_whereverItSitsInItsPanel() {
    for (String at : List.of("[-40, 0]", "[0, 0]", "[40, 0]")) {
      for (String hinge : List.of("left", "right", "top", "bottom")) {
        MadeCard made =
            Designs.card(
                stack(
                    "{rect: [90, 60]}",
                    "{name: d, on: back, hinge: "
                        + hinge
                        + ", width: 20, height: 30, at: "
                        + at
                        + "}"));
        assertThat(FlatStates.of(made, 8).count()).isEqualTo(4);
        for (Rest rest : FlatStates.of(made, 8).states()) {
          assertThat(rest.leans()).as("%s %s", hinge, at).hasSize(2);
          assertThat(rest.posed().values().get(0)).isCloseTo(0, within(1e-12));
        }
      }
    }
  }

  @Test
  void nothingInFront_opensAllTheWay() {
    MadeCard made =
        Designs.card(
            Designs.stage(
                150,
                100,
                12,
                "plain: yes",
                "mechanisms:\n  - door: {name: gate, on: far, hinge: right, width: 30, height: 40}\n"));
    Swing s = Contact.swings(made).get(0);
    assertThat(s.opens()).isEqualTo(Math.PI);
    assertThat(s.against()).isNull();
  }

  @Test
  void doorsThatCannotBeHung_areRefusedInASentence() {
    assertThatThrownBy(
            () ->
                Designs.card(
                    stack(
                        "{rect: [90, 60]}",
                        "{name: d, on: middle, hinge: top, width: 30, height: 40, shape: arched}")))
        .hasMessageContaining("no straight edge there to fold along");
    assertThatThrownBy(
            () ->
                Designs.card(
                    stack("{rect: [90, 60]}", "{name: d, on: middle, width: 160, height: 40}")))
        .hasMessageContaining("of an edge or opening - move it or make it smaller");
    assertThatThrownBy(
            () ->
                Designs.card(
                    stack(
                        "{rect: [90, 60]}",
                        "{name: d, on: near, width: 30, height: 40, at: [0, 0], stock: navy-220}")))
        .hasMessageContaining("has not the 8 mm of card that its strip is glued to");
  }
}
