package hingeleaf.paper.pack;

import hingeleaf.card.Face;
import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import hingeleaf.paper.book.Block;
import hingeleaf.plan.CutList;
import hingeleaf.plan.ScoreChart;
import hingeleaf.plan.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a left-handed learner does the other way round: every number of it. */
final class LeftHanded {
  /**
   * The share of people who are left-handed: 10.6 % (Papadatou-Pastou and others, Human handedness:
   * a meta-analysis, Psychological Bulletin 146, 2020; from memory).
   */
  private static final double SHARE = 0.106;

  private final Pack pack;
  private final MakerUnits units;

  LeftHanded(Pack pack) {
    this.pack = pack;
    this.units = pack.inputs().wants().units();
  }

  void add(List<Block> all) {
    int seats = pack.lesson().seats();
    all.add(new Block.Heading(2, "Left-handed learners"));
    all.add(
        Block.Paragraph.of(
            "About one in ten: expect "
                + Math.max(1, Math.round(seats * SHARE))
                + " of "
                + seats
                + ", with scissors of their own. They work from the other edge, so that the hand that"
                + " draws comes from outside:"));
    List<List<String>> single = new ArrayList<>();
    pack.scores().rows().forEach(row -> scores(row, single));
    pack.cuts().lines().stream()
        .filter(CutList.Line::rectangular)
        .forEach(l -> openings(l, single));
    List<List<String>> rows = alike(single);
    if (!rows.isEmpty()) {
      all.add(
          new Block.Table(
              List.of(
                  Block.Column.name("Piece"),
                  Block.Column.text("What"),
                  Block.Column.text("Measured"),
                  Block.Column.text("At")),
              rows));
    }
    all.add(Block.Items.of(items()));
  }

  /** Pieces that are measured alike share a row. */
  private static List<List<String>> alike(List<List<String>> rows) {
    Map<List<String>, List<String>> names = new LinkedHashMap<>();
    for (List<String> row : rows) {
      names.computeIfAbsent(row.subList(1, row.size()), k -> new ArrayList<>()).add(row.get(0));
    }
    List<List<String>> joined = new ArrayList<>();
    names.forEach(
        (rest, who) -> {
          List<String> row = new ArrayList<>(List.of(String.join(", ", who)));
          row.addAll(rest);
          joined.add(row);
        });
    return joined;
  }

  /** Scores from the edge at the other end of the piece, nearest first. */
  private void scores(ScoreChart.Row row, List<List<String>> rows) {
    for (Face up : Face.values()) {
      for (boolean quarter : new boolean[] {false, true}) {
        double whole = quarter ? row.line().piece().height() : row.line().piece().width();
        List<Double> at =
            row.settings().stream()
                .filter(s -> s.up() == up && !s.aslant() && s.quarterTurn() == quarter)
                .map(s -> whole - s.at())
                .sorted()
                .toList();
        if (!at.isEmpty()) {
          rows.add(
              List.of(
                  row.line().names(),
                  up == Face.FRONT ? "score" : "score, turned over left to right",
                  "from the " + (quarter ? "top" : "right") + " edge, which lies against a stop",
                  at.stream().map(units::rounded).collect(Collectors.joining(", "))));
        }
      }
    }
  }

  private void openings(CutList.Line line, List<List<String>> rows) {
    for (CutList.Opening o : line.openings()) {
      double right = line.piece().width() - o.fromLeft() - o.width();
      rows.add(List.of(line.names(), o.shape(), "from the right edge", units.rounded(right)));
    }
  }

  private List<String> items() {
    List<String> items = new ArrayList<>();
    List<String> first =
        pack.work().steps().stream()
            .filter(s -> s.kind() == Step.Kind.GLUE_TAB && s.title().contains("left tab"))
            .map(s -> String.valueOf(s.number()))
            .toList();
    if (!first.isEmpty()) {
      items.add(
          "In "
              + (first.size() == 1 ? "step " : "steps ")
              + String.join(", ", first)
              + " they may glue the right tab first, along the right edge, and then close the left"
              + " one flat: the card comes out the same.");
    }
    items.add(
        "Templates serve either hand. Whoever would rather mark on the back gets a set printed with"
            + " --mirrored: left and right are changed, and folds are drawn as they look from the"
            + " back.");
    return items;
  }
}
