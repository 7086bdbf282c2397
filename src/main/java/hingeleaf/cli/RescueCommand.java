package hingeleaf.cli;

import hingeleaf.mend.MeasureReader;
import hingeleaf.mend.MeasuredBench;
import hingeleaf.mend.Measures;
import hingeleaf.mend.Rescue;
import hingeleaf.mend.Rescued;
import hingeleaf.pack.Pack;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells what can be done with pieces that came out otherwise than designed. */
@Command(
    name = "rescue",
    mixinStandardHelpOptions = true,
    description = "Save a card some of whose pieces came out otherwise: tell what is still good.",
    footer = {
      "",
      "Measured sizes, each as NAME.SIZE:",
      "  a frame: width, height (its finished panel), aperture, side.left,",
      "    side.right, tab.left, tab.right (bottom and top where sides stand",
      "    there), piece.width, piece.height (the whole piece, flat);",
      "  a leaf: width, height, handle; a stay: its keys in the design, such",
      "    as width, tongue, tab; a window, mat or cut-out: width, height;",
      "  a paper: thickness; a die, as die.NAME: cut. These two go into a bench",
      "    file of its own, which --bench then takes.",
      "What you do not measure is taken as designed.",
      "Example: hingeleaf rescue card.yaml --measured far.width=149 \\",
      "           --measured far.side.left=13 --out rescued.yaml"
    })
final class RescueCommand implements Callable<Integer> {
  @Mixin private DesignFile design = new DesignFile();

  @Mixin private Common common = new Common();

  @Option(
      names = "--measured",
      paramLabel = "PIECE.SIZE=LENGTH",
      description = "what you measured; give it as often as you need")
  private List<String> measured = List.of();

  @Option(
      names = "--cut",
      paramLabel = "PIECES",
      split = ",",
      description = "all pieces that are cut already; just the measured ones where left out")
  private List<String> cut = List.of();

  @Option(
      names = "--out",
      paramLabel = "NEW.yaml",
      description = "write the card as it becomes as a new design")
  private @Nullable Path out;

  @Option(
      names = "--bench-out",
      paramLabel = "FILE",
      description =
          "write the bench as measured; beside NEW.yaml, as NEW-bench.yaml, where left out")
  private @Nullable Path benchOut;

  @Mixin private JsonAnswer json = new JsonAnswer();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    RescueFiles files = new RescueFiles(design.path(), out, benchOut);
    files.check(common.benchFile());
    Pack pack = start();
    Measures measures = measures(pack);
    Optional<Path> bench = files.bench(measures);
    Rescued rescued = rescued(pack, measures);
    String benchText = benchText(rescued, measures);
    files.write(rescued, bench, benchText);
    PrintWriter print = spec.commandLine().getOut();
    if (json.wanted()) {
      print.print(RescueJson.text(rescued, benchText));
    } else {
      RescueWords.tell(rescued, bench, print);
      print.println(written(pack, bench));
    }
    print.flush();
    return ends(rescued);
  }

  /** Text of the bench file as measured; empty where nothing of it was. */
  private String benchText(Rescued rescued, Measures measures) {
    if (!MeasuredBench.needed(measures)) {
      return "";
    }
    Pack made = rescued.pack();
    MeasuredBench.Outcome outcome =
        MeasuredBench.of(
            common.benchDocument(), made.inputs().bench(), measures, made.inputs().design().unit());
    if (outcome instanceof MeasuredBench.Outcome.Refused r) {
      throw new DoorException(Exit.CONTENT, "--bench: " + r.reason());
    }
    return ((MeasuredBench.Outcome.Written) outcome).text();
  }

  private String written(Pack pack, Optional<Path> bench) {
    List<String> lines = new ArrayList<>();
    lines.add(
        out == null
            ? "Add --out NEW.yaml to write it as a new design."
            : out + " is the new design" + drawings(pack, out) + ".");
    bench.ifPresent(
        b ->
            lines.add(
                b
                    + " is the bench as measured; name it with --bench from now on: hingeleaf check "
                    + (out == null ? design : out)
                    + " --bench "
                    + b));
    return String.join(System.lineSeparator(), lines);
  }

  /** A design looks for its drawings beside itself. */
  private String drawings(Pack pack, Path target) {
    Collection<String> names = pack.inputs().design().drawings();
    Path there = target.toAbsolutePath().getParent();
    boolean beside = Objects.equals(there, design.path().toAbsolutePath().getParent());
    return names.isEmpty() || beside
        ? ""
        : "; put its drawings beside it: " + String.join(", ", names);
  }

  private Pack start() {
    Common.Loaded loaded = common.load(design.path(), false);
    Pack pack = loaded.pack();
    if (pack == null || pack.blocked()) {
      String lines = Telling.lines(pack == null ? loaded.problems() : pack.problems());
      throw new DoorException(Exit.CONTENT, lines.stripTrailing());
    }
    boolean metric = pack.inputs().wants().units().unit().metric();
    if (metric != pack.inputs().design().unit().metric()) {
      throw new DoorException(
          Exit.USAGE,
          "--unit: a rescue is worked out in the units of the design, since its pieces were cut so");
    }
    return pack;
  }

  private Measures measures(Pack pack) {
    MeasureReader.Outcome read = MeasureReader.read(pack, measured, cut);
    if (read instanceof MeasureReader.Outcome.Wrong w) {
      throw new DoorException(Exit.USAGE, w.sentence());
    }
    return ((MeasureReader.Outcome.Read) read).measures();
  }

  private Rescued rescued(Pack pack, Measures measures) {
    Rescue.Outcome outcome = Rescue.of(pack, measures);
    if (outcome instanceof Rescue.Outcome.Refused r) {
      throw new DoorException(Exit.CONTENT, design + ": " + r.sentence());
    }
    return ((Rescue.Outcome.Done) outcome).rescued();
  }

  /** Where nothing is left to change, a recut is all that helps: the pieces as they are block. */
  private int ends(Rescued rescued) {
    boolean free =
        rescued.rows().stream()
            .anyMatch(
                r ->
                    r.verdict() == Rescued.Verdict.AS_DESIGNED
                        || r.verdict() == Rescued.Verdict.CUT_OTHERWISE);
    if (rescued.recuts() && !free) {
      String names =
          rescued.rows().stream()
              .filter(r -> r.verdict() == Rescued.Verdict.RECUT)
              .map(Rescued.Row::piece)
              .collect(Collectors.joining(", "));
      Common.talk(
          spec.commandLine().getErr(),
          design + ": every piece is cut, and no way of gluing makes them fit - recut " + names);
      return Exit.CONTENT;
    }
    return Exit.FINE;
  }
}
