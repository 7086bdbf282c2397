package hingeleaf.store;

/** Something that the folder cannot do, as a sentence for the user; never a bug of ours. */
public final class StoreException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What sort of trouble it is. */
  public enum Kind {
    /** There is no such file. */
    MISSING,
    /** The name is not one of a file in the folder, or is taken. */
    NAME,
    /** The disk or the rights of the folder refuse. */
    DISK
  }

  private final Kind kind;
  private final String sentence;

  public StoreException(Kind kind, String message) {
    super(message);
    this.kind = kind;
    this.sentence = message;
  }

  /** What went wrong and what to do, for the user. */
  public String sentence() {
    return sentence;
  }

  public Kind kind() {
    return kind;
  }
}
