package hingeleaf.pack;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.measure.MakerUnits;
import hingeleaf.plan.CutList;
import hingeleaf.plan.FoamPads;
import hingeleaf.plan.Foams;
import hingeleaf.plan.GlueUse;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Glue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one card uses up beside its papers.
 *
 * @param uses in the order in which they are met
 * @param knifeMm length that is cut with a knife, mm: what wears blades
 */
public record Consumption(List<Use> uses, double knifeMm) {
  /**
   * A blade cuts about so much card before it drags, mm: common practice, no source. Ten metres.
   */
  public static final double BLADE_MM = 10_000;

  public Consumption {
    uses = List.copyOf(uses);
  }

  /**
   * Something used.
   *
   * @param name as on the plan
   * @param amount in {@code unit}
   * @param unit "g", "m" or "cm2"
   * @param pack what a pack holds, in the same unit; 0 where not told
   * @param price of a pack in the bench's money; 0 where not told
   */
  public record Use(String name, double amount, String unit, double pack, double price) {
    private Use plus(double more) {
      return new Use(name, amount + more, unit, pack, price);
    }
  }

  static Consumption of(Card card, CutList cuts, Bench bench, Foams foams, MakerUnits units) {
    return of(card.joins(), cuts, bench, foams, units);
  }

  /** What some joins of a card use up. */
  static Consumption of(
      List<Join> joins, CutList cuts, Bench bench, Foams foams, MakerUnits units) {
    Map<String, Use> uses = new LinkedHashMap<>();
    for (Join j : joins) {
      if (j instanceof Join.Glue g) {
        add(uses, g.raisedBy() > 0 ? foam(g, foams.under(g), units) : glue(g, bench));
      }
    }
    return new Consumption(new ArrayList<>(uses.values()), knife(cuts));
  }

  private static void add(Map<String, Use> uses, Use use) {
    uses.merge(use.name(), use, (a, b) -> a.plus(b.amount()));
  }

  private static Use glue(Join.Glue g, Bench bench) {
    GlueUse use = GlueUse.of(g, bench);
    if (use.glue().isEmpty()) {
      return new Use(g.glue(), use.covered() / 100, "cm2", 0, 0);
    }
    Glue glue = use.glue().get();
    return glue.kind() == Glue.Kind.TAPE
        ? new Use(glue.title(), use.length() / 1000, "m", glue.packSize(), glue.price())
        : new Use(
            glue.title(),
            use.covered() * glue.usedPerM2() / 1e6,
            "g",
            glue.packSize(),
            glue.price());
  }

  private static Use foam(Join.Glue g, FoamPads pads, MakerUnits units) {
    double area = pads.used() / 100;
    return pads.foam()
        .map(f -> new Use(f.title(), area, "cm2", f.packArea() / 100, f.price()))
        .orElse(new Use("foam " + units.fine(g.raisedBy()), area, "cm2", 0, 0));
  }

  private static double knife(CutList cuts) {
    double length = 0;
    for (CutList.Line line : cuts.lines()) {
      double each = line.rectangular() ? 0 : line.piece().shape().outer().perimeter();
      for (int i = 0; i < line.openings().size(); i++) {
        if (line.openings().get(i).die().isEmpty()) {
          each += line.piece().apertures().get(i).perimeter();
        }
      }
      length += each * line.quantity();
    }
    return length;
  }
}
