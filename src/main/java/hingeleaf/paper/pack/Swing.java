package hingeleaf.paper.pack;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Panel;
import hingeleaf.card.Posed;
import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.sight.Look;

/** Which way a layer goes when it is laid over, as it is seen. */
final class Swing {
  private Swing() {}

  /**
   * From where the middle of a piece's largest panel stands to where it is in a pose, in view
   * coordinates, mm.
   */
  static Vec2 of(MadeCard made, Posed pose, String piece, Look look) {
    int best = -1;
    double most = 0;
    for (int i = 0; i < made.panels().size(); i++) {
      Panel p = made.panels().get(i);
      Box box = p.region().box();
      if (p.piece().equals(piece) && box.width() * box.height() > most) {
        most = box.width() * box.height();
        best = i;
      }
    }
    if (best < 0) {
      return Vec2.ZERO;
    }
    Panel panel = made.panels().get(best);
    Vec3 stands = panel.made().apply(panel.region().box().centre());
    Vec3 lies = pose.motions().get(best).apply(stands);
    Standpoint from = Standpoint.of(look);
    return from.see(lies).minus(from.see(stands));
  }
}
