package hingeleaf.fold;

import hingeleaf.geom.Rigid;
import java.util.Arrays;
import java.util.List;

/**
 * Many poses one after another, each worked out from where it differs from the one before: of
 * thousands of combinations two neighbours differ in their last parts only.
 *
 * <p>A panel that has not moved since the pose before keeps the very same motion, so that whoever
 * looks at the poses can tell by identity what is as it was.
 */
final class Series {
  private final BodyGraph graph;
  private final int[] body;
  private final Poser poser;
  private final double[] values;
  private final Rigid[] motion;
  private final boolean[] moved;

  /**
   * @param body of each panel
   */
  Series(BodyGraph graph, int[] body, Poser poser) {
    this.graph = graph;
    this.body = body;
    this.poser = poser;
    this.values = new double[graph.edges];
    this.motion = new Rigid[graph.nodes];
    this.moved = new boolean[graph.nodes];
    Arrays.fill(values, Double.NaN);
  }

  /**
   * How each panel has moved.
   *
   * @param q values of all joints
   */
  List<Rigid> next(double[] q) {
    for (int v : graph.order) {
      int e = graph.via[v];
      int from = e < 0 ? v : graph.other(e, v);
      moved[v] = motion[v] == null || e >= 0 && (moved[from] || q[e] != values[e]);
      if (moved[v]) {
        motion[v] = poser.motion(v, q, motion);
      }
    }
    System.arraycopy(q, 0, values, 0, values.length);
    Rigid[] panels = new Rigid[body.length];
    for (int f = 0; f < panels.length; f++) {
      panels[f] = motion[body[f]];
    }
    return Arrays.asList(panels);
  }
}
