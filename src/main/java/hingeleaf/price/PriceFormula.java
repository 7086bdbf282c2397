package hingeleaf.price;

import java.util.List;

/**
 * Ways from cost to price that guides for makers publish. They disagree, above all on what
 * "wholesale" means: the cost itself, or twice that. So the formula is always shown with the
 * figure.
 */
public enum PriceFormula {
  /** Wholesale is the cost itself. */
  FOLKLIFE(
      "materials + hours x wage + overhead = wholesale; x 2 = retail",
      "Louisiana Voices Folklife in Education Project, Unit VII, lesson on pricing crafts"),
  /** Wholesale is twice materials and labour. */
  DOUBLED(
      "(materials + labour) x 2 = wholesale; x 2 = retail", "common practice of makers' guides"),
  /** Wholesale is cost and a profit named in advance. */
  WITH_PROFIT(
      "materials + labour + overhead + profit = wholesale; x 2 = retail",
      "common practice of makers' guides"),
  /** One price; overhead is estimated, not counted. */
  THIRD_FOR_OVERHEAD(
      "overhead = 1/3 of the larger of materials and labour; cost x 2 = price",
      "common practice of stained-glass workshops");

  private final String formula;
  private final String source;

  PriceFormula(String formula, String source) {
    this.formula = formula;
    this.source = source;
  }

  /** As it is shown beside every price. */
  public String formula() {
    return formula;
  }

  /** Where it is published. */
  public String source() {
    return source;
  }

  /**
   * Prices for one card by this formula.
   *
   * @param carriage whether packaging and post are inside the price or added to it at cost;
   *     University of Missouri Extension MP598 knows both
   */
  public Quote quote(Costs costs, Carriage carriage) {
    Money inside = carriage == Carriage.INSIDE ? costs.carriage() : Money.ZERO;
    Money added = carriage == Carriage.ADDED ? costs.carriage() : Money.ZERO;
    Money work = costs.materials().plus(inside).plus(costs.labour());
    List<Quote.Price> prices =
        switch (this) {
          case FOLKLIFE -> pair("the cost itself", work.plus(costs.overhead()), added, costs);
          case DOUBLED -> pair("twice materials and labour", work.times(2), added, costs);
          case WITH_PROFIT ->
              pair(
                  "cost and profit",
                  work.plus(costs.overhead()).plus(costs.profit()),
                  added,
                  costs);
          case THIRD_FOR_OVERHEAD ->
              List.of(
                  new Quote.Price(
                      "price (twice the cost)",
                      costs.perCard(work.plus(third(costs, inside)).times(2).plus(added))));
        };
    return new Quote(this, costs.perCard(costs.total()), prices);
  }

  /** How packaging and post get into the price. */
  public enum Carriage {
    INSIDE,
    ADDED
  }

  private static Money third(Costs costs, Money inside) {
    Money materials = costs.materials().plus(inside);
    Money larger = materials.compareTo(costs.labour()) > 0 ? materials : costs.labour();
    return larger.dividedBy(3);
  }

  private static List<Quote.Price> pair(String meaning, Money wholesale, Money added, Costs costs) {
    return List.of(
        new Quote.Price("wholesale (here: " + meaning + ")", costs.perCard(wholesale.plus(added))),
        new Quote.Price("retail (twice wholesale)", costs.perCard(wholesale.times(2).plus(added))));
  }
}
