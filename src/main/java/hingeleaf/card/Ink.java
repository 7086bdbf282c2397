package hingeleaf.card;

import hingeleaf.geom.Region;
import java.util.List;

/**
 * Something printed or stamped on a piece: words, a message panel's lines.
 *
 * @param name as findings call it
 * @param face which side it is on
 * @param regions what is inked, in piece coordinates
 * @param colour {@code #rrggbb}
 * @param origin path in the design
 */
public record Ink(String name, Face face, List<Region> regions, String colour, String origin) {
  public Ink {
    regions = List.copyOf(regions);
  }
}
