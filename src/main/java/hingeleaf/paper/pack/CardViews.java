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
import hingeleaf.sight.View;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Some pieces of the card, as lines. Most steps add a piece to what an earlier step has shown in
 * the same pose from the same side, so each such sight is kept and asked again.
 */
final class CardViews {
  /**
   * Drawn at a third of its size or less, a line so far out is out by less than a printer's dot.
   */
  private static final double COARSE_MM = 0.12;

  /** The standing card is shown large too: a third of a pixel of the largest picture. */
  private static final double FINE_MM = 0.05;

  /** The look in which the whole card is shown large. */
  static final Look FRONT = Look.threeQuarter();

  private final Pack pack;
  private final Posed still;
  private final Map<Posed, Map<Look, Sight>> sights = new IdentityHashMap<>();

  /**
   * Views of a pack's card.
   *
   * @param still the pose in which it stands as made
   */
  CardViews(Pack pack, Posed still) {
    this.pack = pack;
    this.still = still;
  }

  /**
   * What of the card is drawn.
   *
   * @param shown ids of the pieces that are there already
   * @param fresh ids of those among them that are new
   * @param glued patches to be hatched where their face is seen
   */
  record Wanted(Set<String> shown, Set<String> fresh, List<Patch> glued) {}

  Drawing drawing(Wanted wanted, Posed pose, Look look, double width, double height) {
    return drawing(wanted, view(wanted, pose, look), width, height);
  }

  View view(Wanted wanted, Posed pose, Look look) {
    double coarse = pose == still && look == FRONT ? FINE_MM : COARSE_MM;
    return seen(
        wanted,
        sights
            .computeIfAbsent(pose, p -> new IdentityHashMap<>())
            .computeIfAbsent(look, l -> Sight.of(Scene.of(pack.made(), pose).coarser(coarse), l)));
  }

  /** Wholly flat: foam is pressed, so that nothing raised comes through what lies over it. */
  Drawing pressed(Wanted wanted, Posed flat, Look look, double width, double height) {
    Sight sight = Sight.of(Scene.pressed(pack.made(), flat).coarser(COARSE_MM), look);
    return drawing(wanted, seen(wanted, sight), width, height);
  }

  private static View seen(Wanted wanted, Sight sight) {
    return sight.view(
        p -> wanted.shown.contains(p.piece().id()), new Marks(wanted.fresh, wanted.glued));
  }

  private static Drawing drawing(Wanted wanted, View view, double width, double height) {
    return CardPicture.of(
        SeenCard.of(view),
        String.join(", ", wanted.shown),
        CardPicture.Manner.STEP,
        width,
        height,
        "#ffffff");
  }
}
