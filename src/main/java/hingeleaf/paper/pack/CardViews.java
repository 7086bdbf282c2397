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
  private static final double COARSE_MM = 0.08;

  private final Pack pack;
  private final Map<Posed, Map<Look, Sight>> sights = new IdentityHashMap<>();

  CardViews(Pack pack) {
    this.pack = pack;
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
    Sight sight =
        sights
            .computeIfAbsent(pose, p -> new IdentityHashMap<>())
            .computeIfAbsent(
                look, l -> Sight.of(Scene.of(pack.made(), pose).coarser(COARSE_MM), l));
    return drawing(wanted, sight, width, height);
  }

  /** Wholly flat: foam is pressed, so that nothing raised comes through what lies over it. */
  Drawing pressed(Wanted wanted, Posed flat, Look look, double width, double height) {
    return drawing(
        wanted, Sight.of(Scene.pressed(pack.made(), flat).coarser(COARSE_MM), look), width, height);
  }

  private static Drawing drawing(Wanted wanted, Sight sight, double width, double height) {
    return CardPicture.of(
        SeenCard.of(
            sight.view(
                p -> wanted.shown.contains(p.piece().id()), new Marks(wanted.fresh, wanted.glued))),
        String.join(", ", wanted.shown),
        CardPicture.Manner.STEP,
        width,
        height,
        "#ffffff");
  }
}
