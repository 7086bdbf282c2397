package hingeleaf.paper.pack;

import hingeleaf.geom.Region;
import hingeleaf.paper.figure.CardPicture;
import hingeleaf.sight.View;
import hingeleaf.sight.VisibleLine;
import hingeleaf.sight.VisiblePolygon;
import java.util.List;

/** What is seen of a card, as the picture takes it. */
final class Inked {
  private Inked() {}

  /**
   * A view without ground, or standing on some.
   *
   * @param ground what the card stands on, in view coordinates; empty for none
   */
  static CardPicture.View of(View view, List<Region> ground) {
    return new CardPicture.View(
        view.polygons().stream().map(Inked::area).toList(),
        view.lines().stream().map(Inked::line).toList(),
        ground,
        view.box());
  }

  private static CardPicture.Area area(VisiblePolygon p) {
    CardPicture.Kind kind =
        switch (p.kind()) {
          case PAPER -> CardPicture.Kind.PAPER;
          case INK -> CardPicture.Kind.INK;
          case GLUE -> CardPicture.Kind.GLUE;
          case WINDOW -> CardPicture.Kind.WINDOW;
        };
    return new CardPicture.Area(p.region(), kind, p.colour(), p.facing(), p.fresh());
  }

  private static CardPicture.Line line(VisibleLine l) {
    CardPicture.Stroke stroke =
        switch (l.stroke()) {
          case SILHOUETTE -> CardPicture.Stroke.SILHOUETTE;
          case EDGE -> CardPicture.Stroke.EDGE;
          case INNER -> CardPicture.Stroke.INNER;
        };
    return new CardPicture.Line(List.of(l.at().from(), l.at().to()), false, stroke);
  }
}
