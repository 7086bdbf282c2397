package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.pack.SamplePacks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The door of rescue: what it writes, what it never touches, and bad measures. */
class RescueCommandTest {
  @TempDir Path folder;
  private Path design = Path.of("");

  @BeforeEach
  void write() throws IOException {
    design = folder.resolve("card.yaml");
    Files.writeString(design, SamplePacks.stack(""));
  }

  private Shell rescue(String... more) {
    List<String> all = new ArrayList<>(List.of("rescue", design.toString()));
    all.addAll(List.of(more));
    return Shell.run(all.toArray(String[]::new));
  }

  @Test
  void newDesignIsWritten_isGood_andTheOldOneStays() throws IOException {
    Path out = folder.resolve("new.yaml");
    String old = Files.readString(design);
    Shell s =
        rescue("--measured", "far.width=149", "--measured", "far.side.left=13", "--out", "" + out);
    assertThat(s.code()).as(s.err()).isZero();
    assertThat(s.out())
        .contains("far: still good, 149 x 150 mm")
        .contains(
            "middle: cut it otherwise, 149 x 150 mm (flat 197 x 150 mm, scores at 12, 24, 173")
        .contains("In sight: ")
        .contains("In the post: ");
    assertThat(Files.readString(design)).isEqualTo(old);
    Shell check = Shell.run("check", out.toString());
    assertThat(check.code()).isZero();
    assertThat(check.out()).contains("0 blocking, 0 to watch");
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("card.yaml", "new.yaml");
  }

  @Test
  void answersAsJson() {
    Shell s = rescue("--measured", "far.height=149", "--cut", "back,far", "--json");
    JsonNode all = JsonMapper.builder().build().readTree(s.out());
    assertThat(all.path("unit").asString()).isEqualTo("mm");
    JsonNode back = all.path("pieces").get(0);
    assertThat(back.path("piece").asString()).isEqualTo("back");
    assertThat(back.path("verdict").asString()).isEqualTo("trim");
    assertThat(back.path("height").asDouble()).isEqualTo(149);
    assertThat(all.path("design").asString()).startsWith("hingeleaf: 1");
  }

  @Test
  void theDesignItselfIsNeverReplaced() throws IOException {
    String old = Files.readString(design);
    Shell s = rescue("--measured", "far.width=149", "--out", design.toString());
    assertThat(s.code()).isEqualTo(Exit.USAGE);
    assertThat(s.err()).contains("would replace the design itself");
    assertThat(Files.readString(design)).isEqualTo(old);
  }

  @Test
  void aPlaceThatCannotBeWritten_saysSo() {
    Shell s = rescue("--measured", "far.width=149", "--out", folder + "/no/such/new.yaml");
    assertThat(s.code()).isEqualTo(Exit.FILES);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fra.width=149|there is no piece or paper `fra` - did you mean `far`?",
        "far.wdith=149|far has no measure `wdith` - did you mean `width`?",
        "far.side.lft=13|did you mean `side.left`?",
        "far.width=0|must be more than 0",
        "far.width=-149|must be more than 0",
        "far.width=NaN|is not a length",
        "far.width=1e9|exponent",
        "far.width=5000|measure again",
        "far.width|expected PIECE.MEASURE=LENGTH",
        "far|expected PIECE.MEASURE=LENGTH",
        "=3|expected PIECE.MEASURE=LENGTH",
        "white-300.thick=0.3|it has: thickness",
        "white-300.thickness=0|must be more than 0",
        "white-300.thickness=11|measure again",
        "die.circle-9.cut=90|did you mean `circle-90`?",
        "die.circle-90.cutt=90|it has: cut, cut.width, cut.height",
        "back.side=3|back has no measure `side`",
      })
  void badMeasure_isToldInOneSentence(String measure, String words) {
    Shell s = rescue("--measured", measure);
    assertThat(s.code()).isEqualTo(Exit.USAGE);
    assertThat(s.err()).contains("--measured").contains(words).hasLineCount(1);
    assertThat(s.out()).isEmpty();
  }

  @Test
  void measuresThatContradictEachOther() {
    Shell twice = rescue("--measured", "far.width=149", "--measured", "far.width=150");
    assertThat(twice.err()).contains("it was also measured as 149 mm").hasLineCount(1);
    Shell sum =
        rescue(
            "--measured", "far.piece.width=199",
            "--measured", "far.width=149",
            "--measured", "far.side=12",
            "--measured", "far.tab=12");
    assertThat(sum.code()).isEqualTo(Exit.USAGE);
    assertThat(sum.err())
        .contains(
            "far: its tabs, sides and panel are 12 + 12 + 149 + 12 + 12 = 197 mm, but the piece"
                + " measures 199 mm - measure again")
        .hasLineCount(1);
  }

  @Test
  void noTabIsThoughtToMakeUpForASlipOfTheRuler() {
    Shell slip = rescue("--measured", "far.piece.width=300", "--measured", "far.width=149");
    assertThat(slip.code()).isEqualTo(Exit.USAGE);
    assertThat(slip.err()).contains("but the piece measures 300 mm - measure again");
    assertThat(slip.err()).hasLineCount(1);
    Shell wide = rescue("--measured", "far.piece.width=203", "--measured", "far.width=149");
    assertThat(wide.code()).isEqualTo(Exit.FINE);
  }

  @Test
  void aMeasureOfWhatIsNotCut_andNothingMeasured() {
    Shell s = rescue("--measured", "far.width=149", "--cut", "middle");
    assertThat(s.code()).isEqualTo(Exit.USAGE);
    assertThat(s.err()).contains("far is measured, but --cut does not name it").hasLineCount(1);
    assertThat(rescue("--cut", "far").err()).contains("nothing was measured").hasLineCount(1);
    assertThat(rescue("--measured", "far.width=149", "--cut", "fr").err())
        .contains("there is no piece `fr`")
        .hasLineCount(1);
  }

  @Test
  void everythingCutAndNoFreedom_saysWhatToRecut() {
    Shell s = rescue("--measured", "far.width=147", "--cut", "back,far,middle,near");
    assertThat(s.code()).isEqualTo(Exit.CONTENT);
    assertThat(s.err())
        .contains("every piece is cut, and no way of gluing makes them fit - recut far")
        .hasLineCount(1);
  }

  @Test
  void theUnitsAreThoseInWhichThePiecesWereCut() {
    Shell s = rescue("--measured", "far.width=149", "--unit", "in");
    assertThat(s.code()).isEqualTo(Exit.USAGE);
    assertThat(s.err()).contains("units of the design").hasLineCount(1);
  }
}
