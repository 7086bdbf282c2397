package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.PanelLayout;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.MakerUnits;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Glue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The sentences of the steps. Every number in them is measured on a piece or stands on the bench.
 */
final class Words {
  // Minutes of a practised hand: common practice, no source.
  private static final double CUT_MINUTES = 1.5;
  private static final double KNIFE_MINUTES = 3;
  private static final double DIE_MINUTES = 1;
  private static final double SCORE_MINUTES = 0.4;

  private final Card card;
  private final Bench bench;
  private final MakerUnits units;

  Words(Card card, Bench bench, MakerUnits units) {
    this.card = card;
    this.bench = bench;
    this.units = units;
  }

  Step cut(CutList.Line line) {
    Piece p = line.piece();
    String size = units.size(p.width(), p.height());
    boolean trims =
        line.rectangular() && Math.min(p.width(), p.height()) <= bench.trimmer().longest();
    String tool = trims ? "trimmer" : "knife, steel ruler and mat";
    String what = line.quantity() == 1 ? "1 piece " : line.quantity() + " pieces ";
    String how =
        line.rectangular()
            ? what
                + size
                + ": set the "
                + tool
                + " to "
                + units.text(p.width())
                + ", then to "
                + units.text(p.height())
                + "."
            : what + "from its template (" + size + " over all) with " + scissors(p) + ".";
    return step(
        Step.Kind.CUT,
        line.pieces(),
        "Cut " + line.names(),
        "From " + p.stock().title() + ", cut " + how,
        line.rectangular() ? "Each piece now measures " + size + "." : "",
        List.of(line.rectangular() ? tool : scissors(p)),
        CUT_MINUTES * line.quantity());
  }

  private static String scissors(Piece p) {
    return p.stock().clear() ? "scissors" : "a knife or scissors";
  }

  Step open(CutList.Line line) {
    List<String> how = new ArrayList<>();
    List<String> tools = new ArrayList<>();
    double minutes = 0;
    for (CutList.Opening o : line.openings()) {
      String where =
          o.shape()
              + " "
              + openingSize(o)
              + ", "
              + units.text(o.fromLeft())
              + " from the left edge and "
              + units.text(o.fromBottom())
              + " from the bottom";
      String tool =
          o.die().map(d -> "die " + d.label()).orElse("knife on a mat, marked from the template");
      how.add(where + "; with the " + tool);
      tools.add(tool);
      minutes += (o.die().isPresent() ? DIE_MINUTES : KNIFE_MINUTES) * line.quantity();
    }
    return step(
        Step.Kind.OPEN,
        line.pieces(),
        "Cut the " + (line.openings().size() == 1 ? "opening" : "openings") + " of " + line.names(),
        sentence("In " + line.names() + ", front up, cut: " + String.join("; ", how)),
        "The borders left and right are as even as the chart says.",
        tools,
        minutes);
  }

  private String openingSize(CutList.Opening o) {
    return Math.abs(o.width() - o.height()) < 0.02
        ? units.text(o.width())
        : units.size(o.width(), o.height());
  }

  Step score(ScoreChart.Row row) {
    String front = settings(row, Face.FRONT);
    String back = settings(row, Face.BACK);
    String text =
        (front.isEmpty() ? "" : "Good face up, left edge against the stop, score " + front + ". ")
            + (back.isEmpty()
                ? ""
                : (front.isEmpty() ? "Good face down" : "Turn over left to right")
                    + ", left edge against the stop, score "
                    + back
                    + ". ");
    if (row.doubleScored()) {
      text += "This card is heavy: score twice, a paper's thickness apart. ";
    }
    return step(
        Step.Kind.SCORE,
        row.line().pieces(),
        "Score " + row.line().names(),
        text.strip(),
        "The groove is on the outside of every fold, the bead inside.",
        List.of("scoring board or ruler and stylus"),
        SCORE_MINUTES * row.settings().size() * row.line().quantity());
  }

