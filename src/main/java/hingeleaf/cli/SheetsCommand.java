package hingeleaf.cli;

import hingeleaf.intake.SheetJobReader;
import hingeleaf.intake.UnreadableJobException;
import hingeleaf.paper.SheetJson;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.solve.Outcome;
import java.io.PrintStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hingeleaf sheets}: the cheapest plan that a hand trimmer can cut. */
@Command(
    name = "sheets",
    description = "Lay pieces on the cheapest sheets that a hand trimmer can cut.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples: hingeleaf sheets job.json --seconds 10",
      "          hingeleaf sheets card.yaml --copies 12",
      "          hingeleaf sheets card.yaml:20 other.yaml:30",
      "          hingeleaf sheets card.yaml --vary base.width 140..155"
    })
public final class SheetsCommand implements Callable<Integer> {
  private static final Pattern COUNTED = Pattern.compile("(.+):(\\d+)");
  private final PrintStream out;
  private final PrintStream err;

  @Parameters(
      paramLabel = "FILE[:N]",
      arity = "1..*",
      description = "a sheet job (JSON), or designs (YAML), each with how many of it")
  List<String> files = List.of();

  @Mixin private Common common = new Common();

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description = "how long to search at most for each paper (default: ${DEFAULT-VALUE})")
  double seconds = 10;

  @Option(names = "--drop-outs", description = "cut small pieces from what falls out of openings")
  boolean dropOuts;

  @Option(
      names = "--vary",
      arity = "2",
      paramLabel = "SIZE",
      description = {
        "how the sheets change as one size goes through a range,",
        "such as base.width 140..155"
      })
  List<String> vary = List.of();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "with --vary: also draw it, as .svg or .png")
  @Nullable Path plot;

  @Option(names = "--json", description = "print the plan as JSON")
  boolean json;

  public SheetsCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  /** Runs the command with its own arguments; returns the exit code. */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return new CommandLine(new SheetsCommand(out, err))
        .setOut(new java.io.PrintWriter(out, true, StandardCharsets.UTF_8))
        .setErr(new java.io.PrintWriter(err, true, StandardCharsets.UTF_8))
        .setExecutionExceptionHandler(
            (e, line, parsed) -> {
              err.println("hingeleaf: " + e.getMessage());
              return e instanceof DoorException d ? d.exit() : Exit.BUG;
            })
        .execute(args);
  }

  @Override
  public Integer call() {
    if (!(seconds > 0 && seconds <= 1_000_000)) {
      throw new DoorException(Exit.USAGE, "--seconds is a number above 0, found " + seconds);
    }
    SheetSearch search = new SheetSearch(seconds, err);
    if (files.size() == 1 && files.get(0).endsWith(".json")) {
      return search.run(s -> job(Path.of(files.get(0)), s));
    }
    DesignSheets designs = new DesignSheets(common, counted(), dropOuts, json, out, err);
    return vary.isEmpty()
        ? search.run(designs::plan)
        : designs.vary(vary.get(0), vary.get(1), plot);
  }

  /** Names with their counts: split at the last colon before digits. */
  private List<DesignSheets.Named> counted() {
    List<DesignSheets.Named> all = new ArrayList<>();
    for (String f : files) {
      Matcher m = COUNTED.matcher(f);
      boolean counted = m.matches();
      try {
        Path file = Path.of(counted ? m.group(1) : f);
        all.add(new DesignSheets.Named(file, counted ? Integer.parseInt(m.group(2)) : 0));
      } catch (NumberFormatException e) {
        throw new DoorException(Exit.USAGE, f + ": that many cards cannot be counted");
      }
    }
    return all;
  }

  private int job(Path file, SheetSearch search) {
    try {
      String text = decode(InputFile.read(file, 50_000_000));
      SheetJob job = SheetJobReader.read(text);
      SheetSearch.Found found = search.plan(job);
      if (found.outcome() instanceof Outcome.Planned planned) {
        out.print(
            json
                ? SheetJson.write(job, planned.plan(), found.seconds()) + "\n"
                : CuttingList.write(job, planned.plan()));
        out.flush();
        return Exit.FINE;
      }
      ((Outcome.Blocked) found.outcome()).sentences().forEach(s -> err.println(file + ": " + s));
      return Exit.CONTENT;
    } catch (UnreadableJobException e) {
      throw new DoorException(Exit.CONTENT, file + ": " + e.getMessage());
    } catch (CharacterCodingException e) {
      throw new DoorException(Exit.CONTENT, file + ": this is not text in UTF-8");
    }
  }

  private static String decode(byte[] bytes) throws CharacterCodingException {
    return StandardCharsets.UTF_8.newDecoder().decode(java.nio.ByteBuffer.wrap(bytes)).toString();
  }
}
