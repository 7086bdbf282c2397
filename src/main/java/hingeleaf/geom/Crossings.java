package hingeleaf.geom;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;

/**
 * Where rings cross or touch themselves or one another, found with an index over their chains of
 * edges and within a bound on the work, so that no drawing, however tangled, holds anybody up.
 *
 * @param count how many were found before stopping
 * @param first a point of one; null where there is none
 * @param complete whether all rings were searched; false where {@code most} crossings were reached
 *     or more than {@value #MOST_TESTS} pairs of edges came near one another
 */
public record Crossings(int count, @Nullable Vec2 first, boolean complete) {
  private static final int MOST_TESTS = 5_000_000;

  /** Searches until {@code most} crossings are found. */
  public static Crossings of(Collection<Ring> rings, int most) {
    List<SegmentString> lines = new ArrayList<>();
    for (Ring ring : rings) {
      lines.add(new BasicSegmentString(closed(ring), ring));
    }
    Finder finder = new Finder(most);
    new MCIndexNoder(finder).computeNodes(lines);
    Coordinate at = finder.first;
    return new Crossings(finder.count, at == null ? null : new Vec2(at.x, at.y), !finder.isDone());
  }

  private static Coordinate[] closed(Ring ring) {
    int n = ring.points().size();
    Coordinate[] corners = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      Vec2 p = ring.points().get(i % n);
      corners[i] = new Coordinate(p.x(), p.y());
    }
    return corners;
  }

  /** Is shown every pair of edges whose boxes meet. */
  private static final class Finder implements SegmentIntersector {
    private final LineIntersector lines = new RobustLineIntersector();
    private final int most;
    private int count;
    private int tests;
    private @Nullable Coordinate first;

    Finder(int most) {
      this.most = most;
    }

    @Override
    public void processIntersections(SegmentString a, int i, SegmentString b, int j) {
      if ((a == b && i == j) || isDone()) {
        return;
      }
      tests++;
      lines.computeIntersection(
          a.getCoordinate(i), a.getCoordinate(i + 1), b.getCoordinate(j), b.getCoordinate(j + 1));
      boolean cornerShared = a == b && neighbours(i, j, a.size() - 1);
      if (lines.hasIntersection() && !(cornerShared && lines.getIntersectionNum() == 1)) {
        count++;
        first = first == null ? lines.getIntersection(0) : first;
      }
    }

    private static boolean neighbours(int i, int j, int edges) {
      int apart = Math.abs(i - j);
      return apart == 1 || apart == edges - 1;
    }

    @Override
    public boolean isDone() {
      return count >= most || tests >= MOST_TESTS;
    }
  }
}
