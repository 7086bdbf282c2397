package hingeleaf.stock;

/**
 * A wet glue or a double-sided tape.
 *
 * @param name the word that designs use for it, such as {@code pva}
 * @param title as it is called on the plan
 * @param kind glue from a bottle or tape from a roll
 * @param width of the strip it leaves, mm: the tape's, or a bead of glue spread thin; more than 0
 * @param holdMinutes how long a joint is pressed by hand
 * @param dryMinutes until the next fold may be worked; 0 for tape
 * @param gramsPerM2 what stays in the card, g for each m2 of joint (wet glue loses its water)
 * @param usedPerM2 what leaves the bottle or roll, g for each m2 of joint; at least gramsPerM2
 * @param packSize what a pack holds: g of glue, m of tape; 0 where not told
 * @param price of a pack in the bench's money; 0 where not told
 */
public record Glue(
    String name,
    String title,
    Kind kind,
    double width,
    double holdMinutes,
    double dryMinutes,
    double gramsPerM2,
    double usedPerM2,
    double packSize,
    double price) {
  /** How a glue comes. */
  public enum Kind {
    GLUE,
    TAPE
  }

  public Glue {
    Positive.check(name + ", width", width);
    Positive.orZero(name + ", minutes to hold", holdMinutes);
    Positive.orZero(name + ", minutes to dry", dryMinutes);
    Positive.orZero(name + ", grams per m2", gramsPerM2);
    Positive.orZero(name + ", pack", packSize);
    Positive.orZero(name + ", price", price);
    if (!(usedPerM2 >= gramsPerM2)) {
      throw new IllegalArgumentException(
          name + ": cannot leave more in the card than was put on (" + usedPerM2 + " g/m2)");
    }
  }
}
