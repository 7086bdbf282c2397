package hingeleaf.paper.pack;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Label;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Mark;
import hingeleaf.paper.PaperSize;
import hingeleaf.paper.Pen;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.paper.figure.Arrow;
import hingeleaf.paper.figure.Cells;
import hingeleaf.paper.figure.Cells.Cell;
import hingeleaf.paper.figure.FlatFigure;
import hingeleaf.plan.CutList;
import hingeleaf.plan.Step;
import hingeleaf.sight.Look;
import hingeleaf.sight.View;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** For each step of the plan the drawing of what the hands then have before them. */
final class StepPictures {
  /** How far along its way to flat a card is drawn, so that its layers still show. */
  private static final double NEARLY_FLAT = 0.86;

  private static final Look FRONT = CardViews.FRONT;
  private static final Look BEHIND = Look.turned(Math.PI - Math.toRadians(28), Math.toRadians(22));

  /** How far along that way the stays are put away and nothing else has moved much. */
  private static final double AWAY = 0.36;

  private static final double SWING = 16;
  private static final double LEAST_SWING = 0.5;
  private static final double TALL = 48;

  /** Tabs and folds are thin: a score chart needs height. */
  private static final double SCORE_TALL = 76;

  /** A plain rectangle only bears its two numbers. */
  private static final double SIZE_TALL = 36;

  /** Two of these leave a column for words beside them, as a share of the width. */
  private static final double TAB_WIDE = 0.265;

  private static final int MOST_CELLS = 4;

  /** Steps whose pictures show how the card folds. */
  private static final Set<Step.Kind> ON_THE_WAY =
      EnumSet.of(Step.Kind.CLOSE_FLAT, Step.Kind.FINISH, Step.Kind.CHECK);

  private final Pack pack;
  private final double width;

  /** How much shorter than A4 the page is, so that as many steps go on it. */
  private final double shorter;

  private final Fonts fonts;
  private final CardViews views;
  private final Posed still;
  private final Map<Integer, Optional<Drawing>> drawn = new HashMap<>();
  private final Map<Integer, Cell> hatched = new HashMap<>();

  /**
   * Pictures for pages of a style.
   *
   * @param width of the column, mm
   */
  StepPictures(Pack pack, double width, BookStyle style) {
    this.pack = pack;
    this.width = width;
    this.shorter = Math.min(1, style.paper().height() / PaperSize.A4.height());
    this.fonts = style.fonts();
    this.still = still(pack);
    this.views = new CardViews(pack, still);
  }

  /**
   * Draws those steps that show the card standing or in parts, for which it need not be known how
   * it folds.
   *
   * @return the whole card standing, which is little more once it has grown step by step
   */
  View standing() {
    // In their order, for each picture goes on from the one before.
    for (Step step : pack.work().steps()) {
      pack.goOn();
      if (!ON_THE_WAY.contains(step.kind())) {
        drawn.put(step.number(), draw(step));
      } else if (step.kind() == Step.Kind.CLOSE_FLAT) {
        hatched.put(step.number(), hatched(step)); // while the other tab of its piece is in sight
      }
    }
    return views.view(new CardViews.Wanted(all(), Set.of(), List.of()), still, FRONT);
  }

  /** The drawing; empty for a step that has nothing to show. */
  Optional<Drawing> of(Step step) {
    return drawn.computeIfAbsent(step.number(), n -> draw(step));
  }

  private Optional<Drawing> draw(Step step) {
    List<Cell> cells =
        switch (step.kind()) {
          case CUT, SHAPE -> cut(step);
          case OPEN -> open(step);
          case SCORE -> score(step);
          case WRITE -> write(step);
          case BLANK -> blanks(step);
          case EMBOSS -> emboss(step);
          case WINDOW, MAT, CUT_OUT -> fix(step);
          case FOLD -> fold(step);
          case GLUE_TAB -> hangs(step) ? fix(step) : tab(step, false);
          case CLOSE_FLAT -> tab(step, true);
          case MOVING -> List.of(cell(SoFar.pieces(pack, step), step.pieces(), still, FRONT, ""));
          case FINISH -> stay(step);
          case CHECK -> whole();
        };
    return cells.isEmpty() ? Optional.empty() : Optional.of(Cells.of(cells, width, fonts));
  }

  private List<CutList.Line> lines(Step step) {
    return pack.cuts().lines().stream()
        .filter(l -> step.pieces().contains(l.pieces().get(0)))
        .toList();
  }

