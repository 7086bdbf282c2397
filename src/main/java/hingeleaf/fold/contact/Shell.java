package hingeleaf.fold.contact;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A surface of triangles in a tree of upright boxes, all in the card's made pose.
 *
 * <p>Corners are doubles, three a corner, nine a triangle; leaves of the tree hold up to four.
 */
final class Shell {
  private static final int LEAF = 4;

  final double[] corners;

  /** Six numbers a box: least and most x, y, z. Box 0 holds all. */
  final double[] boxes;

  /** For each box its first child, the second follows; or -1 - first triangle for a leaf. */
  final int[] child;

  /** How many triangles a leaf has. */
  final int[] count;

  private final Map<Integer, Double> reaches = new HashMap<>();
  private int used;

  /** {@code triangles} as nine numbers each, at least one triangle. */
  Shell(double[] triangles) {
    int n = triangles.length / 9;
    corners = new double[triangles.length];
    boxes = new double[6 * (2 * n + 1)];
    child = new int[2 * n + 1];
    count = new int[2 * n + 1];
    Integer[] order = IntStream.range(0, n).boxed().toArray(Integer[]::new);
    used = 1;
    split(0, triangles, order, 0, n);
    for (int i = 0; i < n; i++) {
      System.arraycopy(triangles, 9 * order[i], corners, 9 * i, 9);
    }
  }

  static Shell of(List<double[]> triangles) {
    double[] all = new double[9 * triangles.size()];
    for (int i = 0; i < triangles.size(); i++) {
      System.arraycopy(triangles.get(i), 0, all, 9 * i, 9);
    }
    return new Shell(all);
  }

  int size() {
    return corners.length / 9;
  }

  private void split(int node, double[] t, Integer[] order, int from, int to) {
    double[] box = new double[6];
    Arrays.fill(box, 0, 3, Double.POSITIVE_INFINITY);
    Arrays.fill(box, 3, 6, Double.NEGATIVE_INFINITY);
    for (int i = from; i < to; i++) {
      for (int k = 0; k < 9; k++) {
        double x = t[9 * order[i] + k];
        box[k % 3] = Math.min(box[k % 3], x);
        box[3 + k % 3] = Math.max(box[3 + k % 3], x);
      }
    }
    System.arraycopy(box, 0, boxes, 6 * node, 6);
    if (to - from <= LEAF) {
      child[node] = -1 - from;
      count[node] = to - from;
      return;
    }
    int axis = 0;
    for (int k = 1; k < 3; k++) {
      axis = box[3 + k] - box[k] > box[3 + axis] - box[axis] ? k : axis;
    }
    int along = axis;
    Arrays.sort(
        order,
        from,
        to,
        Comparator.comparingDouble(
            i -> t[9 * i + along] + t[9 * i + 3 + along] + t[9 * i + 6 + along]));
    int first = used;
    used += 2;
    child[node] = first;
    int middle = (from + to) >>> 1;
    split(first, t, order, from, middle);
    split(first + 1, t, order, middle, to);
  }

  /** Largest distance of a corner from a line through {@code at} along a unit direction. */
  double reach(double[] at, double[] along) {
    double most = 0;
    for (int i = 0; i < corners.length; i += 3) {
      double x = corners[i] - at[0];
      double y = corners[i + 1] - at[1];
      double z = corners[i + 2] - at[2];
      double d = x * along[0] + y * along[1] + z * along[2];
      most = Math.max(most, x * x + y * y + z * z - d * d);
    }
    return Math.sqrt(Math.max(0, most));
  }

  /** The same for the line of a joint, worked out once: most chains to a body end in one joint. */
  double reach(int joint, Vec3 at, Vec3 along) {
    return reaches.computeIfAbsent(joint, j -> reach(numbers(at), numbers(along)));
  }

  private static double[] numbers(Vec3 v) {
    return new double[] {v.x(), v.y(), v.z()};
  }

  /** This surface moved; for trying a part at another place. */
  Shell moved(Rigid by) {
    double[] t = new double[corners.length];
    for (int i = 0; i < t.length; i += 3) {
      apply(by, corners, i, t, i);
    }
    return new Shell(t);
  }

  static void apply(Rigid m, double[] from, int i, double[] to, int j) {
    double x = from[i];
    double y = from[i + 1];
    double z = from[i + 2];
    to[j] = m.xx() * x + m.xy() * y + m.xz() * z + m.shift().x();
    to[j + 1] = m.yx() * x + m.yy() * y + m.yz() * z + m.shift().y();
    to[j + 2] = m.zx() * x + m.zy() * y + m.zz() * z + m.shift().z();
  }
}
