package hingeleaf.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The design that a verb reads, named alike in every verb. */
final class DesignFile {
  @Parameters(paramLabel = "DESIGN", description = "a design file (YAML)")
  private Path path = Path.of("");

  Path path() {
    return path;
  }

  @Override
  public String toString() {
    return path.toString();
  }
}
