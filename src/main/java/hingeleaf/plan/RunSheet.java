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
   * @param hands minutes for the whole batch
   * @param dries minutes that each card lies
   * @param lying how many cards lie drying at once, when the next is begun while the last dries
   */
  public record Round(int step, String title, double hands, double dries, int lying) {}

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
      double each = Math.max(s.hands(), 0.25);
      int lying = s.dries() > 0 ? (int) Math.min(made, Math.ceil(s.dries() / each)) : 0;
      rounds.add(new Round(s.number(), s.title(), s.hands() * made, s.dries(), lying));
    }
    return new RunSheet(
        copies, made, cutting(cuts, units, made), jigs(cuts, scores, units, made), rounds);
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
