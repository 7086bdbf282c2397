package hingeleaf.post;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which class takes a piece of mail, and why not a cheaper one.
 *
 * @param taken the cheapest class all of whose limits hold; empty where none does
 * @param step the mass up to which its price holds, g; 0 where it has no steps
 * @param missed what would be cheaper, cheapest first, each with every limit that failed
 */
public record Decision(
    Scheme scheme, Mail mail, Optional<PostClass> taken, double step, List<Missed> missed) {
  public Decision {
    missed = List.copyOf(missed);
  }

  /**
   * A cheaper class, or a cheaper step of the same class.
   *
   * @param step g; 0 for a class as a whole
   * @param failures at least one
   */
  public record Missed(PostClass postClass, double step, List<Failure> failures) {
    public Missed {
      failures = List.copyOf(failures);
    }

    /** What would have to change, all of it together, for this one. */
    public List<Change> changes(Mail mail) {
      return failures.stream().map(f -> Change.curing(f, mail)).toList();
    }
  }

  /** Decides by the limits of a scheme. */
  public static Decision of(Scheme scheme, Mail mail) {
    List<Missed> missed = new ArrayList<>();
    for (PostClass postClass : scheme.classes()) {
      List<Failure> failures = postClass.failures(mail);
      if (failures.isEmpty()) {
        postClass
            .lowerStep(mail)
            .map(step -> new Missed(postClass, step.most(), List.of(Failure.of(step, mail))))
            .ifPresent(missed::add);
        double step = postClass.step(mail).map(Limit::most).orElse(0.0);
        return new Decision(scheme, mail, Optional.of(postClass), step, missed);
      }
      missed.add(new Missed(postClass, 0, failures));
    }
    return new Decision(scheme, mail, Optional.empty(), 0, missed);
  }

  /**
   * The cheaper offer that is nearest: fewest failed limits, then the smallest excess in proportion
   * to its bound, then the cheapest. Empty where nothing is cheaper.
   */
  public Optional<Missed> nearest() {
    return missed.stream()
        .min(
            Comparator.comparingInt((Missed m) -> m.failures().size())
                .thenComparingDouble(Decision::worst));
  }

  private static double worst(Missed missed) {
    return missed.failures().stream()
        .mapToDouble(f -> Math.abs(f.outside()) / Math.max(Math.abs(f.bound()), 1e-9))
        .max()
        .orElse(0);
  }

  /**
   * Room to the thickness of the cheapest class (5 mm or 1/4 in with most posts): positive below
   * it, negative above, mm. Empty where that class does not limit thickness.
   */
  public Optional<Double> thicknessMargin() {
    return scheme.classes().get(0).limits().stream()
        .filter(l -> l.figure() == Figure.THICKNESS && Double.isFinite(l.most()))
        .findFirst()
        .map(l -> l.most() - mail.thickness());
  }

  /** Room to every upper bound of the class taken, in the order of the data. */
  public List<Margin> margins() {
    return taken.map(PostClass::limits).orElse(List.of()).stream()
        .filter(l -> Double.isFinite(l.most()) && l.figure() != Figure.STIFF && l.applies(mail))
        .map(l -> new Margin(l, l.most() - mail.figure(l.figure())))
        .toList();
  }

  /**
   * How far inside an upper bound a piece is.
   *
   * @param room mm, g or a plain number; 0 or more
   */
  public record Margin(Limit limit, double room) {}
}
