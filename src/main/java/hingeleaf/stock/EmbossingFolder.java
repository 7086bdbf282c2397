package hingeleaf.stock;

/**
 * A folder of two facing plates that presses a pattern into card.
 *
 * @param name the word that designs use for it
 * @param label as printed on the packet
 * @param width of the pattern, mm; more than 0
 * @param height of the pattern, mm; more than 0
 * @param raises what the pattern adds to the thickness of a panel, mm; 0 or more
 */
public record EmbossingFolder(
    String name, String label, double width, double height, double raises) {
  public EmbossingFolder {
    Positive.check(name + ", width", width);
    Positive.check(name + ", height", height);
    Positive.orZero(name + ", what it adds to the thickness", raises);
  }
}
