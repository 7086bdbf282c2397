package hingeleaf.fold.accuracy;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Misfit;
import hingeleaf.card.Panel;
import hingeleaf.card.Patch;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the thickness of card alone forces between standing and flat, however truly it is cut.
 *
 * <p>Glued papers lie half a thickness each apart. Where a piece reaches from one glue to another
 * and these offsets lie along it, it should be shorter by them; laid flat all offsets stand upright
 * and ask for nothing. A strip inside the walls of a box has this (it wants s - 2 t standing and s
 * flat); a frame on the layer behind has not, since both its tabs are lifted alike.
 *
 * @param piece id
 * @param misfit how much shorter it should be standing than flat, mm; 0 or more
 * @param thickness of its card, mm
 */
public record ThicknessMisfit(String piece, double misfit, double thickness) {
  /** One for each glue that closes a loop through one piece, in the card's order. */
  public static List<ThicknessMisfit> of(MadeCard made) {
    List<ThicknessMisfit> all = new ArrayList<>();
    List<Join.Glue> glues = new ArrayList<>();
    for (Join j : made.card().joins()) {
      if (j instanceof Join.Glue g) {
        boolean closes = made.misfits().stream().map(Misfit::glue).anyMatch(g.id()::equals);
        if (closes) {
          first(glues, g.a().piece()).ifPresent(f -> all.add(between(made, f, g)));
        }
        glues.add(g);
      }
    }
    return all;
  }

  private static Optional<Join.Glue> first(List<Join.Glue> glues, String piece) {
    return glues.stream().filter(g -> g.a().piece().equals(piece)).findFirst();
  }

  private static ThicknessMisfit between(MadeCard made, Join.Glue first, Join.Glue second) {
    Vec3 reach = at(made, second.b()).minus(at(made, first.b()));
    double misfit = 0;
    if (reach.length() > 1e-9) {
      Vec3 along = reach.unit();
      misfit = offset(made, first).dot(along) - offset(made, second).dot(along);
    }
    String piece = first.a().piece();
    return new ThicknessMisfit(
        piece, Math.abs(misfit), made.card().piece(piece).stock().thickness());
  }

  /** From the middle of the paper glued on to the middle of the piece's own. */
  private static Vec3 offset(MadeCard made, Join.Glue g) {
    double papers =
        made.card().piece(g.a().piece()).stock().thickness()
            + made.card().piece(g.b().piece()).stock().thickness();
    double out = (g.b().face() == Face.FRONT ? 1 : -1) * (papers / 2 + g.raisedBy());
    return pose(made, g.b()).normal().times(out);
  }

  private static Vec3 at(MadeCard made, Patch patch) {
    return pose(made, patch).apply(patch.origin());
  }

  private static Rigid pose(MadeCard made, Patch patch) {
    String id = patch.piece() + "/" + patch.panel();
    return made.panels().stream()
        .filter(p -> p.id().equals(id))
        .map(Panel::made)
        .findFirst()
        .orElseThrow();
  }
}
