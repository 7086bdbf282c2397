package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Piece;
import hingeleaf.card.Stay;
import hingeleaf.measure.MakerUnits;
import hingeleaf.stock.Bench;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Gathers the tasks of one card. Like work on several pieces is one task, so that a hand cuts,
 * scores and folds all frames in one go; gluing stays one task for each place.
 */
final class WorkOrder {
  private final Card card;
  private final CutList cuts;
  private final ScoreChart scores;
  private final Bench bench;
  private final MakerUnits units;
  private final Words words;
  private final GlueWords glueWords;
  private final List<Task> tasks = new ArrayList<>();

  /** For each piece, the task that did the last thing to it while it was alone. */
  private final Map<String, String> prepared = new HashMap<>();

  /** Second tabs closed so far. */
  private int closing;

  /** What must be done to pieces before they are cut by their templates. */
  private final Set<String> beforeShapes = new LinkedHashSet<>();

  /** For each flat part, the task that fixes it. */
  private final Map<String, String> fixes = new HashMap<>();

  /** For each folded piece that is glued on, the task that closes its last tab. */
  private final Map<String, String> closes = new HashMap<>();

  /** Ids of the joins that were dry long before the card is whole. */
  private final Set<String> dry;

  WorkOrder(
      Card card,
      CutList cuts,
      ScoreChart scores,
      Bench bench,
      Foams foams,
      MakerUnits units,
      Set<String> dry) {
    this.card = card;
    this.dry = Set.copyOf(dry);
    this.cuts = cuts;
    this.scores = scores;
    this.bench = bench;
    this.units = units;
    this.words = new Words(bench, units);
    this.glueWords = new GlueWords(card, bench, foams, units);
    card.pieces().forEach(this::foresee);
  }

  /** Names of the tasks by which pieces get into the card; tasks that come earlier need them. */
  private void foresee(Piece p) {
    for (boolean raised : new boolean[] {false, true}) {
      for (List<Join.Glue> same : fixed(p, raised)) {
        same.forEach(g -> fixes.put(g.a().piece(), "fix:" + same.get(0).a().piece()));
      }
    }
    int glues = from(p).size();
    if (folded(p) && glues > 0) {
      closes.put(p.id(), tab(p, glues - 1));
    }
  }

  private static String tab(Piece p, int n) {
    return n == 0 ? "tab:" + p.id() : "close:" + p.id() + ":" + n;
  }

  /** Flat parts that are glued to a piece, those that go on in one step together. */
  private List<List<Join.Glue>> fixed(Piece base, boolean raised) {
    List<Join.Glue> loose =
        onto(base).stream()
            .filter(g -> !folded(card.piece(g.a().piece())) && raised == g.raisedBy() > 0)
            .toList();
    return grouped(loose, this::kind);
  }

  List<Task> tasks() {
    cut();
    open();
    score();
    write();
    for (Piece base : card.pieces()) {
      fix(base, false);
    }
    shapes();
    fold();
    for (Piece p : card.pieces()) {
      glueTabs(p);
      fix(p, true);
    }
    moving();
    stays();
    last();
    return List.copyOf(tasks);
  }

  private static boolean folded(Piece p) {
    return !p.scores().isEmpty();
  }

  /** Whether a piece stands on sides; a door's leaf is folded too, and is none. */
  private static boolean frame(Piece p) {
    return p.labels().stream().anyMatch(l -> l.name().startsWith("side-"));
  }

  private static boolean byTemplate(CutList.Line l) {
    return !l.rectangular();
  }

