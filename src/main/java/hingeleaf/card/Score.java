package hingeleaf.card;

import hingeleaf.geom.Segment;

/**
 * A fold line of a piece.
 *
 * @param name unique in its piece
 * @param at where, in piece coordinates; it runs from edge to edge of the material that it folds
 * @param made signed fold angle in the made card, rad: positive valley (the fronts come together),
 *     negative mountain (the backs come together), 0 flat
 */
public record Score(String name, Segment at, double made) {
  public Score {
    if (!(Math.abs(made) <= Math.PI)) {
      throw new IllegalArgumentException(name + ": a fold angle lies within half a turn");
    }
  }

  public boolean mountain() {
    return made < 0;
  }
}
