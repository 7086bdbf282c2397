package hingeleaf.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Fits the layers of a stack to those that are cut already: which widths the others get, where tabs
 * are glued, and which cut piece is better cut anew.
 *
 * <p>A stage with sides a and c under a panel p lies flat leaning to the second side where the feet
 * stand p + a - c apart, to the first where they stand p + c - a apart (the triangle of a four-bar
 * laid flat). What the layer behind is wider than that, the tabs are set in; what it is narrower,
 * they reach out over its edge. Over all widths in question the cheapest choice is found by working
 * forwards from the back, one layer after the other (dynamic programming).
 */
final class StackFit {
  /** Tabs that together reach further over the edges are seen and felt: common practice, mm. */
  static final double MOST_OUT_MM = 1;

  /** Tabs set in further stand visibly off the edge: common practice, no source, mm. */
  private static final double MOST_IN_MM = 12;

  /** A panel that stands further out of true is seen: common practice, no source, as a slope. */
  static final double MOST_ASKEW = Math.tan(Math.toRadians(1.5));

  private static final double RECUT = 1000;
  private static final double CHANGE = 3;
  private static final double IN = 10;
  private static final double OUT = 20;
  private static final double EPS = 1e-6;

  private final List<Layer> designed;
  private final List<Layer> now;
  private final Set<String> cut;
  private final boolean tabsIn;
  private final List<Double> widths;

  /**
   * One layer of the outcome.
   *
   * @param layer as it shall be
   * @param recut whether it was cut and has to be cut anew
   * @param trim whether it was cut and loses a strip
   */
  record Fitted(Layer layer, boolean recut, boolean trim) {}

  private record Choice(
      Layer layer, boolean recut, boolean trim, double cost, @Nullable Choice before) {}

  private StackFit(List<Layer> designed, List<Layer> now, Set<String> cut, boolean tabsIn) {
    this.designed = designed;
    this.now = now;
    this.cut = cut;
    this.tabsIn = tabsIn;
    Set<Double> all = new TreeSet<>();
    designed.forEach(l -> all.add(l.across()));
    for (Layer l : now) {
      all.add(l.across());
      if (!l.back()) {
        double beside = tabsIn ? 0 : l.tabs().get(0) + l.tabs().get(1);
        all.add(l.across() + l.uneven() + beside);
        all.add(l.across() - l.uneven() + beside);
      }
    }
    this.widths = List.copyOf(all);
  }

  /**
   * @param designed from the back, as the design has them
   * @param now the same as they are: measured where they are cut
   * @param cut names of those that are cut
   */
  static List<Fitted> of(List<Layer> designed, List<Layer> now, Set<String> cut, boolean tabsIn) {
    return new StackFit(designed, now, cut, tabsIn).solve();
  }

  private List<Fitted> solve() {
    List<Choice> reached = choices(0, null);
    for (int i = 1; i < now.size(); i++) {
      List<Choice> next = new ArrayList<>();
      for (Choice before : reached) {
        next.addAll(choices(i, before));
      }
      reached = cheapest(next);
    }
    Choice best = reached.get(0);
    for (Choice c : reached) {
      best = c.cost < best.cost - EPS ? c : best;
    }
    List<Fitted> all = new ArrayList<>();
    for (Choice c = best; c != null; c = c.before) {
      all.add(0, new Fitted(c.layer, c.recut, c.trim));
    }
    return all;
  }

  /** One choice for each width of the last layer: no more can be told apart by what follows. */
  private static List<Choice> cheapest(List<Choice> all) {
    List<Choice> best = new ArrayList<>();
    for (Choice c : all) {
      int same = -1;
      for (int i = 0; i < best.size(); i++) {
        same = Math.abs(best.get(i).layer.across() - c.layer.across()) < EPS ? i : same;
      }
      if (same < 0) {
        best.add(c);
      } else if (c.cost < best.get(same).cost - EPS) {
        best.set(same, c);
      }
    }
    return best;
  }

  private List<Choice> choices(int i, @Nullable Choice before) {
    Layer is = now.get(i);
    Layer was = designed.get(i);
    boolean fixed = cut.contains(is.name());
    List<Choice> all = new ArrayList<>();
    if (fixed) {
      add(all, is, false, false, 0, before);
    }
    for (double w : widths) {
      boolean trim = fixed && is.back() && w < is.across() - EPS;
      double moved = Math.abs(w - was.across());
      double change = moved > EPS ? CHANGE + moved : 0;
      Layer fresh = was.acrossIs(w).alongIs(is.along());
      if (trim) {
        add(all, is.acrossIs(w), false, true, CHANGE + Math.abs(w - is.across()), before);
      }
      add(all, fresh, fixed, false, fixed ? RECUT + change : change, before);
    }
    return all;
  }

  private void add(
      List<Choice> all,
      Layer layer,
      boolean recut,
      boolean trim,
      double own,
      @Nullable Choice before) {
    if (before == null) {
      all.add(new Choice(layer, recut, trim, own, null));
      return;
    }
    double least = Double.POSITIVE_INFINITY;
    double in = 0;
    for (int lean : new int[] {1, -1}) {
      double here = in(before.layer, layer, lean);
      double cost = stage(layer, here);
      if (cost < least - EPS) {
        least = cost;
        in = here;
      }
    }
    if (Double.isFinite(least)) {
      Layer glued = layer.gluedIn(glue(in));
      all.add(new Choice(glued, recut, trim, before.cost + own + least, before));
    }
  }

  /** How far both tabs together are set in so that the stage lies flat this way. */
  private double in(Layer behind, Layer layer, int lean) {
    double beside = tabsIn ? 0 : layer.tabs().get(0) + layer.tabs().get(1);
    return behind.across() - beside - layer.across() - lean * layer.uneven();
  }

  private static double stage(Layer layer, double in) {
    boolean askew = Math.abs(layer.uneven()) > MOST_ASKEW * layer.across();
    if (in < -MOST_OUT_MM - EPS || in > MOST_IN_MM + EPS || askew) {
      return Double.POSITIVE_INFINITY;
    }
    return in > 0 ? IN * in : -OUT * in;
  }

  /** A little is left to the second tab; more is shared, so that the frame stays in the middle. */
  private static List<Double> glue(double in) {
    if (Math.abs(in) < EPS) {
      return List.of(0.0, 0.0);
    }
    return Math.abs(in) <= MOST_OUT_MM + EPS ? List.of(0.0, in) : List.of(in / 2, in / 2);
  }
}
