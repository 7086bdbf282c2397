package hingeleaf.fold.contact;

import hingeleaf.geom.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;

/** Tries ornaments at other places and thinner, and finds the least change that frees them. */
final class Remedies {
  private static final double FARTHEST_MM = 60;

  /** Found to this, and this much to spare, mm. */
  private static final double STEP_MM = 0.5;

  /** What two parts do on the way. */
  @FunctionalInterface
  interface Pair {
    @Nullable Touch touch(Solid a, Solid b);
  }

  private final List<Solid> solids;
  private final Pair pair;

  Remedies(List<Solid> solids, Pair pair) {
    this.solids = solids;
    this.pair = pair;
  }

  Optional<Remedy> of(String part) {
    Solid s = solids.stream().filter(x -> x.id().equals(part)).findFirst().orElse(null);
    if (s == null || !s.prism()) {
      return Optional.empty();
    }
    Remedy.Move move = move(s);
    Double height = height(s);
    return move == null && height == null
        ? Optional.empty()
        : Optional.of(new Remedy(part, move, height));
  }

  private Remedy.@Nullable Move move(Solid s) {
    Remedy.Move best = null;
    for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      double most = best == null ? FARTHEST_MM : best.length() - STEP_MM;
      DoublePredicate frees = x -> free(s, new Vec3(way[0] * x, way[1] * x, 0), s.top());
      double d = least(most, frees);
      d += d > 0 && frees.test(d + STEP_MM) ? STEP_MM : 0;
      if (d > 0) {
        best = new Remedy.Move(way[0] * d, way[1] * d);
      }
    }
    return best;
  }

  private @Nullable Double height(Solid s) {
    double bare = s.thickness();
    double cut = least(s.top() - bare, x -> free(s, Vec3.ZERO, s.top() - x));
    return cut > 0 ? s.top() - cut : null;
  }

  /** The least step up to {@code most} that does, by doubling and halving; 0 if none does. */
  private static double least(double most, DoublePredicate does) {
    double low = 0;
    double high = STEP_MM;
    while (high <= most && !does.test(high)) {
      low = high;
      high *= 2;
    }
    if (high > most) {
      if (!(most > low) || !does.test(most)) {
        return 0;
      }
      high = most;
    }
    while (high - low > STEP_MM * 1.01) {
      double middle = STEP_MM * Math.rint((low + high) / 2 / STEP_MM);
      if (middle <= low || middle >= high) {
        break;
      }
      if (does.test(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /** Whether it would be better without: a fault, or so close that nobody can tell. */
  static boolean wanted(Touch t) {
    return t.fault() || t.kind() == Touch.Kind.RUNS_ALONG;
  }

  private boolean free(Solid s, Vec3 moved, double top) {
    Solid changed = Solids.changed(s, moved, top);
    if (changed == null) {
      return false;
    }
    for (Solid other : solids) {
      if (other.panel() != s.panel()) {
        Touch t = pair.touch(changed, other);
        if (t != null && wanted(t)) {
          return false;
        }
      }
    }
    return true;
  }
}
