package hingeleaf.cli;

/** Ends a command with a sentence for the user and an exit code; never a bug of ours. */
final class DoorException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final int exit;

  DoorException(int exit, String message) {
    super(message);
    this.exit = exit;
  }

  int exit() {
    return exit;
  }
}
