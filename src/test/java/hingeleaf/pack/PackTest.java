package hingeleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Rest;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.stock.SampleBenches;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the pack reckons of a whole card: mass, post, price; and what it leaves alone. */
class PackTest {
  private static final String GULL =
      "cut-outs:\n"
          + "  - {name: sun, on: back, at: [0, 0], outline: {circle: 40}, stock: white-220,"
          + " raised-by: 2}\n";

  @ParameterizedTest
  @ValueSource(strings = {"fair-winds.yaml", "harvest-supper.yaml"})
  void findingsMakeNoPlanAndNoSheetsAndNoPrice(String example) {
    Pack pack = SamplePacks.example(example);
    assertThat(pack.problems()).isNotNull();
    // Pages cannot be drawn from here at all: pack may not import paper (ArchitectureTest).
    assertThat(pack.workedOut()).isEmpty();
  }

  @Test
  void massByHand() {
    Pack pack = SamplePacks.of(SamplePacks.stack(GULL), BuiltInBench.metric(), 1);
    // ISO 536: area x grammage. Back 150 x 150; three frames 198 x 150 less their openings; a disc.
    double frames = 3 * 198 * 150 - Math.PI * 45 * 45 - Math.PI * 55 * 55 - 126.0 * 126;
    double paper = (150 * 150 + frames) * 300e-6 + Math.PI * 20 * 20 * 220e-6;
    assertThat(pack.mass().card()).isEqualTo(paper, Offset.offset(0.01));
    // Six tabs 12 x 150 with 30 g/m2 of dry glue; the disc on foam of 60 + 60 x 2 g/m2 (bench).
    // Four strips of 6 mm on what is 2 mm inside its edge: chords of a disc of radius 18.
    double strips = 2 * (chord(18, 18) - chord(18, 12) + chord(18, 8) - chord(18, 2));
    assertThat(pack.mass().glue()).isEqualTo(6 * 12 * 150 * 30e-6, Offset.offset(1e-6));
    assertThat(pack.mass().foam()).isEqualTo(strips * 180e-6, Offset.offset(0.001));
    Mass posted = pack.posting().first().mass();
    assertThat(posted.posted())
        .isEqualTo(posted.card() + posted.glue() + posted.foam() + posted.envelope());
    assertThat(posted.envelope()).isBetween(5.0, 10.0);
  }

  /** Area of a disc's strip from its middle line to y: the integral of the chord's length. */
  private static double chord(double r, double y) {
    return y * Math.sqrt(r * r - y * y) + r * r * Math.asin(y / r);
  }

  @Test
  void planWeightAndConsumptionTellOneFoam() {
    Pack pack = SamplePacks.of(SamplePacks.stack(GULL), BuiltInBench.metric(), 1);
    Consumption.Use foam =
        pack.consumption().uses().stream()
            .filter(u -> u.name().equals("foam tape 2 mm"))
            .findFirst()
            .orElseThrow();
    // 180 g/m2 is 0.018 g for each cm2.
    assertThat(pack.mass().foam()).isEqualTo(foam.amount() * 0.018, Offset.offset(1e-9));
    // What the plan tells to cut off the roll is what is used, up to the next 5 mm.
    double tape = Math.ceil(foam.amount() * 100 / 6 / 5) * 5;
    assertThat(pack.work().steps())
        .anyMatch(s -> s.whole().contains("4 strips 6 mm wide, " + Math.round(tape) + " mm"));
  }

  @Test
  void everyPostIsAskedWhereTheBenchNamesNoCountry_andOneWhereItDoes() {
    String design = SamplePacks.stack("");
    assertThat(SamplePacks.of(design, BuiltInBench.metric(), 1).posting().offers()).hasSize(8);
    Pack german = SamplePacks.of(design, SampleBenches.in("DE"), 1);
    assertThat(german.posting().offers()).hasSize(1);
    assertThat(german.posting().first().best().decision().scheme().name()).isEqualTo("germany");
    // A square of 150 is no Standardbrief: Deutsche Post wants 1.4 times as long as high.
    assertThat(german.posting().first().best().decision().taken().orElseThrow().name())
        .isNotEqualTo("standard");
  }

  @Test
  void bestFlatStateIsThinnestOfTheCheapestThenOpensWithFewestPushes() {
    Pack pack = SamplePacks.of(SamplePacks.stack(""), SampleBenches.in("GB"), 1);
    Rest best = pack.flats().states().get(pack.best());
    assertThat(pack.posting().first().parcel().rigid()).isEqualTo(best.rigid());
    for (Rest other : pack.flats().states()) {
      boolean sameClass = other.width() <= best.width() && other.height() <= best.height();
      if (sameClass) {
        assertThat(best.rigid()).isLessThanOrEqualTo(other.rigid() + 1e-3);
      }
    }
  }

  @Test
  void theRaiseThatMakesItCheaperIsNamed_andLoweringItHelps() {
    String raised = GULL.replace("raised-by: 2", "raised-by: 3");
    Pack pack = SamplePacks.of(SamplePacks.stack(raised), SampleBenches.in("GB"), 1);
    Problem cheaper =
        pack.problems().stream()
            .filter(p -> p.kind().equals("post-cheaper") && !p.wants().isEmpty())
            .findFirst()
            .orElseThrow();
    Want want = cheaper.wants().get(0);
    assertThat(want.parameter()).isEqualTo("cut-outs[0].raised-by");
    assertThat(want.most()).isLessThan(3);
    String lowered = GULL.replace("raised-by: 2", "raised-by: " + want.most());
    Pack after = SamplePacks.of(SamplePacks.stack(lowered), SampleBenches.in("GB"), 1);
    assertThat(after.posting().first().best().decision().taken().orElseThrow().rank())
        .isLessThan(pack.posting().first().best().decision().taken().orElseThrow().rank());
  }

  @Test
  void nothingIsInventedWhereTheBenchTellsNoPrice() {
    Pack pack = SamplePacks.of(SamplePacks.stack(""), BuiltInBench.metric(), 10);
    assertThat(pack.price().told()).isFalse();
    assertThat(pack.price().problems())
        .extracting(Problem::kind)
        .contains("price-no-rate", "price-untold");
    assertThat(pack.price().job().copies()).isEqualTo(10);
  }

  @Test
  void smallLettersAreTold() {
    String words = "words:\n  - {text: Hallo, on: back, at: [0, 0], height: 1.2}\n";
    Pack pack = SamplePacks.of(SamplePacks.stack(words), BuiltInBench.metric(), 1);
    // ISO 9241-3: at least 16 minutes of arc, at 400 mm 1.862 mm.
    assertThat(pack.problems()).extracting(Problem::kind).contains("small-letters");
    Pack larger =
        SamplePacks.of(SamplePacks.stack(words.replace("1.2", "4")), BuiltInBench.metric(), 1);
    assertThat(larger.problems()).extracting(Problem::kind).doesNotContain("small-letters");
  }
}
