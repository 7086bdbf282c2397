package hingeleaf.post;

import java.util.List;

/**
 * One bound of one class. Both bounds are themselves allowed.
 *
 * @param least negative infinity where there is none
 * @param most positive infinity where there is none
 * @param when the limit holds if any of these does; always, if the list is empty
 * @param confidence how sure the bound is
 * @param source the document
 */
public record Limit(
    Figure figure,
    double least,
    double most,
    List<When> when,
    Confidence confidence,
    Source source) {
  /** Lengths or masses closer than this are one: a thousandth of what a counter can read. */
  static final double SAME = 1e-6;

  public Limit {
    when = List.copyOf(when);
    if (!(least <= most)) {
      throw new IllegalArgumentException(
          figure.words() + ": at least " + least + " and at most " + most + " cannot both hold");
    }
  }

  /**
   * A condition on another figure.
   *
   * @param over holds where the figure is more than this; negative infinity where there is none
   * @param most and at most this; positive infinity where there is none
   */
  public record When(Figure figure, double over, double most) {
    boolean holds(Mail mail) {
      double value = mail.figure(figure);
      return value > over + SAME && value <= most + SAME;
    }
  }

  /** Where a bound comes from, surest first. */
  public enum Confidence {
    /** Read in a document of the body that makes the rule. */
    SEEN,
    /** Read where somebody else quotes it. */
    SECONDARY,
    /** From memory, not verified. */
    MEMORY,
    /** What the trade does; no document gives a number. */
    COMMON_PRACTICE
  }

  /**
   * A document.
   *
   * @param seen the day on which it was read, as 2026-11-25; empty where it was not
   */
  public record Source(String document, String seen) {}

  /** Whether this limit is asked of the piece at all. */
  boolean applies(Mail mail) {
    return when.isEmpty() || when.stream().anyMatch(w -> w.holds(mail));
  }

  /** How far the piece is outside: 0 inside, more than most positive, less than least negative. */
  double outside(Mail mail) {
    double value = mail.figure(figure);
    if (!applies(mail)) {
      return 0;
    }
    if (value > most + SAME) {
      return value - most;
    }
    return value < least - SAME ? value - least : 0;
  }
}
