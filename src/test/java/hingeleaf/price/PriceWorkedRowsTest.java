package hingeleaf.price;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.price.PriceFormula.Carriage;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole prices worked by hand, every figure of them, from the published formulas:
 *
 * <ul>
 *   <li>F, wholesale is the cost: materials + hours x wage + overhead, twice that retail (Louisiana
 *       Voices Folklife in Education Project, Unit VII, pricing crafts; part-used material pro rata
 *       is its rule too)
 *   <li>D, wholesale is twice materials and labour, twice that retail (makers' guides: common
 *       practice)
 *   <li>P, materials + labour + overhead + profit, twice that retail (makers' guides: common
 *       practice)
 *   <li>T, overhead is a third of the larger of materials and labour, twice the cost (stained-glass
 *       workshops: common practice)
 * </ul>
 *
 * <p>In all of them packaging and post are added at cost (University of Missouri Extension MP598
 * has them inside or added). Spoilage is paid on materials and labour (ours: common practice, no
 * source). The amounts are made up.
 *
 * <p>In the sums: S sheets, U tape, M = (S + U) x (1 + spoilage), L = hours x rate x (1 +
 * spoilage), O overhead, K packaging and post, all for the batch; A stands for M with sheets by
 * area. A sheet of paper is 62370 mm2 (A4).
 */
