package hingeleaf.cli;

/** What the process tells the shell when it ends. */
final class Exit {
  /** Fine; warnings too. */
  static final int FINE = 0;

  /** The content of an input file blocks. */
  static final int CONTENT = 1;

  /** The command line is wrong. */
  static final int USAGE = 2;

  /** Something cannot be read or written. */
  static final int FILES = 3;

  /** Our own bug. */
  static final int BUG = 70;

  /** Stopped by the user. */
  static final int STOPPED = 130;

  private Exit() {}
}
