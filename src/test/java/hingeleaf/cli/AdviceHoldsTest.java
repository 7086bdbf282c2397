package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told is true, and what is advised can be done and does not make a worse card. */
class AdviceHoldsTest {
  private static final String CARD =
      """
      hingeleaf: 1
      title: T
      base:
        stacked-frames:
          width: 140
          height: 140
          stock: white-300
          side: 12
          tab: 10
          frames:
            - {name: a, aperture: {rect: [60, 80]}}
            - {name: b, aperture: {rect: [60, 80]}}
      """;

  @TempDir Path folder;

  private String check(String text) throws IOException {
    Path file = folder.resolve("card.yaml");
    Files.writeString(file, text);
    return Shell.run("check", file.toString()).out();
  }

  @Test
  void anOpeningInTheMiddleIsNotToBeMovedThere() throws IOException {
    String large = CARD.replaceFirst("rect: \\[60, 80\\]", "circle: 138");
    assertThat(check(large)).contains("make the opening").doesNotContain("to the middle");
    assertThat(check(large.replace("circle: 138", "circle: 60, at: [40, 0]")))
        .contains("or move it to the middle");
  }

  @Test
  void twoPartsInTheVerySamePlaceAreTold_andTheMoveFreesThem() throws IOException {
    String twice =
        CARD
            + """
            cut-outs:
              - {name: x, on: back, at: [0, 0], outline: {rect: [20, 20]}, stock: navy-220}
              - {name: y, on: back, at: [0, 0], outline: {rect: [20, 20]}, stock: navy-220}
            """;
    assertThat(check(twice))
        .contains("card.yaml:15:5: warns: y: it lies in the very place of x")
        .contains("move it 20 mm to the right");
    String moved = twice.replace("y, on: back, at: [0, 0]", "y, on: back, at: [20, 0]");
    assertThat(check(moved)).doesNotContain("warns");
  }

  @Test
  void noHeightIsOfferedThatTheDesignWouldRefuse() throws IOException {
    String lock =
        CARD.replace("b, aperture: {rect: [60, 80]}", "b, aperture: {rect: [20, 130]}")
            + "mechanisms:\n  - slot-lock: {name: k, stock: navy-220}\n";
    assertThat(check(lock)).contains("k: the strip on edge").doesNotContain("make its height");
  }

  @Test
  void allOfAHundredIsSaidOfAllOnly() throws IOException {
    assertThat(check(CARD)).contains("95 % sure: 99.5 to 99.9 %").doesNotContain("glued 100 %");
  }

  @Test
  void oneDegreeIsOne() throws IOException {
    assertThat(check(CARD.replace("side: 12", "side: 1")))
        .contains("tipped 1 degree backwards")
        .doesNotContain("1 degrees");
  }

  @Test
  void leavesThatBindAreFreedAsAdvised() throws IOException {
    String leaves =
        CARD
            + """
            mechanisms:
              - door: {name: l, on: b, hinge: left, width: 31, height: 84, at: [-15, 0], stock: navy-220}
              - door: {name: r, on: b, hinge: right, width: 31, height: 84, at: [15, 0], stock: navy-220}
            """;
    assertThat(check(leaves))
        .contains("overlap by 1 mm and bind")
        .contains("move l 1 mm towards its hinge")
        .doesNotContain("wide or less");
    assertThat(check(leaves.replace("[-15, 0]", "[-16, 0]")))
        .contains("both swing")
        .doesNotContain("warns", "blocks");
  }

  @Test
  void partsPastTheEdgeAreTold_andTheAdviceBringsThemIn() throws IOException {
    String wide =
        CARD
            + """
            cut-outs:
              - {name: hill, on: b, at: [50, 0], outline: {rect: [50, 20]}, stock: navy-220, seen: any}
            """;
    assertThat(check(wide))
        .contains("card.yaml:14:5: notes: hill: it reaches 5 mm past the right edge of the card")
        .contains("move it 5 mm to the left, or leave it");
    assertThat(check(wide.replace("at: [50, 0]", "at: [45, 0]"))).doesNotContain("past the");
    String huge =
        wide.replace("at: [50, 0], outline: {rect: [50,", "at: [0, 0], outline: {rect: [200,");
    assertThat(check(huge)).contains("30 mm past the left edge").contains("make it 60 mm smaller");
    assertThat(check(huge.replace("[200,", "[140,"))).doesNotContain("past the");
  }

  @Test
  void signsThatTheFaceLacksAreTold_andTheRestIsWritten() throws IOException {
    String words =
        CARD + "words:\n  - {text: Ahoy \u26F5, on: back, at: [0, 0], height: 6, seen: any}\n";
    assertThat(check(words)).contains("have a sign that the face lacks");
    assertThat(check(words.replace(" \u26F5", ""))).doesNotContain("face lacks");
    assertThat(check(words.replace(" \u26F5", ", \u00e9t\u00e9 \u00bd")))
        .doesNotContain("face lacks");
  }

  @Test
  void aPartInTheWayOfADoorIsToBeMoved_andFreesIt() throws IOException {
    String card =
        CARD.replace("{name: b, aperture: {rect: [60, 80]}}", "{name: b, plain: yes}")
            + """
            mechanisms:
              - door: {name: flap, on: b, hinge: left, width: 56, height: 70, stock: navy-220}
            cut-outs:
              - {name: stop, on: b, at: [33, 0], outline: {rect: [30, 10]}, stock: navy-220,
                 raised-by: 3, seen: any}
            """;
    assertThat(check(card))
        .contains("flap: it opens only 0 degrees, until it meets stop - move stop out of its way");
    assertThat(check(card.replace("[33, 0]", "[50, 0]"))).doesNotContain("warns");
  }
}
