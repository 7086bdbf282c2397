package hingeleaf.price;

import java.math.BigDecimal;
import java.util.List;

/**
 * Prices by one formula, for one card.
 *
 * @param cost all that one card costs, packaging and post included
 * @param prices in rising order, each with what its word means here
 */
public record Quote(PriceFormula formula, Money cost, List<Price> prices) {
  public Quote {
    prices = List.copyOf(prices);
  }

  /**
   * One price of one card.
   *
   * @param label such as "wholesale (here: the cost itself)"
   */
  public record Price(String label, Money amount) {}

  /**
   * (price - cost) / price, as a share of 1; negative below cost.
   *
   * @throws ArithmeticException for a price of 0
   */
  public static BigDecimal margin(Money price, Money cost) {
    return price.minus(cost).per(price);
  }

  /**
   * (price - cost) / cost, as a share of 1; negative below cost.
   *
   * @throws ArithmeticException for a cost of 0
   */
  public static BigDecimal markUp(Money price, Money cost) {
    return price.minus(cost).per(cost);
  }
}
