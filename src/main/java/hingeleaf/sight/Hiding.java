package hingeleaf.sight;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Takes from every surface what opaque surfaces in front of it hide.
 *
 * <p>Asked again while more surfaces have come, it goes on from what was left of each: what is
 * hidden stays hidden, so only the new ones are taken away.
 */
final class Hiding {
  private final List<Surface> surfaces;
  private final STRtree tree = new STRtree();
  private final Left[] left;
  private final int[] @Nullable [] near;
  private final @Nullable Pair[] @Nullable [] pairs;

  /**
   * The line along which two surfaces cross.
   *
   * @param line 0 on it
   */
  record Crease(int first, int second, Camera.Slope line) {}

  /** What each of two surfaces hides of the other, and where they cross. */
  private record Pair(Geometry overFirst, Geometry overSecond, @Nullable Crease crease) {}

  /** What is left of a surface behind some others. */
  private record Left(BitSet behind, List<Polygon> polygons) {}

  Hiding(List<Surface> surfaces) {
    this.surfaces = List.copyOf(surfaces);
    this.left = new Left[surfaces.size()];
    this.near = new int[surfaces.size()][];
    this.pairs = new Pair[surfaces.size()][];
    for (int i = 0; i < surfaces.size(); i++) {
      Geometry shape = surfaces.get(i).shape();
      left[i] = new Left(new BitSet(), Shapes.polygons(shape));
      if (!shape.isEmpty()) {
        tree.insert(surfaces.get(i).box(), i);
      }
    }
  }

  /** The lines along which surfaces that are there cross. */
  List<Crease> creases(BitSet there) {
    List<Crease> creases = new ArrayList<>();
    for (int i = there.nextSetBit(0); i >= 0; i = there.nextSetBit(i + 1)) {
      for (int j : near(i)) {
        Crease crease = j > i && there.get(j) ? pair(i, j).crease : null;
        if (crease != null) {
          creases.add(crease);
        }
      }
    }
    return creases;
  }

  /** What is left of a surface; the same list as the last time if nothing has come before it. */
  List<Polygon> visible(int i, BitSet there) {
    BitSet before = before(i, there);
    BitSet gone = (BitSet) left[i].behind.clone();
    gone.andNot(before);
    if (!gone.isEmpty()) {
      left[i] = new Left(new BitSet(), Shapes.polygons(surfaces.get(i).shape()));
    }
    if (!before.equals(left[i].behind)) {
      BitSet fresh = (BitSet) before.clone();
      fresh.andNot(left[i].behind);
      left[i] = new Left(before, without(left[i].polygons, hiders(i, fresh)));
    }
    return left[i].polygons;
  }

  /** The surfaces that are there, lie before one and may hide some of it. */
  BitSet before(int i, BitSet there) {
    BitSet before = new BitSet();
    for (int j : near(i)) {
      if (there.get(j) && !hider(i, j).isEmpty()) {
        before.set(j);
      }
    }
    return before;
  }

  /** What each of some surfaces hides of one. */
  List<Polygon> hiders(int i, BitSet which) {
    List<Polygon> all = new ArrayList<>();
    for (int j = which.nextSetBit(0); j >= 0; j = which.nextSetBit(j + 1)) {
      Geometry shape = hider(i, j);
      for (int k = 0; k < shape.getNumGeometries(); k++) {
        if (shape.getGeometryN(k) instanceof Polygon p && !p.isEmpty()) {
          all.add(p);
        }
      }
    }
    return all;
  }

  /** Surfaces whose box meets that of this one, in order. */
  private int[] near(int i) {
    int[] known = near[i];
    if (known == null) {
      List<Integer> found = new ArrayList<>();
      if (!surfaces.get(i).shape().isEmpty()) {
        tree.query(surfaces.get(i).box(), j -> found.add((Integer) j));
      }
      known = found.stream().mapToInt(j -> j).filter(j -> j != i).sorted().toArray();
      near[i] = known;
    }
    return known;
  }

  /** What the other surface hides of the first named. */
  private Geometry hider(int i, int by) {
    return i < by ? pair(i, by).overFirst : pair(by, i).overSecond;
  }

  private Pair pair(int i, int j) {
    @Nullable Pair[] row = pairs[i];
    if (row == null) {
      row = new Pair[surfaces.size()];
      pairs[i] = row;
    }
    Pair known = row[j];
    if (known == null) {
      known = compare(i, j);
      row[j] = known;
    }
    return known;
  }

  private Pair compare(int i, int j) {
    Surface first = surfaces.get(i);
    Surface second = surfaces.get(j);
    Order order = first.opaque() || second.opaque() ? Order.of(first, second) : null;
    Geometry none = Shapes.NOTHING;
    if (order instanceof Order.FirstOver) {
      return new Pair(none, opaque(first, first.shape()), null);
    } else if (order instanceof Order.SecondOver) {
      return new Pair(opaque(second, second.shape()), none, null);
    } else if (order instanceof Order.Crossing crossing) {
      return new Pair(
          opaque(second, half(second, crossing.second(), first.box())),
          opaque(first, half(first, crossing.second().negated(), second.box())),
          new Crease(i, j, crossing.second()));
    }
    return new Pair(none, none, null);
  }

  private static Geometry opaque(Surface by, Geometry shape) {
    return by.opaque() ? shape : Shapes.NOTHING;
  }

  private static Geometry half(Surface s, Camera.Slope above, Envelope box) {
    Envelope common = box.intersection(s.box());
    common.expandBy(1);
    return Shapes.and(s.shape(), Shapes.above(above, common));
  }

  private static List<Polygon> without(List<Polygon> shape, List<Polygon> hiders) {
    List<Polygon> left = shape;
    List<Polygon> todo = new ArrayList<>(hiders);
    todo.sort(Comparator.comparingDouble(Polygon::getArea).reversed());
    while (!todo.isEmpty() && !left.isEmpty()) {
      List<Polygon> now = left;
      todo.removeIf(hider -> !touches(hider, now)); // what is left changes, so it is asked anew
      List<Polygon> batch = apart(todo);
      List<Polygon> met = new ArrayList<>();
      List<Polygon> rest = new ArrayList<>();
      now.forEach(p -> (touches(p, batch) ? met : rest).add(p));
      if (!met.isEmpty()) {
        rest.addAll(Shapes.polygons(Shapes.minus(Shapes.gather(met), Shapes.gather(batch))));
        left = rest;
      }
    }
    return left;
  }

  private static boolean touches(Polygon p, List<Polygon> others) {
    for (Polygon o : others) {
      if (!Apart.sure(p, o)) {
        return true;
      }
    }
    return false;
  }

  /** Removes from the list as many as lie apart from each other, the first for certain. */
  private static List<Polygon> apart(List<Polygon> todo) {
    List<Polygon> batch = new ArrayList<>();
    List<Envelope> boxes = new ArrayList<>();
    todo.removeIf(
        p -> {
          Envelope box = p.getEnvelopeInternal();
          if (boxes.stream().anyMatch(box::intersects)) {
            return false;
          }
          boxes.add(box);
          return batch.add(p);
        });
    return batch;
  }
}
