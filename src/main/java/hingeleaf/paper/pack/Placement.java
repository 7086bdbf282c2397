package hingeleaf.paper.pack;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.SeenPiece;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Parts as they lie on the face that takes them, flat on the table.
 *
 * @param base the piece with that face up
 * @param panel box of the panel that takes the parts, in the coordinates of {@code base}
 * @param parts their outlines in the same coordinates, in the order of the glues
 */
record Placement(SeenPiece base, Box panel, List<Region> parts) {
  Placement {
    parts = List.copyOf(parts);
  }

  /**
   * Where these glues put their parts.
   *
   * @param glues at least one, all on one panel and face
   */
  static Placement of(MadeCard made, List<Join.Glue> glues) {
    Card card = made.card();
    Patch on = glues.get(0).b();
    Piece base = card.piece(on.piece());
    Box panel = made.panel(on.piece() + "/" + on.panel()).region().box();
    UnaryOperator<Vec2> see = seen(base, on.face());
    Ring corners = Ring.rectangle(panel.minX(), panel.minY(), panel.maxX(), panel.maxY()).map(see);
    return new Placement(
        SeenPiece.of(base, on.face(), List.of()),
        corners.box(),
        glues.stream().map(g -> part(card, g).map(see)).toList());
  }

  private static UnaryOperator<Vec2> seen(Piece base, Face face) {
    Box box = base.box();
    return face == Face.FRONT
        ? p -> new Vec2(p.x() - box.minX(), p.y() - box.minY())
        : p -> new Vec2(box.maxX() - p.x(), p.y() - box.minY());
  }

  /**
   * The outline of a part in the coordinates of the piece that it is laid on: frames meet; faces
   * that are alike meet mirrored.
   */
  static Region part(Card card, Join.Glue g) {
    boolean mirrored = g.a().face() == g.b().face();
    Vec2 a = g.a().along();
    Vec2 b = g.b().along();
    return card.piece(g.a().piece())
        .shape()
        .map(
            p -> {
              Vec2 d = p.minus(g.a().origin());
              double u = d.dot(a);
              double v = d.dot(a.left()) * (mirrored ? -1 : 1);
              return g.b().origin().plus(b.times(u)).plus(b.left().times(v));
            });
  }
}
