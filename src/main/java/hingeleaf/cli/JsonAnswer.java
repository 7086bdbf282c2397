package hingeleaf.cli;

import picocli.CommandLine.Option;

/** The choice of verbs that answer in words or, for programs, as JSON. */
final class JsonAnswer {
  @Option(names = "--json", description = "answer as JSON")
  private boolean wanted;

  boolean wanted() {
    return wanted;
  }
}
