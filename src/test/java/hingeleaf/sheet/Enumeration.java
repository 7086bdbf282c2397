package hingeleaf.sheet;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The least cost of a tiny job by plain enumeration of all guillotine cuts at whole millimetres and
 * all ways to spread the pieces. Written apart from the planner, for pieces and sheets of whole
 * millimetres.
 */
final class Enumeration {
  private static final long MM = 1_000_000;
  private final SheetJob job;
  private final int[] piece;
  private final Map<Long, Boolean> seen = new HashMap<>();

  private Enumeration(SheetJob job) {
    this.job = job;
    piece = new int[Math.toIntExact(job.count())];
    int n = 0;
    for (int i = 0; i < job.pieces().size(); i++) {
      for (int k = 0; k < job.pieces().get(i).quantity(); k++) {
        piece[n++] = i;
      }
    }
  }

  /** The least cost in millionths, or {@link Long#MAX_VALUE} when the stock does not suffice. */
  static long leastCost(SheetJob job) {
    return new Enumeration(job).solve();
  }

  private long solve() {
    int all = 1 << piece.length;
    boolean[][] on = new boolean[job.stock().size()][all];
    for (int s = 0; s < on.length; s++) {
      seen.clear();
      SheetStock stock = job.stock().get(s);
      for (int mask = 1; mask < all; mask++) {
        on[s][mask] = fits(s, mask, (int) (stock.w() / MM), (int) (stock.h() / MM));
      }
    }
    return cover(on, all - 1, new long[on.length]);
  }

  private long cover(boolean[][] on, int rest, long[] used) {
    if (rest == 0) {
      return 0;
    }
    int lowest = rest & -rest;
    long best = Long.MAX_VALUE;
    for (int s = 0; s < on.length; s++) {
      if (used[s] >= job.stock().get(s).most()) {
        continue;
      }
      used[s]++;
      for (int sub = rest; sub > 0; sub = (sub - 1) & rest) {
        if ((sub & lowest) != 0 && on[s][sub]) {
          long more = cover(on, rest & ~sub, used);
          if (more != Long.MAX_VALUE) {
            best = Math.min(best, more + job.stock().get(s).price());
          }
        }
      }
      used[s]--;
    }
    return best;
  }

  private boolean fits(int s, int mask, int w, int h) {
    if (Integer.bitCount(mask) == 1) {
      return lies(s, Integer.numberOfTrailingZeros(mask), w, h);
    }
    if (area(mask) > (long) w * h) {
      return false;
    }
    long key = ((long) mask << 32) | ((long) w << 16) | h;
    Boolean known = seen.get(key);
    if (known == null) {
      known = splits(s, mask, w, h);
      seen.put(key, known);
    }
    return known;
  }

  private boolean splits(int s, int mask, int w, int h) {
    for (int sub = (mask - 1) & mask; sub > 0; sub = (sub - 1) & mask) {
      for (int x = 1; x < w; x++) {
        if (fits(s, sub, x, h) && fits(s, mask & ~sub, w - x, h)) {
          return true;
        }
      }
      for (int y = 1; y < h; y++) {
        if (fits(s, sub, w, y) && fits(s, mask & ~sub, w, h - y)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean lies(int s, int index, int w, int h) {
    SheetPiece p = job.pieces().get(piece[index]);
    Grain grain = job.stock().get(s).grain();
    boolean upright = agree(p.grain(), grain) && p.w() <= w * MM && p.h() <= h * MM;
    Grain other = p.grain() == Grain.ANY ? Grain.ANY : p.grain() == Grain.W ? Grain.H : Grain.W;
    boolean turned = p.rotate() && agree(other, grain) && p.h() <= w * MM && p.w() <= h * MM;
    return upright || turned;
  }

  private static boolean agree(Grain a, Grain b) {
    return a == b || Arrays.asList(a, b).contains(Grain.ANY);
  }

  private long area(int mask) {
    long sum = 0;
    for (int i = 0; i < piece.length; i++) {
      if ((mask >> i & 1) == 1) {
        SheetPiece p = job.pieces().get(piece[i]);
        sum += p.w() / MM * (p.h() / MM);
      }
    }
    return sum;
  }
}
