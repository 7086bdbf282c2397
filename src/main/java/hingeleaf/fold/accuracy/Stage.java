package hingeleaf.fold.accuracy;

import java.util.List;
import java.util.Map;

/**
 * A stage as cut: the four fold lines on its piece and the two lines it stands on.
 *
 * @param piece id
 * @param folds names of the four scores, by position
 * @param at their positions, mm
 * @param settings of the four scores
 * @param stands positions of the two landing lines on the layer behind, mm
 * @param landing settings of these two; absent where they are the edge that everything is measured
 *     from
 * @param lean 1 or -1, which way it is laid flat
 * @param behind id of the piece that it stands on
 * @param tab width of the glue tab that is closed last, mm
 * @param give by how much paper at the scores gives way, mm
 */
record Stage(
    String piece,
    List<String> folds,
    double[] at,
    List<Setting> settings,
    double[] stands,
    List<Map.Entry<Integer, Setting>> landing,
    int lean,
    String behind,
    double tab,
    double give) {

  /** The links with these errors of settings, mm. */
  FourBar links(Map<Setting, Double> errors) {
    double[] u = at.clone();
    for (int i = 0; i < 4; i++) {
      u[i] += errors.getOrDefault(settings.get(i), 0.0);
    }
    double[] b = stands.clone();
    for (Map.Entry<Integer, Setting> l : landing) {
      b[l.getKey()] += errors.getOrDefault(l.getValue(), 0.0);
    }
    return new FourBar(b[1] - b[0], u[1] - u[0], u[2] - u[1], u[3] - u[2]);
  }
}
