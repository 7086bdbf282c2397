package hingeleaf.structure;

import hingeleaf.geom.Region;
import java.util.List;

/** Turns words into inked shapes; given by a door, since fonts are bytes from outside. */
@FunctionalInterface
public interface Lettering {
  /**
   * The shapes of a line of words, centred at the origin: its width about x = 0, the middle of a
   * capital at y = 0.
   *
   * @param text one line; letters that the font lacks are left out
   * @param capHeight height of a capital, mm
   * @return regions in mm, to the chord tolerance; empty where nothing can be drawn
   */
  List<Region> letters(String text, double capHeight);

  /** Whether some sign of a text would be drawn as an empty box, since the font lacks it. */
  default boolean lacks(String text) {
    return false;
  }
}
