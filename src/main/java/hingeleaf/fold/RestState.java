package hingeleaf.fold;

import java.util.List;

/**
 * One way in which a part of a mechanism can lie.
 *
 * @param values of the part's joints, rad or mm, in the order of its {@link Rests.Choice#joints}
 * @param direction -1 or 1: which way the first moving joint of the part turned to come there; 0
 *     for the reference pose itself
 * @param coplanar whether every fold of the part is open or closed, so that its panels are parallel
 * @param beyond whether the way there leads through another state in which it can lie
 * @param crossing whether panels were seen to pass through each other on the way there; looked at
 *     every few degrees
 */
public record RestState(
    List<Double> values, int direction, boolean coplanar, boolean beyond, boolean crossing) {
  public RestState {
    values = List.copyOf(values);
  }
}
