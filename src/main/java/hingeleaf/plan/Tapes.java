package hingeleaf.plan;

import hingeleaf.card.Join;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Glue;
import java.util.Comparator;
import java.util.Optional;

/** Which double-sided tape of a bench a join has room for. */
final class Tapes {
  /** What a tape leaves free of a tab, both edges together, mm: common practice, no source. */
  static final double CLEAR_OF_TAB_MM = 2;

  /** How far inside the edge of a flat part a tape runs, mm: common practice, no source. */
  static final double INSIDE_MM = 2;

  private Tapes() {}

  /** Whether a tape lies on a tab and leaves its edges free. */
  static boolean fits(Glue tape, double tab) {
    return tape.width() <= tab - CLEAR_OF_TAB_MM + 1e-9;
  }

  /** The widest tape of a bench that a tab has room for. */
  static Optional<Glue> onTab(Bench bench, double tab) {
    return widest(bench, tab - CLEAR_OF_TAB_MM);
  }

  /**
   * The widest tape of a bench that a flat join has room for: along the middle of a tab, once round
   * the edge of a rectangular part or of a rectangular opening in it; empty where none is narrow
   * enough, or the part has another shape.
   */
  static Optional<Glue> on(Join.Glue g, Bench bench) {
    Region area = g.a().area();
    if (GlueUse.onTab(g)) {
      return onTab(bench, Says.shortSide(g.a()));
    }
    return rectangle(area.outer()) ? widest(bench, room(area)) : Optional.empty();
  }

  private static Optional<Glue> widest(Bench bench, double room) {
    return bench.glues().stream()
        .filter(t -> t.kind() == Glue.Kind.TAPE && t.width() <= room + 1e-9)
        .max(Comparator.comparingDouble(Glue::width));
  }

  private static boolean rectangle(Ring ring) {
    Box b = ring.box();
    return Math.abs(Region.of(ring).area() - b.width() * b.height()) < 1e-6;
  }

  /** Two rows side by side, or one between an edge and the nearest opening. */
  private static double room(Region area) {
    Box outer = area.outer().box();
    double room = Math.min(outer.width(), outer.height()) / 2 - INSIDE_MM;
    for (Ring hole : area.holes()) {
      Box o = hole.box();
      double border =
          Math.min(
              Math.min(o.minX() - outer.minX(), outer.maxX() - o.maxX()),
              Math.min(o.minY() - outer.minY(), outer.maxY() - o.maxY()));
      room = Math.min(room, border - 2 * INSIDE_MM);
    }
    return room;
  }
}
