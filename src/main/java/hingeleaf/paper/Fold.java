package hingeleaf.paper;

/** How a score is folded, as seen on the face that is drawn. */
public enum Fold {
  /** Towards the reader: the seen faces come together; the groove is on the other face. */
  VALLEY(Pen.VALLEY, Step.REVERSE_CREASING),
  /** Away from the reader: the groove is on the seen face. */
  MOUNTAIN(Pen.MOUNTAIN, Step.CREASING),
  /** Scored on the seen face, and left flat in the made card. */
  FLAT(Pen.FLAT, Step.CREASING);

  private final Pen pen;
  private final Step step;

  Fold(Pen pen, Step step) {
    this.pen = pen;
    this.step = step;
  }

  /** The sense of a signed fold angle (valley positive) seen on the front. */
  public static Fold of(double made) {
    if (made == 0) {
      return FLAT;
    }
    return made > 0 ? VALLEY : MOUNTAIN;
  }

  /** The same fold seen on the other face. */
  public Fold fromBehind() {
    return switch (this) {
      case VALLEY -> MOUNTAIN;
      case MOUNTAIN -> VALLEY;
      case FLAT -> FLAT;
    };
  }

  public Pen pen() {
    return pen;
  }

  public Step step() {
    return step;
  }
}
