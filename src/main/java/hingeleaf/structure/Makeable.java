package hingeleaf.structure;

import hingeleaf.card.Card;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.geom.Segment;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Whether each piece can be made with what is on the bench: sheets, trimmer, scoring board. */
final class Makeable {
  private Makeable() {}

  static void check(Card made, Bearings bearings, Assembly report) {
    for (Piece p : made.pieces()) {
      sheet(p, bearings, report);
      trimmer(p, bearings, report);
    }
    grooves(made, bearings, report);
  }

  /** A piece must lie on some sheet of its stock, either way round. */
  private static void sheet(Piece p, Bearings bearings, Assembly report) {
    List<Stock.Sheet> sheets = p.stock().sheets();
    boolean fits = sheets.isEmpty() || sheets.stream().anyMatch(s -> lies(p, s));
    if (!fits) {
      Stock.Sheet largest =
          sheets.stream()
              .max((a, b) -> Double.compare(a.width() * a.height(), b.width() * b.height()))
              .orElseThrow();
      report.report(
          Problem.blocks(
              "larger-than-sheet",
              p.id(),
              p.origin(),
              p.name()
                  + ": the piece is "
                  + bearings.units().size(p.width(), p.height())
                  + " as cut, larger than every sheet of "
                  + p.stock().title()
                  + " (the largest, "
                  + largest.name()
                  + ", is "
                  + bearings.units().size(largest.width(), largest.height())
                  + ") - make the card smaller, its sides or tabs narrower, or use larger sheets"));
    }
  }

  private static boolean lies(Piece p, Stock.Sheet s) {
    double eps = 1e-6;
    return (p.width() <= s.width() + eps && p.height() <= s.height() + eps)
        || (p.height() <= s.width() + eps && p.width() <= s.height() + eps);
  }

  private static void trimmer(Piece p, Bearings bearings, Assembly report) {
    double shorter = Math.min(p.width(), p.height());
    double longest = bearings.bench().trimmer().longest();
    if (shorter > longest + 1e-6) {
      report.report(
          Problem.warns(
              "longer-than-trimmer",
              p.id(),
              p.origin(),
              p.name()
                  + ": its shorter side, "
                  + bearings.say(shorter)
                  + ", is longer than the trimmer's cut of "
                  + bearings.say(longest)
                  + " - cut it with a knife along a steel ruler"));
    }
  }

  /**
   * Scores of frames that fall between the grooves are made with ruler and stylus: told once. Those
   * of leaves and stays are few, and the plan says so beside each.
   */
  private static void grooves(Card made, Bearings bearings, Assembly report) {
    Bench bench = bearings.bench();
    double step = bench.scoringBoard().step();
    Set<Double> off = new TreeSet<>();
    List<String> pieces = new ArrayList<>();
    double before = 0;
    for (Piece p : made.pieces()) {
      if (p.labels().stream().noneMatch(l -> l.name().startsWith("side-"))) {
        continue;
      }
      boolean any = false;
      double last = 0;
      for (Score s : p.scores()) {
        double at = along(s.at(), p);
        if (!Double.isNaN(at) && Math.abs(Math.rint(at / step) * step - at) > 0.05) {
          before = off.isEmpty() ? last : before;
          off.add(Math.rint(at * 1e6) / 1e6);
          any = true;
        }
        last = Double.isNaN(at) ? last : at;
      }
      if (any) {
        pieces.add(p.name());
      }
    }
    if (!off.isEmpty()) {
      report.report(offGroove(off, pieces, before, bearings));
    }
  }

  /**
   * @param before where the score before the first of these is, which is on a groove; 0 for none
   */
  private static Problem offGroove(
      Set<Double> off, List<String> pieces, double before, Bearings bearings) {
    double step = bearings.bench().scoringBoard().step();
    List<String> at = off.stream().limit(4).map(bearings::say).toList();
    double first = off.iterator().next();
    double below = Math.floor(first / step) * step;
    String nearby =
        below > before
            ? bearings.say(below - before) + " or " + bearings.say(below + step - before)
            : bearings.say(below + step - before);
    return new Problem(
        "off-groove",
        Level.NOTES,
        pieces.size() == 1 ? pieces.get(0) : "",
        "",
        null,
        "scores at "
            + String.join(", ", at)
            + (off.size() > 4 ? " ..." : "")
            + " fall between the grooves of the scoring board, which are "
            + bearings.say(step)
            + " apart: use ruler and stylus, or make "
            + (before > 0 ? "the strip before the first of them " : "sides and tabs ")
            + nearby,
        java.util.Map.of("step", step),
        List.of());
  }

  private static double along(Segment s, Piece p) {
    if (Math.abs(s.from().x() - s.to().x()) < 1e-9) {
      return s.from().x() - p.box().minX();
    }
    return Math.abs(s.from().y() - s.to().y()) < 1e-9 ? s.from().y() - p.box().minY() : Double.NaN;
  }
}
