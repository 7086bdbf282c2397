package hingeleaf.card;

import java.util.List;

/**
 * The ways in which a card lies flat.
 *
 * @param complete whether all of them were found and counted
 * @param count how many there are
 * @param states the best of them, in the order in which a maker would take them: smallest footprint
 *     first (to a tenth of a millimetre), then the thinnest rigid pile, then the fewest pushes to
 *     open (neighbours that lean the same way open together), then left before right
 */
public record Flats(boolean complete, long count, List<Rest> states) {
  public Flats {
    states = List.copyOf(states);
  }

  /** What {@link #states} is ordered by, for readers of files. */
  public static final String ORDER =
      "smallest footprint, then thinnest rigid pile, then fewest pushes to open, then left first";
}
