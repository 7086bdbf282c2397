package hingeleaf.paper.figure;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import java.util.ArrayList;
import java.util.List;

/**
 * Distances that all start at one edge, as a scoring board is read: a line from the edge, a head at
 * every mark, and the numbers standing across it, moved apart where marks are close.
 */
final class RunningScale {
  /** From the edge to the line, mm. */
  private static final double LINE = 4.5;

  /** From the edge to the numbers, mm. */
  private static final double OFF = 7.7;

  private static final double APART = Dimension.SIZE * 1.15;

  /** One mark: where on the figure, and what is written. */
  record Stop(double at, String words) {}

  private RunningScale() {}

  /** Room that the scale takes beside the thing, mm. */
  static double depth(List<Stop> stops, Fonts fonts) {
    double longest = 0;
    for (Stop stop : stops) {
      longest = Math.max(longest, fonts.width(stop.words(), Weight.REGULAR, Dimension.SIZE));
    }
    return OFF + longest;
  }

  /**
   * Beside a thing whose lower left corner is the origin of the figure: below it, read from the
   * left edge, or left of it, read from the lower edge.
   */
  static List<Mark> beside(List<Stop> stops, boolean below) {
    List<Mark> marks = new ArrayList<>();
    Vec2 on = below ? new Vec2(1, 0) : new Vec2(0, 1);
    Vec2 off = below ? new Vec2(0, -1) : new Vec2(-1, 0);
    Vec2 line = off.times(LINE);
    marks.add(new Mark.Stroke(Path.circle(line, 0.9), Pen.DIMENSION));
    Dimension.extension(marks, Vec2.ZERO, line);
    double last = -APART;
    double[] places = spread(stops);
    for (int i = 0; i < stops.size(); i++) {
      Vec2 foot = on.times(stops.get(i).at());
      Vec2 head = foot.plus(line);
      Dimension.extension(marks, foot, head);
      if (stops.get(i).at() - last > 2.4) {
        Dimension.arrow(marks, head, on);
      } else {
        marks.add(new Mark.Fill(Path.circle(head, 0.5), Look.QUIET));
      }
      last = Math.max(0, stops.get(i).at());
      Vec2 place = on.times(places[i]);
      Vec2 jog = place.plus(off.times(LINE + 2.8));
      Dimension.line(marks, head.plus(off.times(1.2)), jog);
      // Numbers stand across the line; their middle is a third of the type above the baseline.
      double down = Dimension.SIZE * (below ? 0.33 : -0.33);
      Vec2 base = place.plus(off.times(OFF)).plus(on.times(down));
      double turn = below ? Math.PI / 2 : 0;
      marks.add(Dimension.words(stops.get(i).words(), base, Anchor.END, turn));
    }
    Dimension.line(marks, line.plus(on.times(0.9)), line.plus(on.times(Math.max(0.9, last))));
    return marks;
  }

  /**
   * Places for numbers, in order, none closer than a line of type and all as near to their marks as
   * that allows: least squares under an order, by pooling neighbours that collide (Barlow, Brunk et
   * al., Statistical Inference under Order Restrictions, 1972).
   */
  static double[] spread(List<Stop> stops) {
    List<double[]> pools = new ArrayList<>();
    for (int i = 0; i < stops.size(); i++) {
      double[] pool = {stops.get(i).at() - i * APART, 1};
      while (!pools.isEmpty() && pools.get(pools.size() - 1)[0] > pool[0]) {
        double[] other = pools.remove(pools.size() - 1);
        double n = other[1] + pool[1];
        pool = new double[] {(other[0] * other[1] + pool[0] * pool[1]) / n, n};
      }
      pools.add(pool);
    }
    double[] places = new double[stops.size()];
    int i = 0;
    for (double[] pool : pools) {
      for (int k = 0; k < pool[1]; k++, i++) {
        places[i] = pool[0] + i * APART;
      }
    }
    return places;
  }
}
