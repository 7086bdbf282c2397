package hingeleaf.fold;

import hingeleaf.card.Mechanism;
import hingeleaf.card.Posed;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * From joint values to where every panel is, along breadth-first trees from the fixed panels, so
 * that rounding has few joints to gather in.
 */
final class Poser {
  private final Mechanism mechanism;
  private final Bodies bodies;
  private final BodyGraph graph;
  private final Axes axes;

  Poser(Mechanism mechanism, Bodies bodies, BodyGraph graph, Axes axes) {
    this.mechanism = mechanism;
    this.bodies = bodies;
    this.graph = graph;
    this.axes = axes;
  }

  Posed posed(double[] q) {
    Rigid[] motion = bodyMotions(q);
    List<Rigid> motions = ofPanels(motion);
    List<Double> values = new ArrayList<>(q.length);
    for (double x : q) {
      values.add(x);
    }
    return new Posed(motions, values, gap(motion, q));
  }

  /** The motions of all panels alone. */
  List<Rigid> motions(double[] q) {
    return ofPanels(bodyMotions(q));
  }

  private Rigid[] bodyMotions(double[] q) {
    Rigid[] motion = new Rigid[bodies.count];
    for (int v : graph.order) {
      motion[v] = motion(v, q, motion);
    }
    return motion;
  }

  private List<Rigid> ofPanels(Rigid[] motion) {
    Rigid[] motions = new Rigid[mechanism.facets().size()];
    for (int f = 0; f < motions.length; f++) {
      motions[f] = motion[bodies.ofFacet[f]];
    }
    return Arrays.asList(motions);
  }

  /**
   * The motion of one body; the very same as that of the body before it where the joint between
   * them stands still.
   *
   * @param motion those of all bodies before it in the order of the search
   */
  Rigid motion(int v, double[] q, Rigid[] motion) {
    int e = graph.via[v];
    if (e < 0) {
      return Rigid.IDENTITY;
    }
    Rigid before = motion[graph.b[e] == v ? graph.a[e] : graph.b[e]];
    if (q[e] == 0) {
      return before;
    }
    return joint(e, graph.b[e] == v ? q[e] : -q[e]).then(before);
  }

  /** The motion of panel b relative to panel a at a value of the joint between them. */
  private Rigid joint(int e, double value) {
    return axes.slides[e]
        ? Rigid.translation(axes.along[e].times(value))
        : Rigid.rotation(axes.from[e], axes.to[e], value);
  }

  /** Largest distance between the two images of any joint's end points, mm. */
  private double gap(Rigid[] motion, double[] q) {
    double worst = 0;
    for (int e = 0; e < graph.edges; e++) {
      Rigid a = motion[graph.a[e]];
      Rigid b = motion[graph.b[e]];
      Vec3 shift = axes.slides[e] ? axes.along[e].times(q[e]) : Vec3.ZERO;
      worst = Math.max(worst, a.apply(axes.from[e].plus(shift)).distance(b.apply(axes.from[e])));
      worst = Math.max(worst, a.apply(axes.to[e].plus(shift)).distance(b.apply(axes.to[e])));
    }
    return worst;
  }
}
