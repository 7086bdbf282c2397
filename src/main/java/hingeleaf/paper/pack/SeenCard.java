package hingeleaf.paper.pack;

import hingeleaf.paper.figure.CardPicture;
import hingeleaf.sight.View;
import java.util.List;

/** From what sight found to see, to what a picture inks: the same areas and lines, no more. */
public final class SeenCard {
  private SeenCard() {}

  public static CardPicture.View of(View view) {
    List<CardPicture.Area> areas =
        view.polygons().stream()
            .map(
                p ->
                    new CardPicture.Area(
                        p.region(),
                        CardPicture.Kind.valueOf(p.kind().name()),
                        p.colour(),
                        p.facing(),
                        p.fresh()))
            .toList();
    List<CardPicture.Line> lines =
        view.paths().stream()
            .map(
                l ->
                    new CardPicture.Line(
                        l.points(), l.closed(), CardPicture.Stroke.valueOf(l.stroke().name())))
            .toList();
    return new CardPicture.View(areas, lines, List.of(), view.box());
  }
}
