package hingeleaf.paper.pack;

import hingeleaf.card.Face;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Decimal;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Mass;
import hingeleaf.pack.Pack;
import hingeleaf.paper.CheckBar;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.LineKey;
import hingeleaf.paper.PaperSize;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.paper.figure.CardPicture;
import hingeleaf.paper.figure.ScoreChart;
import hingeleaf.plan.CutList;
import hingeleaf.plan.ScoreChart.Row;
import hingeleaf.plan.ScoreChart.Setting;
import hingeleaf.sight.View;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The first page: the card, whether the print is true, and all that is cut and scored. */
final class FrontPage {
  private static final int MOST_OPENINGS = 6;
  private static final int MOST_NAMES = 6;

  /** So many rows leave an A4 page room for a large picture and chart. */
  private static final int MOST_ROWS = 11;

  /** How high a row of a table is, mm. */
  private static final double ROW_MM = 6;

  /** Avoirdupois, by the International Yard and Pound Agreement, 1959. */
  private static final double OUNCE_G = 28.349523125;

  private final Pack pack;
  private final BookStyle style;
  private final MakerUnits units;

  FrontPage(Pack pack, BookStyle style) {
    this.pack = pack;
    this.style = style;
    this.units = pack.inputs().wants().units();
  }

  /**
   * Adds the page.
   *
   * @param standing the made card
   */
  void add(View standing, List<Block> all) {
    all.add(new Block.Heading(1, pack.title()));
    Drawing picture =
        CardPicture.of(
            SeenCard.of(standing),
            "the made card",
            CardPicture.Manner.COLOUR,
            62,
            Math.max(40, 66 - ROW_MM * crowd()),
            "#ffffff");
    all.add(new Block.Pair(List.of(new Block.Figure(picture, "")), facts(), 0.38));
    all.add(new Block.Heading(2, "Cut and score"));
    all.add(new Block.Table(columns(), rows()));
    blanks(all);
    List<List<String>> openings = openings();
    if (!runsOver(pack)) {
      openings(openings, all);
      chart(all);
      return;
    }
    chart(all);
    all.add(Block.Paragraph.note("The openings stand on the next page."));
    all.add(new Block.NewPage());
    openings(openings, all);
  }

  /** By how many rows the lists are longer than goes with pictures of full size. */
  private int crowd() {
    int openings = runsOver(pack) ? 0 : openings().size();
    double shorter = PaperSize.A4.height() - style.paper().height();
    int most = MOST_ROWS - (int) Math.round(shorter / ROW_MM);
    return Math.max(0, rows().size() + openings - most);
  }

  /** Whether there are more openings than the first page holds. */
  static boolean runsOver(Pack pack) {
    return pack.cuts().lines().stream().mapToInt(l -> l.openings().size()).sum() > MOST_OPENINGS;
  }

  private List<Block> facts() {
    List<Block> facts = new ArrayList<>();
    facts.add(Block.Paragraph.of(summary()));
    facts.add(
        Block.Paragraph.of(
            "Print this and templates.pdf at 100 %, never “fit to page”. Lay a ruler on these bars"
                + " before you cut: if they are wrong, so is everything."));
    facts.add(
        new Block.Figure(
            Drawing.plain(
                CheckBar.WIDTH, CheckBar.HEIGHT, "check bar", CheckBar.at(new Vec2(0, 0))),
            ""));
    return facts;
  }

  private String summary() {
    int pieces = pack.card().pieces().size();
    Mass mass = pack.mass();
    return pieces
        + " pieces, "
        + grams(mass.made(), units)
        + " with glue. About "
        + Math.round(pack.work().hands())
        + " minutes of work in "
        + pack.work().steps().size()
        + " steps; "
        + hours(pack.work().elapsed())
        + " from the first cut to the last, drying included.";
  }

  /** "inches" or "mm", for sentences in which "in" would be misread. */
  static String unitWord(MakerUnits units) {
    return units.unit() == Unit.IN ? "inches" : units.unit().word();
  }

  /** As scales of the maker's country show it. */
  static String grams(double g, MakerUnits units) {
    return units.unit() == Unit.IN ? least(g / OUNCE_G, 2, " oz") : least(g, 1, " g");
  }

  /** What the scales do not show is not nothing. */
  private static String least(double value, int places, String unit) {
    double least = Math.pow(10, -places);
    boolean seen = value <= 0 || value >= least / 2;
    return (seen ? Decimal.fixed(value, places) : "under " + Decimal.fixed(least, places)) + unit;
  }

  static String hours(double minutes) {
    return minutes < 90
        ? Math.round(minutes) + " minutes"
        : Decimal.fixed(minutes / 60, 1) + " hours";
  }

  /** Embossed pieces are cut larger first: said where their size is read. */
  private void blanks(List<Block> all) {
    List<String> told =
        pack.cuts().lines().stream()
            .filter(CutList.Line::embossed)
            .map(l -> l.names() + " from " + units.size(l.blankWidth(), l.blankHeight()))
            .toList();
    if (!told.isEmpty()) {
      all.add(
          Block.Paragraph.of(
              "Embossed, so cut larger first and trimmed after: " + String.join("; ", told) + "."));
    }
  }

  private static List<Block.Column> columns() {
    return List.of(
        Block.Column.name("Piece"),
        Block.Column.number("How many"),
        Block.Column.text("Size, width first"),
        Block.Column.text("From"),
        Block.Column.text("Score at"));
  }