  private String settings(ScoreChart.Row row, Face up) {
    return row.settings().stream()
        .filter(s -> s.up() == up)
        .map(
            s ->
                (s.aslant() ? "along the template" : "at " + units.text(s.at()))
                    + (s.quarterTurn() ? " from the lower edge" : "")
                    + s.groove().map(g -> "").orElse(" (ruler and stylus)"))
        .collect(Collectors.joining(", "));
  }

  Step write(Piece p) {
    String what =
        p.inks().stream().map(i -> "\"" + i.name() + "\"").collect(Collectors.joining(", "));
    return step(
        Step.Kind.WRITE,
        List.of(p.id()),
        "Letter " + p.name(),
        "Write, stamp or print "
            + what
            + " on "
            + p.name()
            + " where its template shows it, while the piece is flat, and let the ink dry.",
        "",
        List.of("pen, stamp or printer"),
        3);
  }

  Step fold(Piece p) {
    boolean allBack = p.scores().stream().allMatch(s -> s.mountain());
    String how =
        allBack
            ? "Fold every score away from the good face"
            : p.scores().stream()
                .map(s -> s.name() + (s.mountain() ? " back" : " forward"))
                .collect(Collectors.joining(", ", "Fold ", ""));
    return step(
        Step.Kind.FOLD,
        List.of(p.id()),
        "Fold " + p.name(),
        how
            + ", one at a time along a ruler; press each with a bone folder and let it spring open.",
        "Every fold closes without cracking.",
        List.of("bone folder", "ruler"),
        1);
  }

  Step firstTab(Join.Glue g, Piece p, Piece behind) {
    Glue glue = glue(g);
    return glueStep(
        Step.Kind.GLUE_TAB,
        g,
        p,
        "Glue the " + spoken(g.a().panel()) + " of " + p.name(),
        "Put "
            + glue.title()
            + " on the "
            + face(g.a())
            + " of the "
            + spoken(g.a().panel())
            + " of "
            + p.name()
            + " ("
            + units.text(shortSide(g.a()))
            + " wide), set its fold exactly on the "
            + edge(g, behind)
            + " of "
            + behind.name()
            + " and press for "
            + minutes(glue.holdMinutes())
            + ".",
        "The fold lies along the edge from end to end.",
        glue.holdMinutes());
  }

  Step closeFlat(Join.Glue g, Piece p, Piece behind) {
    Glue glue = glue(g);
    return glueStep(
        Step.Kind.CLOSE_FLAT,
        g,
        p,
        "Close " + p.name() + " flat on its " + spoken(g.a().panel()),
        "Put "
            + glue.title()
            + " on the "
            + face(g.a())
            + " of the "
            + spoken(g.a().panel())
            + ", lay "
            + p.name()
            + " over flat on "
            + behind.name()
            + " and press: the tab is glued where it falls. Dry it flat under a weight, with plain "
            + "paper between the layers against oozing glue.",
        "Pulled up it stands square; pushed over it lies flat both ways.",
        glue.holdMinutes());
  }

  private Step glueStep(
      Step.Kind kind, Join.Glue g, Piece p, String title, String text, String check, double hold) {
    Glue glue = glue(g);
    return new Step(
        0,
        kind,
        List.of(p.id()),
        title,
        text,
        check,
        List.of(glue.title()),
        1 + hold,
        glue.dryMinutes(),
        List.of(),
        List.of(g.id()));
  }

  Step fix(Join.Glue g, Piece part, Piece base) {
    boolean window = part.stock().clear();
    boolean raised = g.raisedBy() > 0;
    String with =
        raised
            ? "foam " + units.fine(g.raisedBy()) + " thick"
            : window ? "double-sided tape, clear of the folds" : glue(g).title();
    String on = g.b().face() == Face.FRONT ? " on the front of " : " on the back of ";
    Glue glue = glue(g);
    boolean tape = raised || window;
    return new Step(
        0,
        raised ? Step.Kind.CUT_OUT : window ? Step.Kind.WINDOW : Step.Kind.MAT,
        List.of(part.id()),
        "Fix " + part.name(),
        "With " + with + ", fix " + part.name() + on + base.name() + ", " + place(g, base) + ".",
        window ? "No edge of the window touches a score." : "",
        List.of(tape ? "tape or foam" : glue.title()),
        tape ? 2 : 1 + glue.holdMinutes(),
        tape ? 0 : glue.dryMinutes(),
        List.of(),
        List.of(g.id()));
  }

