package hingeleaf.outline;

import java.util.ArrayList;
import java.util.List;

/**
 * What an SVG file draws: shapes in mm as drawn, y down.
 *
 * @param mmPerUnitX from the drawing's own units to mm, along its width
 * @param mmPerUnitY the same along its height
 */
record Drawing(List<Element> elements, double mmPerUnitX, double mmPerUnitY) {
  Drawing {
    elements = List.copyOf(elements);
  }

  /**
   * One drawn element.
   *
   * @param evenOdd whether its fill rule is even-odd, and not nonzero
   * @param filled whether it is filled; what is not is a line to cut along
   * @param line of the file in which it stands
   */
  record Element(
      String name, List<Subpath> subpaths, boolean evenOdd, boolean filled, int line, int column) {
    Element {
      subpaths = List.copyOf(subpaths);
    }
  }

  List<Subpath> subpaths() {
    List<Subpath> all = new ArrayList<>();
    elements.forEach(e -> all.addAll(e.subpaths()));
    return all;
  }
}
