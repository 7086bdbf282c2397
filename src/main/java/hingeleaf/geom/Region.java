package hingeleaf.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A flat shape with holes, in mm.
 *
 * @param outer anticlockwise (turned round where it is not)
 * @param holes clockwise (turned round where they are not), inside the outer ring
 */
public record Region(Ring outer, List<Ring> holes) {
  public Region {
    outer = outer.anticlockwise();
    holes = holes.stream().map(Ring::clockwise).toList();
  }

  public static Region of(Ring outer) {
    return new Region(outer, List.of());
  }

  /** Area in mm2, holes taken out. */
  public double area() {
    return outer.area() + holes.stream().mapToDouble(Ring::area).sum();
  }

  public Box box() {
    return outer.box();
  }

  public boolean contains(Vec2 p) {
    return outer.contains(p) && holes.stream().noneMatch(h -> h.contains(p));
  }

  public Region moved(Vec2 by) {
    return map(p -> p.plus(by));
  }

  /** Every point through {@code f}; orientation is set right afterwards, so mirrors are allowed. */
  public Region map(UnaryOperator<Vec2> f) {
    List<Ring> mapped = new ArrayList<>();
    for (Ring h : holes) {
      mapped.add(h.map(f));
    }
    return new Region(outer.map(f), mapped);
  }
}
