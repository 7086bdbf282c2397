package hingeleaf.post;

import java.util.List;
import java.util.Optional;

/**
 * A class of post.
 *
 * @param name a stable word, such as {@code letter}
 * @param title as the counter calls it
 * @param rank 1 for the cheapest of its scheme, then upwards
 * @param limits all of which must hold
 * @param steps limits of mass up to which one price holds, rising; empty where there is one price
 * @param also what no figure tells, to be read by the maker, such as "no clasps or buttons"
 */
public record PostClass(
    String name, String title, int rank, List<Limit> limits, List<Limit> steps, List<String> also) {
  public PostClass {
    limits = List.copyOf(limits);
    steps = List.copyOf(steps);
    also = List.copyOf(also);
    for (int i = 1; i < steps.size(); i++) {
      if (!(steps.get(i).most() > steps.get(i - 1).most())) {
        throw new IllegalArgumentException(name + ": the steps of weight must rise");
      }
    }
  }

  /** The failed limits of this class for a piece, in the order of the data. */
  public List<Failure> failures(Mail mail) {
    return limits.stream().filter(l -> l.outside(mail) != 0).map(l -> Failure.of(l, mail)).toList();
  }

  /** The step that a mass pays; empty where the class has no steps or ends below that mass. */
  public Optional<Limit> step(Mail mail) {
    return steps.stream().filter(s -> s.outside(mail) == 0).findFirst();
  }

  /** The step just below the one that a mass pays; empty where there is none. */
  public Optional<Limit> lowerStep(Mail mail) {
    return steps.stream().filter(s -> s.outside(mail) > 0).reduce((first, second) -> second);
  }
}
