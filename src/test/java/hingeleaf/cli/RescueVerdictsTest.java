package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

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

/**
 * Each verdict and each cost of a rescue, provoked on the examples as a maker would; then the new
 * design is checked and is as free of faults as the old one was. Invented slips.
 */
class RescueVerdictsTest {
  @TempDir Path folder;

  @BeforeEach
  void copy() throws IOException {
    try (var files = Files.list(Path.of("examples"))) {
      for (Path p : files.toList()) {
        Files.copy(p, folder.resolve(p.getFileName()));
      }
    }
  }

  private Shell rescue(String example, String... more) {
    List<String> all = new ArrayList<>(List.of("rescue", folder.resolve(example).toString()));
    all.addAll(List.of(more));
    all.addAll(List.of("--out", folder.resolve("new.yaml").toString()));
    return Shell.run(all.toArray(String[]::new));
  }

  private void free(String... bench) {
    List<String> all = new ArrayList<>(List.of("check", folder.resolve("new.yaml").toString()));
    all.addAll(List.of(bench));
    Shell check = Shell.run(all.toArray(String[]::new));
    assertThat(check.code()).as(check.err()).isZero();
    assertThat(check.out()).contains("0 blocking, 0 to watch");
  }

  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        // still good
        "fair-winds|--measured far.width=149 --measured far.side.left=13|far: still good, 149 x",
        "fair-winds|--measured boat.width=57|boat: still good, 57 x",
        "fair-winds|--measured gull.height=7|gull: still good, 23.66 x 7 mm",
        "fair-winds|--measured sea.width=122|sea: still good, 122 x 148 mm",
        "open-house|--measured left-leaf.width=29|left-leaf: still good, 29 x 84 mm",
        "open-house|--measured stay.width=39|stay: still good, 39 x 51 mm",
        // trim this
        "fair-winds|--measured far.height=149 --cut far,back|back: trim this, 150 x 149 mm",
        "fair-winds|--measured sea.width=129|sea: trim this, 126 x 148 mm",
        "open-house|--measured left-leaf.width=40|left-leaf: trim this, 30 x 84 mm",
        "open-house|--measured stay.width=42 --cut stay,house|house: trim this, 150 x 150 mm",
        // recut this one
        "fair-winds|--measured far.width=147 --cut far,middle|far: recut this one, 150 x 150 mm",
        "open-house|--measured left-leaf.height=70|left-leaf: recut this one, 30 x 84 mm",
        "open-house|--measured stay.tab=4|stay: recut this one, 40 x 51 mm",
        // what is not cut yet follows
        "fair-winds|--measured far.width=149|middle: cut it otherwise, 149 x 150 mm (flat 197 x",
        // glued otherwise
        "fair-winds|--measured near.width=149 --cut back,far,middle,near|close its right tab where it falls, 1 mm inside",
        "open-house|--measured left-leaf.width=32 --cut left-leaf,right-leaf,house|glue it on 1.5 mm to the left",
        // what it costs in sight
        "open-house|--measured left-leaf.width=27|% more of table shows",
        "fair-winds|--measured near.aperture=100|less of far shows; middle is now hidden",
        // what it costs in the post
        "fair-winds|--measured far.width=148|In the post: folded flat: 172 x 150 mm instead of 174",
        "fair-winds|--measured boat.width=70|thickest spot:",
      })
  void slip_isAnswered_andTheNewDesignIsFreeOfFaults(
      String example, String measures, String words) {
    Shell s = rescue(example + ".yaml", measures.split(" "));
    assertThat(s.code()).as(s.err()).isZero();
    assertThat(s.out()).contains(words);
    free();
  }

  @Test
  void windowOfItsOwnSize_bringsNoFault() {
    Path old = folder.resolve("harvest-supper.yaml");
    Path out = folder.resolve("new.yaml");
    String before = Shell.run("check", old.toString()).out();
    Shell s = rescue("harvest-supper.yaml", "--measured", "pane.width=3 1/2");
    assertThat(s.out()).contains("pane: still good, 3 1/2 x 3 in");
    Shell check = Shell.run("check", out.toString());
    assertThat(check.out()).isEqualTo(before.replace(old.toString(), out.toString()));
  }

  @Test
  void measuredPaperAndDie_goIntoABenchFile_withWhichTheNewDesignChecks() throws IOException {
    Shell s =
        rescue(
            "fair-winds.yaml",
            "--measured",
            "white-300.thickness=0.41",
            "--measured",
            "die.circle-90.cut=91.5");
    Path bench = folder.resolve("new-bench.yaml");
    assertThat(s.code()).as(s.err()).isZero();
    assertThat(s.out())
        .contains(bench + " now says thickness 0.41 mm at the stock white-300.")
        .contains("hingeleaf check " + folder.resolve("new.yaml") + " --bench " + bench);
    assertThat(Files.readString(folder.resolve("new.yaml"))).contains("{circle: 91.5}");
    free("--bench", bench.toString());
    Shell again =
        Shell.run(
            "rescue",
            folder.resolve("new.yaml").toString(),
            "--bench",
            bench.toString(),
            "--measured",
            "far.width=150",
            "--json");
    assertThat(again.out()).doesNotContain("cut-otherwise"); // nothing is left to say
  }

  @Test
  void aGivenBench_isSplicedIntoANewFile_andStays() throws IOException {
    Path bench = folder.resolve("kitchen-table-bench.yaml");
    String old = Files.readString(bench);
    Path to = folder.resolve("measured.yaml");
    Shell s =
        rescue(
            "fair-winds.yaml",
            "--bench",
            bench.toString(),
            "--measured",
            "navy-300.thickness=0.39",
            "--bench-out",
            to.toString());
    assertThat(s.code()).as(s.err()).isZero();
    assertThat(Files.readString(bench)).isEqualTo(old);
    assertThat(Files.readString(to)).isEqualTo(old.replace("thickness: 0.37", "thickness: 0.39"));
    free("--bench", to.toString());
  }

  @Test
  void aBenchFileThatNobodyNamed_isNotReplaced() throws IOException {
    Path bench = folder.resolve("new-bench.yaml");
    Files.writeString(bench, "mine");
    Shell s = rescue("fair-winds.yaml", "--measured", "white-300.thickness=0.41");
    assertThat(s.code()).isEqualTo(Exit.USAGE);
    assertThat(s.err()).contains("new-bench.yaml is there already").hasLineCount(1);
    assertThat(Files.readString(bench)).isEqualTo("mine");
    assertThat(folder.resolve("new.yaml")).doesNotExist();
    Shell told =
        rescue(
            "fair-winds.yaml",
            "--measured",
            "white-300.thickness=0.41",
            "--bench-out",
            bench.toString());
    assertThat(told.code()).as(told.err()).isZero();
    assertThat(Files.readString(bench)).startsWith("# The built-in bench");
    Shell same = rescue("fair-winds.yaml", "--measured", "white-300.thickness=0.41");
    assertThat(same.code()).as("the very same once more: %s", same.err()).isZero();
  }

  @Test
  void neitherFileIsWritten_whereOneCannotBe() {
    Shell s =
        rescue(
            "fair-winds.yaml",
            "--measured",
            "white-300.thickness=0.41",
            "--bench-out",
            folder + "/no/such/bench.yaml");
    assertThat(s.code()).isEqualTo(Exit.FILES);
    assertThat(s.err()).contains("bench.yaml cannot be written").hasLineCount(1);
    assertThat(folder.resolve("new.yaml")).doesNotExist();
  }

  @Test
  void placesThatCannotBeMeant() {
    Path design = folder.resolve("fair-winds.yaml");
    String bench = folder.resolve("kitchen-table-bench.yaml").toString();
    String thick = "white-300.thickness=0.41";
    List<Shell> all =
        List.of(
            Shell.run("rescue", "" + design, "--measured", thick, "--bench-out", "" + design),
            Shell.run("rescue", "" + design, "--measured", thick, "--bench", bench, "--out", bench),
            rescue("fair-winds.yaml", "--measured", thick, "--bench-out", folder + "/new.yaml"),
            rescue("fair-winds.yaml", "--measured", "far.width=149", "--bench-out", "b.yaml"));
    for (Shell s : all) {
      assertThat(s.code()).isEqualTo(Exit.USAGE);
      assertThat(s.err()).contains("--").hasLineCount(1);
    }
    assertThat(folder.resolve("new.yaml")).doesNotExist();
  }

  @Test
  void sizesThatNoDrawingHas_areToldInOneSentence() {
    // The gull is drawn 26 mm wide and 7.69 mm high; the opening of far is a circle.
    Shell gull =
        rescue("fair-winds.yaml", "--measured", "gull.width=26", "--measured", "gull.height=40");
    assertThat(gull.code()).isEqualTo(Exit.USAGE);
    assertThat(gull.err())
        .contains("gull would be 26 x 7.69 mm as it is drawn, not 26 x 40 mm - measure again")
        .hasLineCount(1);
    Shell far =
        rescue(
            "fair-winds.yaml",
            "--measured",
            "far.aperture.width=90",
            "--measured",
            "far.aperture.height=92");
    assertThat(far.err()).contains("far: its opening would be 90 x 90 mm").hasLineCount(1);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "left-leaf.width=-29|must be more than 0",
        "left-leaf.width=NaN|is not a length",
        "left-leaf.width=1e309|exponent",
        "left-lef.width=29|did you mean `left-leaf`?",
        "stay.height=50|stay has no measure `height` - there are: width, tongue, tab",
        "house.width=500|no sheet of red-300 is so long; the largest, A3, is 297 x 420 mm",
        "house.width=410|house, flat: no sheet of red-300 is so long",
        "left-leaf.width=29 left-leaf.width=31|it was also measured as 29 mm - measure again",
        "die.circle-90.cut=91 die.circle-90.cut=92|it was also measured as 91 mm",
        "die.circle-90.cut.width=91 die.circle-90.cut.height=92|it was also measured as 91 mm",
        "red-300.thickness=0.4 red-300.thickness=0.5|it was also measured as 0.4 mm",
        "red-300.thickness=-1|must be more than 0",
        "red-300.thickness=1e309|exponent",
      })
  void absurdOrContradictoryMeasure_isToldInOneSentence(String measures, String words) {
    List<String> more = new ArrayList<>();
    for (String m : measures.split(" ")) {
      more.addAll(List.of("--measured", m));
    }
    Shell s = rescue("open-house.yaml", more.toArray(String[]::new));
    assertThat(s.code()).isEqualTo(Exit.USAGE);
    assertThat(s.err()).contains("--measured").contains(words).hasLineCount(1);
    assertThat(s.out()).isEmpty();
    assertThat(folder.resolve("new.yaml")).doesNotExist();
  }
}
