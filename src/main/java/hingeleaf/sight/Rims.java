package hingeleaf.sight;

import hingeleaf.card.Score;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;

/** The edges of a panel, told apart into folds, slits and plain cuts by the lines of its piece. */
final class Rims {
  private Rims() {}

  /**
   * A straight edge of a panel, in piece or in view coordinates.
   *
   * @param kind CUT or FOLD
   * @param line which score or slit of the piece it runs along; empty for a plain cut
   */
  record Rim(Segment at, VisibleLine.Kind kind, String line) {
    /** Whether another panel of the piece lies, or can lie, on the other side. */
    boolean shared() {
      return !line.isEmpty();
    }

    Rim at(Segment elsewhere) {
      return new Rim(elsewhere, kind, line);
    }
  }

  /** The scores and slits of a piece. */
  static List<Rim> inside(Placed part) {
    List<Rim> lines = new ArrayList<>();
    for (Score score : part.piece().scores()) {
      lines.add(new Rim(score.at(), VisibleLine.Kind.FOLD, score.name()));
    }
    List<Segment> slits = part.piece().slits();
    for (int i = 0; i < slits.size(); i++) {
      lines.add(new Rim(slits.get(i), VisibleLine.Kind.CUT, "slit " + i));
    }
    return lines;
  }

  /** All edges of a panel, outer ring first, each in the direction in which the ring runs. */
  static List<Rim> of(Placed part) {
    List<Rim> lines = inside(part);
    List<Rim> rims = new ArrayList<>();
    List<Ring> rings = new ArrayList<>();
    rings.add(part.panel().region().outer());
    rings.addAll(part.panel().region().holes());
    for (Ring ring : rings) {
      List<Vec2> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        split(new Segment(p.get(i), p.get((i + 1) % p.size())), lines, rims);
      }
    }
    return rims;
  }

  private static void split(Segment edge, List<Rim> lines, List<Rim> out) {
    if (edge.length() < Tolerance.SLIVER_MM) {
      out.add(new Rim(edge, VisibleLine.Kind.CUT, ""));
      return;
    }
    Spans free = Spans.whole();
    for (Rim line : lines) {
      Spans along = Spans.shared(edge, line.at());
      if (along.isEmpty()) {
        continue;
      }
      Spans shared = free.and(along);
      shared.on(edge).forEach(s -> out.add(line.at(s)));
      free = free.minus(shared);
    }
    free.on(edge).forEach(s -> out.add(new Rim(s, VisibleLine.Kind.CUT, "")));
  }
}
