package hingeleaf.paper.svg;

import hingeleaf.card.Face;
import hingeleaf.card.Piece;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Drawing.Layer;
import hingeleaf.paper.Numerals;
import hingeleaf.paper.PieceMarks;
import hingeleaf.paper.SeenPiece;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece as an SVG file at true size, front up, for cutting machines and for other programs.
 *
 * <p>Groups are named by ISO 19593-1 steps: {@code Cutting} (apertures and slits first, the outline
 * last), {@code Creasing} (mountain folds) and {@code ReverseCreasing} (valley folds), {@code
 * Drawing} (what is printed).
 */
public final class PieceSvg {
  private PieceSvg() {}

  /** The file's text. */
  public static String write(Piece piece) {
    SeenPiece seen = SeenPiece.of(piece, Face.FRONT, List.of());
    List<Layer> layers = new ArrayList<>(PieceMarks.inks(seen));
    layers.addAll(PieceMarks.structure(seen));
    Drawing drawing = new Drawing(seen.width(), seen.height(), piece.name(), layers);
    return SvgWriter.write(
        drawing,
        piece.stock().title()
            + ", "
            + Numerals.of(seen.width())
            + " x "
            + Numerals.of(seen.height())
            + " mm, front up. One unit is one millimetre.");
  }
}
