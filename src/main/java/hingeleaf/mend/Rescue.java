package hingeleaf.mend;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Die;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Rescues a card some of whose pieces came out otherwise: these stay as they are, the others and
 * the places of glue are worked out anew, and what comes of it is folded and looked at like any
 * card.
 *
 * <p>First the sizes are fitted; then what the new card shows to be wrong and the old did not is
 * mended on pieces that are not cut; where nothing mends it, the cut piece concerned is cut anew.
 */
public final class Rescue {
  private static final int MOST_ROUNDS = 10;

  private final Pack start;
  private final Measures measures;
  private final Bench bench;
  private final Set<String> known;
  private final Set<String> recut = new TreeSet<>();
  private final List<Change> mended = new ArrayList<>();

  /** What came of it. */
  public sealed interface Outcome {
    /** A new card, good or as good as it gets. */
    record Done(Rescued rescued) implements Outcome {}

    /** Nothing can be done, and why, as a sentence. */
    record Refused(String sentence) implements Outcome {}
  }

  private Rescue(Pack start, Measures measures) {
    this.start = start;
    this.measures = measures;
    this.bench = bench();
    this.known = graves(start).stream().map(Rescue::key).collect(Collectors.toSet());
  }

  /**
   * @param start pack of the design as it was, not blocked
   */
  public static Outcome of(Pack start, Measures measures) {
    return new Rescue(start, measures).run();
  }

  private Outcome run() {
    Resized resized = resized();
    Optional<Pack> made = pack(resized);
    for (int round = 0; round < MOST_ROUNDS && made.isPresent(); round++) {
      Optional<Problem> fault = fresh(made.get()).stream().findFirst();
      if (fault.isEmpty() || !mend(made.get(), fault.get())) {
        break;
      }
      resized = resized();
      made = pack(resized);
    }
    if (made.isEmpty()) {
      return new Outcome.Refused("the new sizes cannot be written into this design");
    }
    if (made.get().blocked()) {
      return new Outcome.Refused(
          "no card comes of these pieces: " + fresh(made.get()).get(0).message());
    }
    RescueReport report = new RescueReport(start, made.get(), measures, resized);
    return new Outcome.Done(report.rescued());
  }

  private Resized resized() {
    Set<String> cut = new HashSet<>(measures.cut());
    cut.removeAll(recut);
    return Resized.of(start, measures, cut);
  }

  private Optional<Pack> pack(Resized resized) {
    List<Change> all = new ArrayList<>(resized.changes());
    all.addAll(mended);
    Trial trial = Trial.of(start.inputs().design().tree(), all);
    if (!(trial instanceof Trial.Read read)) {
      return Optional.empty();
    }
    return Optional.of(with(read.design()));
  }

  private Pack with(DesignDocument design) {
    Pack.Inputs in = start.inputs();
    return Pack.of(new Pack.Inputs(design, in.drawings(), bench, in.lettering(), in.wants()));
  }

  /** Warnings and worse that the card as designed had not. */
  private List<Problem> fresh(Pack pack) {
    return graves(pack).stream().filter(p -> !known.contains(key(p))).toList();
  }

  private static List<Problem> graves(Pack pack) {
    return pack.problems().stream().filter(p -> p.level() != Level.NOTES).toList();
  }

  static String key(Problem p) {
    return p.kind() + " " + p.part() + " " + p.origin();
  }

  /** Whether something was changed: what is not cut, or a cut piece given up. */
  private boolean mend(Pack pack, Problem fault) {
    for (Mend mend : Mends.of(pack, fault)) {
      if (mend.changes().stream().allMatch(this::free)) {
        mended.addAll(mend.changes());
        return true;
      }
    }
    boolean layer = Stack.layer(start, fault.part());
    if (layer && measures.cut().contains(fault.part()) && recut.add(fault.part())) {
      mended.clear();
      return true;
    }
    return false;
  }

  /** Whether a change leaves all cut pieces as they are: gluing and foam are always free. */
  private boolean free(Change change) {
    if (!(change instanceof Change.Put put)) {
      return false;
    }
    if (put.path().endsWith(".set-in") || put.path().endsWith(".raised-by")) {
      return true;
    }
    for (String name : measures.cut()) {
      if (recut.contains(name)) {
        continue;
      }
      String path = Stack.layer(start, name) ? Stack.path(start, name) : origin(name);
      boolean placed = put.path().startsWith(path + ".at");
      if (put.path().startsWith(path + ".") && !placed && !smaller(path, put)) {
        return false;
      }
      String base = Stack.basePath(start);
      boolean common = put.path().startsWith(base) && !put.path().startsWith(base + ".frames[");
      if (Stack.layer(start, name) && common) {
        return false;
      }
    }
    return true;
  }

  /** A cut mat can still be trimmed. */
  private static boolean smaller(String path, Change.Put put) {
    return path.startsWith("mats[")
        && (put.path().endsWith(".width") || put.path().endsWith(".height"));
  }

  private String origin(String piece) {
    return start.card().piece(piece).origin();
  }

  private Bench bench() {
    Bench b = start.inputs().bench();
    Map<String, Double> thick = measures.papers();
    List<Stock> papers =
        b.papers().stream()
            .map(s -> thick.containsKey(s.name()) ? s.thick(thick.get(s.name())) : s)
            .toList();
    List<Die> dies = new ArrayList<>();
    for (Die d : b.dies()) {
      Measures.Die m = measures.dies().get(d.name());
      dies.add(m == null ? d : d.cutting(m.width(), m.height()));
    }
    return b.with(papers, dies);
  }
}
