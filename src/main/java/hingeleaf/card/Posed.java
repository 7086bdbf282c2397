package hingeleaf.card;

import hingeleaf.geom.Rigid;
import java.util.List;

/**
 * Where everything is at one moment.
 *
 * @param motions for each facet of the mechanism, the motion from the reference pose to this one
 * @param values for each joint of the mechanism its value: rad, or mm for sliders
 * @param gap largest distance, in mm, between the two images of any joint's end points; 0 in the
 *     reference pose of a card that closes
 */
public record Posed(List<Rigid> motions, List<Double> values, double gap) {
  public Posed {
    motions = List.copyOf(motions);
    values = List.copyOf(values);
  }
}
