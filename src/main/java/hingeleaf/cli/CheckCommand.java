package hingeleaf.cli;

import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.pack.GoodToKnow;
import hingeleaf.paper.json.PackJson;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Tells what is wrong with a design, without making anything. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Tell what is wrong with a design, or doubtful, or good to know.",
    footer = {"", "Example: hingeleaf check card.yaml"})
final class CheckCommand implements Callable<Integer> {
  @Mixin private DesignFile design = new DesignFile();

  @Mixin private Common common = new Common();

  @Mixin private JsonAnswer json = new JsonAnswer();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    Common.Loaded loaded = common.load(design.path(), false);
    List<Problem> problems = loaded.pack() == null ? loaded.problems() : loaded.pack().problems();
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      out.println(PackJson.problems(problems));
    } else {
      out.print(Telling.lines(problems));
      out.println(design + ": " + Telling.count(problems));
      if (loaded.pack() != null && !loaded.pack().blocked()) {
        GoodToKnow.of(loaded.pack()).forEach(out::println);
      }
    }
    out.flush();
    boolean blocks = problems.stream().anyMatch(p -> p.level() == Level.BLOCKS);
    return blocks ? Exit.CONTENT : Exit.FINE;
  }
}
