package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bad designs: one located sentence each, the right exit code, nothing made, no stack trace. */
class BadInputTest {
  private static final String GOOD =
      """
      hingeleaf: 1
      title: T
      unit: mm
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: 12
          tab: 12
          frames:
            - {name: far, aperture: {circle: 90}}
            - {name: near, aperture: {circle: 120}}
      """;

  @TempDir Path folder;

  private Shell check(String text) throws IOException {
    Path file = folder.resolve("card.yaml");
    Files.writeString(file, text);
    return Shell.run("check", file.toString());
  }

  @Test
  void theGoodOneIsGood() throws IOException {
    Shell s = check(GOOD);
    assertThat(s.code()).isZero();
    assertThat(s.out()).contains("0 blocking, 0 to watch");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "width: 150|width: 1e309|6:12|exponent",
        "width: 150|width: 1e999999999|6:12|exponent",
        "width: 150|width: NaN|6:12|not a length",
        "width: 150|width: 10 km|6:12|unknown unit",
        "width: 150|width: 99999|6:12|more than 10 m",
        "width: 150|wdith: 150|6:5|did you mean",
        "width: 150|width: 150 mn|6:12|did you mean",
        "side: 12|side: 0|9:11|out of range",
        "side: 12|side: -4|9:11|out of range",
        "side: 12|side: [12, 12, 12]|9:11|give one for each",
        "stock: white-300|stock: wite-300|8:12|did you mean",
        "tab: 12|tab: 31|12:31|the border of far that they land on is 30 mm",
        "circle: 90|circle: 170|12:31|reaches past its panel",
        "circle: 90|square: 145|12:31|leaves a border of 2.5 mm",
        "circle: 90|circel: 90|12:32|did you mean",
        "name: near|name: far|13:16|used twice",
        "name: near|name: back|13:9|used twice",
        "title: T|unit: mm|3:1|given twice",
        "circle: 90|circle: &a 90|12:40|anchors",
        "circle: 90|circle: !!int 90|12:40|tags",
        "circle: 90|svg: none.svg, width: 40|12:31|there is no file none.svg"
      })
  void faultIsToldAtItsPlace(String good, String bad, String place, String words)
      throws IOException {
    assertThat(GOOD).contains(good);
    Shell s = check(GOOD.replace(good, bad));
    assertThat(s.code()).as(s.out() + s.err()).isEqualTo(Exit.CONTENT);
    assertThat(s.out()).contains("card.yaml:" + place + ": blocks: ").contains(words);
    assertThat(s.err()).doesNotContain("Exception");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "mats: [{name: sea, on: back, stock: kraft-220, width: 140}]|glue strips",
        "mats: [{name: sea, on: bakc, stock: kraft-220}]|did you mean `back`",
        "cut-outs: [{name: boat, on: far, at: [0, -8], outline: {circle: 55}, stock: navy-220}]|nothing to be glued to",
        "windows: [{name: pane, on: back, stock: acetate}]|no aperture"
      })
  void faultOfAFittingIsTold(String fitting, String words) throws IOException {
    Shell s = check(GOOD + fitting + "\n");
    assertThat(s.code()).as(s.out() + s.err()).isEqualTo(Exit.CONTENT);
    assertThat(s.out()).contains("card.yaml:").contains(words);
  }

  @Test
  void aTabForIndentingIsTold() throws IOException {
    Shell s = check(GOOD + "\tmats: []\n");
    assertThat(s.code()).isEqualTo(Exit.CONTENT);
    assertThat(s.out()).contains("card.yaml:14:1: blocks: this line is indented with a tab");
  }

  @Test
  void aPieceLargerThanEverySheetBlocks_andOneTooLongForTheTrimmerWarns() throws IOException {
    Shell s = check(GOOD.replace("150", "400"));
    assertThat(s.code()).isEqualTo(Exit.CONTENT);
    assertThat(s.out())
        .contains("far: the piece is 448 x 400 mm as cut, larger than every sheet")
        .contains("longer than the trimmer's cut of 310 mm");
  }

  @Test
  void aFileLongerThanAnyDesignIsNotTakenIn() throws IOException {
    Path huge = folder.resolve("huge.yaml");
    Files.writeString(huge, String.join("", Collections.nCopies(600_000, "# x\n")));
    Shell s = Shell.run("check", huge.toString());
    assertThat(s.code()).isEqualTo(Exit.CONTENT);
    assertThat(s.err()).contains("longer than 2 MB");
  }

  @Test
  void aDrawingThatIsTooLongIsToldWhereItIsNamed() throws IOException {
    Files.writeString(
        folder.resolve("huge.svg"), "<svg>" + "<!-- x -->".repeat(200_001) + "</svg>");
    Shell s = check(GOOD.replace("circle: 90", "svg: huge.svg, width: 40"));
    assertThat(s.code()).isEqualTo(Exit.CONTENT);
    assertThat(s.out()).contains("card.yaml:12:").contains("this drawing is larger than 2 MB");
  }

  @Test
  void missingFileAndFolderForAFile() {
    assertThat(Shell.run("check", folder.resolve("none.yaml").toString()).code())
        .isEqualTo(Exit.FILES);
    assertThat(Shell.run("check", folder.toString()).code()).isEqualTo(Exit.FILES);
  }

  @Test
  void wrongCommandLines() throws IOException {
    assertThat(Shell.run("chekc").code()).isEqualTo(Exit.USAGE);
    assertThat(Shell.run("check").code()).isEqualTo(Exit.USAGE);
    assertThat(Shell.run("new", "castle").err()).contains("there are: stacked-frames");
    Path file = folder.resolve("card.yaml");
    Files.writeString(file, GOOD);
    assertThat(Shell.run("check", file.toString(), "--unit", "furlong").code())
        .isEqualTo(Exit.USAGE);
    assertThat(Shell.run("make", file.toString(), "--copies", "0").code()).isEqualTo(Exit.USAGE);
  }

  @Test
  void nothingIsMadeOfABadDesign() throws IOException {
    Path file = folder.resolve("card.yaml");
    Files.writeString(file, GOOD.replace("side: 12", "side: 0"));
    Path out = folder.resolve("pack");
    Shell s = Shell.run("make", file.toString(), "--out", out.toString());
    assertThat(s.code()).isEqualTo(Exit.CONTENT);
    assertThat(out).doesNotExist();
  }

  @Test
  void aFolderThatCannotBeWritten_saysSo() throws IOException {
    Path file = folder.resolve("card.yaml");
    Files.writeString(file, GOOD);
    Path inTheWay = folder.resolve("pack");
    Files.writeString(inTheWay, "a note of the maker's");
    Shell s = Shell.run("make", file.toString(), "--out", inTheWay.toString());
    assertThat(s.code()).isEqualTo(Exit.FILES);
    assertThat(Files.readString(inTheWay)).isEqualTo("a note of the maker's");
  }

  private static String cutOuts(int n, String rest) {
    StringBuilder all = new StringBuilder("cut-outs:\n");
    for (int i = 0; i < n; i++) {
      all.append("  - {name: c").append(i).append(", ").append(rest.replace("#", "" + i));
      all.append("}\n");
    }
    return all.toString();
  }

  /** Lines that warn or block, told once each. */
  private static long told(Shell s, String words) {
    return s.out().lines().filter(l -> l.contains(": warns: ") && l.contains(words)).count();
  }

  @Test
  void partsThatOverlapAtTheStart_areToldInASentenceEach() throws IOException {
    String on = "on: back, stock: navy-220, outline: {rect: [20, 30]}, at: [#8, 0]";
    Shell s = check(GOOD + cutOuts(2, on));
    assertThat(s.code()).isEqualTo(Exit.FINE);
    assertThat(told(s, "c1: it lies over the edge of c0")).isEqualTo(1);
  }

  @Test
  void cutOutThroughASide_isToldInOneSentence() throws IOException {
    // 20 high in a stage of 12, and reaching past the right edge, where the side stands.
    String through = "on: far, stock: navy-220, outline: {rect: [40, 20]}, at: [60, 0]";
    Shell s = check(GOOD + cutOuts(1, through + ", raised-by: 20"));
    assertThat(s.code()).isEqualTo(Exit.FINE);
    assertThat(told(s, "goes through")).isEqualTo(1);
    assertThat(s.err()).doesNotContain("Exception");
  }

  @Test
  void noClearanceAnywhere_endsAndIsNoFault() throws IOException {
    // As high as its stage to the last hundredth, and between the sides to the last.
    String full = "on: back, stock: navy-220, outline: {rect: [126, 150]}, raised-by: 11.72";
    Shell s = check(GOOD.replace("circle: 90", "rect: [20, 20]") + cutOuts(1, full));
    assertThat(s.code()).isEqualTo(Exit.FINE);
    assertThat(s.err()).doesNotContain("Exception");
  }

  @Test
  void twoHundredCutOuts_areCheckedWithinTheirBudget() throws IOException {
    StringBuilder all = new StringBuilder("cut-outs:\n");
    for (int i = 0; i < 200; i++) {
      all.append("  - {name: c").append(i).append(", on: far, stock: navy-220, raised-by: 1");
      all.append(", outline: {circle: 5}, at: [").append(-46 + i % 14 * 7);
      all.append(", ").append(-70 + i / 14 * 10).append("]}\n");
    }
    Shell s = check(GOOD.replace("{circle: 90}", "{rect: [2, 2], at: [0, 69]}") + all);
    assertThat(s.code()).as(s.out() + s.err()).isEqualTo(Exit.FINE);
    assertThat(s.err()).isEmpty();
  }
}
