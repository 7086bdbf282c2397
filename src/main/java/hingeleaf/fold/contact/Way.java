package hingeleaf.fold.contact;

import java.util.List;

/**
 * What was found along the way to a rest.
 *
 * @param order in which the freedoms were moved
 * @param whole whether the solver could follow the whole way
 * @param touches faults first, then by when they happen
 * @param remedies for ornaments that jam or run along something; empty where nothing does
 */
public record Way(Order order, boolean whole, List<Touch> touches, List<Remedy> remedies) {
  public Way {
    touches = List.copyOf(touches);
    remedies = List.copyOf(remedies);
  }

  /** Whether something keeps the card from lying flat. */
  public boolean blocked() {
    return touches.stream().anyMatch(Touch::fault);
  }

  /** Pairs that run along each other too closely to tell. */
  public List<Touch> close() {
    return touches.stream().filter(t -> t.kind() == Touch.Kind.RUNS_ALONG).toList();
  }

  public List<Touch> faults() {
    return touches.stream().filter(Touch::fault).toList();
  }
}
