package hingeleaf.cli;

import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Wants;
import hingeleaf.paper.json.PackJson;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes the pack of a design. */
@Command(
    name = "make",
    mixinStandardHelpOptions = true,
    description = "Make everything that comes out of a design: plan, templates, pieces, picture.",
    footer = {
      "",
      "Writes plan.pdf, templates.pdf, pieces/*.svg, picture.png and pack.json;",
      "with --copies also run-sheet.pdf, with --class also class-sheet.pdf.",
      "Example: hingeleaf make card.yaml --out pack"
    })
final class MakeCommand implements Callable<Integer> {
  @Mixin private DesignFile design = new DesignFile();

  @Mixin private Common common = new Common();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "folder to write; the design's name with -pack where left out")
  private @Nullable Path out;

  @Option(names = "--mirrored", description = "mirror the templates, for marking on the back")
  private boolean mirrored;

  @Option(
      names = "--class",
      paramLabel = "SEATS",
      description = "how many you teach it to; adds a class sheet")
  private int seats;

  @Option(
      names = "--minutes",
      paramLabel = "MINUTES",
      description = "how long the class lasts; 120 where left out")
  private int minutes = 120;

  @Option(names = "--json", description = "print pack.json too")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    Common.Loaded loaded = common.load(design.path(), mirrored, wants -> wants.teaching(taught()));
    PrintWriter err = spec.commandLine().getErr();
    Pack pack = loaded.pack();
    Optional<Making> making = begun(pack, loaded);
    List<Problem> problems = pack == null ? loaded.problems() : pack.problems();
    Common.talk(err, Telling.lines(problems).stripTrailing());
    if (pack == null || pack.stops() || making.isEmpty()) {
      Common.talk(err, design + ": nothing was made: " + Telling.count(problems));
      return Exit.CONTENT;
    }
    Path folder = out == null ? besides(design.path()) : out;
    int files = write(making.get(), folder);
    if (json) {
      spec.commandLine().getOut().println(PackJson.text(pack));
      spec.commandLine().getOut().flush();
    }
    Common.talk(err, folder + ": " + files + " files; begin with plan.pdf");
    return Exit.FINE;
  }

  /** Files are begun on the other core while problems are looked for; nothing is written yet. */
  private static Optional<Making> begun(@Nullable Pack pack, Common.Loaded loaded) {
    return Optional.ofNullable(pack)
        .filter(p -> !p.blocked())
        .map(p -> Making.of(p, loaded.fonts()));
  }

  private static int write(Making making, Path folder) {
    try (OutputFolder out = OutputFolder.open(folder)) {
      int files = making.into(out);
      out.finish();
      return files;
    }
  }

  private Wants.Lesson taught() {
    if (seats < 0 || seats > 200) {
      throw new DoorException(Exit.USAGE, "--class takes 1 to 200 seats, not " + seats);
    }
    if (minutes < 10 || minutes > 1000) {
      throw new DoorException(Exit.USAGE, "--minutes takes 10 to 1000, not " + minutes);
    }
    return seats == 0 ? Wants.Lesson.NONE : new Wants.Lesson(seats, minutes);
  }

  private static Path besides(Path design) {
    String name = String.valueOf(design.getFileName()).replaceAll("\\.[^.]*$", "");
    return design.resolveSibling(name + "-pack");
  }
}
