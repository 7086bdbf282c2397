package hingeleaf.sight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

/** Takes from every surface what opaque surfaces in front of it hide. */
final class Hiding {
  /** With this many left to take away it pays to ask first which of them matter. */
  private static final int WORTH_ASKING = 4;

  private final List<Surface> surfaces;
  private final List<List<Polygon>> hiders = new ArrayList<>();
  private final List<Crease> creases = new ArrayList<>();

  /**
   * The line along which two surfaces cross.
   *
   * @param line 0 on it
   */
  record Crease(int first, int second, Camera.Slope line) {}

  Hiding(List<Surface> surfaces) {
    this.surfaces = surfaces;
    STRtree tree = new STRtree();
    for (int i = 0; i < surfaces.size(); i++) {
      hiders.add(new ArrayList<>());
      if (!surfaces.get(i).shape().isEmpty()) {
        tree.insert(surfaces.get(i).box(), i);
      }
    }
    for (int i = 0; i < surfaces.size(); i++) {
      compare(i, tree);
    }
  }

  List<Crease> creases() {
    return creases;
  }

  private void compare(int i, STRtree tree) {
    if (surfaces.get(i).shape().isEmpty()) {
      return;
    }
    List<Integer> others = new ArrayList<>();
    tree.query(surfaces.get(i).box(), found -> others.add((Integer) found));
    others.removeIf(j -> j <= i);
    others.sort(Comparator.naturalOrder());
    for (int j : others) {
      note(i, j);
    }
  }

  private void note(int i, int j) {
    Surface first = surfaces.get(i);
    Surface second = surfaces.get(j);
    Order order = first.opaque() || second.opaque() ? Order.of(first, second) : null;
    if (order instanceof Order.FirstOver) {
      hide(j, first, first.shape());
    } else if (order instanceof Order.SecondOver) {
      hide(i, second, second.shape());
    } else if (order instanceof Order.Crossing crossing) {
      hide(i, second, half(second, crossing.second(), first.box()));
      hide(j, first, half(first, crossing.second().negated(), second.box()));
      creases.add(new Crease(i, j, crossing.second()));
    }
  }

  private void hide(int hidden, Surface by, Geometry shape) {
    if (by.opaque()) {
      for (int k = 0; k < shape.getNumGeometries(); k++) {
        if (shape.getGeometryN(k) instanceof Polygon p && !p.isEmpty()) {
          hiders.get(hidden).add(p);
        }
      }
    }
  }

  private static Geometry half(Surface s, Camera.Slope above, Envelope box) {
    Envelope common = box.intersection(s.box());
    common.expandBy(1);
    return Shapes.and(s.shape(), Shapes.above(above, common));
  }

  /** What is left of a surface. */
  List<Polygon> visible(int i) {
    Surface s = surfaces.get(i);
    Geometry left = s.shape();
    List<Polygon> todo = new ArrayList<>(hiders.get(i));
    todo.sort(Comparator.comparingDouble(Polygon::getArea).reversed());
    while (!todo.isEmpty() && !left.isEmpty()) {
      drop(todo, left);
      List<Polygon> batch = apart(todo);
      if (!batch.isEmpty()) {
        left = Shapes.gather(Shapes.polygons(Shapes.minus(left, Shapes.gather(batch))));
      }
    }
    return Shapes.polygons(left);
  }

  /** Forgets what does not reach what is left. */
  private static void drop(List<Polygon> todo, Geometry left) {
    Envelope box = left.getEnvelopeInternal();
    todo.removeIf(p -> !p.getEnvelopeInternal().intersects(box));
    if (todo.size() >= WORTH_ASKING) {
      PreparedGeometry asked = PreparedGeometryFactory.prepare(left);
      todo.removeIf(p -> !asked.intersects(p));
    }
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
