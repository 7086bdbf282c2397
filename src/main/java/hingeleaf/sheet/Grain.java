package hingeleaf.sheet;

/** Which way the fibres run: along the width, along the height, or it does not matter. */
public enum Grain {
  W,
  H,
  ANY;

  /** The grain after a quarter turn. */
  public Grain turned() {
    return switch (this) {
      case W -> H;
      case H -> W;
      case ANY -> ANY;
    };
  }

  /** Whether a piece with this grain may lie so on stock with the other. */
  public boolean agrees(Grain stock) {
    return this == ANY || stock == ANY || this == stock;
  }
}
