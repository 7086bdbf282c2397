package hingeleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BuiltInBenchTest {
  static Stream<Bench> benches() {
    return Stream.of(BuiltInBench.metric(), BuiltInBench.inches());
  }

  /** Bulk of card in published caliper tables runs from 0.97 (coated) to 1.65 cm3/g (pulp). */
  @ParameterizedTest
  @MethodSource("benches")
  void cardIsAsThickAsPublishedTablesSay(Bench bench) {
    assertThat(bench.papers())
        .filteredOn(p -> p.kind() == Stock.Kind.CARD)
        .hasSize(14)
        .allSatisfy(
            p ->
                assertThat(1000 * p.thickness() / p.grammage()).as(p.name()).isBetween(0.97, 1.65));
  }

  @ParameterizedTest
  @MethodSource("benches")
  void noPriceIsShipped(Bench bench) {
    assertThat(bench.hourlyRate()).isZero();
    assertThat(bench.papers()).flatExtracting(Stock::sheets).allMatch(s -> s.price() == 0);
    assertThat(bench.glues()).allMatch(g -> g.price() == 0);
    assertThat(bench.foams()).allMatch(f -> f.price() == 0);
    assertThat(bench.envelopes()).allMatch(e -> e.price() == 0);
  }

  @ParameterizedTest
  @MethodSource("benches")
  void everySheetCanBeTrimmedAcross(Bench bench) {
    assertThat(bench.papers())
        .flatExtracting(Stock::sheets)
        .allMatch(s -> Math.min(s.width(), s.height()) <= bench.trimmer().longest());
  }

  @ParameterizedTest
  @MethodSource("benches")
  void namesAreUnique(Bench bench) {
    assertThat(bench.papers()).extracting(Stock::name).doesNotHaveDuplicates();
    assertThat(bench.dies()).extracting(Die::name).doesNotHaveDuplicates();
    assertThat(bench.envelopes()).extracting(Envelope::name).doesNotHaveDuplicates();
  }

  /** Designs name papers; one design must do on both benches. */
  @Test
  void bothBenchesHaveTheSamePapers() {
    assertThat(BuiltInBench.inches().papers())
        .extracting(Stock::name)
        .isEqualTo(BuiltInBench.metric().papers().stream().map(Stock::name).toList());
  }

  @Test
  void lookUps_findByName() {
    Bench bench = BuiltInBench.metric();
    assertThat(bench.paper("navy-220").orElseThrow().thickness()).isEqualTo(0.28);
    assertThat(bench.paper("navy")).isEmpty();
    assertThat(bench.foamFor(2).orElseThrow().name()).isEqualTo("foam-2");
    assertThat(bench.foamFor(2.1).orElseThrow().name()).isEqualTo("foam-3");
    assertThat(bench.foamFor(4)).isEmpty();
  }

  @Test
  void impossibleTools_areRefusedWithTheirFigure() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Trimmer(0, 1))
        .withMessageContaining("expected more than 0, found 0.0");
    assertThatIllegalArgumentException().isThrownBy(() -> new Trimmer(310, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> new ScoringBoard(5, 4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Die("d", "d", Die.Shape.CIRCLE, 40, 40, 40.1, 40));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Glue("g", "g", Glue.Kind.GLUE, 6, 1, 30, 60, 30, 0, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Envelope("e", Double.POSITIVE_INFINITY, 10, 0, 0));
  }
}