  /** Where a part lies on its panel, told by two distances from the panel's edges. */
  private String place(Join.Glue g, Piece base) {
    Box part = card.piece(g.a().piece()).box();
    Box panel = panel(base, g.b().panel());
    Vec2 move = g.b().origin().minus(g.a().origin());
    boolean turned = g.a().along().dot(g.b().along()) < 0;
    if (turned) {
      double x = g.b().origin().x() + g.a().origin().x() - part.maxX();
      return edges(x - panel.minX(), part.minY() + move.y() - panel.minY());
    }
    return edges(part.minX() + move.x() - panel.minX(), part.minY() + move.y() - panel.minY());
  }

  private String edges(double left, double bottom) {
    return beyond(left, "left") + " and " + beyond(bottom, "lower") + " edge of the panel";
  }

  private String beyond(double distance, String side) {
    return distance < 0
        ? "reaching " + units.text(-distance) + " past the " + side
        : units.text(distance) + " from the " + side;
  }

  Step finish() {
    return step(
        Step.Kind.FINISH,
        List.of(),
        "Let it dry",
        "Lay the card flat under a weight until the glue has set right through; plain paper between "
            + "the layers.",
        "",
        List.of("weight", "plain paper"),
        2);
  }

  Step check() {
    return step(
        Step.Kind.CHECK,
        List.of(),
        "Try it",
        "Stand the card up, look at it straight on and from the side, then fold it flat and back.",
        "It folds without force and nothing sticks out of its footprint.",
        List.of(),
        1);
  }

  private Glue glue(Join.Glue g) {
    return bench
        .glue(g.glue())
        .orElseThrow(() -> new IllegalArgumentException("the bench has no glue " + g.glue()));
  }

  private static Box panel(Piece piece, String name) {
    PanelLayout layout = PanelLayout.of(piece);
    return layout.panels().get(layout.index(name)).region().box();
  }

  /** Which edge of the panel behind a tab's patch lies along. */
  private static String edge(Join.Glue g, Piece behind) {
    Box panel = panel(behind, g.b().panel());
    Box area = g.b().area().box();
    double[] gaps = {
      area.minX() - panel.minX(),
      panel.maxX() - area.maxX(),
      area.minY() - panel.minY(),
      panel.maxY() - area.maxY()
    };
    boolean upright = area.height() >= area.width();
    if (upright) {
      return gaps[0] <= gaps[1] ? "left edge" : "right edge";
    }
    return gaps[2] <= gaps[3] ? "lower edge" : "top edge";
  }

  private static double shortSide(Patch p) {
    Box b = p.area().box();
    return Math.min(b.width(), b.height());
  }

  private static String face(Patch p) {
    return p.face() == Face.FRONT ? "good face" : "plain back";
  }

  /** "tab-left" as "left tab". */
  private static String spoken(String panel) {
    int dash = panel.indexOf('-');
    return dash < 0 ? panel : panel.substring(dash + 1) + " " + panel.substring(0, dash);
  }

  private static String minutes(double m) {
    return m < 1
        ? Math.round(m * 60) + " seconds"
        : String.format(Locale.ROOT, m == Math.rint(m) ? "%.0f" : "%.1f", m)
            + (m == 1 ? " minute" : " minutes");
  }

  private static String sentence(String s) {
    return s.endsWith(".") ? s : s + ".";
  }

  private static Step step(
      Step.Kind kind,
      List<String> pieces,
      String title,
      String text,
      String check,
      List<String> tools,
      double hands) {
    return new Step(0, kind, pieces, title, text, check, tools, hands, 0, List.of(), List.of());
  }
}
