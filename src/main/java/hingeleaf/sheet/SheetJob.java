package hingeleaf.sheet;

import java.util.List;

/** What is wanted from what: stock, pieces and the trimmer, with the unit they are written in. */
public record SheetJob(
    JobUnit unit, List<SheetStock> stock, List<SheetPiece> pieces, Trimmer trimmer) {

  public SheetJob {
    stock = List.copyOf(stock);
    pieces = List.copyOf(pieces);
  }

  /** How many single pieces are wanted. */
  public long count() {
    return pieces.stream().mapToLong(SheetPiece::quantity).sum();
  }
}