class PriceWorkedRowsTest {
  @ParameterizedTest
  @CsvSource(
      useHeadersInDisplayName = false,
      delimiter = ';',
      textBlock =
"""
# copies; sheets, price, used mm2; tape m, of m, price; minutes, rate; O, packaging, post, profit; s
# S 4 x 0.40 = 1.60, U 5 x 1.5/50 = 0.15, M 1.75; by area 2.5 x 0.40 = 1.00, A 1.15; L 45/60 x 16
# = 12; K 1.90; all 1.75 + 12 + 0.75 + 1.90 = 16.40. F 16.40, 2 x 14.50 + 1.90 = 30.90; D 2 x 13.75
# + 1.90 = 29.40, 4 x 13.75 + 1.90 = 56.90; P 17 + 1.90 = 18.90, 34 + 1.90 = 35.90; T 2 x (13.75 + 4)
# + 1.90 = 37.40
1; 4, 0.40, 155925; 1.5, 50, 5.00; 45, 16; 0.75, 0.30, 1.60, 2.50; 0; \
1.75, 12, 16.40, 16.40, 15.80; 16.40, 30.90, 29.40, 56.90, 18.90, 35.90, 37.40; 0
# Ten, 5 % spoilt: S 15, U 1, M 16 x 1.05 = 16.80; A (10 + 1) x 1.05 = 11.55; L 90 x 1.05 = 94.50;
# K 20; all 141.30, 14.13 each; by area 136.05. F 14.13, (242.6 + 20)/10; D (222.6 + 20)/10,
# (445.2 + 20)/10; P (141.3 + 20)/10, (282.6 + 20)/10; T 2 x (111.3 + 31.5) + 20 = 305.6
10; 30, 0.50, 1247400; 20, 50, 2.50; 300, 18; 10, 4, 16, 20; 0.05; \
16.80, 94.50, 141.30, 14.13, 13.61; 14.13, 26.26, 24.26, 46.52, 16.13, 30.26, 30.56; 0
# Fifty, 5 % spoilt: S 36.40, U 3.60, M 42; A (27.30 + 3.60) x 1.05 = 32.445; L 525; K 100; all 692,
# 13.84 each; by area 682.445. F 13.84, 1284/50; D 1234/50, 2368/50; P 792/50, 1484/50; T 2 x (567 +
# 175) + 100 = 1584
50; 104, 0.35, 4864860; 45, 50, 4.00; 1500, 20; 25, 20, 80, 100; 0.05; \
42, 525, 692, 13.84, 13.65; 13.84, 25.68, 24.68, 47.36, 15.84, 29.68, 31.68; 0
# No wage told: M 2.40, A 1.25 x 1.20 = 1.50, L 0, K 1.50; all 5.00. F 5.00, 2 x 3.50 + 1.50; D 4.80
# + 1.50, 9.60 + 1.50; P as F, for no profit is wanted; T 2 x (2.40 + 0.80) + 1.50
1; 2, 1.20, 77962.5; 0, 1, 0; 30, 0; 1.10, 0.40, 1.10, 0; 0; \
2.40, 0, 5.00, 5.00, 4.10; 5.00, 8.50, 6.30, 11.10, 5.00, 8.50, 7.90; 0
# High overhead: M 5, A 4, L 10, O 20; all 35. D 2 x 15 = 30 is 5 below; T 2 x (15 + 3.3333)
1; 10, 0.50, 498960; 0, 1, 0; 30, 20; 20, 0, 0, 0; 0; \
5, 10, 35, 35, 34; 35, 70, 30, 60, 35, 70, 36.67; 1
# Four, one in four spoilt, overhead higher still: S 3, U 1, M 5; A 3 x 1.25 = 3.75; L 15; K 8; all 68,
# 17 each; by area 66.75. F 17, 128/4; D 48/4 = 12 is 5 below, 88/4; P 76/4, 144/4; T 2 x (20 + 5) + 8
# = 58, 14.50 each, is 2.50 below
4; 12, 0.25, 498960; 10, 40, 4.00; 60, 12; 40, 2, 6, 8; 0.25; \
5, 15, 68, 17, 16.69; 17, 32, 12, 22, 19, 36, 14.50; 2
# A tenth of one dear sheet: S 2.00, U 3.30 x 0.9/33 = 0.09, M 2.09; by area 0.20, A 0.29; L 12.50;
# O 0.41; K 2; all 17.00; by area 15.20. F 17, 2 x 15 + 2; D 29.18 + 2, 58.36 + 2; P 18, 2 x 16 + 2;
# T 2 x (14.59 + 4.1667) + 2 = 39.5133
1; 1, 2.00, 6237; 0.9, 33, 3.30; 50, 15; 0.41, 0.50, 1.50, 1; 0; \
2.09, 12.50, 17, 17, 15.20; 17, 32, 31.18, 60.36, 18, 34, 39.51; 0
# Dear paper, five, 10 % spoilt: S 30, U 1, M 34.10; A 19 x 1.1 = 20.90; L 16.50; K 5; all 58.60, 11.72
# each; by area 45.40. F 11.72, 112.2/5; D 106.2/5, 207.4/5; P 64.6/5, 124.2/5; T a third of the
# materials: 2 x (50.60 + 11.3667) + 5 = 128.9333
5; 25, 1.20, 935550; 2, 10, 5.00; 75, 12; 3, 1, 4, 6; 0.1; \
34.10, 16.50, 58.60, 11.72, 9.08; 11.72, 22.44, 21.24, 41.48, 12.92, 24.84, 25.79; 0
# Three that do not divide: M 10, A 7.50, L 3; all 13, 4.3333 each. F 4.3333, 26/3; D 26/3, 52/3; T 2 x
# (13 + 3.3333) = 32.6667
3; 4, 2.50, 187110; 0, 1, 0; 20, 9; 0, 0, 0, 0; 0; \
10, 3, 13, 4.33, 3.50; 4.33, 8.67, 8.67, 17.33, 4.33, 8.67, 10.89; 0
""")
  void everyFigure(
      int copies,
      String paper,
      String tape,
      String work,
      String further,
      BigDecimal spoilage,
      String costs,
      String prices,
      int belowCost) {
    Costs bySheet =
        Costs.of(job(copies, paper, tape, work, further, spoilage, SheetUse.Count.BY_SHEET));
    Costs byArea =
        Costs.of(job(copies, paper, tape, work, further, spoilage, SheetUse.Count.BY_AREA));
    assertThat(
            List.of(
                bySheet.materials().rounded(2),
                bySheet.labour().rounded(2),
                bySheet.total().rounded(2),
                bySheet.perCard(bySheet.total()).rounded(2),
                byArea.perCard(byArea.total()).rounded(2)))
        .usingElementComparator(BigDecimal::compareTo)
        .isEqualTo(numbers(costs));
    List<Quote> quotes =
        Arrays.stream(PriceFormula.values()).map(f -> f.quote(bySheet, Carriage.ADDED)).toList();
    assertThat(quotes.stream().flatMap(q -> q.prices().stream()).map(p -> p.amount().rounded(2)))
        .usingElementComparator(BigDecimal::compareTo)
        .isEqualTo(numbers(prices));
    assertThat(quotes.stream().flatMap(q -> PriceFindings.of(q, "EUR").stream()))
        .hasSize(belowCost)
        .allMatch(p -> p.kind().equals("price-below-cost"));
    Money cost = bySheet.perCard(bySheet.total());
    assertThat(PriceFindings.asked(cost, bySheet, "EUR")).isEmpty();
    assertThat(PriceFindings.asked(cost.minus(Money.of("0.01")), bySheet, "EUR")).hasSize(1);
  }

  private static Job job(
      int copies,
      String paper,
      String tape,
      String work,
      String further,
      BigDecimal spoilage,
      SheetUse.Count count) {
    List<BigDecimal> p = numbers(paper);
    List<BigDecimal> t = numbers(tape);
    List<BigDecimal> w = numbers(work);
    List<BigDecimal> f = numbers(further);
    return new Job(
        copies,
        List.of(
            new SheetUse(
                "A4", p.get(0).longValueExact(), p.get(1), p.get(2), new BigDecimal(62370))),
        count,
        List.of(new Used("tape", t.get(0), t.get(1), t.get(2))),
        w.get(0),
        w.get(1),
        f.get(0),
        f.get(1),
        f.get(2),
        f.get(3),
        spoilage);
  }

  private static List<BigDecimal> numbers(String row) {
    return Arrays.stream(row.split(",")).map(String::strip).map(BigDecimal::new).toList();
  }
}
