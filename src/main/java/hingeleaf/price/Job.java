package hingeleaf.price;

import java.math.BigDecimal;
import java.util.List;

/**
 * What making a batch takes, all of it for the whole batch of good cards.
 *
 * @param copies good cards; 1 or more
 * @param sheets papers
 * @param count whether papers are counted by sheet or by area
 * @param used glue, tape, foam, envelopes and the like
 * @param minutes of work with the hands, design and office time included if it is to be paid
 * @param hourlyRate 0 where not told
 * @param overhead rent, wear of tools, fees
 * @param packaging boxes, sleeves, labels
 * @param post stamps
 * @param profit wanted beyond wages; only the formula that names it uses it
 * @param spoilage share of cards that go wrong, such as 0.05; their paper and work are paid by the
 *     good ones
 */
public record Job(
    int copies,
    List<SheetUse> sheets,
    SheetUse.Count count,
    List<Used> used,
    BigDecimal minutes,
    BigDecimal hourlyRate,
    BigDecimal overhead,
    BigDecimal packaging,
    BigDecimal post,
    BigDecimal profit,
    BigDecimal spoilage) {
  public Job {
    sheets = List.copyOf(sheets);
    used = List.copyOf(used);
    Amounts.positive("copies", BigDecimal.valueOf(copies));
    Amounts.notNegative("minutes", minutes);
    Amounts.notNegative("hourly rate", hourlyRate);
    Amounts.notNegative("overhead", overhead);
    Amounts.notNegative("packaging", packaging);
    Amounts.notNegative("post", post);
    Amounts.notNegative("profit", profit);
    Amounts.notNegative("spoilage", spoilage);
  }
}
