package hingeleaf.pack;

import hingeleaf.card.Piece;
import hingeleaf.plan.CutList;
import hingeleaf.sheet.Grain;
import hingeleaf.sheet.JobUnit;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPiece;
import hingeleaf.sheet.SheetPlan;
import hingeleaf.sheet.SheetStock;
import hingeleaf.sheet.Trimmer;
import hingeleaf.sheet.solve.Effort;
import hingeleaf.sheet.solve.Outcome;
import hingeleaf.sheet.solve.SheetPlanner;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * The sheets of one paper that the cards are cut from.
 *
 * @param stock the paper
 * @param job what was asked of the planner
 * @param plan how the sheets are cut; no sheets where {@code trouble} says why
 * @param priced whether the bench tells what a sheet costs
 * @param trouble sentences; empty where all is well
 */
public record SheetNeed(
    Stock stock, SheetJob job, SheetPlan plan, boolean priced, List<String> trouble) {
  /** What a shape needs round it to be cut by hand, each side, mm; common practice, no source. */
  private static final double HAND_MM = 3;

  private static final double NM = 1e6;
  private static final long MILLIONTHS = 1_000_000L;
  private static final Effort EFFORT = new Effort(1, 4_000, 1);

  public SheetNeed {
    trouble = List.copyOf(trouble);
  }

  /**
   * Plans for every paper of a cut list, in the order in which they come.
   *
   * @param copies how many cards are cut, at least 1
   */
  static List<SheetNeed> of(CutList cuts, Bench bench, int copies) {
    Map<String, List<CutList.Line>> byStock = new LinkedHashMap<>();
    for (CutList.Line line : cuts.lines()) {
      byStock
          .computeIfAbsent(line.piece().stock().name(), k -> new ArrayList<>())
          .add(line);
    }
    return byStock.values().stream().map(lines -> of(lines, bench, copies)).toList();
  }

  private static SheetNeed of(List<CutList.Line> lines, Bench bench, int copies) {
    Stock stock = lines.get(0).piece().stock();
    boolean priced = stock.sheets().stream().anyMatch(s -> s.price() > 0);
    List<SheetPiece> pieces = lines.stream().map(l -> piece(l, copies)).toList();
    List<SheetStock> sheets = sheets(stock, pieces, priced);
    Trimmer trimmer = new Trimmer(nm(bench.trimmer().longest()), 0, 0);
    SheetJob job = new SheetJob(JobUnit.MM, sheets, pieces, trimmer);
    SheetPlan none = new SheetPlan(List.of(), List.of(), 0, 0, "nothing", 0, List.of());
    if (sheets.isEmpty()) {
      return new SheetNeed(stock, job, none, priced, List.of("the bench has no sheets of it"));
    }
    Outcome outcome = SheetPlanner.plan(job, EFFORT, () -> false, p -> {});
    return outcome instanceof Outcome.Planned planned
        ? new SheetNeed(stock, job, planned.plan(), priced, List.of())
        : new SheetNeed(stock, job, none, priced, ((Outcome.Blocked) outcome).sentences());
  }

  /** Where no price tells which size is better, the smallest in which every piece fits. */
  private static List<SheetStock> sheets(Stock stock, List<SheetPiece> pieces, boolean priced) {
    List<SheetStock> all = stock.sheets().stream().map(s -> sheet(s, priced)).toList();
    if (priced || stock.sheets().stream().anyMatch(s -> s.left() >= 0)) {
      return all;
    }
    return all.stream()
        .filter(s -> pieces.stream().allMatch(p -> p.liesUpright(s) || p.liesTurned(s)))
        .min(Comparator.comparingDouble(s -> (double) s.w() * s.h()))
        .map(List::of)
        .orElse(all);
  }

  /** Unpriced sheets cost their area, so that the plan saves paper. */
  private static SheetStock sheet(Stock.Sheet s, boolean priced) {
    long price =
        Math.round((priced ? s.price() : s.width() * s.height() / 1000) * MILLIONTHS);
    OptionalLong left = s.left() < 0 ? OptionalLong.empty() : OptionalLong.of(s.left());
    return new SheetStock(s.name(), nm(s.width()), nm(s.height()), price, left, grain(s.grain()));
  }

  private static SheetPiece piece(CutList.Line line, int copies) {
    Piece p = line.piece();
    double room = line.rectangular() ? 0 : 2 * HAND_MM;
    String name = String.join(", ", line.pieces());
    long count = (long) line.quantity() * copies;
    return new SheetPiece(
        name, nm(p.width() + room), nm(p.height() + room), count, true, grain(p.grain()));
  }

  /** Rounded down, so that what fits exactly still fits. */
  private static long nm(double mm) {
    return (long) Math.floor(mm * NM + 1e-3);
  }

  private static Grain grain(hingeleaf.stock.Grain g) {
    return switch (g) {
      case WIDTH -> Grain.W;
      case HEIGHT -> Grain.H;
      case ANY -> Grain.ANY;
    };
  }

  /** How many sheets of each size, by index in the job's stock. */
  public Map<Integer, Long> counts() {
    Map<Integer, Long> counts = new LinkedHashMap<>();
    plan.sheets().forEach(s -> counts.merge(s.stock(), 1L, Long::sum));
    return counts;
  }
}
