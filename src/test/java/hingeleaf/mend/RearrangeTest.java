package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.structure.Structures;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What goes along when a part is renamed, moved or taken away, compared with texts by hand. */
class RearrangeTest {
  private static final String TEXT =
      """
      hingeleaf: 1
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: [10, 12, 14]      # from the back
          frames:
            - {name: far, aperture: {circle: 90}}
            - {name: middle, aperture: {circle: 106}}
            - {name: near, aperture: {circle: 120}}
      mechanisms:
        - door: {name: hatch, on: middle, width: 30, height: 30, at: [0, 60], stock: navy-220}
      mats:
        - {name: sea, on: middle, stock: kraft-220}
      cut-outs:
        - {name: boat, on: sea, outline: {circle: 10}, stock: navy-220}
        - {name: moon, on: boat, outline: {circle: 5}, stock: navy-220}
        - {name: lamp, on: hatch, outline: {circle: 4}, stock: navy-220}
        - {name: gull, on: far, outline: {circle: 5}, stock: navy-220}
      """;
  private static final String FRAMES = "base.stacked-frames.frames";

  private static DesignDocument design(String text) {
    DesignDocument.Outcome read =
        DesignDocument.read("a.yaml", text.getBytes(StandardCharsets.UTF_8), Structures.FORMS);
    return ((DesignDocument.Outcome.Right) read).document();
  }

  private static String after(List<Change> changes) {
    Trial trial = Trial.of(design(TEXT).tree(), changes);
    assertThat(trial).isInstanceOf(Trial.Read.class);
    return ((Trial.Read) trial).text();
  }

  @Test
  void depthsMoveWithTheirFrames() {
    String text = after(Rearrange.move(design(TEXT), FRAMES + "[2]", 0));
    assertThat(text).contains("side: [14, 10, 12]").contains("# from the back");
    assertThat(text.indexOf("name: near")).isLessThan(text.indexOf("name: far"));
  }

  @Test
  void whatStoodOnAFrameGoesWithItAndWhatStoodOnThatToo() {
    String text = after(Rearrange.remove(design(TEXT), FRAMES + "[1]"));
    assertThat(text).contains("side: [10, 14]").contains("gull");
    assertThat(text).doesNotContain("middle", "sea", "boat", "moon", "hatch", "lamp");
  }

  @Test
  void aDoorIsAPartLikeOthers() {
    String renamed = after(Rearrange.rename(design(TEXT), "mechanisms[0].door", "flap"));
    assertThat(renamed)
        .isEqualTo(TEXT.replace("name: hatch", "name: flap").replace("on: hatch", "on: flap"));
    String text = after(Rearrange.remove(design(TEXT), "mechanisms[0]"));
    assertThat(text).doesNotContain("hatch", "lamp").contains("moon");
    String moved = after(Rearrange.rename(design(TEXT), FRAMES + "[1]", "centre"));
    assertThat(moved).contains("door: {name: hatch, on: centre");
  }

  @Test
  void aCutOutTakesAwayOnlyWhatStoodOnIt() {
    String text = after(Rearrange.remove(design(TEXT), "cut-outs[0]"));
    assertThat(text).contains("name: sea", "name: gull").doesNotContain("boat", "moon");
  }

  @Test
  void aNewNameGoesToAllThatStandsOnIt() {
    String text = after(Rearrange.rename(design(TEXT), "mats[0]", "water"));
    assertThat(text)
        .isEqualTo(TEXT.replace("name: sea", "name: water").replace("on: sea", "on: water"));
  }

  @Test
  void aNewFrameGetsADepth() {
    String text = after(Rearrange.insert(design(TEXT), FRAMES, 3, "{name: front}"));
    assertThat(text).contains("side: [10, 12, 14, 14]").contains("name: front");
  }
}
