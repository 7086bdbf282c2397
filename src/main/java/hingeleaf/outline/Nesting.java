package hingeleaf.outline;

import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Tolerance;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Sorts rings that neither cross nor touch into regions, by a fill rule of SVG 1.1 section 11.3.
 */
final class Nesting {
  private Nesting() {}

  /** Corners without repeats closer than the tolerance of lengths, the last and first included. */
  static List<Vec2> distinct(List<Vec2> corners) {
    List<Vec2> out = new ArrayList<>();
    for (Vec2 p : corners) {
      if (out.isEmpty() || out.get(out.size() - 1).distance(p) > Tolerance.LENGTH_MM) {
        out.add(p);
      }
    }
    while (out.size() > 1 && out.get(0).distance(out.get(out.size() - 1)) <= 1e-3) {
      out.remove(out.size() - 1); // 1e-3: a gap closed by drawing, under the chord error
    }
    return out;
  }

  /** A ring, the ring around it (-1 for none), and the winding just inside it. */
  private record Nested(Ring ring, int parent, int winding) {}

  static List<Region> regions(List<Ring> rings, boolean evenOdd) {
    List<Ring> largestFirst = new ArrayList<>(rings);
    largestFirst.sort(Comparator.comparingDouble((Ring r) -> -Math.abs(r.area())));
    List<Box> boxes = largestFirst.stream().map(Ring::box).toList();
    List<Nested> nested = new ArrayList<>();
    for (int i = 0; i < largestFirst.size(); i++) {
      Ring ring = largestFirst.get(i);
      int parent = parent(largestFirst, boxes, i);
      int around = parent < 0 ? 0 : nested.get(parent).winding();
      int turn = evenOdd ? 1 : (int) Math.signum(ring.area());
      nested.add(new Nested(ring, parent, around + turn));
    }
    return grouped(nested, evenOdd);
  }

  /** The smallest ring around another: the last before it, largest first, that holds its corner. */
  private static int parent(List<Ring> rings, List<Box> boxes, int child) {
    Vec2 corner = rings.get(child).points().get(0);
    for (int j = child - 1; j >= 0; j--) {
      Box b = boxes.get(j);
      boolean near =
          corner.x() >= b.minX()
              && corner.x() <= b.maxX()
              && corner.y() >= b.minY()
              && corner.y() <= b.maxY();
      if (near && rings.get(j).contains(corner)) {
        return j;
      }
    }
    return -1;
  }

  private static List<Region> grouped(List<Nested> nested, boolean evenOdd) {
    List<Region> out = new ArrayList<>();
    for (int i = 0; i < nested.size(); i++) {
      if (isIn(nested, i, evenOdd) && !isIn(nested, nested.get(i).parent(), evenOdd)) {
        out.add(new Region(nested.get(i).ring(), holes(nested, i, evenOdd)));
      }
    }
    return out;
  }

  private static List<Ring> holes(List<Nested> nested, int outer, boolean evenOdd) {
    List<Ring> holes = new ArrayList<>();
    for (int i = outer + 1; i < nested.size(); i++) {
      if (!isIn(nested, i, evenOdd) && filledAround(nested, i, evenOdd) == outer) {
        holes.add(nested.get(i).ring());
      }
    }
    return holes;
  }

  /** The outermost filled ring in an unbroken filled run around a hole; -1 if none. */
  private static int filledAround(List<Nested> nested, int hole, boolean evenOdd) {
    int at = nested.get(hole).parent();
    int found = -1;
    while (isIn(nested, at, evenOdd)) {
      found = at;
      at = nested.get(at).parent();
    }
    return found;
  }

  private static boolean isIn(List<Nested> nested, int i, boolean evenOdd) {
    if (i < 0) {
      return false;
    }
    int winding = nested.get(i).winding();
    return evenOdd ? winding % 2 != 0 : winding != 0;
  }
}
