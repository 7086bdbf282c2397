package hingeleaf.stock;

/**
 * Foam tape or pads, sticky on both sides, by which a piece is raised.
 *
 * @param name the word that designs use for it, such as {@code foam-2}
 * @param title as it is called on the plan
 * @param thickness between the two papers, mm; more than 0
 * @param gramsPerM2 of the foam, g for each m2
 * @param packArea what a pack holds, mm2; 0 where not told
 * @param price of a pack in the bench's money; 0 where not told
 */
public record Foam(
    String name, String title, double thickness, double gramsPerM2, double packArea, double price) {
  public Foam {
    Positive.check(name + ", thickness", thickness);
    Positive.orZero(name + ", grams per m2", gramsPerM2);
    Positive.orZero(name + ", pack", packArea);
    Positive.orZero(name + ", price", price);
  }
}
