package hingeleaf.pack;

import java.math.BigDecimal;

/**
 * What a price needs to know that no bench tells; all for one card, in the bench's money, 0 where
 * not told.
 *
 * @param overhead rent, wear of tools, fees
 * @param packaging sleeve, box, label, beside the envelope
 * @param post stamps
 * @param profit wanted beyond wages
 * @param asked the price that the maker thinks of
 * @param spoilage share of cards that go wrong, such as 0.05
 */
public record PriceWants(
    BigDecimal overhead,
    BigDecimal packaging,
    BigDecimal post,
    BigDecimal profit,
    BigDecimal asked,
    BigDecimal spoilage) {
  private static final BigDecimal USUAL_SPOILAGE = new BigDecimal("0.05");

  /** Nothing told; one card in twenty goes wrong (common practice, no source). */
  public static final PriceWants UNTOLD =
      new PriceWants(
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          USUAL_SPOILAGE);
}
