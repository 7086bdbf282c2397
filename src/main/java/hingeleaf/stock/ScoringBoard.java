package hingeleaf.stock;

/**
 * A board with parallel grooves; the piece lies against a stop at the left edge, so that a groove's
 * number is the distance from that edge.
 *
 * @param step from one groove to the next, the first one step from the stop, mm; more than 0
 * @param longest distance of the last groove from the stop, mm; at least one step
 */
public record ScoringBoard(double step, double longest) {
  public ScoringBoard {
    Positive.check("scoring board, step of grooves", step);
    Positive.check("scoring board, last groove", longest);
    if (longest < step) {
      throw new IllegalArgumentException(
          "scoring board: the last groove at " + longest + " mm lies before the first at " + step);
    }
  }
}
