package hingeleaf.fold.accuracy;

import hingeleaf.card.MadeCard;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one stage closes as designed, before any hand errs.
 *
 * @param piece id of the frame
 * @param links its lengths across its folds
 * @param thickness of its paper, mm
 */
public record StageFit(String piece, FourBar links, double thickness) {
  /** The stages of a card, from the back; what is no loop of four folds of one piece has none. */
  public static List<StageFit> of(MadeCard made) {
    return Stages.of(made, null).stream()
        .map(s -> new StageFit(s.piece(), s.links(Map.of()), s.give()))
        .toList();
  }

  /** The stage of one frame. */
  public static Optional<StageFit> of(MadeCard made, String piece) {
    return of(made).stream().filter(s -> s.piece().equals(piece)).findFirst();
  }

  /** The way in which less has to be forced: 1 right (or up), -1 left (or down). */
  public int lean() {
    return Math.abs(links.misfit(1)) <= Math.abs(links.misfit(-1)) + 1e-9 ? 1 : -1;
  }

  /**
   * What the paper must take up when it is pressed flat the better way, mm: more than 0 where the
   * second tab would land outside the edge if it were closed flat, less than 0 where inside.
   */
  public double forced() {
    return links.misfit(lean());
  }

  /** How high it jams the better way if nothing gives, mm. */
  public double jam() {
    double up = links.jamHeight(lean());
    return Double.isNaN(up) ? Math.max(links.first(), links.second()) : up;
  }

  /** How far its panel stands out of true, rad. */
  public double tilt() {
    return links.uprightTilt();
  }
}
