package hingeleaf.stock;

/**
 * A cutting die, known by what it really cuts and not by what its label says.
 *
 * @param name the word that designs use for it, such as {@code circle-60}
 * @param label as printed on the packet; only ever shown, never reckoned with
 * @param shape of the cut
 * @param cutWidth of the opening it leaves, mm, as measured; more than 0
 * @param cutHeight of the opening it leaves, mm
 * @param dropOutWidth of the piece that falls out, mm; at most the opening's
 * @param dropOutHeight of the piece that falls out, mm
 */
public record Die(
    String name,
    String label,
    Shape shape,
    double cutWidth,
    double cutHeight,
    double dropOutWidth,
    double dropOutHeight) {
  /** What a die cuts. */
  public enum Shape {
    CIRCLE,
    ELLIPSE,
    RECTANGLE,
    ROUNDED_RECTANGLE,
    ARCH,
    OTHER
  }

  public Die {
    Positive.check(name + ", width of the cut", cutWidth);
    Positive.check(name + ", height of the cut", cutHeight);
    Positive.check(name + ", width of the drop-out", dropOutWidth);
    Positive.check(name + ", height of the drop-out", dropOutHeight);
    if (dropOutWidth > cutWidth || dropOutHeight > cutHeight) {
      throw new IllegalArgumentException(
          name + ": what falls out cannot be larger than the opening it fell out of");
    }
  }

  /** The same die, its opening measured anew; what falls out stays no larger than that. */
  public Die cutting(double width, double height) {
    return new Die(
        name,
        label,
        shape,
        width,
        height,
        Math.min(dropOutWidth, width),
        Math.min(dropOutHeight, height));
  }
}
