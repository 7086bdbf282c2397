package hingeleaf.card;

/** A side of a flat piece. */
public enum Face {
  /** The good face, which the reader of a piece sees. */
  FRONT,
  BACK;

  public Face other() {
    return this == FRONT ? BACK : FRONT;
  }
}
