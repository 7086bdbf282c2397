package hingeleaf.sheet;

import java.util.OptionalLong;

/**
 * One kind of sheet to cut from.
 *
 * @param name what it is called, may be empty
 * @param w width in nm
 * @param h height in nm
 * @param price price of one sheet in millionths of the money, 0 for what is free
 * @param quantity how many there are; empty when there is no limit
 * @param grain which way its grain runs
 */
public record SheetStock(
    String name, long w, long h, long price, OptionalLong quantity, Grain grain) {

  /** How many there are, {@link Long#MAX_VALUE} when there is no limit. */
  public long most() {
    return quantity.orElse(Long.MAX_VALUE);
  }
}
