package hingeleaf.plan;

import hingeleaf.card.Rest;
import hingeleaf.geom.Rigid;
import java.util.stream.Collectors;

/** How a card leans when it lies flat, in words, from the back forwards. */
public final class Leans {
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

  /** Whether panels go up and down rather than sideways, told from where they have moved most. */
  private static boolean upAndDown(Rest rest) {
    double sideways = 0;
    double upwards = 0;
    for (Rigid m : rest.posed().motions()) {
      boolean slid = m.xx() > 0.999 && m.yy() > 0.999 && m.zz() > 0.999;
      if (slid) {
        sideways = Math.max(sideways, Math.abs(m.shift().x()));
        upwards = Math.max(upwards, Math.abs(m.shift().y()));
      }
    }
    return upwards > sideways;
  }
}
