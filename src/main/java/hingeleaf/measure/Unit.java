package hingeleaf.measure;

import java.util.List;
import java.util.Optional;

/** A unit in which a maker writes lengths and reads the plan. */
public enum Unit {
  /** Millimetre. */
  MM("mm", Rational.ONE, "millimetres"),
  /** Centimetre, 10 mm. */
  CM("cm", Rational.of(10, 1), "centimetres"),
  /** International inch, 25.4 mm exactly since the agreement of 1 July 1959. */
  IN("in", Rational.of(254, 10), "inches");

  private final String word;

  @SuppressWarnings("ImmutableEnumChecker") // a record of two BigIntegers
  private final Rational mm;

  private final String plural;

  Unit(String word, Rational mm, String plural) {
    this.word = word;
    this.mm = mm;
    this.plural = plural;
  }

  /** The word used in files: mm, cm or in. */
  public String word() {
    return word;
  }

  /** How many millimetres one is. */
  public Rational mm() {
    return mm;
  }

  /** In full and many: millimetres, centimetres, inches. */
  public String plural() {
    return plural;
  }

  /** Whether it is one of the metric ones. */
  public boolean metric() {
    return this != IN;
  }

  /** The unit with this {@link #word()}, if there is one. */
  public static Optional<Unit> named(String word) {
    for (Unit u : values()) {
      if (u.word.equals(word)) {
        return Optional.of(u);
      }
    }
    return Optional.empty();
  }

  /** The words of all units. */
  public static List<String> words() {
    return List.of(MM.word, CM.word, IN.word);
  }
}
