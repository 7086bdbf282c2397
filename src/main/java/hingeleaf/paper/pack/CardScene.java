package hingeleaf.paper.pack;

import hingeleaf.card.Patch;
import hingeleaf.card.Posed;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.figure.CardPicture;
import hingeleaf.sight.Look;
import hingeleaf.sight.Marks;
import hingeleaf.sight.Scene;
import hingeleaf.sight.Sight;
import java.util.List;
import java.util.Set;

/**
 * Some pieces of the card, as lines.
 *
 * @param shown ids of the pieces that are there already
 * @param fresh ids of those among them that are new
 * @param glued patches to be hatched where their face is seen
 */
record CardScene(Pack pack, Set<String> shown, Set<String> fresh, List<Patch> glued) {
  Drawing drawing(Posed pose, Look look, double width, double height) {
    return drawing(Scene.of(pack.made(), pose), look, width, height);
  }

  /** Wholly flat: foam is pressed, so that nothing raised comes through what lies over it. */
  Drawing pressed(Posed flat, Look look, double width, double height) {
    return drawing(Scene.pressed(pack.made(), flat), look, width, height);
  }

  private Drawing drawing(Scene whole, Look look, double width, double height) {
    Scene scene = whole.keeping(p -> shown.contains(p.piece().id()));
    return CardPicture.of(
        SeenCard.of(Sight.look(scene, look, new Marks(fresh, glued))),
        String.join(", ", shown),
        CardPicture.Manner.STEP,
        width,
        height,
        "#ffffff");
  }
}