  private List<Cell> cut(Step step) {
    List<Cell> cells = new ArrayList<>();
    List<String> sizes = new ArrayList<>();
    for (CutList.Line line : lines(step)) {
      Piece p = line.piece();
      String size = line.rectangular() ? units().size(p.width(), p.height()) : p.id();
      if (!sizes.contains(size) && cells.size() < MOST_CELLS) {
        sizes.add(size);
        SeenPiece seen = SeenPiece.of(p, Face.FRONT, List.of());
        Drawing d =
            FlatFigure.size(
                seen,
                share(lines(step).size()),
                line.rectangular() ? SIZE_TALL * shorter : tall() - 12,
                lengths(),
                fonts);
        cells.add(new Cell(d, names(step, size, line.rectangular())));
      }
    }
    return cells;
  }

  /** A piece as it is cut first, larger than wanted. */
  private static SeenPiece blank(CutList.Line line) {
    Region sheet = Region.of(Ring.rectangle(0, 0, line.blankWidth(), line.blankHeight()));
    Piece p = line.piece();
    Label middle = new Label("panel", sheet.box().centre());
    Piece flat = Piece.flat(p.id(), p.name(), p.stock(), p.grain(), sheet, middle, p.origin());
    return SeenPiece.of(flat, Face.FRONT, List.of());
  }

  private List<Cell> blanks(Step step) {
    List<Cell> cells = new ArrayList<>();
    for (CutList.Line line : lines(step)) {
      if (cells.size() < MOST_CELLS) {
        Drawing d =
            FlatFigure.size(
                blank(line), share(lines(step).size()), SIZE_TALL * shorter, lengths(), fonts);
        cells.add(new Cell(d, "blank for " + line.names()));
      }
    }
    return cells;
  }

  /** Where the folder lies on each blank. */
  private List<Cell> emboss(Step step) {
    List<Cell> cells = new ArrayList<>();
    for (CutList.Line line : lines(step)) {
      if (cells.size() < MOST_CELLS) {
        SeenPiece blank = blank(line);
        Box box = new Box(0, 0, blank.width(), blank.height());
        Box at = line.pressed().orElse(box);
        Region pattern = Region.of(Ring.rectangle(at.minX(), at.minY(), at.maxX(), at.maxY()));
        Drawing d =
            FlatFigure.placed(
                blank, box, List.of(pattern), width / 3 - 5, tall() - 8, lengths(), fonts);
        cells.add(new Cell(d, "blank for " + line.names() + "; toned: the pattern"));
      }
    }
    return cells;
  }

  /** Room for one of some drawings in a row, of which {@value #MOST_CELLS} at most are drawn. */
  private double share(int drawings) {
    int n = Math.max(3, Math.min(MOST_CELLS, drawings));
    return width / n - 5;
  }

  /** The pieces of a step that have one size. */
  private String names(Step step, String size, boolean rectangles) {
    List<String> names = new ArrayList<>();
    for (CutList.Line line : lines(step)) {
      Piece p = line.piece();
      String own = rectangles ? units().size(p.width(), p.height()) : p.id();
      if (own.equals(size)) {
        names.addAll(line.pieces());
      }
    }
    return names.size() > 4 ? names.size() + " pieces" : String.join(", ", names);
  }

  private List<Cell> open(Step step) {
    List<Cell> cells = new ArrayList<>();
    for (CutList.Line line : lines(step)) {
      if (cells.size() < MOST_CELLS - 1) {
        SeenPiece seen = SeenPiece.of(line.piece(), Face.FRONT, List.of());
        double wide = lines(step).size() == 1 ? width / 2 : width / 3 - 5;
        Drawing d = FlatFigure.openings(seen, wide, tall(), lengths(), fonts);
        cells.add(new Cell(d, line.names()));
      }
    }
    if (cells.size() > 1 && lines(step).size() > cells.size()) {
      Cell last = cells.remove(cells.size() - 1);
      cells.add(new Cell(last.drawing(), last.words() + "; the others by the list"));
    }
    return cells;
  }

  private List<Cell> score(Step step) {
    SeenPiece seen = SeenPiece.of(pack.card().piece(step.pieces().get(0)), Face.FRONT, List.of());
    Drawing d =
        hingeleaf.paper.figure.ScoreChart.scores(
            seen, width * 0.55, SCORE_TALL * shorter, lengths(), fonts);
    boolean level =
        seen.scores().stream().allMatch(s -> Math.abs(s.at().from().y() - s.at().to().y()) < 1e-6);
    String edge = level ? "lower" : "left";
    return List.of(new Cell(d, "good face up; distances from the " + edge + " edge"));
  }

