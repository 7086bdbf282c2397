package hingeleaf.plan;

import hingeleaf.card.Face;
import hingeleaf.card.Ink;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Box;
import hingeleaf.geom.Segment;
import hingeleaf.measure.MakerUnits;
import hingeleaf.stock.Bench;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The sentences of the steps that make the single pieces. Every number in them is measured on a
 * piece or stands on the bench.
 */
final class Words {
  // Minutes of a practised hand: common practice, no source.
  static final double CUT_MINUTES = 1.5;
  private static final double SHAPE_MINUTES = 4;
  private static final double KNIFE_MINUTES = 3;
  private static final double DIE_MINUTES = 1;
  private static final double SCORE_MINUTES = 0.4;
  private static final double FOLD_MINUTES = 0.25;
  private static final double INK_MINUTES = 5;

  private final Bench bench;
  private final MakerUnits units;

  Words(Bench bench, MakerUnits units) {
    this.bench = bench;
    this.units = units;
  }

  /**
   * Cuts rectangles: one line for each size and paper.
   *
   * @param what they are, as the title says it
   */
  Step cut(List<CutList.Line> lines, String what) {
    Map<String, List<CutList.Line>> alike = new LinkedHashMap<>();
    for (CutList.Line line : lines) {
      Piece p = line.piece();
      String key = p.stock().title() + "\n" + units.size(p.width(), p.height());
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
    }
    List<String> told = new ArrayList<>();
    Set<String> sizes = new LinkedHashSet<>();
    Set<String> tools = new LinkedHashSet<>();
    double minutes = 0;
    for (List<CutList.Line> same : alike.values()) {
      told.add(rectangles(same));
      Piece p = same.get(0).piece();
      sizes.add(units.size(p.width(), p.height()));
      tools.add(cutter(p));
      minutes += CUT_MINUTES * CutList.count(same);
    }
    String where = String.join(" or ", tools);
    return Step.loose(
        Step.Kind.CUT,
        CutList.ids(lines),
        List.of(),
        "Cut " + what,
        "With the "
            + where
            + (alike.size() > 1
                ? ", the larger size first and all pieces of one size at one setting:"
                : CutList.count(lines) > 1 ? ", all at one setting:" : ":"),
        told,
        sizes.size() == 1
            ? "every one of your pieces now measures " + sizes.iterator().next() + "."
            : "your pieces now measure " + String.join(", ", sizes) + "; the corners are square.",
        List.copyOf(tools),
        minutes,
        0);
  }

  private String rectangles(List<CutList.Line> same) {
    Piece p = same.get(0).piece();
    int n = CutList.count(same);
    String grain =
        switch (p.grain()) {
          case WIDTH -> ", grain along the " + units.rounded(p.width()) + " side";
          case HEIGHT -> ", grain along the " + units.rounded(p.height()) + " side";
          case ANY -> "";
        };
    return Says.count(n, "piece")
        + " "
        + units.size(p.width(), p.height())
        + " from "
        + Says.paper(p.stock())
        + " ("
        + Says.listed(CutList.ids(same))
        + ")"
        + grain
        + ".";
  }

  private String cutter(Piece p) {
    boolean trims = Math.min(p.width(), p.height()) <= bench.trimmer().longest();
    return trims ? "trimmer" : "knife, steel ruler and mat";
  }

  /** Cuts what no trimmer cuts: shapes by their templates. */
  Step shapes(List<CutList.Line> lines) {
    List<String> told = new ArrayList<>();
    for (CutList.Line line : lines) {
      Piece p = line.piece();
      told.add(
          Says.listed(line.pieces())
              + ": "
              + Says.count(line.quantity(), "piece")
              + (line.embossed() ? " from its embossed blank of " : " from ")
              + Says.paper(p.stock())
              + ", "
              + units.size(p.width(), p.height())
              + " over all"
              + (p.stock().clear() && line.rectangular() ? ", a plain rectangle." : "."));
    }
    return Step.loose(
        Step.Kind.SHAPE,
        CutList.ids(lines),
        List.of(),
        "Cut " + Says.quoted(CutList.ids(lines), "small parts"),
        "From their pages in templates.pdf, printed at 100 %; knife or small scissors, turning the"
            + " paper and not the blade."
            + (CutList.count(lines) > 4 ? " Pencil each one's name on its back:" : ""),
        told,
        "each lies on its template and hides the line.",
        List.of("knife or scissors", "mat", "templates"),
        SHAPE_MINUTES * CutList.count(lines),
        0);
  }

