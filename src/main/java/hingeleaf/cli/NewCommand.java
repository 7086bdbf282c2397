package hingeleaf.cli;

import hingeleaf.design.DesignForms;
import hingeleaf.measure.Unit;
import hingeleaf.structure.Structures;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a design to start from. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = "Print a design to start from, with a word on every key.",
    footer = {"", "Example: hingeleaf new stacked-frames --unit in > card.yaml"})
final class NewCommand implements Callable<Integer> {
  @Parameters(paramLabel = "STRUCTURE", description = "what the card is built on: stacked-frames")
  private String structure = "";

  @Option(names = "--unit", paramLabel = "UNIT", description = "mm (default), cm or in")
  private @Nullable String unit;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    List<String> known = Structures.ALL.stream().map(s -> s.form().name()).toList();
    if (!known.contains(structure)) {
      throw new DoorException(
          Exit.USAGE,
          "there is no structure " + structure + "; there are: " + String.join(", ", known));
    }
    Unit in =
        unit == null
            ? Unit.MM
            : Unit.named(unit)
                .orElseThrow(
                    () -> new DoorException(Exit.USAGE, "--unit takes mm, cm or in, not " + unit));
    DesignForms forms = Structures.FORMS;
    spec.commandLine().getOut().print(hingeleaf.design.NewText.design(forms, structure, in));
    spec.commandLine().getOut().flush();
    return Exit.FINE;
  }
}