  private void cut() {
    List<CutList.Line> whole = lines(l -> !byTemplate(l) && !l.embossed());
    List<CutList.Line> frames = whole.stream().filter(l -> frame(l.piece())).toList();
    List<CutList.Line> flats = whole.stream().filter(l -> !frame(l.piece())).toList();
    if (!frames.isEmpty()) {
      prepare("cut:frames", words.cut(frames, "the " + plural(frames, "frame")), frames);
    }
    if (!flats.isEmpty()) {
      prepare("cut:flats", words.cut(flats, whats(flats)), flats);
    }
    emboss();
    // Their task comes later in the list; what needs them waits for it.
    for (CutList.Line l : lines(WorkOrder::byTemplate)) {
      for (String id : l.pieces()) {
        String before = prepared.put(id, "cut:shapes");
        if (before != null) {
          beforeShapes.add(before);
        }
      }
    }
  }

  /** Cut larger, pressed, and only then trimmed: embossing draws card in. */
  private void emboss() {
    List<CutList.Line> pressed = lines(CutList.Line::embossed);
    if (pressed.isEmpty()) {
      return;
    }
    EmbossWords say = new EmbossWords(bench, units);
    prepare("blanks", say.blanks(pressed), pressed);
    for (List<CutList.Line> alike : grouped(pressed, EmbossWords::setting)) {
      prepare("emboss:" + alike.get(0).pieces().get(0), say.emboss(alike), alike);
    }
    List<CutList.Line> straight = pressed.stream().filter(l -> !byTemplate(l)).toList();
    if (!straight.isEmpty()) {
      prepare("trim", say.trim(straight), straight);
    }
  }

  private static String plural(List<CutList.Line> lines, String one) {
    return lines.stream().mapToInt(CutList.Line::quantity).sum() == 1 ? one : one + "s";
  }

  /** What flat rectangles are called together. */
  private String whats(List<CutList.Line> flats) {
    List<String> ids = flats.stream().flatMap(l -> l.pieces().stream()).toList();
    if (ids.size() <= 3) {
      return Says.quoted(ids, "pieces");
    }
    boolean back = ids.contains("back");
    return back ? "the back and the flat parts" : "the flat parts";
  }

  private void shapes() {
    List<CutList.Line> shapes = lines(WorkOrder::byTemplate);
    if (!shapes.isEmpty()) {
      tasks.add(new Task("cut:shapes", words.shapes(shapes), beforeShapes));
    }
  }

  private List<CutList.Line> lines(java.util.function.Predicate<CutList.Line> which) {
    return cuts.lines().stream().filter(which).toList();
  }

  private void prepare(String id, Step step, List<CutList.Line> lines) {
    Set<String> needs = new LinkedHashSet<>();
    for (CutList.Line l : lines) {
      for (String piece : l.pieces()) {
        String before = prepared.put(piece, id);
        if (before != null) {
          needs.add(before);
        }
      }
    }
    tasks.add(new Task(id, step, needs));
  }

  /** Openings of pieces that a template gives are cut with their outline. */
  private void open() {
    List<CutList.Line> lines =
        lines(l -> !byTemplate(l) && (!l.openings().isEmpty() || !l.piece().slits().isEmpty()));
    if (!lines.isEmpty()) {
      prepare("open", words.open(lines), lines);
    }
  }

  private void score() {
    for (List<ScoreChart.Row> alike : grouped(scores.rows(), WorkOrder::settings)) {
      String id = "score:" + alike.get(0).line().pieces().get(0);
      prepare(id, words.score(alike), alike.stream().map(ScoreChart.Row::line).toList());
    }
  }

  private static Object settings(ScoreChart.Row row) {
    List<Object> all = new ArrayList<>();
    all.add(Math.round(row.line().piece().width() * 1e4));
    for (ScoreChart.Setting s : row.settings()) {
      all.add(List.of(s.up(), Math.round(s.at() * 1e4), s.quarterTurn(), s.aslant()));
    }
    return all;
  }

  private void write() {
    List<Piece> inked = card.pieces().stream().filter(p -> !p.inks().isEmpty()).toList();
    if (!inked.isEmpty()) {
      Set<String> needs = new LinkedHashSet<>();
      for (Piece p : inked) {
        needs.add(ready(p.id()));
        prepared.put(p.id(), "write");
      }
      tasks.add(new Task("write", words.write(inked), needs));
    }
  }