  Step open(List<CutList.Line> lines) {
    Set<String> tools = new LinkedHashSet<>();
    double minutes = 0;
    for (CutList.Line line : lines) {
      for (CutList.Opening o : line.openings()) {
        tools.add(tool(o));
        minutes += (o.die().isPresent() ? DIE_MINUTES : KNIFE_MINUTES) * line.quantity();
      }
      if (!line.piece().slits().isEmpty()) {
        tools.add("knife");
        minutes += KNIFE_MINUTES * line.quantity();
      }
    }
    List<String> how = new ArrayList<>();
    lines.forEach(l -> opened(l, tools.size() > 1, how));
    return Step.loose(
        Step.Kind.OPEN,
        CutList.ids(lines),
        List.of(),
        how.size() == 1 ? "Cut the opening" : "Cut the openings",
        "While the pieces are flat, good face up"
            + (tools.size() == 1 ? ", with the " + tools.iterator().next() : "")
            + ". Measure from the edges of the piece; where a knife cuts, mark from the template."
            + " Keep what drops out for ornaments.",
        how,
        borders(lines),
        List.copyOf(tools),
        minutes,
        0);
  }

  private static String tool(CutList.Opening o) {
    return o.die().map(d -> "die " + d.label()).orElse("knife");
  }

  private void opened(CutList.Line line, boolean tell, List<String> how) {
    for (CutList.Opening o : line.openings()) {
      how.add(
          Says.names(line.pieces(), "frames")
              + ": "
              + opening(o)
              + (tell ? "; " + tool(o) : "")
              + ".");
    }
    if (!line.piece().slits().isEmpty()) {
      how.add(
          Says.names(line.pieces(), "pieces")
              + ": "
              + slits(line.piece())
              + (tell ? "; knife." : "."));
    }
  }

  /** Round a door that is cut into its panel there is a slit everywhere but at its score. */
  private String slits(Piece p) {
    List<String> doors =
        p.scores().stream()
            .filter(s -> s.made() == 0 && s.name().indexOf('-') < 0)
            .map(Score::name)
            .toList();
    String through = ", cut through and nothing taken out";
    return doors.isEmpty() || p.slits().size() < 3
        ? straight(p) + through
        : "round "
            + Says.quoted(doors, "doors")
            + " on all sides but the scored one, as on the template"
            + through;
  }

  /** One straight slit is told by its numbers; more are marked from the template. */
  private String straight(Piece p) {
    if (p.slits().size() > 1) {
      return Says.count(p.slits().size(), "slit") + " as on the template";
    }
    Segment s = p.slits().get(0);
    Box b = Box.around(List.of(s.from(), s.to()));
    boolean level = b.height() < 1e-6;
    if (!level && b.width() > 1e-6) {
      return "1 slit as on the template";
    }
    return "slit "
        + units.text(s.length())
        + " long, "
        + (level ? "level" : "upright")
        + ", its end "
        + units.text(b.minX() - p.box().minX())
        + " from the left edge and "
        + units.text(b.minY() - p.box().minY())
        + " from the lower";
  }

  private String borders(List<CutList.Line> lines) {
    for (CutList.Line line : lines) {
      if (!line.openings().isEmpty()) {
        CutList.Opening o = line.openings().get(0);
        double right = line.piece().width() - o.fromLeft() - o.width();
        double top = line.piece().height() - o.fromBottom() - o.height();
        return line.pieces().get(0)
            + " has "
            + Says.placed(o.fromLeft(), units)
            + " left, "
            + Says.placed(right, units)
            + " right, "
            + Says.placed(top, units)
            + " above and "
            + Says.placed(o.fromBottom(), units)
            + " below its opening.";
      }
    }
    return "";
  }

  private String opening(CutList.Opening o) {
    String size =
        Math.abs(o.width() - o.height()) < 0.02
            ? units.text(o.width())
            : units.size(o.width(), o.height());
    return o.shape()
        + " "
        + size
        + ", "
        + units.text(o.fromLeft())
        + " from the left, "
        + units.text(o.fromBottom())
        + " from below";
  }

