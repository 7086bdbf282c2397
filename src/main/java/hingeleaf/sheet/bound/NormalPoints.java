package hingeleaf.sheet.bound;

import java.util.Arrays;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The lengths that can be made by laying pieces end to end (Herz 1972; Christofides and Whitlock,
 * Operations Research 25 (1977) 30-44); cuts elsewhere are never needed.
 */
public final class NormalPoints {
  private final int[] points;

  private NormalPoints(int[] points) {
    this.points = points;
  }

  /**
   * All sums of sizes up to a length, with repetition up to {@code times}; null when there are more
   * than {@code most}.
   */
  public static @Nullable NormalPoints of(int length, int[] sizes, int[] times, int most) {
    TreeSet<Integer> sums = new TreeSet<>();
    sums.add(0);
    for (int i = 0; i < sizes.length; i++) {
      if (sizes[i] <= 0 || sizes[i] > length) {
        continue;
      }
      int[] before = sums.stream().mapToInt(Integer::intValue).toArray();
      for (int b : before) {
        long sum = b;
        for (int k = 0; k < times[i] && (sum += sizes[i]) <= length; k++) {
          sums.add((int) sum);
        }
      }
      if (sums.size() > most) {
        return null;
      }
    }
    return new NormalPoints(sums.stream().mapToInt(Integer::intValue).toArray());
  }

  /** How many there are; the first is 0. */
  public int size() {
    return points.length;
  }

  /** The i-th length. */
  public int at(int i) {
    return points[i];
  }

  /** Index of the longest that is no longer than x. */
  public int floor(int x) {
    int i = Arrays.binarySearch(points, x);
    return i >= 0 ? i : -i - 2;
  }

  /**
   * For each point the cuts worth trying: {@code cuts[i]} holds pairs (a, b) of indices with a from
   * 1, at(a) not above half and b the floor of the rest.
   */
  public int[][] cuts() {
    int[][] result = new int[points.length][];
    for (int i = 0; i < points.length; i++) {
      int[] pairs = new int[2 * points.length];
      int n = 0;
      for (int a = 1; a < points.length && 2L * points[a] <= points[i]; a++) {
        pairs[n++] = a;
        pairs[n++] = floor(points[i] - points[a]);
      }
      result[i] = Arrays.copyOf(pairs, n);
    }
    return result;
  }
}
