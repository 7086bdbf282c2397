package hingeleaf.sheet;

import java.util.List;

/** How a sheet falls apart, cut by cut; every part is a rectangle in nm. */
public sealed interface CutTree {

  /** Width in nm. */
  long w();

  /** Height in nm. */
  long h();

  /**
   * A part that is a piece.
   *
   * @param piece index of the piece in the job
   * @param rotated whether it lies turned by a quarter
   */
  record Piece(int piece, boolean rotated, long w, long h) implements CutTree {}

  /** A part that is left over. */
  record Scrap(long w, long h) implements CutTree {}

  /** A part cut across its whole length into two or more parts, in order from the origin. */
  record Split(Axis axis, long w, long h, List<CutTree> parts) implements CutTree {
    public Split {
      parts = List.copyOf(parts);
    }
  }
}