  private List<Cell> write(Step step) {
    List<Cell> cells = new ArrayList<>();
    for (String id : step.pieces()) {
      for (Face face : Face.values()) {
        SeenPiece seen = SeenPiece.of(pack.card().piece(id), face, List.of());
        if (!seen.inks().isEmpty() && cells.size() < MOST_CELLS) {
          Drawing d = FlatFigure.words(seen, width / 3 - 5, tall(), lengths(), fonts);
          cells.add(new Cell(d, id + (face == Face.FRONT ? "" : ", back up")));
        }
      }
    }
    return cells;
  }

  private List<Join.Glue> glues(Step step) {
    List<Join.Glue> glues = new ArrayList<>();
    for (Join j : pack.card().joins()) {
      if (j instanceof Join.Glue g && step.joins().contains(g.id())) {
        glues.add(g);
      }
    }
    return glues;
  }

  /** A part's own glue, the part where it lies, and the card so far where it stands already. */
  private List<Cell> fix(Step step) {
    List<Cell> cells = new ArrayList<>();
    Join.Glue first = glues(step).get(0);
    Piece part = pack.card().piece(first.a().piece());
    SeenPiece under = SeenPiece.of(part, first.a().face(), Held.of(first, pack.foams()));
    Drawing glue = FlatFigure.glue(under, width / 4 - 5, tall() - 10, fonts);
    String what = first.raisedBy() > 0 ? "foam here" : part.stock().clear() ? "tape" : "glue here";
    String side = first.a().face() == Face.FRONT ? ", good face up" : ", back up";
    cells.add(new Cell(glue, part.name() + side + ": " + what));
    cells.add(placed(glues(step)));
    Set<String> soFar = SoFar.pieces(pack, step);
    if (soFar.size() > 1 && soFar.contains(first.a().piece())) {
      Look look = first.b().face() == Face.FRONT ? FRONT : BEHIND;
      var wanted = new CardViews.Wanted(soFar, Set.copyOf(step.pieces()), List.of());
      Drawing d = views.drawing(wanted, still, look, width * 0.32, tall());
      cells.add(new Cell(d, "the card so far"));
    }
    return cells;
  }

  private Cell placed(List<Join.Glue> glues) {
    Placement at = Placement.of(pack.made(), glues);
    Drawing d =
        FlatFigure.placed(at.base(), at.panel(), at.parts(), width / 3, tall(), lengths(), fonts);
    String face = glues.get(0).b().face() == Face.FRONT ? ", good face up" : ", turned over";
    return new Cell(d, at.base().piece().name() + face);
  }

  private List<Cell> fold(Step step) {
    String id = step.pieces().get(0);
    List<Cell> cells = new ArrayList<>();
    Optional<Drawing> profile =
        pack.card().piece(id).scores().stream().allMatch(s -> s.made() == 0)
            ? Optional.empty()
            : new FoldPicture(pack, id).profile(width * 0.6);
    profile.ifPresent(d -> cells.add(new Cell(d, id + ", seen from its end")));
    cells.add(cell(Set.of(id), List.of(), still, BEHIND, id + ", from behind"));
    return cells;
  }

  /** Whether a piece hangs by the one tab that a step glues, and must be set in its place. */
  private boolean hangs(Step step) {
    String piece = step.pieces().get(0);
    return pack.card().joins().stream()
            .filter(j -> j instanceof Join.Glue g && g.a().piece().equals(piece))
            .count()
        == 1;
  }

  /** The tab with its glue, seen from behind; then the card so far with the new layer. */
  private List<Cell> tab(Step step, boolean flat) {
    Join.Glue g = glues(step).get(0);
    Cell glue = hatched.computeIfAbsent(step.number(), n -> hatched(step));
    Posed pose = flat ? nearlyFlat() : still;
    String words = flat ? "pressed flat (drawn a little open)" : "set on the edge";
    Look look = faces(g.b()) < 0 ? BEHIND : FRONT;
    Cell then =
        cell(SoFar.pieces(pack, step), Set.of(g.a().piece()), List.of(g.b()), pose, look, words);
    return List.of(glue, flat ? swung(then, g.a().piece(), pose) : then);
  }

  private Cell hatched(Step step) {
    Join.Glue g = glues(step).get(0);
    boolean away = faces(g.a()) < 0;
    return cell(
        Set.of(g.a().piece()),
        Set.of(g.a().piece()),
        List.of(g.a()),
        still,
        away ? BEHIND : FRONT,
        g.a().piece() + (away ? ", from behind" : "") + ": glue on the hatched tab");
  }

  /** How far towards the viewer a glued face looks in the made card, -1 to 1. */
  private double faces(Patch patch) {
    double z = pack.made().panel(patch.piece() + "/" + patch.panel()).made().normal().z();
    return patch.face() == Face.FRONT ? z : -z;
  }

