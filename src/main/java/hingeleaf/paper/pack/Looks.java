package hingeleaf.paper.pack;

import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.figure.CardPicture;
import hingeleaf.sight.View;

/** A view of the card as a picture of its own, 200 x 150 mm, in the colours of its papers. */
public final class Looks {
  private static final double WIDTH = 200;
  private static final double HEIGHT = 150;

  private Looks() {}

  public static Drawing drawing(View view, String title) {
    return CardPicture.filling(
        SeenCard.of(view), title, CardPicture.Manner.COLOUR, WIDTH, HEIGHT, Look.PAPER);
  }
}
