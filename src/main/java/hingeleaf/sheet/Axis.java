package hingeleaf.sheet;

/** X is a cut along a line x = at (parts lie side by side), Y one along y = at (stacked). */
public enum Axis {
  X,
  Y;

  /** The other one. */
  public Axis other() {
    return this == X ? Y : X;
  }
}