  private String ready(String piece) {
    String task = prepared.get(piece);
    if (task == null) {
      throw new IllegalStateException(piece + " is cut by no step");
    }
    return task;
  }

  /**
   * Flat parts on one face of a piece: those without foam while the piece is still flat, the others
   * once its layer stands.
   */
  private void fix(Piece base, boolean raised) {
    for (List<Join.Glue> same : fixed(base, raised)) {
      String id = "fix:" + same.get(0).a().piece();
      Set<String> needs = new LinkedHashSet<>(carried(base, raised));
      for (Join.Glue g : same) {
        needs.add(ready(g.a().piece()));
      }
      tasks.add(new Task(id, glueWords.fix(same), needs));
    }
  }

  private Object kind(Join.Glue g) {
    return List.of(g.b().panel(), g.b().face(), card.piece(g.a().piece()).stock().clear());
  }

  /** What must be done to a piece before something is fixed to it. */
  private Set<String> carried(Piece base, boolean raised) {
    Set<String> needs = new LinkedHashSet<>();
    needs.add(ready(base.id()));
    if (fixes.containsKey(base.id())) {
      needs.add(fix(base.id()));
    }
    if (raised && closes.containsKey(base.id())) {
      needs.add(close(base.id()));
    }
    return needs;
  }

  private String fix(String piece) {
    return java.util.Objects.requireNonNull(fixes.get(piece));
  }

  private String close(String piece) {
    return java.util.Objects.requireNonNull(closes.get(piece));
  }

  private void fold() {
    List<Piece> folding = card.pieces().stream().filter(WorkOrder::folded).toList();
    for (List<Piece> alike : grouped(folding, WorkOrder::folds)) {
      String id = "fold:" + alike.get(0).id();
      Set<String> needs = new LinkedHashSet<>();
      for (Piece p : alike) {
        needs.add(ready(p.id()));
        for (Join.Glue g : onto(p)) {
          if (!folded(card.piece(g.a().piece())) && g.raisedBy() == 0) {
            needs.add(fix(g.a().piece()));
          }
        }
      }
      tasks.add(new Task(id, words.fold(alike), needs));
      alike.forEach(p -> prepared.put(p.id(), id));
    }
  }

  private static Object folds(Piece p) {
    boolean away = p.scores().stream().allMatch(s -> s.mountain());
    return away
        ? p.scores().size()
        : p.scores().stream().map(s -> s.name() + s.mountain()).toList();
  }

  /** The first tab is glued in register, the others are closed on flat. */
  private void glueTabs(Piece p) {
    if (!folded(p)) {
      return;
    }
    List<Join.Glue> tabs = from(p);
    for (int n = 0; n < tabs.size(); n++) {
      Join.Glue g = tabs.get(n);
      Set<String> needs = new LinkedHashSet<>(tabNeeds(p, card.piece(g.b().piece())));
      if (n > 0) {
        needs.add(tab(p, n - 1));
      }
      tasks.add(new Task(tab(p, n), glued(tabs, n), needs));
    }
  }

  private Step glued(List<Join.Glue> tabs, int n) {
    Join.Glue g = tabs.get(n);
    if (n > 0) {
      return glueWords.closeFlat(g, raisedOn(g.b().piece()), closing++ > 0);
    }
    return tabs.size() == 1
        ? glueWords.hang(g, card.stay(g.a().piece()).isPresent())
        : glueWords.firstTab(g);
  }

  /** All that must be on a layer before the next closes over it: no hand reaches behind it then. */
  private Set<String> tabNeeds(Piece p, Piece behind) {
    Set<String> needs = new LinkedHashSet<>();
    needs.add(ready(p.id()));
    needs.add(ready(behind.id()));
    if (closes.containsKey(behind.id())) {
      needs.add(close(behind.id()));
    }
    for (Join.Glue g : fixedOn(behind)) {
      needs.add(fix(g.a().piece()));
    }
    if (from(p).size() > 1) {
      hung(behind).forEach(part -> needs.add(close(part)));
    } else if (from(p).get(0).b().face() == Face.BACK) {
      frames().forEach(frame -> needs.add(close(frame)));
    }
    return needs;
  }

