package hingeleaf.paper.pack;

import hingeleaf.card.Face;
import hingeleaf.card.Rest;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import hingeleaf.paper.CheckBar;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.LineKey;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.Book;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.paper.figure.CardPicture;
import hingeleaf.paper.figure.ScoreChart;
import hingeleaf.plan.CutList;
import hingeleaf.plan.ScoreChart.Row;
import hingeleaf.plan.ScoreChart.Setting;
import hingeleaf.plan.Step;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The plan as a small book: the card, what to cut and score, what to do in which order. */
final class PlanBook {
  private final Pack pack;
  private final BookStyle style;
  private final MakerUnits units;

  private PlanBook(Pack pack, Fonts fonts) {
    this.pack = pack;
    this.style = new BookStyle(PackFiles.paper(pack), pack.title(), fonts);
    this.units = pack.inputs().wants().units();
  }

  static List<Drawing> pages(Pack pack, Fonts fonts) {
    PlanBook book = new PlanBook(pack, fonts);
    return Book.pages(book.blocks(), book.style);
  }

  private List<Block> blocks() {
    List<Block> all = new ArrayList<>();
    opening(all);
    cutList(all);
    scoreCharts(all);
    steps(all);
    flat(all);
    findings(all);
    Cautions.add(pack, all);
    return all;
  }

  private void opening(List<Block> all) {
    all.add(new Block.Heading(1, pack.title()));
    Drawing picture =
        CardPicture.of(
            SeenCard.of(pack.aslant()),
            "the made card",
            CardPicture.Manner.COLOUR,
            78,
            80,
            "#ffffff");
    List<Block> facts = new ArrayList<>();
    facts.add(Block.Paragraph.of(summary()));
    facts.add(
        Block.Paragraph.note(
            "Print at 100 %, never “fit to page”. These bars tell whether the print is true:"));
    facts.add(
        new Block.Figure(
            Drawing.plain(
                CheckBar.WIDTH, 14, "check bar", CheckBar.at(new hingeleaf.geom.Vec2(0, 4))),
            ""));
    all.add(new Block.Pair(List.of(new Block.Figure(picture, "")), facts, 0.45));
  }

  private String summary() {
    int pieces = pack.card().pieces().size();
    return pieces
        + " pieces, "
        + grams(pack.card().mass())
        + " before glue. About "
        + Math.round(pack.work().hands())
        + " minutes of work; "
        + hours(pack.work().elapsed())
        + " from first cut to last, drying included.";
  }

  private static String grams(double g) {
    return String.format(Locale.ROOT, "%.1f g", g);
  }

  private static String hours(double minutes) {
    return minutes < 90
        ? Math.round(minutes) + " minutes"
        : String.format(Locale.ROOT, "%.1f hours", minutes / 60);
  }

  private void cutList(List<Block> all) {
    all.add(new Block.Heading(2, "Cut"));
    List<Block.Column> columns =
        List.of(
            Block.Column.name("Piece"),
            Block.Column.number("How many"),
            Block.Column.number("Width"),
            Block.Column.number("Height"),
            Block.Column.text("From"),
            Block.Column.text("Grain"),
            Block.Column.text("Openings"));
    List<List<String>> rows = new ArrayList<>();
    for (CutList.Line line : pack.cuts().lines()) {
      rows.add(
          List.of(
              line.names(),
              String.valueOf(line.quantity()),
              units.rounded(line.piece().width()),
              units.rounded(line.piece().height()),
              line.piece().stock().title(),
              grain(line),
              line.openings().stream().map(this::opening).collect(Collectors.joining("; "))));
    }
    all.add(new Block.Table(columns, rows));
    Set<String> shapes =
        pack.cuts().lines().stream()
            .filter(l -> !l.rectangular())
            .map(CutList.Line::names)
            .collect(Collectors.toCollection(java.util.TreeSet::new));
    if (!shapes.isEmpty()) {
      all.add(
          Block.Paragraph.note(
              "The sizes are over all; "
                  + (shapes.size() > 6 ? "the shapes" : String.join(", ", shapes))
                  + (shapes.size() == 1 ? " is" : " are")
                  + " cut from the templates."));
    }
  }

  private static String grain(CutList.Line line) {
    return switch (line.piece().grain()) {
      case WIDTH -> "along the width";
      case HEIGHT -> "along the height";
      case ANY -> "either";
    };
  }

  private String opening(CutList.Opening o) {
    String size =
        Math.abs(o.width() - o.height()) < 0.02
            ? units.rounded(o.width())
            : units.number(o.width()) + " × " + units.rounded(o.height());
    String tool = o.die().map(d -> "die " + d.label()).orElse("knife");
    return o.shape()
        + " "
        + size
        + ", "
        + units.rounded(o.fromLeft())
        + " from the left, "
        + units.rounded(o.fromBottom())
        + " from the bottom ("
        + tool
        + ")";
  }

