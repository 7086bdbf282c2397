package hingeleaf.plan;

import hingeleaf.card.Join;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Glue;
import java.util.Optional;

/**
 * What one flat join takes of its glue, as the plan says it is put on: wet glue all over the patch;
 * tape in one strip along the middle of a tab, or once round the edge of any other part.
 *
 * @param glue of the bench; empty where it has none of that name
 * @param covered what is covered, mm2
 * @param length of tape, mm; 0 for wet glue
 */
public record GlueUse(Optional<Glue> glue, double covered, double length) {
  /**
   * The glue of a join.
   *
   * @param g not raised
   */
  public static GlueUse of(Join.Glue g, Bench bench) {
    Optional<Glue> glue = bench.glue(g.glue());
    Region patch = g.a().area();
    return glue.filter(k -> k.kind() == Glue.Kind.TAPE)
        .map(tape -> tape(g, chosen(g, tape, bench)))
        .orElse(new GlueUse(glue, patch.area(), 0));
  }

  /** What is too wide for its tab gives way to the widest that is not, or is cut down. */
  private static Glue chosen(Join.Glue g, Glue tape, Bench bench) {
    double tab = Says.shortSide(g.a());
    return !onTab(g) || Tapes.fits(tape, tab) ? tape : Tapes.onTab(bench, tab).orElse(tape);
  }

  private static GlueUse tape(Join.Glue g, Glue tape) {
    Region patch = g.a().area();
    Box box = patch.box();
    double length =
        onTab(g)
            ? Math.max(box.width(), box.height())
            : Math.max(0, patch.outer().perimeter() - 4 * tape.width());
    double covered = Math.min(patch.area(), length * tape.width());
    return new GlueUse(Optional.of(tape), covered, length);
  }

  static boolean onTab(Join.Glue g) {
    return g.a().panel().equals("tab") || g.a().panel().startsWith("tab-");
  }

  /** What stays in the card, g; 0 for a glue that the bench does not know. */
  public double grams() {
    return covered * glue.map(Glue::gramsPerM2).orElse(0.0) * 1e-6;
  }
}
