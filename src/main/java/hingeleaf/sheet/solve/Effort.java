package hingeleaf.sheet.solve;

/**
 * How hard to try.
 *
 * @param seed where chance begins; the same seed and steps give the same plan
 * @param steps how many ruin-and-recreate steps each lane may take in all
 * @param threads how many threads may be used; the plan does not depend on it
 */
public record Effort(long seed, long steps, int threads) {

  /** Enough for a maker's job. */
  public static final Effort USUAL = new Effort(1, 400_000, 2);
}
