package hingeleaf.cli;

import hingeleaf.design.SchemaText;
import hingeleaf.structure.Structures;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the JSON Schema of a file. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "Print the JSON Schema (draft 2020-12) of a design, a bench or a pack.json.",
    footer = {"", "Example: hingeleaf schema design > design.schema.json"})
final class SchemaCommand implements Callable<Integer> {
  @Parameters(paramLabel = "KIND", description = "design, bench or pack")
  private String kind = "";

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    String text =
        switch (kind) {
          case "design" -> SchemaText.design(Structures.FORMS);
          case "bench" -> SchemaText.bench();
          case "pack" -> hingeleaf.paper.json.PackSchema.text();
          default ->
              throw new DoorException(
                  Exit.USAGE, "schema takes design, bench or pack, not " + kind);
        };
    spec.commandLine().getOut().print(text);
    spec.commandLine().getOut().flush();
    return Exit.FINE;
  }
}
