package hingeleaf.fold.contact;

import java.util.List;

/**
 * What was found along the way to a rest.
 *
 * @param order in which the freedoms were moved
 * @param whole whether the solver could follow the whole way
 * @param touches faults first, then by when they happen
 * @param remedies for ornaments that jam; empty where nothing does
 * @param undecided pairs that run along each other too closely to be decided within the budget
 */
public record Way(
    Order order, boolean whole, List<Touch> touches, List<Remedy> remedies, int undecided) {
  public Way {
    touches = List.copyOf(touches);
    remedies = List.copyOf(remedies);
  }

  /** Whether something keeps the card from lying flat. */
  public boolean blocked() {
    return touches.stream().anyMatch(Touch::fault);
  }

  public List<Touch> faults() {
    return touches.stream().filter(Touch::fault).toList();
  }
}
