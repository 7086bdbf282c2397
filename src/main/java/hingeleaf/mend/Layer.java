package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import java.util.List;
import java.util.Set;

/**
 * The sizes of one layer of a stack across and along its sides, as they are or shall be, mm.
 *
 * @param name of the piece
 * @param across its panel between the scores of its sides; of the back, its whole width there
 * @param along its panel the other way
 * @param sides the first (left or bottom) and the second; empty for the back
 * @param tabs the same
 * @param setIn how far inside the edge of the layer behind the folds of its tabs are glued
 */
record Layer(
    String name,
    double across,
    double along,
    List<Double> sides,
    List<Double> tabs,
    List<Double> setIn) {
  /** Names of the scores of sides and tabs, left and right or bottom and top. */
  private static final Set<String> OWN =
      Set.of(
          "tab-left",
          "side-left",
          "side-right",
          "tab-right",
          "tab-bottom",
          "side-bottom",
          "side-top",
          "tab-top");

  Layer {
    sides = List.copyOf(sides);
    tabs = List.copyOf(tabs);
    setIn = List.copyOf(setIn);
  }

  /**
   * Read off a piece.
   *
   * @param upright whether its sides stand left and right
   */
  static Layer of(Piece p, boolean upright, List<Double> setIn) {
    double across = upright ? p.width() : p.height();
    double along = upright ? p.height() : p.width();
    // a door cut into the panel brings a score of its own
    double[] u =
        p.scores().stream()
            .filter(s -> OWN.contains(s.name()))
            .mapToDouble(s -> at(s, upright))
            .sorted()
            .toArray();
    if (u.length != OWN.size() / 2) {
      return new Layer(p.name(), across, along, List.of(), List.of(), setIn);
    }
    return new Layer(
        p.name(),
        u[2] - u[1],
        along,
        List.of(u[1] - u[0], u[3] - u[2]),
        List.of(u[0], across - u[3]),
        setIn);
  }

  private static double at(Score s, boolean upright) {
    return upright ? s.at().from().x() : s.at().from().y();
  }

  boolean back() {
    return sides.isEmpty();
  }

  /** The whole piece across its sides, flat on the table. */
  double flat() {
    double sum = across;
    for (double d : sides) {
      sum += d;
    }
    for (double d : tabs) {
      sum += d;
    }
    return sum;
  }

  /** By how much the first side is deeper than the second. */
  double uneven() {
    return back() ? 0 : sides.get(0) - sides.get(1);
  }

  Layer acrossIs(double mm) {
    return new Layer(name, mm, along, sides, tabs, setIn);
  }

  Layer alongIs(double mm) {
    return new Layer(name, across, mm, sides, tabs, setIn);
  }

  Layer sidesAre(List<Double> two) {
    return new Layer(name, across, along, two, tabs, setIn);
  }

  Layer tabsAre(List<Double> two) {
    return new Layer(name, across, along, sides, two, setIn);
  }

  Layer gluedIn(List<Double> two) {
    return new Layer(name, across, along, sides, tabs, two);
  }
}
