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

  /** Below a thing whose left edge is at x = 0 and whose lower edge at y = 0, figure mm. */
  static List<Mark> below(List<Stop> stops) {
    List<Mark> marks = new ArrayList<>();
    double y = -4.5;
    marks.add(new Mark.Stroke(Path.circle(new Vec2(0, y), 0.9), Pen.DIMENSION));
    Dimension.extension(marks, Vec2.ZERO, new Vec2(0, y));
    double end = 0;
    double last = -APART;
    double[] places = spread(stops);
    for (int i = 0; i < stops.size(); i++) {
      double x = stops.get(i).at();
      Dimension.extension(marks, new Vec2(x, 0), new Vec2(x, y));
      if (x - last > 2.4) {
        Dimension.arrow(marks, new Vec2(x, y), new Vec2(1, 0));
      } else {
        marks.add(new Mark.Fill(Path.circle(new Vec2(x, y), 0.5), Look.QUIET));
      }
      last = x;
      end = Math.max(end, x);
      double place = places[i];
      Dimension.line(marks, new Vec2(x, y - 1.2), new Vec2(place, y - 2.8));
      double down = Dimension.SIZE * 0.33;
      marks.add(
          new Mark.Words(
              stops.get(i).words(),
              new Vec2(place + down, -OFF),
              Dimension.SIZE,
              Weight.REGULAR,
              Anchor.END,
              Look.INK,
              Math.PI / 2));
    }
    Dimension.line(marks, new Vec2(0.9, y), new Vec2(end, y));
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