  private void scoreCharts(List<Block> all) {
    if (pack.scores().rows().isEmpty()) {
      return;
    }
    all.add(new Block.Heading(2, "Score"));
    all.add(
        Block.Paragraph.of(
            "The good face is up unless a row says otherwise. Lay the left edge against the stop and "
                + "score at these distances. The groove is on the outside of every fold, the bead "
                + "inside."));
    all.add(new Block.Table(columns(), rows()));
    Set<LineKey.Entry> entries =
        EnumSet.of(LineKey.Entry.CUT, LineKey.Entry.MOUNTAIN, LineKey.Entry.VALLEY);
    Drawing key =
        Drawing.plain(
            90,
            LineKey.ROW * entries.size(),
            "key",
            LineKey.at(new hingeleaf.geom.Vec2(0, LineKey.ROW * entries.size()), entries));
    all.add(new Block.Figure(key, ""));
    for (Row row : pack.scores().rows()) {
      SeenPiece seen = SeenPiece.of(row.line().piece(), Face.FRONT, List.of());
      Drawing chart =
          ScoreChart.of(seen, style.width(), 92, PackFiles.lengths(pack), style.fonts());
      all.add(new Block.Figure(chart, row.line().names() + ", good face up"));
    }
  }

  private static List<Block.Column> columns() {
    return List.of(
        Block.Column.name("Piece"),
        Block.Column.text("Face up"),
        Block.Column.text("Score at"),
        Block.Column.text("Grooves"));
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (Row row : pack.scores().rows()) {
      for (Face up : Face.values()) {
        List<Setting> settings = row.settings().stream().filter(s -> s.up() == up).toList();
        if (!settings.isEmpty()) {
          rows.add(
              List.of(
                  row.line().names(),
                  up == Face.FRONT ? "good face" : "turned over",
                  settings.stream().map(this::at).collect(Collectors.joining(", ")),
                  grooves(settings)));
        }
      }
    }
    return rows;
  }

  private String at(Setting s) {
    return s.aslant()
        ? "along the template"
        : units.rounded(s.at()) + (s.quarterTurn() ? " from the lower edge" : "");
  }

  private static String grooves(List<Setting> settings) {
    if (settings.stream().allMatch(s -> s.groove().isPresent())) {
      return settings.stream()
          .map(s -> String.valueOf(s.groove().orElse(0)))
          .collect(Collectors.joining(", ", "no. ", ""));
    }
    return settings.stream()
        .map(s -> s.groove().map(g -> "no. " + g).orElse("ruler"))
        .collect(Collectors.joining(", "));
  }

  private void steps(List<Block> all) {
    all.add(new Block.Heading(2, "Make"));
    for (Step step : pack.work().steps()) {
      List<Block> body = new ArrayList<>();
      body.add(
          new Block.Paragraph(
              List.of(
                  hingeleaf.paper.book.Span.strong(step.title() + ". "),
                  hingeleaf.paper.book.Span.plain(step.text()))));
      String small = small(step);
      if (!small.isEmpty()) {
        body.add(Block.Paragraph.note(small));
      }
      all.add(new Block.Numbered(step.number(), body));
    }
  }

  private static String small(Step step) {
    List<String> parts = new ArrayList<>();
    if (!step.check().isEmpty()) {
      parts.add("Check: " + step.check());
    }
    if (step.dries() > 0) {
      parts.add("Dries " + Math.round(step.dries()) + " minutes.");
    }
    return String.join(" ", parts);
  }

  private void flat(List<Block> all) {
    all.add(new Block.Heading(2, "Fold flat"));
    List<List<String>> rows = new ArrayList<>();
    for (Rest r : pack.flats().states().stream().limit(4).toList()) {
      rows.add(
          List.of(
              leans(r),
              units.number(r.width()) + " × " + units.rounded(r.height()),
              units.fine(r.limp()),
              units.fine(r.rigid())));
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("Which way"),
                Block.Column.text("Size then"),
                Block.Column.text("Card at the thickest spot"),
                Block.Column.text("As stiff card stacks")),
            rows));
    all.add(
        Block.Paragraph.note(
            "Counted from the back forwards; "
                + pack.flats().count()
                + " ways in all. Unpressed, folded card stands 1.3 to 1.5 times as thick."));
  }

  private static String leans(Rest r) {
    return r.leans().isEmpty()
        ? "as it is"
        : r.leans().stream()
            .map(l -> l < 0 ? "left" : "right")
            .collect(Collectors.joining(", ", "leans ", ""));
  }

  private void findings(List<Block> all) {
    List<Problem> tell = pack.problems().stream().filter(p -> p.level() != Level.BLOCKS).toList();
    if (!tell.isEmpty()) {
      all.add(new Block.Heading(2, "Good to know"));
      all.add(Block.Items.of(tell.stream().map(Problem::message).toList()));
    }
  }
}
