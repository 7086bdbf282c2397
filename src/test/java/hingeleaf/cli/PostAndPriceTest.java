package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The verbs post and price, and the sheets for a batch and a class, from the shell. */
class PostAndPriceTest {
  private static final String CARD = "examples/fair-winds.yaml";

  @TempDir Path folder;

  /** A bench of our own, with prices by which sums can be done by hand. */
  private Path bench(String more) throws IOException {
    Path file = folder.resolve("bench.yaml");
    Files.writeString(
        file,
        "bench: 1\ntitle: Test\ncountry: GB\nmoney: GBP\n"
            + more
            + "stocks:\n"
            + "  - {name: white-300, title: white card, grammage: 300, thickness: 0.356,"
            + " sheets: [{size: A4, price: 0.30}]}\n");
    return file;
  }

  private static JsonNode json(Shell s) {
    assertThat(s.code()).as(s.err()).isZero();
    return new ObjectMapper().readTree(s.out());
  }

  @Test
  void postNamesTheClassOfTheBenchsCountry_andWhyNotTheCheaperOne() throws IOException {
    Shell s = Shell.run("post", CARD, "--bench", bench("").toString(), "--json");
    JsonNode offers = json(s).get("posting");
    assertThat(offers.size()).isEqualTo(1);
    JsonNode offer = offers.get(0);
    assertThat(offer.get("scheme").asString()).isEqualTo("uk");
    // Royal Mail's letter is at most 5 mm thick (Ofcom); this one is not.
    assertThat(offer.get("mail").get("thickness").asDouble()).isGreaterThan(5);
    assertThat(offer.get("class").asString()).isEqualTo("large-letter");
    assertThat(offer.get("notCheaper").get(0).get("change").asString())
        .contains("thinner goes as Letter");
    JsonNode mass = offer.get("mass");
    double parts =
        mass.get("card").asDouble()
            + mass.get("glue").asDouble()
            + mass.get("foam").asDouble()
            + mass.get("envelope").asDouble();
    assertThat(Math.abs(mass.get("posted").asDouble() - parts)).isLessThan(1e-5);
  }

  @Test
  void withoutACountryAllEightPostsAnswer() {
    JsonNode offers = json(Shell.run("post", CARD, "--json")).get("posting");
    assertThat(offers.size()).isEqualTo(8);
    assertThat(Shell.run("post", CARD).out()).contains("Royal Mail", "USPS", "UPU");
  }

  @Test
  void priceIsTheSumThatAHandWouldDo() throws IOException {
    Path bench = bench("hourly-rate: 12\n");
    JsonNode price =
        json(Shell.run(
                "price",
                CARD,
                "--bench",
                bench.toString(),
                "--copies",
                "10",
                "--spoilage",
                "0",
                "--post",
                "1.80",
                "--packaging",
                "0.20",
                "--json"))
            .get("price");
    double minutes = price.get("minutes").asDouble();
    // Three white sheets of 0.30 at each card at most; 12 an hour; 1.80 and 0.20 for each card.
    double sheets = 0;
    for (JsonNode line : price.get("lines")) {
      if (line.get("kind").asString().equals("sheets")) {
        sheets += line.get("batch").asDouble();
      }
    }
    assertThat(sheets).isPositive().isLessThanOrEqualTo(10 * 3 * 0.30 + 1e-9);
    double byHand = (sheets + minutes / 60 * 12) / 10 + 1.80 + 0.20;
    assertThat(Math.abs(price.get("costBySheet").asDouble() - byHand)).isLessThan(0.011);
    assertThat(price.get("costByArea").asDouble())
        .isLessThanOrEqualTo(price.get("costBySheet").asDouble());
    // Both meanings of wholesale are there, each with its formula.
    assertThat(price.get("prices").toString())
        .contains("the cost itself", "twice materials and labour", "formula");
  }

  @Test
  void aPriceBelowCostIsWarnedOf() throws IOException {
    Path bench = bench("hourly-rate: 12\n");
    Shell s = Shell.run("price", CARD, "--bench", bench.toString(), "--ask", "1");
    assertThat(s.code()).isZero();
    assertThat(s.err()).contains("warns: your price: 1.00 GBP is").contains("below what a card");
  }

  @Test
  void whatIsMissingIsSaid() {
    Shell s = Shell.run("price", CARD);
    assertThat(s.err())
        .contains("minutes of work are counted as nothing")
        .contains("no price is told for");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--ask=-1", "--post=1e400", "--spoilage=101", "--overhead=x"})
  void amountsThatAreNoneAreRefused(String option) {
    Shell s = Shell.run("price", CARD, option);
    assertThat(s.code()).isEqualTo(Exit.USAGE);
    assertThat(s.err()).isNotBlank().doesNotContain("Exception");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--class=-1", "--class=1000", "--class=x", "--minutes=0"})
  void classesThatAreNoneAreRefused(String option) {
    Shell s = Shell.run("make", CARD, option, "--out", folder.resolve("p").toString());
    assertThat(s.code()).isEqualTo(Exit.USAGE);
    assertThat(folder.resolve("p")).doesNotExist();
  }

  @Test
  void aBatchHasARunSheet_aClassItsOwn_andOneCardNeither() throws IOException {
    Path out = folder.resolve("pack");
    Shell s =
        Shell.run(
            "make",
            CARD,
            "--copies",
            "20",
            "--class",
            "12",
            "--minutes",
            "120",
            "--out",
            out.toString());
    assertThat(s.code()).as(s.err()).isZero();
    // 20 good cards and one in twenty that goes wrong: 21 are begun.
    assertThat(text(out.resolve("run-sheet.pdf"))).contains("Begin 21 cards", "63", "jig 1");
    // Six tabs of 150, once round 124 x 148 and 144 x 144 less four corners of 6: 1.97 m of tape.
    assertThat(text(out.resolve("class-sheet.pdf")))
        .contains("12 learners, 120 minutes", "13 bags", "--mirrored", "With tape in class")
        .contains("double-sided tape 6 mm: 2.0 m, 26 m for all bags")
        .doesNotContain("PVA", "Used up at home");
    // In half an hour three steps are left, one of them with a tab of 150; the other 1.82 m are
    // taped at home, 13 times.
    Path brief = folder.resolve("brief");
    Shell.run("make", CARD, "--class", "12", "--minutes", "30", "--out", brief.toString());
    assertThat(text(brief.resolve("class-sheet.pdf")))
        .contains("double-sided tape 6 mm: 0.2 m", "the lesson would be too long")
        .contains("Used up at home for all bags: double-sided tape 6 mm 24 m");
    Shell one = Shell.run("make", CARD, "--out", folder.resolve("one").toString());
    assertThat(one.code()).isZero();
    for (String name : List.of("run-sheet.pdf", "class-sheet.pdf")) {
      assertThat(folder.resolve("one").resolve(name)).doesNotExist();
    }
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument doc = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(doc).replaceAll("\\s+", " ");
    }
  }
}
