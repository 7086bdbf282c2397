package hingeleaf.structure;

import hingeleaf.measure.Length;
import hingeleaf.measure.MakerUnits;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns the lengths of a design into the sizes that are built.
 *
 * <p>In the design's own system of units a length that the maker named is taken exactly. In the
 * other system the card is a version of its own: every length is brought to the nearest step of
 * that system's ruler before anything is built, so that equal sides stay equal, and what that did
 * is kept.
 */
final class Sizing {
  private final MakerUnits units;
  private final boolean convert;
  private final List<String> changed = new ArrayList<>();

  /**
   * @param units in which the plan is written
   * @param convert whether the design was written in the other system
   */
  Sizing(MakerUnits units, boolean convert) {
    this.units = units;
    this.convert = convert;
  }

  /** The size to build for a length of the design, in mm. */
  double mm(String what, Length named) {
    if (!convert || units.exact(named.mm())) {
      return named.mm();
    }
    double rounded = units.nearest(named.mm()).mm();
    changed.add(what + " " + units.rounded(rounded));
    return rounded;
  }

  /** What was rounded, as "width 5 7/8 in"; empty where the units are the design's own. */
  List<String> changed() {
    return List.copyOf(changed);
  }
}
