package hingeleaf.plan;

import hingeleaf.measure.MakerUnits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How a batch is made: not card after card, but step after step, with one setting for all pieces
 * that share it.
 *
 * <p>Minutes of a step on n cards = setting, once, + n times the rest. Setting is a share of a
 * single card's minutes (common practice, no source): half of a cut or a score is measuring and
 * setting the stop, a third of an opening, a placing or a pressing is measuring or lying right,
 * which a jig or a mask does for all; folding, writing, gluing and cutting by a template take every
 * card as long as the first.
 *
 * @param copies good cards wanted
 * @param made cards begun, so that enough are good
 * @param cutting common sizes first
 * @param jigs one for each setting of scores or of an opening
 * @param rounds the steps, for all cards
 */
public record RunSheet(
    int copies, int made, List<Cutting> cutting, List<Jig> jigs, List<Round> rounds) {
  /** Cards that go wrong, as a share: common practice, no source. */
  public static final double SPOILAGE = 0.05;

  public RunSheet {
    cutting = List.copyOf(cutting);
    jigs = List.copyOf(jigs);
    rounds = List.copyOf(rounds);
  }

  /**
   * One setting of the trimmer with all that is cut at it.
   *
   * @param size as told
   * @param pieces so many in all
   * @param from papers and names
   */
  public record Cutting(String size, int pieces, String from) {}

  /**
   * A stop or a mask made once.
   *
   * @param use what it is for
   * @param setting its measures
   * @param times how often it is used
   */
  public record Jig(String use, String setting, int times) {}

  /**
   * One step done on all cards.
   *
   * @param set minutes that are spent once, on the stop, jig or mask
   * @param each minutes that every card then takes
   * @param hands minutes for the whole batch: {@code set} and {@code each} for every card begun
   * @param dries minutes that each card lies
   * @param lying how many cards lie drying at once, when the next is begun while the last dries
   */
  public record Round(
      int step, String title, double set, double each, double hands, double dries, int lying) {}

  /** Minutes of work on all cards. */
  public double hands() {
    return rounds.stream().mapToDouble(Round::hands).sum();
  }

  /** The most cards that lie drying at once: so many places under weights are needed. */
  public int places() {
    return rounds.stream().mapToInt(Round::lying).max().orElse(0);
  }

  /** The sheet for a number of good cards, at least 1. */
  public static RunSheet of(
      CutList cuts, ScoreChart scores, WorkPlan work, MakerUnits units, int copies) {
    int made = (int) Math.ceil(copies * (1 + SPOILAGE) - 1e-9);
    List<Round> rounds = new ArrayList<>();
    for (Step s : work.steps()) {
      rounds.add(round(s, made));
    }
    return new RunSheet(
        copies, made, cutting(cuts, units, made), jigs(cuts, scores, units, made), rounds);
  }

  private static Round round(Step s, int made) {
    double set = s.hands() * setting(s.kind());
    double each = s.hands() - set;
    double next = Math.max(each, 0.25);
    int lying = s.dries() > 0 ? (int) Math.min(made, Math.ceil(s.dries() / next)) : 0;
    return new Round(s.number(), s.title(), set, each, minutes(s, made), s.dries(), lying);
  }

  /** The share of a step's minutes that a batch spends once. */
  private static double setting(Step.Kind kind) {
    return switch (kind) {
      case CUT, BLANK, SCORE -> 1.0 / 2;
      case EMBOSS, OPEN, WINDOW, MAT, CUT_OUT -> 1.0 / 3;
      case SHAPE, WRITE, FOLD, GLUE_TAB, CLOSE_FLAT, MOVING, FINISH, CHECK -> 0;
    };
  }

  /** Minutes of work that a step takes on some cards, set up once; for one card the plan's own. */
  public static double minutes(Step step, int cards) {
    double set = step.hands() * setting(step.kind());
    return set + cards * (step.hands() - set);
  }

  /** Minutes of work that all steps take on some cards, each set up once. */
  public static double minutes(WorkPlan work, int cards) {
    return work.steps().stream().mapToDouble(s -> minutes(s, cards)).sum();
  }

  /** Rectangles by size, the most wanted first; then what templates give. */
  private static List<Cutting> cutting(CutList cuts, MakerUnits units, int made) {
    Map<String, List<CutList.Line>> bySize = new LinkedHashMap<>();
    for (CutList.Line l : cuts.lines()) {
      boolean sized = l.rectangular() || l.embossed();
      String size = sized ? units.size(l.blankWidth(), l.blankHeight()) : "by template";
      bySize.computeIfAbsent(size, k -> new ArrayList<>()).add(l);
    }
    List<Cutting> rows = new ArrayList<>();
    bySize.forEach(
        (size, lines) -> {
          int n = lines.stream().mapToInt(CutList.Line::quantity).sum() * made;
          String from =
              lines.stream()
                  .map(
                      l ->
                          l.quantity() * made
                              + " "
                              + Says.names(l.pieces(), "pieces")
                              + " ("
                              + l.piece().stock().title()
                              + ")")
                  .collect(Collectors.joining(", "));
          rows.add(new Cutting(size, n, from));
        });
    rows.sort(
        Comparator.comparing((Cutting c) -> c.size().equals("by template"))
            .thenComparing(Comparator.comparingInt(Cutting::pieces).reversed()));
    return rows;
  }

  private static List<Jig> jigs(CutList cuts, ScoreChart scores, MakerUnits units, int made) {
    Map<String, Integer> times = new LinkedHashMap<>();
    for (ScoreChart.Row row : scores.rows()) {
      String at =
          row.settings().stream()
              .map(s -> s.aslant() ? "template" : units.text(s.at()))
              .collect(Collectors.joining(", "));
      times.merge("score\n" + at, row.line().quantity() * made, Integer::sum);
    }
    for (CutList.Line line : cuts.lines()) {
      if (line.rectangular()) {
        for (CutList.Opening o : line.openings()) {
          String at =
              o.shape()
                  + " "
                  + units.size(o.width(), o.height())
                  + ", "
                  + units.text(o.fromLeft())
                  + " from the left, "
                  + units.text(o.fromBottom())
                  + " from the bottom";
          String use = o.die().map(d -> "die " + d.label()).orElse("mask for the knife");
          times.merge(use + "\n" + at, line.quantity() * made, Integer::sum);
        }
      }
    }
    List<Jig> jigs = new ArrayList<>();
    times.forEach(
        (key, n) -> {
          int line = key.indexOf('\n');
          jigs.add(new Jig(key.substring(0, line), key.substring(line + 1), n));
        });
    return jigs;
  }
}
