package hingeleaf.cli;

import hingeleaf.design.BenchDocument;
import hingeleaf.design.DesignDocument;
import hingeleaf.finding.Problem;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.BenchReader;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Wants;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Letters;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that mean the same in every verb, and the way from a file's name to a pack. */
final class Common {
  @Option(
      names = "--bench",
      paramLabel = "FILE",
      description = "what you own and pay; the built-in bench where left out")
  private @Nullable Path bench;

  @Option(
      names = "--unit",
      paramLabel = "UNIT",
      description = "write the plan in mm, cm or in; the design's own where left out")
  private @Nullable String unit;

  @Option(
      names = "--page",
      paramLabel = "PAGE",
      description = "a4 or letter; letter where the plan is in inches")
  private @Nullable String page;

  @Option(names = "--copies", paramLabel = "N", description = "how many cards; 1 where left out")
  private int copies = 1;

  private Optional<Ahead> ahead = Optional.empty();

  /** Hands over what was begun while the command line was read. */
  void begun(Optional<Ahead> work) {
    ahead = work;
  }

  /** What came of reading a design: a pack, or problems. */
  record Loaded(@Nullable Pack pack, List<Problem> problems, Fonts fonts) {}

  Loaded load(Path file, boolean mirrored) {
    return load(file, mirrored, wants -> wants);
  }

  Loaded load(Path file, UnaryOperator<Wants> more) {
    return load(file, false, more);
  }

  /** The pack of a file with what a verb wants beside the common options. */
  Loaded load(Path file, boolean mirrored, UnaryOperator<Wants> more) {
    Ahead begun = ahead.or(() -> Ahead.of(List.of("check", file.toString()))).orElseThrow();
    DesignDocument.Outcome outcome = begun.design(file);
    Fonts fonts = begun.face();
    if (outcome instanceof DesignDocument.Outcome.Wrong w) {
      return new Loaded(null, w.problems(), fonts);
    }
    DesignDocument design = ((DesignDocument.Outcome.Right) outcome).document();
    Wants plain = wants(design, mirrored);
    Wants wants = more.apply(plain);
    Optional<Pack> usual =
        untold() && !mirrored && wants == plain ? begun.usual(file) : Optional.empty();
    Pack pack = usual.orElseGet(() -> Pack.of(inputs(file, design, fonts, wants)));
    return new Loaded(pack, List.of(), fonts);
  }

  /** What a pack is made from where no option is told. */
  static Pack.Inputs usual(Path file, DesignDocument design, Fonts fonts) {
    Common none = new Common();
    return none.inputs(file, design, fonts, none.wants(design, false));
  }

  private Pack.Inputs inputs(Path file, DesignDocument design, Fonts fonts, Wants wants) {
    return new Pack.Inputs(
        design, drawings(file, design), bench(unit(design.unit())), new Letters(fonts), wants);
  }

  private Wants wants(DesignDocument design, boolean mirrored) {
    Unit written = unit(design.unit());
    return new Wants(MakerUnits.of(written), letter(written), copies(), mirrored);
  }

  private boolean untold() {
    return bench == null && unit == null && page == null && copies == 1;
  }

  private Unit unit(Unit otherwise) {
    if (unit == null) {
      return otherwise;
    }
    return Unit.named(unit)
        .orElseThrow(() -> new DoorException(Exit.USAGE, "--unit takes mm, cm or in, not " + unit));
  }

  private boolean letter(Unit written) {
    if (page == null) {
      return written == Unit.IN;
    }
    return switch (page.toLowerCase(java.util.Locale.ROOT)) {
      case "a4" -> false;
      case "letter" -> true;
      default -> throw new DoorException(Exit.USAGE, "--page takes a4 or letter, not " + page);
    };
  }

  private int copies() {
    if (copies < 1 || copies > 10_000) {
      throw new DoorException(Exit.USAGE, "--copies takes 1 to 10000, not " + copies);
    }
    return copies;
  }

  Bench bench(Unit written) {
    if (bench == null) {
      return written == Unit.IN ? BuiltInBench.inches() : BuiltInBench.metric();
    }
    return BenchReader.bench(document(bench));
  }

  private static BenchDocument document(Path bench) {
    BenchDocument.Outcome outcome = BenchDocument.read(bench.toString(), InputFile.read(bench));
    if (outcome instanceof BenchDocument.Outcome.Wrong w) {
      throw new DoorException(Exit.CONTENT, Telling.lines(w.problems()).strip());
    }
    return ((BenchDocument.Outcome.Right) outcome).document();
  }

  /** The bench file that was named; empty for the built-in bench. */
  Optional<Path> benchFile() {
    return Optional.ofNullable(bench);
  }

  /** The same, read. */
  Optional<BenchDocument> benchDocument() {
    return benchFile().map(Common::document);
  }

  /** The bytes of every drawing that the design names; those that are not there are told later. */
  private static Map<String, byte[]> drawings(Path file, DesignDocument design) {
    Map<String, byte[]> drawings = new LinkedHashMap<>();
    for (String name : design.drawings()) {
      if (Files.exists(file.resolveSibling(name))) {
        drawings.put(name, InputFile.beside(file, name));
      }
    }
    return drawings;
  }

  static void talk(PrintWriter err, String words) {
    err.println(words);
    err.flush();
  }
}
