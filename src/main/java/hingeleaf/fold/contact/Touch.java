package hingeleaf.fold.contact;

import hingeleaf.geom.Vec3;

/**
 * The first time that two parts touch on the way, or come too close to tell.
 *
 * @param kind what it means
 * @param part panel id of what stands in the way: an ornament, or the smaller of two sheets
 * @param against panel id of the other
 * @param share of the whole way at which they touch, 0 made to 1 flat
 * @param height of the ornament above what it stands on, mm; 0 between sheets
 * @param over how far the other still has to go past the point of contact along the face, mm; by
 *     how much an ornament is too high for a side that closes over it
 * @param at where, in the made pose of {@code part}
 * @param towards unit direction, in the made pose, into which the other pushes {@code part}; zero
 *     where it presses on its top
 */
public record Touch(
    Kind kind,
    String part,
    String against,
    double share,
    double height,
    double over,
    Vec3 at,
    Vec3 towards) {
  /** What a contact means to a maker. */
  public enum Kind {
    /** The layer in front comes down on top of an ornament: it sets the thickness; no fault. */
    RESTS_ON,
    /**
     * They run along each other so closely that it cannot be told whether they touch; no fault, but
     * whoever cuts cannot tell it either.
     */
    RUNS_ALONG,
    /** An ornament stands in the way of a side or of an aperture's edge. */
    JAMS,
    /** Two panels run into each other. */
    CROSSES,
    /** They are in each other already in the made card. */
    STANDS_THROUGH
  }

  /** Whether it keeps the card from being laid flat, or from being made. */
  public boolean fault() {
    return switch (kind) {
      case RESTS_ON, RUNS_ALONG -> false;
      case JAMS, CROSSES, STANDS_THROUGH -> true;
    };
  }
}