  /** Pieces of one paper, size and scoring share a row; what templates give shares the last. */
  private List<List<String>> rows() {
    Map<List<String>, List<CutList.Line>> alike = new LinkedHashMap<>();
    List<CutList.Line> shapes = new ArrayList<>();
    for (CutList.Line line : pack.cuts().lines()) {
      if (line.rectangular()) {
        alike.computeIfAbsent(key(line), k -> new ArrayList<>()).add(line);
      } else {
        shapes.add(line);
      }
    }
    List<List<String>> rows = new ArrayList<>();
    alike.forEach((key, lines) -> rows.add(row(lines, key.get(0), key.get(1), key.get(2))));
    if (!shapes.isEmpty()) {
      Set<String> papers =
          shapes.stream()
              .map(FrontPage::paper)
              .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
      String from = papers.size() > 2 ? papers.size() + " papers" : String.join(", ", papers);
      rows.add(row(shapes, "by templates.pdf", from, "–"));
    }
    return rows;
  }

  /** A paper without what its title adds in brackets. */
  private static String paper(CutList.Line line) {
    return line.piece().stock().title().replaceAll(" \\(.*\\)$", "");
  }

  private List<String> key(CutList.Line line) {
    return List.of(
        units.size(line.piece().width(), line.piece().height()), paper(line), scores(line));
  }

  private static List<String> row(
      List<CutList.Line> lines, String size, String from, String scores) {
    List<String> names = lines.stream().flatMap(l -> l.pieces().stream()).toList();
    String told =
        names.size() <= MOST_NAMES
            ? String.join(", ", names)
            : names.get(0) + ", " + names.get(1) + " … " + names.get(names.size() - 1);
    return List.of(told, String.valueOf(names.size()), size, from, scores);
  }

  private String scores(CutList.Line line) {
    for (Row row : pack.scores().rows()) {
      if (row.line().pieces().equals(line.pieces())) {
        boolean level = row.settings().stream().allMatch(Setting::quarterTurn);
        return (level ? "from below: " : "")
            + row.settings().stream()
                .map(s -> level ? units.number(s.at()) : at(s))
                .collect(Collectors.joining(", "))
            + (row.settings().stream().allMatch(s -> s.groove().isPresent()) ? "" : " (ruler)");
      }
    }
    return "–";
  }

  private String at(Setting s) {
    String face = s.up() == Face.BACK ? " turned over" : "";
    return s.aslant()
        ? "by the template" + face
        : units.number(s.at()) + (s.quarterTurn() ? " from below" : "") + face;
  }

  /** The openings of all pieces, one in a row. */
  private List<List<String>> openings() {
    List<List<String>> rows = new ArrayList<>();
    for (CutList.Line line : pack.cuts().lines()) {
      for (CutList.Opening o : line.openings()) {
        rows.add(
            List.of(
                line.names(),
                o.shape(),
                size(o),
                units.rounded(o.fromLeft()),
                units.rounded(o.fromBottom()),
                o.die().map(d -> "die " + d.label()).orElse("knife")));
      }
    }
    return rows;
  }

  private static void openings(List<List<String>> rows, List<Block> all) {
    if (rows.isEmpty()) {
      return;
    }
    all.add(new Block.Heading(3, "Openings"));
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("In"),
                Block.Column.text("Shape"),
                Block.Column.text("Size"),
                Block.Column.text("From left edge"),
                Block.Column.text("From bottom"),
                Block.Column.text("Tool")),
            rows));
  }

  private String size(CutList.Opening o) {
    return Math.abs(o.width() - o.height()) < 0.02
        ? units.rounded(o.width())
        : units.number(o.width()) + " × " + units.rounded(o.height());
  }

  /** The score chart of the first frame, with the key to its lines. */
  private void chart(List<Block> all) {
    if (pack.scores().rows().isEmpty()) {
      return;
    }
    Row row = pack.scores().rows().get(0);
    SeenPiece seen = SeenPiece.of(row.line().piece(), Face.FRONT, List.of());
    Drawing chart =
        ScoreChart.scores(
            seen,
            style.width() * 0.5,
            Math.max(40, 58 - ROW_MM / 2 * crowd()),
            PackFiles.lengths(pack),
            style.fonts());
    List<Block> right = new ArrayList<>();
    Set<LineKey.Entry> entries = EnumSet.of(LineKey.Entry.CUT, LineKey.Entry.MOUNTAIN);
    if (pack.card().pieces().stream()
        .anyMatch(p -> p.scores().stream().anyMatch(s -> !s.mountain() && s.made() != 0))) {
      entries.add(LineKey.Entry.VALLEY);
    }
    double high = LineKey.ROW * entries.size();
    right.add(
        new Block.Figure(
            Drawing.plain(76, high, "key", LineKey.at(new Vec2(0, high), entries)), ""));
    right.add(
        Block.Paragraph.note(
            row.line().names()
                + (alike(row) > 1 ? " and the frames like it" : "")
                + ", good face up. Distances run from the "
                + (row.settings().stream().allMatch(Setting::quarterTurn) ? "lower" : "left")
                + " edge, which lies against the stop, in "
                + unitWord(units)
                + ". The groove is on the outside of every fold, the bead inside."));
    all.add(
        new Block.Together(
            List.of(new Block.Pair(List.of(new Block.Figure(chart, "")), right, 0.54))));
  }

  private long alike(Row row) {
    String settings = row.settings().stream().map(this::at).collect(Collectors.joining());
    return pack.scores().rows().stream()
        .filter(
            r -> r.settings().stream().map(this::at).collect(Collectors.joining()).equals(settings))
        .count();
  }
}
