package hingeleaf.cli;

import hingeleaf.card.Flats;
import hingeleaf.card.Rest;
import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import hingeleaf.paper.json.PackJson;
import hingeleaf.plan.Leans;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how a card lies flat. */
@Command(
    name = "fold",
    mixinStandardHelpOptions = true,
    description = {
      "Tell in which ways a card lies flat, and how large and thick it is then.",
      "A file of panels (JSON) is driven to the states that it asks for."
    },
    footer = {"", "Example: hingeleaf fold card.yaml"})
final class FoldCommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "a design (YAML) or a file of panels (JSON)")
  private Path file = Path.of("");

  @Mixin private Common common = new Common();

  @Mixin private JsonAnswer json = new JsonAnswer();

  private final Terminal terminal;

  FoldCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    if (MechanismSniff.looksLikeOne(file)) {
      return FoldFile.run(file, json.wanted(), terminal.out(), terminal.err());
    }
    Common.Loaded loaded = common.load(file, false);
    Pack pack = loaded.pack();
    if (pack == null || pack.blocked()) {
      Common.talk(
          spec.commandLine().getErr(),
          Telling.lines(pack == null ? loaded.problems() : pack.problems()).stripTrailing());
      return Exit.CONTENT;
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      out.println(PackJson.flats(pack.flats()));
    } else {
      tell(pack, out);
    }
    out.flush();
    return Exit.FINE;
  }

  private static void tell(Pack pack, PrintWriter out) {
    Flats flats = pack.flats();
    MakerUnits units = pack.inputs().wants().units();
    out.println(
        pack.title()
            + " lies flat in "
            + flats.count()
            + (flats.count() == 1 ? " way" : " ways")
            + "; the best of them:");
    for (Rest r : flats.states()) {
      out.println(
          "  "
              + Leans.words(r)
              + ": "
              + units.size(r.width(), r.height())
              + ", "
              + units.fine(r.limp())
              + " of card at the thickest spot, "
              + units.fine(r.rigid())
              + " as stiff card stacks");
    }
  }
}
