package hingeleaf.price;

import java.math.BigDecimal;

/**
 * Sheets of one paper and size that a whole batch takes.
 *
 * @param name as on the plan
 * @param sheets how many have to be bought; 0 or more
 * @param price of one sheet; 0 where not told
 * @param used area of the pieces cut from them, mm2; 0 or more
 * @param sheet area of one sheet, mm2; more than 0
 */
public record SheetUse(
    String name, long sheets, BigDecimal price, BigDecimal used, BigDecimal sheet) {
  public SheetUse {
    Amounts.notNegative(name + ", sheets", BigDecimal.valueOf(sheets));
    Amounts.notNegative(name + ", price of a sheet", price);
    Amounts.notNegative(name + ", area used", used);
    Amounts.positive(name + ", area of a sheet", sheet);
  }

  /** How sheets are counted. */
  public enum Count {
    /** Whole sheets, as they are bought; scrap costs. */
    BY_SHEET,
    /** By the area used: part-used material counts pro rata, scrap goes back into the drawer. */
    BY_AREA
  }

  /** Cost for the batch, exactly. */
  public Money cost(Count count) {
    return switch (count) {
      case BY_SHEET -> Money.of(price).times(sheets);
      case BY_AREA -> Money.of(price).times(used).dividedBy(sheet);
    };
  }
}