  /** Scores pieces whose scores are all alike. */
  Step score(List<ScoreChart.Row> rows) {
    ScoreChart.Row row = rows.get(0);
    List<CutList.Line> lines = rows.stream().map(ScoreChart.Row::line).toList();
    List<String> how = new ArrayList<>();
    for (Face up : Face.values()) {
      for (boolean quarter : new boolean[] {false, true}) {
        String at = settings(row, up, quarter);
        if (!at.isEmpty()) {
          how.add(
              (up == Face.FRONT ? "Good face up, " : "Turned over left to right, ")
                  + (quarter
                      ? row.grooved()
                          ? "turned a quarter so that its lower edge lies against the stop"
                          : "from the lower edge"
                      : row.grooved() ? "left edge against the stop" : "from the left edge")
                  + ": score at "
                  + at
                  + ".");
        }
      }
    }
    if (rows.stream().anyMatch(ScoreChart.Row::doubleScored)) {
      how.add("This card is heavy: score twice, a paper's thickness apart.");
    }
    boolean grooves = row.grooved();
    return Step.loose(
        Step.Kind.SCORE,
        CutList.ids(lines),
        List.of(),
        "Score " + Says.quoted(CutList.ids(lines), "frames"),
        (grooves
                ? "On the scoring board"
                : "With ruler and stylus, for these are not on the board's grooves")
            + (CutList.count(lines) > 1 ? ", all pieces alike." : "."),
        how,
        "the strips between the grooves measure " + strips(row) + "; the groove is outside a fold.",
        List.of(grooves ? "scoring board" : "ruler and stylus"),
        SCORE_MINUTES * row.settings().size() * CutList.count(lines),
        0);
  }

  private String strips(ScoreChart.Row row) {
    Set<String> widths = new LinkedHashSet<>();
    double last = 0;
    for (ScoreChart.Setting s : row.settings()) {
      if (!s.aslant() && s.at() > last) {
        widths.add(units.text(s.at() - last));
        last = s.at();
      }
    }
    return String.join(", ", widths);
  }

  private String settings(ScoreChart.Row row, Face up, boolean quarter) {
    return row.settings().stream()
        .filter(s -> s.up() == up && s.quarterTurn() == quarter)
        .map(s -> s.aslant() ? "the line of the template" : units.text(s.at()))
        .collect(Collectors.joining(", "));
  }

  Step write(List<Piece> pieces) {
    List<String> how = new ArrayList<>();
    double minutes = 0;
    for (Piece p : pieces) {
      for (Ink ink : p.inks()) {
        how.add(ink(p, ink));
        minutes += 3;
      }
    }
    return Step.loose(
        Step.Kind.WRITE,
        pieces.stream().map(Piece::id).toList(),
        List.of(),
        "Write the words",
        "Write, stamp or print now, while the pieces are flat; keep ink off the glue strips.",
        how,
        "the ink is dry to the touch.",
        List.of("pen, stamp or printer"),
        minutes,
        INK_MINUTES);
  }

  private String ink(Piece p, Ink ink) {
    Box box = ink.regions().get(0).box();
    for (var r : ink.regions()) {
      box = box.union(r.box());
    }
    double left =
        ink.face() == Face.FRONT ? box.minX() - p.box().minX() : p.box().maxX() - box.maxX();
    return "“"
        + ink.name()
        + "” on the "
        + (ink.face() == Face.FRONT ? "good face" : "back")
        + " of "
        + p.name()
        + ": starts "
        + units.rounded(left)
        + " from the left edge, "
        + units.rounded(box.minY() - p.box().minY())
        + " from the bottom, "
        + units.rounded(box.width())
        + " long, "
        + units.rounded(box.height())
        + " high.";
  }

  /** Folds pieces that all fold alike. */
  Step fold(List<Piece> pieces) {
    Piece p = pieces.get(0);
    int folds = p.scores().size();
    boolean stays = p.scores().stream().allMatch(s -> s.made() == 0);
    return Step.loose(
        Step.Kind.FOLD,
        pieces.stream().map(Piece::id).toList(),
        List.of(),
        "Fold " + Says.quoted(pieces.stream().map(Piece::name).toList(), "frames"),
        bending(p)
            + (folds > 1 ? ", one at a time" : "")
            + " along a ruler. Press "
            + (folds > 1 ? "each" : "it")
            + " sharp with a bone folder, then "
            + (stays ? "lay it flat again." : "let it spring open to a right angle."),
        List.of(),
        folds > 1
            ? "every one of the " + folds + " folds closes by itself and none cracks."
            : "the fold, worked to and fro 3 times, does not crack.",
        List.of("bone folder", "ruler"),
        FOLD_MINUTES * folds * pieces.size(),
        0);
  }

  /** Which score bends which way. */
  private static String bending(Piece p) {
    List<String> away =
        p.scores().stream().filter(Score::mountain).map(s -> Says.spoken(s.name())).toList();
    List<String> towards =
        p.scores().stream().filter(s -> !s.mountain()).map(s -> Says.spoken(s.name())).toList();
    if (towards.isEmpty()) {
      return "Fold all " + away.size() + " scores of each away from the good face";
    }
    List<String> ways = new ArrayList<>();
    if (!away.isEmpty()) {
      ways.add(String.join(", ", away) + " away from you");
    }
    ways.add(String.join(", ", towards) + " towards you");
    return "Good face up, fold " + String.join("; ", ways);
  }
}
