package hingeleaf.intake;

/**
 * A job that cannot be understood; the message is a sentence for its writer, with line and place.
 */
public final class UnreadableJobException extends Exception {
  private static final long serialVersionUID = 1L;

  public UnreadableJobException(String message) {
    super(message);
  }
}
