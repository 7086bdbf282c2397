package hingeleaf.cli;

import java.io.PrintStream;

/** Where a run of the tool prints: results to one stream, talk to the other. */
record Terminal(PrintStream out, PrintStream err) {}
