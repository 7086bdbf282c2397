package hingeleaf.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

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

  // Written out for the same reason as those of points.
  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Region r && outer.equals(r.outer) && holes.equals(r.holes);
  }

  @Override
  public int hashCode() {
    return 31 * outer.hashCode() + holes.hashCode();
  }

  public static Region of(Ring outer) {
    return new Region(outer, List.of());
  }

  /** Area in mm2, holes taken out. */
  public double area() {
    return outer.area() + holes.stream().mapToDouble(Ring::area).sum();
  }

  /** The centre of its area, mm, by the shoelace formula; holes taken out. */
  public Vec2 centroid() {
    double[] sum = new double[3];
    moments(outer, sum);
    holes.forEach(h -> moments(h, sum));
    return new Vec2(sum[1] / sum[0], sum[2] / sum[0]);
  }

  /** Adds a ring's area and first moments; clockwise rings take away. */
  private static void moments(Ring ring, double[] sum) {
    List<Vec2> p = ring.points();
    for (int i = 0; i < p.size(); i++) {
      Vec2 a = p.get(i);
      Vec2 b = p.get((i + 1) % p.size());
      double twice = a.cross(b);
      sum[0] += twice / 2;
      sum[1] += twice * (a.x() + b.x()) / 6;
      sum[2] += twice * (a.y() + b.y()) / 6;
    }
  }

  public Box box() {
    return outer.box();
  }

  public boolean contains(Vec2 p) {
    return outer.contains(p) && holes.stream().noneMatch(h -> h.contains(p));
  }

  /** A point strictly inside, where one is found on a fine grid; else a corner. */
  public Vec2 inside() {
    Box b = box();
    if (contains(b.centre())) {
      return b.centre();
    }
    for (int i = 1; i < 64; i++) {
      for (int j = 1; j < 64; j++) {
        Vec2 p = new Vec2(b.minX() + b.width() * i / 64, b.minY() + b.height() * j / 64);
        if (contains(p)) {
          return p;
        }
      }
    }
    return outer.points().get(0);
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
