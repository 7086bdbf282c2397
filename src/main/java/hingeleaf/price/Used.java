package hingeleaf.price;

import java.math.BigDecimal;

/**
 * Something that is used up out of a pack: glue, tape, foam, envelopes, blades.
 *
 * @param name as on the plan
 * @param amount that a whole batch takes, in any unit; 0 or more
 * @param pack what a pack holds, in the same unit; more than 0
 * @param price of a pack; 0 where not told
 */
public record Used(String name, BigDecimal amount, BigDecimal pack, BigDecimal price) {
  public Used {
    Amounts.notNegative(name + ", amount", amount);
    Amounts.positive(name + ", what a pack holds", pack);
    Amounts.notNegative(name + ", price of a pack", price);
  }

  /** Cost for the batch, pro rata, exactly. */
  public Money cost() {
    return Money.of(price).times(amount).dividedBy(pack);
  }
}
