package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Values;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.pack.Pack;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Die;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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
  private static final int MOST_ROUNDS = 16;

  private static final double EPS = 1e-6;

  /** Sizes that we choose stand on half millimetres. */
  private static final double MARK_MM = 0.5;

  /** What a view measures is true to this share of such a mark. */
  private static final double NEARLY = 1e-4;

  private final Pack start;
  private final Measures measures;
  private final Bench bench;
  private final Set<String> known;
  private final Map<String, String> recut = new TreeMap<>();
  private final Set<String> trimBack = new TreeSet<>();
  private final List<Change> mended = new ArrayList<>();
  private final Leeway leeway;

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
    this.leeway = new Leeway(start, measures, recut);
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
    for (int round = 0; round < MOST_ROUNDS && better(resized, made); round++) {
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

  /** Whether something was changed that may help; false where all is well or nothing does. */
  private boolean better(Resized resized, Optional<Pack> made) {
    if (made.isEmpty()) {
      return untold();
    }
    Optional<Problem> fault = fresh(made.get()).stream().findFirst();
    return fault.isPresent() ? mend(made.get(), fault.get()) : outgrown(resized, made.get());
  }

  /** Whether a piece was found whose size no design can tell; it is then cut anew. */
  private boolean untold() {
    for (String name : measures.pieces().keySet().stream().sorted().toList()) {
      Map<String, String> without = new TreeMap<>(recut);
      boolean fresh = without.put(name, "") == null;
      if (fresh && pack(Resized.of(start, measures, without, trimBack)).isPresent()) {
        mended.clear();
        recut.put(name, "no card can be made of such sizes");
        return true;
      }
    }
    return false;
  }

  private Resized resized() {
    return Resized.of(start, measures, recut, trimBack);
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
    List<Mend> others = new ArrayList<>(Mends.of(pack, fault));
    others.sort(Comparator.comparingInt(leeway::effort));
    tried.addAll(others);
    for (Mend mend : tried) {
      if (leeway.free(mend)) {
        mended.addAll(mend.changes());
        return true;
      }
    }
    List<String> names = measures.cut().stream().sorted().toList();
    for (String name : names) {
      if (concerns(fault, name) && giveUp(name, fault.message())) {
        return true;
      }
    }
    for (String name : names) {
      if (helps(name, fault)) {
        return giveUp(name, fault.message());
      }
    }
    return false;
  }

  private boolean concerns(Problem fault, String name) {
    return concerns(fault, name, leeway.path(name))
        || doors(name).stream().anyMatch(v -> concerns(fault, v.text("name"), v.path()));
  }

  /** Those that are cut into a piece. */
  private List<Values> doors(String piece) {
    return Sizes.cutIn(start).stream().filter(v -> Sizes.host(start, v).equals(piece)).toList();
  }

  private static boolean concerns(Problem fault, String name, String path) {
    return fault.part().equals(name)
        || fault.origin().equals(path)
        || fault.origin().startsWith(path + ".")
        || fault.wants().stream().anyMatch(w -> w.parameter().startsWith(path + "."));
  }

  /** Trims a cut part to what was designed where it is larger, or else cuts the piece anew. */
  private boolean giveUp(String name, String why) {
    boolean given =
        larger(name) && !recut.containsKey(name) && trimBack.add(name)
            || recut.putIfAbsent(name, why) == null;
    if (given) {
      mended.clear();
    }
    return given;
  }

  private boolean larger(String name) {
    return Sizes.of(start, start.card().piece(name)).all().stream()
        .anyMatch(o -> measures.size(name, o.word(), o.mm()) > o.mm() + EPS);
  }

  /** Whether a fault that nobody is named in goes with a piece that came out otherwise. */
  private boolean helps(String name, Problem fault) {
    boolean measured =
        measures.pieces().containsKey(name)
            || doors(name).stream().anyMatch(v -> measures.pieces().containsKey(v.text("name")));
    if (recut.containsKey(name) || !measured) {
      return false;
    }
    Map<String, String> without = new TreeMap<>(recut);
    without.put(name, fault.message());
    return pack(Resized.of(start, measures, without, trimBack))
        .filter(p -> fresh(p).stream().noneMatch(x -> key(x).equals(key(fault))))
        .isPresent();
  }

  /** Whether a cut stay was found that the card has outgrown; it is then cut anew. */
  private boolean outgrown(Resized resized, Pack pack) {
    boolean found = false;
    for (Piece p : start.card().pieces()) {
      boolean stays = measures.cut().contains(p.id()) && !resized.recut().containsKey(p.id());
      if (stays
          && Sizes.of(start, p).hung()
          && !Likeness.near(AsCut.of(start, pack, p.id()), pack.card().piece(p.id()))) {
        recut.put(p.id(), "its folds or notches no longer fit the depth of the card");
        found = true;
      }
    }
    return found;
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
