package hingeleaf.sheet.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Dual feasible functions on whole numbers: nondecreasing and superadditive, so the images of what
 * fits side by side sum to no more than the image of the length. Collected in Clautiaux, Alves and
 * Valerio de Carvalho, Annals of Operations Research 179 (2010) 317-342.
 */
public sealed interface DualFeasible {

  /** The image of x, a whole number; x lies between 0 and {@link #length()}. */
  long of(int x);

  /** The length for which the function is made. */
  int length();

  /** Its name for the maker. */
  String name();

  /** The identity: the plain length. */
  record Plain(int length) implements DualFeasible {
    @Override
    public long of(int x) {
      return x;
    }

    @Override
    public String name() {
      return "length";
    }
  }

  /**
   * f0 of Fekete and Schepers, Math. Programming 91 (2001) 11-31: lengths below the threshold count
   * nothing, those above length less threshold count as all.
   */
  record Threshold(int length, int threshold) implements DualFeasible {
    @Override
    public long of(int x) {
      return x > length - threshold ? length : x < threshold ? 0 : x;
    }

    @Override
    public String name() {
      return "Fekete-Schepers threshold";
    }
  }

  /**
   * u(k) of Fekete and Schepers (from Lueker 1983), times k*length: x when (k+1)x is a multiple of
   * the length, else (k+1)x/length rounded down to the k-th.
   */
  record Steps(int length, int k) implements DualFeasible {
    @Override
    public long of(int x) {
      long scaled = (long) (k + 1) * x;
      return scaled % length == 0 ? (long) x * k : scaled / length * length;
    }

    @Override
    public String name() {
      return "Fekete-Schepers rounding";
    }
  }

  /** fCCM,1 of Carlier, Clautiaux and Moukrim, Computers and Op. Res. 34 (2007) 2223-2250. */
  record Mirror(int length, int k) implements DualFeasible {
    @Override
    public long of(int x) {
      if (2L * x > length) {
        return 2L * (length / k - (length - x) / k);
      }
      return 2L * x == length ? length / k : 2L * (x / k);
    }

    @Override
    public String name() {
      return "Carlier-Clautiaux-Moukrim";
    }
  }

  /** A useful choice of functions for pieces with these lengths, at most about {@code most}. */
  static List<DualFeasible> choices(int length, int[] sizes, int most) {
    List<DualFeasible> result = new ArrayList<>();
    result.add(new Plain(length));
    TreeSet<Integer> small = new TreeSet<>();
    for (int x : sizes) {
      small.add(2L * x <= length ? x : length - x + 1);
    }
    small.removeIf(x -> x < 1 || 2L * x > length);
    int every = Math.max(1, small.size() * 2 / Math.max(1, most));
    int i = 0;
    for (int x : small) {
      if (i++ % every == 0) {
        result.add(new Threshold(length, x));
        result.add(new Mirror(length, x));
      }
    }
    for (int k = 1; k <= Math.min(12, most); k++) {
      result.add(new Steps(length, k));
    }
    return result;
  }
}
