package hingeleaf.stock;

/**
 * How true to size a hand works. Common practice of the trade, from memory: half a millimetre is a
 * careful hand, one is average, up to two is a class of beginners.
 */
public enum Accuracy {
  CAREFUL(0.5),
  AVERAGE(1),
  CLASS(2);

  private final double mm;

  Accuracy(double mm) {
    this.mm = mm;
  }

  /** Largest usual error of one cut or score, mm, to either side. */
  public double mm() {
    return mm;
  }
}
