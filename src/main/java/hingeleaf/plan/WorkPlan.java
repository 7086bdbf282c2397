package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.card.Piece;
import hingeleaf.measure.MakerUnits;
import hingeleaf.stock.Bench;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The order of work of a card: a graph of tasks read off the pieces and joins, then numbered.
 *
 * <p>What must come first: openings and windows before folding, writing before assembly, mats
 * before layers, everything on a layer's front before the next layer closes over it (no glue can be
 * reached behind a closed layer), and each stage's first tab standing, its second closed flat,
 * where it lands where it falls.
 *
 * @param steps numbered from 1; each comes after all that it needs
 */
public record WorkPlan(List<Step> steps) {
  public WorkPlan {
    steps = List.copyOf(steps);
  }

  /** Minutes of hands-on work. */
  public double hands() {
    return steps.stream().mapToDouble(Step::hands).sum();
  }

  /**
   * Minutes from start to finish, waiting included, when each step is taken up as soon as what it
   * needs has dried and the hands are free.
   */
  public double elapsed() {
    double free = 0;
    double end = 0;
    double[] ready = new double[steps.size() + 1];
    for (Step s : steps) {
      double start = free;
      for (int before : s.after()) {
        start = Math.max(start, ready[before]);
      }
      free = start + s.hands();
      ready[s.number()] = free + s.dries();
      end = Math.max(end, ready[s.number()]);
    }
    return end;
  }

  /** The plan of a card. */
  public static WorkPlan of(
      Card card, CutList cuts, ScoreChart scores, Bench bench, MakerUnits units) {
    return new WorkPlan(Task.order(new Building(card, cuts, scores, bench, units).tasks()));
  }

  /** Gathers the tasks of one card. */
  private static final class Building {
    private final Card card;
    private final CutList cuts;
    private final ScoreChart scores;
    private final Words words;
    private final List<Task> tasks = new ArrayList<>();

    Building(Card card, CutList cuts, ScoreChart scores, Bench bench, MakerUnits units) {
      this.card = card;
      this.cuts = cuts;
      this.scores = scores;
      this.words = new Words(card, bench, units);
    }

    List<Task> tasks() {
      cuts.lines().forEach(this::cut);
      cuts.lines().stream().filter(l -> !l.openings().isEmpty()).forEach(this::open);
      scores.rows().forEach(this::score);
      card.pieces().stream().filter(p -> !p.inks().isEmpty()).forEach(this::write);
      for (Piece p : card.pieces()) {
        attachBeforeFolding(p);
        if (folded(p)) {
          tasks.add(new Task("fold:" + p.id(), words.fold(p), foldNeeds(p)));
          glueTabs(p);
        }
        attachAfterFolding(p);
      }
      tasks.add(new Task("finish", words.finish(), allSoFar()));
      tasks.add(new Task("check", words.check(), Set.of("finish")));
      return tasks;
    }

    private void cut(CutList.Line line) {
      tasks.add(new Task("cut:" + line.pieces().get(0), words.cut(line), Set.of()));
    }

    private void open(CutList.Line line) {
      String id = line.pieces().get(0);
      tasks.add(new Task("open:" + id, words.open(line), Set.of("cut:" + id)));
    }

    private void score(ScoreChart.Row row) {
      String id = row.line().pieces().get(0);
      String before = row.line().openings().isEmpty() ? "cut:" : "open:";
      tasks.add(new Task("score:" + id, words.score(row), Set.of(before + id)));
    }

    private void write(Piece p) {
      tasks.add(new Task("write:" + p.id(), words.write(p), Set.of(prepared(p))));
    }

    /** The last task that makes a piece, before anything is fixed to it. */
    private String prepared(Piece p) {
      CutList.Line line =
          cuts.lines().stream().filter(l -> l.pieces().contains(p.id())).findFirst().orElseThrow();
      String id = line.pieces().get(0);
      if (!p.scores().isEmpty()) {
        return "score:" + id;
      }
      return (line.openings().isEmpty() ? "cut:" : "open:") + id;
    }

    private Set<String> ready(Piece p) {
      Set<String> needs = new LinkedHashSet<>();
      needs.add(prepared(p));
      if (!p.inks().isEmpty()) {
        needs.add("write:" + p.id());
      }
      return needs;
    }

    private static boolean folded(Piece p) {
      return !p.scores().isEmpty();
    }

    /** Windows and mats are fixed while the piece is still flat. */
    private void attachBeforeFolding(Piece base) {
      for (Join.Glue g : onto(base)) {
        Piece part = card.piece(g.a().piece());
        if (!folded(part) && g.raisedBy() == 0) {
          tasks.add(new Task("fix:" + part.id(), words.fix(g, part, base), both(part, base)));
        }
      }
    }

    /** Raised parts are fixed once their layer stands. */
    private void attachAfterFolding(Piece base) {
      for (Join.Glue g : onto(base)) {
        Piece part = card.piece(g.a().piece());
        if (!folded(part) && g.raisedBy() > 0) {
          Set<String> needs = both(part, base);
          if (folded(base)) {
            needs.add("close:" + base.id());
          }
          tasks.add(new Task("fix:" + part.id(), words.fix(g, part, base), needs));
        }
      }
    }

    private Set<String> both(Piece part, Piece base) {
      Set<String> needs = ready(part);
      needs.addAll(ready(base));
      if (!onto(base).isEmpty()
          && tasks.stream().anyMatch(t -> t.id().equals("fix:" + base.id()))) {
        needs.add("fix:" + base.id());
      }
      return needs;
    }

    private Set<String> foldNeeds(Piece p) {
      Set<String> needs = ready(p);
      for (Join.Glue g : onto(p)) {
        if (!folded(card.piece(g.a().piece())) && g.raisedBy() == 0) {
          needs.add("fix:" + g.a().piece());
        }
      }
      return needs;
    }

    /** The first tab is glued in register, the others are closed on flat. */
    private void glueTabs(Piece p) {
      List<Join.Glue> glues = from(p);
      for (int i = 0; i < glues.size(); i++) {
        Join.Glue g = glues.get(i);
        Piece behind = card.piece(g.b().piece());
        if (i == 0) {
          tasks.add(new Task("tab:" + p.id(), words.firstTab(g, p, behind), tabNeeds(p, behind)));
        } else {
          tasks.add(
              new Task("close:" + p.id(), words.closeFlat(g, p, behind), Set.of("tab:" + p.id())));
        }
      }
    }

    private Set<String> tabNeeds(Piece p, Piece behind) {
      Set<String> needs = new LinkedHashSet<>();
      needs.add("fold:" + p.id());
      needs.addAll(ready(behind));
      if (folded(behind)) {
        needs.add("close:" + behind.id());
      }
      fixedOn(behind).forEach(part -> needs.add("fix:" + part));
      return needs;
    }

    /** Everything flat that is fixed to a piece, and to what is fixed to it. */
    private Set<String> fixedOn(Piece base) {
      Set<String> found = new LinkedHashSet<>();
      for (Join.Glue g : onto(base)) {
        Piece part = card.piece(g.a().piece());
        if (!folded(part) && found.add(part.id())) {
          found.addAll(fixedOn(part));
        }
      }
      return found;
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

    private Set<String> allSoFar() {
      Set<String> all = new LinkedHashSet<>();
      tasks.forEach(t -> all.add(t.id()));
      return all;
    }
  }
}
