package hingeleaf.sheet.exact;

/**
 * Counts by type packed into longs, several to a word, each with a guard bit, so that sums and
 * comparisons take a few operations.
 */
final class Vectors {
  final int words;
  private final int perWord;
  private final int width;
  private final long guards;
  private final long[] demand;
  private final int types;

  Vectors(int[] demand) {
    types = demand.length;
    int most = 1;
    for (int d : demand) {
      most = Math.max(most, d);
    }
    width = 33 - Integer.numberOfLeadingZeros(most);
    perWord = 63 / width;
    words = (types + perWord - 1) / perWord;
    long g = 0;
    for (int i = 0; i < perWord; i++) {
      g |= 1L << (i * width + width - 1);
    }
    guards = g;
    this.demand = pack(demand);
  }

  long[] pack(int[] counts) {
    long[] result = new long[words];
    for (int t = 0; t < types; t++) {
      result[t / perWord] |= (long) counts[t] << (t % perWord * width);
    }
    return result;
  }

  long[] demand() {
    return demand.clone();
  }

  int count(long[] data, int at, int type) {
    long lane = data[at + type / perWord] >>> (type % perWord * width);
    return (int) (lane & ((1L << (width - 1)) - 1));
  }

  /** Whether a is at least b everywhere. */
  boolean covers(long[] a, int ai, long[] b, int bi) {
    for (int k = 0; k < words; k++) {
      if ((((a[ai + k] | guards) - b[bi + k]) & guards) != guards) {
        return false;
      }
    }
    return true;
  }

  /** into = min(a + b, demand); returns whether anything was cut down. */
  boolean add(long[] a, int ai, long[] b, int bi, long[] into) {
    boolean capped = false;
    for (int k = 0; k < words; k++) {
      long room = demand[k] - b[bi + k];
      long fits = ((room | guards) - a[ai + k]) & guards;
      if (fits == guards) {
        into[k] = a[ai + k] + b[bi + k];
      } else {
        capped = true;
        long keep = fits - (fits >>> (width - 1));
        into[k] = ((a[ai + k] & keep) | (room & ~keep & ~guards)) + b[bi + k];
      }
    }
    return capped;
  }

  /** into = max(a - b, 0). */
  void less(long[] a, long[] b, int bi, long[] into) {
    for (int k = 0; k < words; k++) {
      long ok = ((a[k] | guards) - b[bi + k]) & guards;
      long keep = ok - (ok >>> (width - 1));
      into[k] = (a[k] & keep) - (b[bi + k] & keep);
    }
  }

  /** The first type of which there is any, -1 if none. */
  int first(long[] a) {
    for (int k = 0; k < words; k++) {
      if (a[k] != 0) {
        return k * perWord + Long.numberOfTrailingZeros(a[k]) / width;
      }
    }
    return -1;
  }
}
