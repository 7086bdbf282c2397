package hingeleaf.cli;

import hingeleaf.measure.MakerUnits;
import hingeleaf.mend.MeasureReader;
import hingeleaf.mend.Measures;
import hingeleaf.mend.Rescue;
import hingeleaf.mend.Rescued;
import hingeleaf.pack.Pack;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what can be done with pieces that came out otherwise than designed. */
@Command(
    name = "rescue",
    mixinStandardHelpOptions = true,
    description = "Save a card some of whose pieces came out otherwise: tell what is still good.",
    footer = {
      "",
      "Measured sizes: PIECE.width, .height (its finished panel), .side.left, .side.right,",
      ".tab.left, .tab.right (.bottom and .top where sides stand there), .piece.width,",
      ".piece.height (the whole piece, flat), .aperture; PAPER.thickness; die.NAME.cut.",
      "What you do not measure is taken as designed.",
      "Example: hingeleaf rescue card.yaml --measured far.width=149 --measured far.side.left=13"
          + " --out rescued.yaml"
    })
final class RescueCommand implements Callable<Integer> {
  @Parameters(paramLabel = "DESIGN", description = "a design file (YAML)")
  private Path design = Path.of("");

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

  @Option(names = "--json", description = "answer as JSON")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    Path target = out;
    if (target != null && same(target, design)) {
      throw new DoorException(
          Exit.USAGE, "--out " + target + " would replace the design itself; give another name");
    }
    Pack pack = start();
    Rescued rescued = rescued(pack, measures(pack));
    if (target != null) {
      OutputFile.write(target, rescued.text().getBytes(StandardCharsets.UTF_8));
    }
    PrintWriter print = spec.commandLine().getOut();
    if (json) {
      print.print(RescueJson.text(rescued));
    } else {
      tell(rescued, print);
      print.println(
          target == null
              ? "Add --out NEW.yaml to write it as a new design."
              : target + " is the new design" + drawings(pack, target) + ".");
    }
    print.flush();
    return ends(rescued);
  }

  /** A design looks for its drawings beside itself. */
  private String drawings(Pack pack, Path target) {
    Collection<String> names = pack.inputs().design().drawings();
    Path there = target.toAbsolutePath().getParent();
    boolean beside = Objects.equals(there, design.toAbsolutePath().getParent());
    return names.isEmpty() || beside
        ? ""
        : "; put its drawings beside it: " + String.join(", ", names);
  }

  private Pack start() {
    Common.Loaded loaded = common.load(design, false);
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

  private static boolean same(Path a, Path b) {
    try {
      return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
    } catch (IOException e) {
      throw new DoorException(Exit.FILES, a + " cannot be read: " + e.getMessage());
    }
  }

  private static void tell(Rescued rescued, PrintWriter out) {
    MakerUnits units = rescued.pack().inputs().wants().units();
    for (Rescued.Row r : rescued.rows()) {
      out.println(r.piece() + ": " + r.verdict().words() + sizes(r, units));
    }
    out.println();
    paragraph("In sight", rescued.sight(), "nothing changes", out);
    paragraph("In the post", rescued.post(), "nothing changes", out);
    rescued.bench().forEach(b -> out.println("In the bench file: " + b + "."));
    if (!rescued.gone().isEmpty()) {
      out.println("No longer found:");
      out.print(Telling.lines(rescued.gone()));
    }
    if (!rescued.appeared().isEmpty()) {
      out.println("Newly found:");
      out.print(Telling.lines(rescued.appeared()));
    }
  }

  private static void paragraph(
      String title, List<String> sentences, String none, PrintWriter out) {
    out.println(title + ": " + (sentences.isEmpty() ? none : String.join("; ", sentences)) + ".");
  }

  private static String sizes(Rescued.Row r, MakerUnits units) {
    boolean cuts =
        r.verdict() != Rescued.Verdict.AS_DESIGNED && r.verdict() != Rescued.Verdict.STILL_GOOD;
    String scores = r.scores().stream().map(s -> bare(units, s)).collect(Collectors.joining(", "));
    return ", "
        + bare(units, r.width())
        + " x "
        + exact(units, r.height())
        + (cuts && !scores.isEmpty()
            ? " (flat "
                + bare(units, r.flatWidth())
                + " x "
                + exact(units, r.flatHeight())
                + ", scores at "
                + scores
                + ")"
            : "")
        + (r.words().isEmpty() ? "" : " - " + r.words());
  }

  private static String exact(MakerUnits units, double mm) {
    return units.exact(mm) ? units.text(mm) : units.fine(mm);
  }

  private static String bare(MakerUnits units, double mm) {
    String text = exact(units, mm);
    return text.substring(0, text.lastIndexOf(' '));
  }
}
