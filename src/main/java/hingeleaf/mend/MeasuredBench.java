package hingeleaf.mend;

import hingeleaf.design.BenchDocument;
import hingeleaf.design.Change;
import hingeleaf.design.Edit;
import hingeleaf.design.TextEdit;
import hingeleaf.design.Tree;
import hingeleaf.design.Values;
import hingeleaf.design.YamlText;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Die;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The text of a bench file in which papers and dies are as they were measured: the given one with
 * every other character as it was, or a small one that says what differs from the built-in bench.
 */
public final class MeasuredBench {
  private final Bench bench;
  private final Measures measures;
  private final BenchWords words;

  /** What came of it. */
  public sealed interface Outcome {
    /** The whole text of the file. */
    record Written(String text) implements Outcome {}

    /** It cannot be written, and why, as a sentence. */
    record Refused(String reason) implements Outcome {}
  }

  private MeasuredBench(Bench bench, Measures measures, Unit unit) {
    this.bench = bench;
    this.measures = measures;
    this.words = new BenchWords(unit);
  }

  /** Whether anything of the bench was measured. */
  public static boolean needed(Measures measures) {
    return !measures.papers().isEmpty() || !measures.dies().isEmpty();
  }

  /**
   * @param given the bench file of the design; empty for the built-in bench
   * @param bench with what was measured, as the new design is worked out with
   * @param unit of the design, for a file that is made anew
   */
  public static Outcome of(
      Optional<BenchDocument> given, Bench bench, Measures measures, Unit unit) {
    return given
        .map(g -> new MeasuredBench(bench, measures, g.unit()).spliced(g))
        .orElseGet(() -> new Outcome.Written(new MeasuredBench(bench, measures, unit).fresh(unit)));
  }

  private Outcome spliced(BenchDocument given) {
    List<Change> changes = new ArrayList<>(papers(given));
    changes.addAll(dies(given));
    Tree now = given.tree();
    for (Change c : changes) {
      Edit edit = TextEdit.apply(now, c);
      if (edit instanceof Edit.Refused r) {
        return new Outcome.Refused(r.reason());
      }
      now = ((Edit.Done) edit).tree();
    }
    return new Outcome.Written(now.source().text());
  }

  /** A paper of the built-in bench that the file does not tell is added to it. */
  private List<Change> papers(BenchDocument given) {
    List<Values> there = given.values().forms("stocks");
    List<Change> all = new ArrayList<>();
    int end = there.size();
    for (String name : measures.papers().keySet().stream().sorted().toList()) {
      Stock stock = bench.paper(name).orElseThrow();
      Optional<Values> own = named(there, name);
      all.add(
          own.isPresent()
              ? new Change.Put(own.get().path("thickness"), words.length(stock.thickness()))
              : new Change.Insert("stocks", end++, words.paper(stock)));
    }
    return all;
  }

  /** A file without dies of its own has the built-in ones, and then gets them all. */
  private List<Change> dies(BenchDocument given) {
    List<Values> there = given.values().forms("dies");
    if (measures.dies().isEmpty()) {
      return List.of();
    }
    if (there.isEmpty()) {
      List<String> all = bench.dies().stream().map(words::die).toList();
      return List.of(new Change.Put("dies", "[" + String.join(", ", all) + "]"));
    }
    List<Change> all = new ArrayList<>();
    for (String name : measures.dies().keySet().stream().sorted().toList()) {
      Die die = bench.die(name).orElseThrow();
      named(there, name)
          .ifPresent(
              v ->
                  all.add(
                      new Change.Put(v.path("cut"), words.pair(die.cutWidth(), die.cutHeight()))));
    }
    return all;
  }

  private static Optional<Values> named(List<Values> all, String name) {
    return all.stream().filter(v -> v.text("name").equals(name)).findFirst();
  }

  private String fresh(Unit unit) {
    List<String> lines = new ArrayList<>();
    lines.add("# The built-in bench with what was measured; what is not told here is as there.");
    lines.add("bench: 1");
    lines.add("title: The built-in bench as measured");
    lines.add("unit: " + unit.name().toLowerCase(Locale.ROOT));
    lines.add("country: " + (bench.country().isEmpty() ? "other" : bench.country()));
    lines.add("money: " + YamlText.of(bench.money()));
    if (!measures.dies().isEmpty()) {
      lines.add("dies:");
      bench.dies().forEach(d -> lines.add("  - " + words.die(d)));
    }
    if (!measures.papers().isEmpty()) {
      lines.add("stocks:");
      measures.papers().keySet().stream()
          .sorted()
          .forEach(name -> lines.add("  - " + words.paper(bench.paper(name).orElseThrow())));
    }
    return String.join("\n", lines) + "\n";
  }
}
