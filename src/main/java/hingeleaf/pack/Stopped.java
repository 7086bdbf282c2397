package hingeleaf.pack;

/**
 * The work on a pack was told to stop; nothing half done is kept, and it can be asked for again.
 */
@SuppressWarnings("serial")
public final class Stopped extends RuntimeException {
  public Stopped() {
    super("stopped", null, false, false);
  }
}
