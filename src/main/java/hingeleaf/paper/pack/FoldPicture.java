package hingeleaf.paper.pack;

import hingeleaf.card.Panel;
import hingeleaf.card.PanelLayout;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Pen;
import hingeleaf.paper.figure.Arrow;
import hingeleaf.paper.figure.CardPicture;
import hingeleaf.sight.Placed;
import hingeleaf.sight.Scene;
import hingeleaf.sight.Sight;
import hingeleaf.sight.View;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One piece as it is folded, with an arrow for the way that each fold has gone. */
final class FoldPicture {
  private static final double MARGIN = 8;
  private static final Pen PEN = Pen.solid(0.35, Look.ACCENT);

  private final Piece piece;
  private final PanelLayout layout;
  private final Map<String, Panel> panels = new HashMap<>();

  FoldPicture(Pack pack, String id) {
    this.piece = pack.card().piece(id);
    this.layout = PanelLayout.of(piece);
    pack.made().panels().stream()
        .filter(p -> p.piece().equals(id))
        .forEach(p -> panels.put(p.name(), p));
  }

  Drawing drawing(hingeleaf.sight.Look look, double width, double height) {
    List<Placed> parts =
        layout.panels().stream()
            .map(f -> new Placed(piece, panel(f.name()), panel(f.name()).made(), 0))
            .toList();
    View view = Sight.look(new Scene(parts), look);
    double inner = 2 * MARGIN;
    Drawing card =
        CardPicture.of(
            SeenCard.of(view),
            piece.name(),
            CardPicture.Manner.STEP,
            width - inner,
            height - inner,
            "#ffffff");
    double scale = scale(view.box(), card);
    List<Mark> marks = new ArrayList<>(card.marksMoved(new Vec2(MARGIN, MARGIN)));
    Standpoint from = Standpoint.of(look);
    Vec2 corner = new Vec2(view.box().minX(), view.box().minY());
    double edge = (card.width() - view.box().width() * scale) / 2;
    for (PanelLayout.Fold fold : layout.folds()) {
      arrow(fold, from, corner, scale, edge + MARGIN, marks);
    }
    return Drawing.plain(card.width() + inner, card.height() + inner, piece.name(), marks);
  }

  private static double scale(Box box, Drawing card) {
    // The picture has the same margin all round; across both sizes that fixes scale and margin.
    double across = box.width() - box.height();
    return Math.abs(across) > 1e-6
        ? (card.width() - card.height()) / across
        : card.width() / Math.max(1, box.width());
  }

  private Panel panel(String name) {
    Panel p = panels.get(name);
    if (p == null) {
      throw new IllegalStateException(piece.id() + " has no panel " + name);
    }
    return p;
  }

  /** From where the far edge of a panel was, unfolded, to where it is. */
  private void arrow(
      PanelLayout.Fold fold,
      Standpoint from,
      Vec2 corner,
      double scale,
      double edge,
      List<Mark> marks) {
    boolean leftIsOuter = outer(fold.left()) >= outer(fold.right());
    int moves = leftIsOuter ? fold.left() : fold.right();
    int stays = leftIsOuter ? fold.right() : fold.left();
    Vec2 tip = tip(moves, fold);
    Rigid flat = panel(layout.panels().get(stays).name()).made();
    Rigid made = panel(layout.panels().get(moves).name()).made();
    Vec2 a = place(from.see(flat.apply(tip)), corner, scale, edge);
    Vec2 b = place(from.see(made.apply(tip)), corner, scale, edge);
    if (a.distance(b) > 2) {
      Vec3 hinge = made.apply(fold.score().at().from());
      Vec2 h = place(from.see(hinge), corner, scale, edge);
      double side = b.minus(a).cross(h.minus(a));
      marks.addAll(Arrow.of(a, b, side > 0 ? -0.2 : 0.2, PEN));
    }
  }

  private static Vec2 place(Vec2 seen, Vec2 corner, double scale, double edge) {
    return seen.minus(corner).times(scale).plus(new Vec2(edge, edge));
  }

  /** How far from the middle of the piece a panel lies. */
  private double outer(int panel) {
    Vec2 middle = piece.box().centre();
    return layout.panels().get(panel).region().box().centre().distance(middle);
  }

  /** The middle of a panel's edge that lies across from its fold. */
  private Vec2 tip(int panel, PanelLayout.Fold fold) {
    Box box = layout.panels().get(panel).region().box();
    Vec2 on = fold.score().at().from().plus(fold.score().at().to()).times(0.5);
    Vec2 c = box.centre();
    return c.plus(c.minus(on));
  }
}
