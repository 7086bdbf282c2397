package hingeleaf.fold.contact;

/**
 * Two leaves that are hung facing each other and meet when they are shut.
 *
 * @param first door, as in {@link Swing}
 * @param second the other
 * @param gap between their free edges, tongues left out, mm; negative where they overlap
 * @param need the gap at which both swing at once, mm: what the rear corners sweep beyond the
 *     leaves
 * @param laps the door whose tongue laps over the other leaf and that opens first; empty for none
 */
public record Meeting(String first, String second, double gap, double need, String laps) {
  /** A hair: paper gives that much (common practice, no source), mm. */
  private static final double GIVES_MM = 0.05;

  /** Whether they cannot both be opened and shut freely. */
  public boolean binds() {
    return gap < need - GIVES_MM;
  }

  /** How much must be taken off between them, mm; at most 0 where nothing must. */
  public double over() {
    return need - gap;
  }
}
