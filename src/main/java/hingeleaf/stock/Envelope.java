package hingeleaf.stock;

/**
 * An envelope by its outer size, the longer side as width.
 *
 * @param name in full, such as "US A7" or "ISO C6"; never a bare "A7"
 * @param width the longer side, mm
 * @param height the shorter side, mm; more than 0
 * @param grams of the empty envelope; 0 where it was not weighed
 * @param price of one in the bench's money; 0 where not told
 */
public record Envelope(String name, double width, double height, double grams, double price) {
  public Envelope {
    Positive.check(name + ", width", width);
    Positive.check(name + ", height", height);
    Positive.orZero(name + ", grams", grams);
    Positive.orZero(name + ", price", price);
    if (height > width) {
      double longer = height;
      height = width;
      width = longer;
    }
  }
}