  /** What stands on two tabs: what hangs behind the card is in the way until it is closed. */
  private List<String> frames() {
    return closes.keySet().stream().filter(id -> from(card.piece(id)).size() > 1).sorted().toList();
  }

  /** Leaves and braces on the front of a layer: nobody reaches them once the next one is closed. */
  private List<String> hung(Piece behind) {
    return onto(behind).stream()
        .filter(g -> g.b().face() == Face.FRONT && closes.containsKey(g.a().piece()))
        .map(g -> g.a().piece())
        .filter(part -> from(card.piece(part)).size() == 1)
        .toList();
  }

  private List<Join.Glue> raisedOn(String piece) {
    return fixedOn(card.piece(piece)).stream().filter(g -> g.raisedBy() > 0).toList();
  }

  /** Everything flat that is fixed to a piece, and to what is fixed to it. */
  private List<Join.Glue> fixedOn(Piece base) {
    List<Join.Glue> found = new ArrayList<>();
    for (Join.Glue g : onto(base)) {
      Piece part = card.piece(g.a().piece());
      if (!folded(part)) {
        found.add(g);
        found.addAll(fixedOn(part));
      }
    }
    return found;
  }

  private void moving() {
    for (Join j : card.joins()) {
      if (j instanceof Join.Slide s) {
        tasks.add(
            new Task(j.id(), glueWords.slide(s), moves(s.strip().piece(), s.guide().piece())));
      } else if (j instanceof Join.Pin p) {
        tasks.add(new Task(j.id(), glueWords.pin(p), moves(p.wheel().piece(), p.seat().piece())));
      }
    }
  }

  private void stays() {
    for (Stay stay : card.stays()) {
      Set<String> needs = new LinkedHashSet<>();
      needs.add(ready(stay.piece()));
      needs.addAll(closes.values());
      tasks.add(new Task("stay:" + stay.piece(), new StayWords(card).set(stay), needs));
    }
  }

  private Set<String> moves(String part, String base) {
    Set<String> needs = new LinkedHashSet<>(Set.of(ready(part), ready(base)));
    if (closes.containsKey(base)) {
      needs.add(close(base));
    }
    return needs;
  }

  private void last() {
    List<Double> sides = glueWords.depths();
    double papers =
        card.pieces().stream()
            .filter(p -> from(p).size() > 1 || p.id().equals(card.roots().get(0).piece()))
            .mapToDouble(p -> p.thickness("panel"))
            .sum();
    double deep = sides.stream().mapToDouble(d -> d).sum() + papers;
    Set<String> all = new LinkedHashSet<>();
    tasks.forEach(t -> all.add(t.id()));
    tasks.add(new Task("check", glueWords.check(fresh(), deep, sides), all));
  }

  private List<Join.Glue> fresh() {
    return glues().stream().filter(g -> !dry.contains(g.id())).toList();
  }

  private List<Join.Glue> onto(Piece base) {
    return glues().stream().filter(g -> g.b().piece().equals(base.id())).toList();
  }

  private List<Join.Glue> from(Piece p) {
    return glues().stream().filter(g -> g.a().piece().equals(p.id())).toList();
  }

  private List<Join.Glue> glues() {
    List<Join.Glue> glues = new ArrayList<>();
    for (Join j : card.joins()) {
      j.<Boolean>match(glues::add, s -> false, p -> false, p -> false);
    }
    return glues;
  }

  private static <T> List<List<T>> grouped(List<T> all, Function<T, Object> by) {
    Map<Object, List<T>> groups = new LinkedHashMap<>();
    all.forEach(t -> groups.computeIfAbsent(by.apply(t), k -> new ArrayList<>()).add(t));
    return List.copyOf(groups.values());
  }
}
