package hingeleaf.plan;

import hingeleaf.card.Rest;
import hingeleaf.geom.Rigid;
import java.util.stream.Collectors;

/** How a card leans when it lies flat, in words, from the back forwards. */
public final class Leans {
  private static final double SLID_MM = 1e-6;

  private Leans() {}

  /** "leans left, right, left", "all leaning down"; "as it is" for a card without stages. */
  public static String words(Rest rest) {
    if (rest.leans().isEmpty()) {
      return "as it is";
    }
    boolean upright = upAndDown(rest);
    long kinds = rest.leans().stream().distinct().count();
    if (kinds == 1 && rest.leans().size() > 1) {
      return "all leaning " + word(rest.leans().get(0), upright);
    }
    return rest.leans().stream()
        .map(l -> word(l, upright))
        .collect(Collectors.joining(", ", "leans ", ""));
  }

  private static String word(int lean, boolean upright) {
    if (upright) {
      return lean < 0 ? "down" : "up";
    }
    return lean < 0 ? "left" : "right";
  }

  /**
   * Whether panels go up and down rather than sideways, told from the hindmost that has slid: parts
   * further forward may have been put away besides.
   */
  private static boolean upAndDown(Rest rest) {
    for (Rigid m : rest.posed().motions()) {
      double sideways = Math.abs(m.shift().x());
      double upwards = Math.abs(m.shift().y());
      boolean slid = m.xx() > 0.999 && m.yy() > 0.999 && m.zz() > 0.999;
      if (slid && Math.max(sideways, upwards) > SLID_MM) {
        return upwards > sideways;
      }
    }
    return false;
  }
}
