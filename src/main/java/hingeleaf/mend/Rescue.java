package hingeleaf.mend;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.pack.Pack;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Die;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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

  /** Sizes that we choose stand on half millimetres. */
  private static final double MARK_MM = 0.5;

  /** What a view measures is true to this share of such a mark. */
  private static final double NEARLY = 1e-4;

  private final Pack start;
  private final Measures measures;
  private final Bench bench;
  private final Set<String> known;
  private final Map<String, String> recut = new TreeMap<>();
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
    return Resized.of(start, measures, recut);
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
    List<Mend> tried = new ArrayList<>(narrowerTabs(pack, fault));
    tried.addAll(Mends.of(pack, fault));
    for (Mend mend : tried) {
      if (mend.changes().stream().allMatch(this::free)) {
        mended.addAll(mend.changes());
        return true;
      }
    }
    for (String name : measures.cut()) {
      boolean cause =
          Stack.layer(start, name)
              && (fault.part().equals(name)
                  || fault.origin().startsWith(Stack.path(start, name) + "."));
      if (cause && recut.putIfAbsent(name, fault.message()) == null) {
        mended.clear();
        return true;
      }
    }
    return false;
  }

  /** Where tabs are too wide, those of one frame can be narrower; a cut one is trimmed there. */
  private List<Mend> narrowerTabs(Pack pack, Problem fault) {
    String tab = Stack.basePath(start) + ".tab";
    if (!Stack.frame(start, fault.part())) {
      return List.of();
    }
    List<Mend> cures = new ArrayList<>();
    for (Want want : fault.wants()) {
      double to = Math.floor(want.most() / MARK_MM + NEARLY) * MARK_MM;
      if (want.parameter().equals(tab) && Double.isFinite(to) && to >= Resized.LEAST_TAB_MM) {
        String mm = Said.yaml(start, to);
        String path = Stack.path(start, fault.part()) + ".tab-widths";
        Change change = new Change.Put(path, "[" + mm + ", " + mm + "]");
        boolean good =
            Trial.of(pack.inputs().design().tree(), List.of(change)) instanceof Trial.Read r
                && with(r.design()).problems().stream().noneMatch(p -> key(p).equals(key(fault)));
        if (good) {
          cures.add(new Mend("make its glue tabs " + Said.mm(start, to), List.of(change)));
        }
      }
    }
    return cures;
  }

  /** Whether a change leaves all cut pieces as they are: gluing and foam are always free. */
  private boolean free(Change change) {
    if (!(change instanceof Change.Put put)) {
      return false;
    }
    // a tab is only ever made narrower here, and that can be trimmed
    if (put.path().endsWith(".tab-widths")
        || put.path().endsWith(".set-in")
        || put.path().endsWith(".raised-by")) {
      return true;
    }
    for (String name : measures.cut()) {
      if (recut.containsKey(name)) {
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
