package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.design.BenchDocument;
import hingeleaf.design.NamedSizes;
import hingeleaf.measure.Unit;
import hingeleaf.pack.BenchReader;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.stock.Die;
import hingeleaf.stock.Stock;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Bench files with what was measured, read back by the reader of every bench file. */
class MeasuredBenchTest {
  private static Measures measures(Map<String, Double> papers, Map<String, Measures.Die> dies) {
    return new Measures(Map.of(), papers, dies, Set.of());
  }

  private static String text(
      Optional<BenchDocument> given, Bench bench, Measures measures, Unit unit) {
    MeasuredBench.Outcome outcome = MeasuredBench.of(given, bench, measures, unit);
    assertThat(outcome).isInstanceOf(MeasuredBench.Outcome.Written.class);
    return ((MeasuredBench.Outcome.Written) outcome).text();
  }

  private static BenchDocument document(String text) {
    BenchDocument.Outcome read =
        BenchDocument.read("bench.yaml", text.getBytes(StandardCharsets.UTF_8));
    assertThat(read).as("%s", read).isInstanceOf(BenchDocument.Outcome.Right.class);
    return ((BenchDocument.Outcome.Right) read).document();
  }

  private static Bench read(String text) {
    return BenchReader.bench(document(text));
  }

  /** Equal to a thousand millionth: 8.5 inches are 215.9 mm, and less by the last digit. */
  private static int nearly(double a, double b) {
    return Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b);
  }

  private static Bench measured(Bench b, String paper, double thick, String die, double cut) {
    List<Stock> papers =
        b.papers().stream().map(s -> s.name().equals(paper) ? s.thick(thick) : s).toList();
    List<Die> dies =
        b.dies().stream().map(d -> d.name().equals(die) ? d.cutting(cut, cut) : d).toList();
    return b.with(papers, dies);
  }

  @Test
  void withoutAFile_allButTheTitleIsAsTheBuiltInBench() {
    Bench bench = measured(BuiltInBench.metric(), "kraft-220", 0.305, "circle-90", 91.5);
    Measures m =
        measures(Map.of("kraft-220", 0.305), Map.of("circle-90", new Measures.Die(91.5, 91.5)));
    Bench is = read(text(Optional.empty(), bench, m, Unit.MM));
    assertThat(is.dies()).isEqualTo(bench.dies());
    assertThat(is.papers()).containsExactlyInAnyOrderElementsOf(bench.papers());
    assertThat(is.glues()).isEqualTo(bench.glues());
    assertThat(is.foams()).isEqualTo(bench.foams());
    assertThat(is.envelopes()).isEqualTo(bench.envelopes());
    assertThat(is.embossingFolders()).isEqualTo(bench.embossingFolders());
    assertThat(is.trimmer()).isEqualTo(bench.trimmer());
    assertThat(is.scoringBoard()).isEqualTo(bench.scoringBoard());
    assertThat(is.machineWidth()).isEqualTo(bench.machineWidth());
    assertThat(is.accuracy()).isEqualTo(bench.accuracy());
    assertThat(is.money()).isEqualTo(bench.money());
    assertThat(is.country()).isEqualTo(bench.country());
  }

  @Test
  void everyBuiltInPaperInInches_isWrittenAsItIs() {
    Bench b = BuiltInBench.inches();
    for (Stock s : b.papers()) {
      Bench bench = measured(b, s.name(), 0.4064, "", 0); // 16 thousandths of an inch
      String text =
          text(Optional.empty(), bench, measures(Map.of(s.name(), 0.4064), Map.of()), Unit.IN);
      assertThat(text).contains("thickness: 0.016,");
      Stock is = read(text).paper(s.name()).orElseThrow();
      assertThat(is.thickness()).isCloseTo(0.4064, within(1e-9));
      assertThat(is.thick(1))
          .usingRecursiveComparison()
          .withComparatorForType(MeasuredBenchTest::nearly, Double.class)
          .isEqualTo(s.thick(1));
      assertThat(read(text).country()).isEqualTo("US");
    }
  }

  @Test
  void diesInInches_getNamesThatAFileCanHold() {
    Bench b = BuiltInBench.inches();
    double cut = 25.4 * 3.5625;
    Bench bench = measured(b, "", 0, "circle-3-1/2", cut);
    Measures m = measures(Map.of(), Map.of("circle-3-1/2", new Measures.Die(cut, cut)));
    Bench is = read(text(Optional.empty(), bench, m, Unit.IN));
    assertThat(is.dies()).hasSameSizeAs(b.dies());
    Die die = is.die("circle-3-1-2").orElseThrow();
    assertThat(die.label()).isEqualTo("circle 3 1/2 in");
    assertThat(die.cutWidth()).isCloseTo(cut, within(1e-6));
    assertThat(die.dropOutWidth()).isCloseTo(25.4 * 3.5 - 0.2, within(1e-6));
  }

  private static final String OWN =
      """
      # mine
      bench: 1
      unit: cm      # as my ruler
      country: DE
      dies:
        - {name: round, label: "90", shape: circle, cut: [9.02, 9.02]}   # by gauge
      stocks:
        - name: white-300
          grammage: 300
          thickness: 0.036   # guessed
          sheets: [{size: A4, price: 0.35}]   # paid in May
      # the end
      """;

  @Test
  void aGivenFile_keepsEveryOtherCharacter_andItsUnit() {
    Bench bench = measured(read(OWN), "white-300", 0.41, "round", 91.5);
    Measures m = measures(Map.of("white-300", 0.41), Map.of("round", new Measures.Die(91.5, 91.5)));
    String text = text(Optional.of(document(OWN)), bench, m, Unit.MM);
    assertThat(text)
        .isEqualTo(OWN.replace("[9.02, 9.02]", "[9.15, 9.15]").replace("0.036", "0.041"));
    assertThat(read(text).paper("white-300").orElseThrow().thickness())
        .isCloseTo(0.41, within(1e-9));
  }

  @Test
  void aBuiltInPaper_isAddedToTheGivenFile() {
    Bench bench = measured(read(OWN), "navy-220", 0.31, "", 0);
    String text =
        text(
            Optional.of(document(OWN)),
            bench,
            measures(Map.of("navy-220", 0.31), Map.of()),
            Unit.MM);
    assertThat(text).startsWith(OWN.substring(0, OWN.indexOf("# the end"))).endsWith("# the end\n");
    assertThat(read(text).paper("navy-220")).isEqualTo(bench.paper("navy-220"));
    assertThat(read(text).paper("white-300")).isEqualTo(bench.paper("white-300"));
  }

  @Test
  void aFileWithoutLists_getsTheBuiltInDiesAndAPaper() {
    String bare = "bench: 1\nunit: mm\n";
    Bench bench = measured(read(bare), "white-220", 0.3, "circle-60", 60.5);
    Measures m =
        measures(Map.of("white-220", 0.3), Map.of("circle-60", new Measures.Die(60.5, 60.5)));
    Bench is = read(text(Optional.of(document(bare)), bench, m, Unit.MM));
    assertThat(is.dies()).isEqualTo(bench.dies());
    assertThat(is.paper("white-220")).isEqualTo(bench.paper("white-220"));
  }

  /** Every size that the form of a bench file takes by name is one that its reader knows. */
  @Test
  void everySizeByName_canBeRead() {
    for (String name : NamedSizes.SHEETS.names()) {
      Bench b =
          read(
              "bench: 1\nunit: mm\nstocks:\n  - {name: own, grammage: 300, thickness: 0.3, sheets:"
                  + " [{size: "
                  + name
                  + "}]}\n");
      Stock.Sheet sheet = b.paper("own").orElseThrow().sheets().get(0);
      NamedSizes.Size size = NamedSizes.SHEETS.get(name).orElseThrow();
      assertThat(sheet.width()).as(name).isCloseTo(size.width().mm(), within(1e-9));
      assertThat(sheet.height()).as(name).isCloseTo(size.height().mm(), within(1e-9));
    }
    for (String name : NamedSizes.ENVELOPES.names()) {
      Bench b = read("bench: 1\nunit: mm\nenvelopes:\n  - {name: own, size: " + name + "}\n");
      NamedSizes.Size size = NamedSizes.ENVELOPES.get(name).orElseThrow();
      assertThat(b.envelopes()).hasSize(1);
      assertThat(b.envelopes().get(0).width()).as(name).isCloseTo(size.width().mm(), within(1e-9));
    }
  }
}