  /** A stay set, and put away on the way flat. */
  private List<Cell> stay(Step step) {
    Set<String> all = all();
    Set<String> fresh = Set.copyOf(step.pieces());
    List<Cell> cells = new ArrayList<>();
    cells.add(cell(all, fresh, List.of(), still, FRONT, "set"));
    if (pack.best() >= 0) {
      boolean behind = glued(step.pieces()).stream().anyMatch(g -> faces(g.b()) < 0);
      String words = behind ? "let go, seen from behind" : "let go, the layers before it left out";
      Set<String> shown = behind ? all : reached(step);
      Look look = behind ? BEHIND : FRONT;
      cells.add(cell(shown, fresh, List.of(), along(AWAY), look, words));
    }
    return cells;
  }

  private List<Join.Glue> glued(List<String> pieces) {
    List<Join.Glue> all = new ArrayList<>();
    for (Join j : pack.card().joins()) {
      if (j instanceof Join.Glue g && pieces.contains(g.a().piece())) {
        all.add(g);
      }
    }
    return all;
  }

  /** A stay with what it lies on: a loose one on the back, one that hangs on its layer. */
  private Set<String> reached(Step step) {
    Set<String> shown = new LinkedHashSet<>(step.pieces());
    shown.add(pack.card().roots().get(0).piece());
    for (String piece : step.pieces()) {
      String at = piece;
      for (List<Join.Glue> on = glued(List.of(at)); !on.isEmpty(); on = glued(List.of(at))) {
        at = on.get(0).b().piece();
        shown.add(at);
      }
    }
    return shown;
  }

  /** The same with an arrow above it that says which way the new layer goes over. */
  private Cell swung(Cell cell, String piece, Posed flat) {
    Vec2 way = Swing.of(pack.made(), flat, piece, FRONT);
    if (way.length() < LEAST_SWING) {
      return cell;
    }
    Drawing d = cell.drawing();
    Vec2 half = way.unit().times(SWING / 2);
    Vec2 middle = new Vec2(d.width() / 2, d.height() + SWING / 4);
    List<Mark> marks = new ArrayList<>(List.of(d.moved(Vec2.ZERO)));
    Pen pen = Pen.solid(0.35, hingeleaf.paper.Look.ACCENT);
    marks.addAll(Arrow.of(middle.minus(half), middle.plus(half), way.x() < 0 ? -0.2 : 0.2, pen));
    double high = d.height() + SWING / 2 + 2;
    return new Cell(Drawing.plain(d.width(), high, d.title(), marks), cell.words());
  }

  private List<Cell> whole() {
    List<Cell> cells = new ArrayList<>();
    Set<String> all = all();
    cells.add(cell(all, Set.of(), List.of(), still, FRONT, "standing"));
    if (pack.best() >= 0) {
      Rest best = pack.flats().states().get(pack.best());
      String size = units().size(best.width(), best.height());
      var wanted = new CardViews.Wanted(all, Set.of(), List.of());
      Drawing flat = views.pressed(wanted, best.posed(), Look.straightOn(), width * 0.4, tall());
      cells.add(new Cell(flat, "flat: " + size));
    }
    return cells;
  }

  private Cell cell(Set<String> shown, List<String> fresh, Posed pose, Look look, String words) {
    return cell(shown, Set.copyOf(fresh), List.of(), pose, look, words);
  }

  private Cell cell(
      Set<String> shown, Set<String> fresh, List<Patch> glued, Posed pose, Look look, String say) {
    var wanted = new CardViews.Wanted(shown, fresh, glued);
    double wide = width * (glued.isEmpty() ? 0.4 : TAB_WIDE * shorter);
    return new Cell(views.drawing(wanted, pose, look, wide, tall()), say);
  }

  private Set<String> all() {
    Set<String> all = new LinkedHashSet<>();
    pack.card().pieces().forEach(p -> all.add(p.id()));
    return all;
  }

  private static Posed still(Pack pack) {
    return new Posed(
        Collections.nCopies(pack.made().panels().size(), Rigid.IDENTITY), List.of(), 0);
  }

  private Posed nearlyFlat() {
    return along(NEARLY_FLAT);
  }

  /** The card so far on its way to its best rest, 0 made to 1 flat. */
  private Posed along(double share) {
    List<Posed> way = pack.wayToBestRest();
    return way.isEmpty() ? still : way.get((int) Math.floor((way.size() - 1) * share));
  }

  private double tall() {
    return TALL * shorter;
  }

  private hingeleaf.measure.MakerUnits units() {
    return pack.inputs().wants().units();
  }

  private hingeleaf.paper.Lengths lengths() {
    return PackFiles.lengths(pack);
  }
}
