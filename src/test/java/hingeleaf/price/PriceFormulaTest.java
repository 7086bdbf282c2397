package hingeleaf.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.price.PriceFormula.Carriage;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PriceFormulaTest {
  /** Makers' guides, worked example: 5 of materials, half an hour at 20: 15, then 30, then 60. */
  @Test
  void doubled_matchesTheWorkedExample() {
    Quote quote = PriceFormula.DOUBLED.quote(costs("5", "30", "20", "0"), Carriage.ADDED);
    assertThat(quote.cost()).isEqualTo(Money.of("15"));
    assertThat(quote.prices())
        .containsExactly(
            new Quote.Price("wholesale (here: twice materials and labour)", Money.of("30")),
            new Quote.Price("retail (twice wholesale)", Money.of("60")));
  }

  /**
   * Stained-glass workshops, worked example: 25 + 14 + a third of 25, doubled. The guide rounds the
   * third up to 8.34 and gets 94.68; exactly it is 94.67.
   */
  @Test
  void third_matchesTheWorkedExampleToItsRounding() {
    Quote quote =
        PriceFormula.THIRD_FOR_OVERHEAD.quote(costs("25", "60", "14", "0"), Carriage.ADDED);
    assertThat(quote.prices()).hasSize(1);
    assertThat(quote.prices().get(0).amount().rounded(2))
        .isEqualTo(new BigDecimal("94.67"))
        .isCloseTo(new BigDecimal("94.68"), within(new BigDecimal("0.0134")));
  }

  /** The larger of the two: with 14 of materials and 25 of labour the price is the same. */
  @Test
  void third_isOfTheLarger() {
    assertThat(
            PriceFormula.THIRD_FOR_OVERHEAD
                .quote(costs("14", "60", "25", "0"), Carriage.ADDED)
                .prices())
        .isEqualTo(
            PriceFormula.THIRD_FOR_OVERHEAD
                .quote(costs("25", "60", "14", "0"), Carriage.ADDED)
                .prices());
  }

  /**
   * Louisiana Voices, Unit VII: materials + hours x wage + overhead = wholesale, doubled = retail.
   * Figures ours: 4.20 + 1.5 h x 12 + 2.30 = 24.50, 49.00.
   */
  @Test
  void folklife_callsTheCostWholesale() {
    Quote quote = PriceFormula.FOLKLIFE.quote(costs("4.20", "90", "12", "2.30"), Carriage.ADDED);
    assertThat(quote.prices())
        .containsExactly(
            new Quote.Price("wholesale (here: the cost itself)", Money.of("24.50")),
            new Quote.Price("retail (twice wholesale)", Money.of("49")));
    assertThat(PriceFindings.of(quote, "USD")).isEmpty();
  }

  /** Makers' guides: materials + labour + overhead + profit = wholesale. Figures ours. */
  @Test
  void withProfit_addsItBeforeDoubling() {
    Quote quote =
        PriceFormula.WITH_PROFIT.quote(Costs.of(job(1).profit("3").end()), Carriage.ADDED);
    // 5 + 10 + 0 + 3
    assertThat(quote.prices())
        .extracting(Quote.Price::amount)
        .containsExactly(Money.of("18"), Money.of("36"));
  }

  /** Louisiana Voices: part-used material counts pro rata. A quarter of a sheet for 0.80: 0.20. */
  @Test
  void partUsedSheets_countProRata() {
    SheetUse sheet = new SheetUse("A4", 1, dec("0.80"), dec("15592.5"), dec("62370"));
    assertThat(sheet.cost(SheetUse.Count.BY_AREA)).isEqualTo(Money.of("0.20"));
    assertThat(sheet.cost(SheetUse.Count.BY_SHEET)).isEqualTo(Money.of("0.80"));
    // a 6 mm tape: 1.5 m of a 50 m roll for 4.00
    assertThat(new Used("tape", dec("1.5"), dec("50"), dec("4.00")).cost())
        .isEqualTo(Money.of("0.12"));
  }

  /** University of Missouri Extension MP598: packing and shipping inside the price, or added. */
  @Test
  void carriage_isInsideOrAdded() {
    Costs costs = Costs.of(job(1).packaging("0.50").post("1.50").end());
    List<Quote.Price> added = PriceFormula.DOUBLED.quote(costs, Carriage.ADDED).prices();
    assertThat(added)
        .extracting(Quote.Price::amount)
        .containsExactly(Money.of("32"), Money.of("62"));
    List<Quote.Price> inside = PriceFormula.DOUBLED.quote(costs, Carriage.INSIDE).prices();
    assertThat(inside)
        .extracting(Quote.Price::amount)
        .containsExactly(Money.of("34"), Money.of("68"));
  }

  /** Zero hours cost nothing, whatever the rate. */
  @Test
  void zeroHours_costNoLabour() {
    assertThat(costs("5", "0", "20", "0").labour()).isEqualTo(Money.ZERO);
    assertThat(costs("5", "0", "20", "0").lines()).hasSize(1);
  }

  /** Book-keeping: 50 % margin is 100 % mark-up; 20 % margin is 25 % mark-up. */
  @ParameterizedTest
  @CsvSource({"20,10,0.5,1", "12.50,10,0.2,0.25", "10,10,0,0", "8,10,-0.25,-0.2"})
  void marginAndMarkUp(String price, String cost, BigDecimal margin, BigDecimal markUp) {
    assertThat(Quote.margin(Money.of(price), Money.of(cost))).isEqualByComparingTo(margin);
    assertThat(Quote.markUp(Money.of(price), Money.of(cost))).isEqualByComparingTo(markUp);
  }

  /** By hand: fifty cards, 5 % spoilage on 250 of paper and 25 h at 20; 500 of labour. */
  @Test
  void batch_sharesSpoilageAmongTheGoodCards() {
    Costs costs = Costs.of(job(50).materials("250").minutes("1500").spoilage("0.05").end());
    assertThat(costs.materials()).isEqualTo(Money.of("262.5"));
    assertThat(costs.labour()).isEqualTo(Money.of("525"));
    assertThat(costs.total()).isEqualTo(Money.of("787.50"));
    assertThat(costs.perCard(costs.total())).isEqualTo(Money.of("15.75"));
    assertThat(costs.lines())
        .extracting(Costs.Line::name)
        .contains("spoilage 5 % of materials", "spoilage 5 % of labour");
  }

  @ParameterizedTest
  @EnumSource
  void everyFormula_namesItselfAndItsSource(PriceFormula formula) {
    assertThat(formula.formula()).contains("=");
    assertThat(formula.source()).isNotBlank();
    Quote quote = formula.quote(costs("5", "30", "20", "1"), Carriage.ADDED);
    assertThat(quote.prices()).isSortedAccordingTo((a, b) -> a.amount().compareTo(b.amount()));
  }

  /** Overhead of 20 on 5 + 10: twice materials and labour, 30, does not pay the 35. */
  @Test
  void wholesaleBelowCost_isWarned() {
    Quote quote = PriceFormula.DOUBLED.quote(costs("5", "30", "20", "20"), Carriage.ADDED);
    assertThat(PriceFindings.of(quote, "USD"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.kind()).isEqualTo("price-below-cost");
              assertThat(p.message())
                  .startsWith(
                      "wholesale (here: twice materials and labour): 30.00 USD is 5.00 USD below"
                          + " what a card costs (35.00 USD)");
            });
  }

  @Test
  void ownPrice_isHeldAgainstTheCostExactly() {
    Costs thirds = Costs.of(job(3).materials("10").minutes("0").end());
    assertThat(PriceFindings.asked(Money.of("3.33"), thirds, "")).hasSize(1);
    assertThat(PriceFindings.asked(Money.of("3.34"), thirds, "")).isEmpty();
    assertThat(PriceFindings.asked(Money.of("10").dividedBy(3), thirds, "")).isEmpty();
  }

  @Test
  void untoldPrices_areNoted() {
    Job job = job(1).materials("0").rate("0").end();
    assertThat(PriceFindings.untold(job))
        .extracting(p -> p.kind() + ": " + p.message())
        .containsExactly(
            "price-no-rate: 30 minutes of work are counted as nothing"
                + " - put your hourly rate on the bench",
            "price-untold: no price is told for paper - put what you paid on the bench");
    assertThat(PriceFindings.untold(job(1).end())).isEmpty();
  }

  @Test
  void impossibleJobs_areRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> job(0).end());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> job(1).spoilage("-0.01").end())
        .withMessage("spoilage: expected 0 or more, found -0.01");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Used("tape", dec("1"), dec("0"), dec("1")));
  }

  private static Costs costs(String materials, String minutes, String rate, String overhead) {
    return Costs.of(
        job(1).materials(materials).minutes(minutes).rate(rate).overhead(overhead).end());
  }

  private static Draft job(int copies) {
    return new Draft(copies);
  }

  private static BigDecimal dec(String text) {
    return new BigDecimal(text);
  }

  /** A job of 5 of paper and half an hour at 20, until told otherwise. */
  private static final class Draft {
    private final int copies;
    private String materials = "5";
    private String minutes = "30";
    private String rate = "20";
    private String overhead = "0";
    private String packaging = "0";
    private String post = "0";
    private String profit = "0";
    private String spoilage = "0";

    Draft(int copies) {
      this.copies = copies;
    }

    Draft materials(String amount) {
      materials = amount;
      return this;
    }

    Draft minutes(String amount) {
      minutes = amount;
      return this;
    }

    Draft rate(String amount) {
      rate = amount;
      return this;
    }

    Draft overhead(String amount) {
      overhead = amount;
      return this;
    }

    Draft packaging(String amount) {
      packaging = amount;
      return this;
    }

    Draft post(String amount) {
      post = amount;
      return this;
    }

    Draft profit(String amount) {
      profit = amount;
      return this;
    }

    Draft spoilage(String share) {
      spoilage = share;
      return this;
    }

    Job end() {
      return new Job(
          copies,
          List.of(new SheetUse("paper", 1, dec(materials), dec("1"), dec("1"))),
          SheetUse.Count.BY_SHEET,
          List.of(),
          dec(minutes),
          dec(rate),
          dec(overhead),
          dec(packaging),
          dec(post),
          dec(profit),
          dec(spoilage));
    }
  }
}
