package hingeleaf.intake;

import hingeleaf.card.Mechanism;
import hingeleaf.finding.Problem;
import java.util.List;
import java.util.Map;

/**
 * A mechanism as somebody wrote it down, and the states they ask for.
 *
 * @param mechanism in mm, in its reference pose
 * @param states in the order of the file
 * @param notes what is odd but can be folded
 */
public record MechanismFile(Mechanism mechanism, List<State> states, List<Problem> notes) {
  public MechanismFile {
    states = List.copyOf(states);
    notes = List.copyOf(notes);
  }

  /**
   * @param drive values by fold, rad
   * @param near rough values by fold, rad; empty where the file gives none
   */
  public record State(Map<String, Double> drive, Map<String, Double> near) {
    public State {
      drive = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(drive));
      near = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(near));
    }
  }
}
