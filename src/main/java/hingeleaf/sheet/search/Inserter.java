package hingeleaf.sheet.search;

import hingeleaf.sheet.task.Task;
import java.util.Arrays;

/**
 * Finds the best free part for a piece: the one whose worth suffers least. A better place is now
 * and then overlooked on purpose (a blink), which keeps the search from repeating itself.
 */
final class Inserter {
  static final int ORDERS = 6;
  private static final int BLINK = 60;
  private final Task task;
  private final Dice dice;
  private final long[] marks;
  final boolean limits;
  private final double[] key;
  private double[] keys = new double[16];
  private int type;
  private int lean;
  private int wider;
  private int bestBin;
  private int bestNode;
  private boolean bestTurned;
  private boolean bestAcross;
  private double bestLoss;

  Inserter(Task task, Dice dice, long[] marks) {
    this.task = task;
    this.dice = dice;
    this.marks = marks;
    limits = task.longest != Integer.MAX_VALUE || task.leastStrip > 0;
    key = new double[task.types];
  }

  /** Sorts the loose pieces, largest first in a sense named by {@code order}. */
  void sort(Loose loose, int order) {
    int n = loose.count;
    if (keys.length < n) {
      keys = new double[n * 2];
    }
    for (int i = 0; i < n; i++) {
      int t = loose.types[i];
      keys[i] = rank(t, order) * (1 + 0.2 * dice.unit());
    }
    if (n > 60) {
      sortMany(loose, n);
      return;
    }
    for (int i = 1; i < n; i++) {
      double k = keys[i];
      int t = loose.types[i];
      int j = i - 1;
      while (j >= 0 && keys[j] < k) {
        keys[j + 1] = keys[j];
        loose.types[j + 1] = loose.types[j];
        j--;
      }
      keys[j + 1] = k;
      loose.types[j + 1] = t;
    }
  }

  private void sortMany(Loose loose, int n) {
    for (int i = 0; i < n; i++) {
      key[loose.types[i]] = keys[i];
    }
    int[] sorted =
        Arrays.stream(loose.types, 0, n)
            .boxed()
            .sorted(
                (a, b) -> key[a] != key[b] ? Double.compare(key[b], key[a]) : Integer.compare(a, b))
            .mapToInt(Integer::intValue)
            .toArray();
    System.arraycopy(sorted, 0, loose.types, 0, n);
  }

  /** As {@link #sort}, but with equal pieces side by side. */
  void sortByType(Loose loose, int order) {
    double[] rank = new double[task.types];
    for (int t = 0; t < rank.length; t++) {
      rank[t] = rank(t, order) * (1 + 0.4 * dice.unit());
    }
    int[] sorted =
        Arrays.stream(loose.types, 0, loose.count)
            .boxed()
            .sorted(
                (a, b) ->
                    rank[a] != rank[b] ? Double.compare(rank[b], rank[a]) : Integer.compare(a, b))
            .mapToInt(Integer::intValue)
            .toArray();
    System.arraycopy(sorted, 0, loose.types, 0, sorted.length);
  }

  /** Prefers first cuts across (1) or stacked (-1), or whichever is better (0). */
  void lean(int direction) {
    lean = direction;
  }

  private double rank(int t, int order) {
    int w = task.w[t];
    int h = task.h[t];
    return switch (order) {
      case 0, 1 -> (double) w * h;
      case 2 -> Math.max(w, h);
      case 3 -> w;
      case 4 -> h;
      default -> dice.unit();
    };
  }

  /** Looks for a free part in which the strip cut off first is wider than the piece by so much. */
  void beginWide(int ofType, int by) {
    begin(ofType);
    wider = by;
  }

  void begin(int ofType) {
    wider = 0;
    type = ofType;
    bestBin = -1;
    bestLoss = Double.MAX_VALUE;
  }

  boolean found() {
    return bestBin >= 0;
  }

  int bin() {
    return bestBin;
  }

  void consider(Bin bin, int b) {
    int w = task.w[type];
    int h = task.h[type];
    if (task.upright[bin.stock][type]) {
      scan(bin, b, w, h, false, BLINK);
    }
    if (task.turned[bin.stock][type]) {
      scan(bin, b, h, w, true, BLINK);
    }
  }

  /** As {@link #consider} but without blinks. */
  void considerSurely(Bin bin, int b) {
    int w = task.w[type];
    int h = task.h[type];
    if (task.upright[bin.stock][type]) {
      scan(bin, b, w, h, false, 0);
    }
    if (task.turned[bin.stock][type]) {
      scan(bin, b, h, w, true, 0);
    }
  }

  private void scan(Bin bin, int b, int iw, int ih, boolean turned, int blink) {
    for (int i = 0; i < bin.freeCount; i++) {
      int node = bin.free[i];
      int restW = bin.w[node] - iw;
      int restH = bin.h[node] - ih;
      if (restW < 0 || restH < 0) {
        continue;
      }
      double across = loss(bin.value[node], restW, iw, bin.h[node], restH, ih);
      double stacked = loss(bin.value[node], restH, ih, bin.w[node], restW, iw);
      if (limits) {
        across = allowed(bin, node, iw, ih, true) ? across : Double.MAX_VALUE;
        stacked = allowed(bin, node, iw, ih, false) ? stacked : Double.MAX_VALUE;
      }
      if (lean != 0 && Math.max(across, stacked) < Double.MAX_VALUE) {
        across = lean > 0 ? Math.min(across, stacked) : Math.max(across, stacked) + 1;
        stacked = lean > 0 ? across + 1 : Math.min(across, stacked) - 1;
      }
      double loss = Math.min(across, stacked);
      if (loss < bestLoss && (blink == 0 || dice.below(blink) != 0)) {
        bestLoss = loss;
        bestBin = b;
        bestNode = node;
        bestTurned = turned;
        bestAcross = across < stacked;
      }
    }
  }

  /**
   * What a free part loses in worth when a strip of width {@code own} and the whole length is cut
   * off first, and then the piece from the strip.
   */
  private double loss(double worth, int rest, int own, int length, int restOther, int other) {
    if (wider == 0) {
      return worth - Bin.worth((double) rest * length) - Bin.worth((double) own * restOther);
    }
    if (rest < wider || restOther == 0) {
      return Double.MAX_VALUE;
    }
    return worth
        - Bin.worth((double) (rest - wider) * length)
        - Bin.worth((double) (own + wider) * restOther)
        - Bin.worth((double) wider * other);
  }

  private boolean allowed(Bin bin, int node, int iw, int ih, boolean acrossFirst) {
    return allowed(bin.w[node], bin.h[node], iw, ih, acrossFirst);
  }

  private boolean allowed(int w, int h, int iw, int ih, boolean acrossFirst) {
    int restW = w - iw;
    int restH = h - ih;
    if ((restW > 0 && restW < task.leastStrip) || (restH > 0 && restH < task.leastStrip)) {
      return false;
    }
    int cutX = acrossFirst ? h : ih;
    int cutY = acrossFirst ? iw : w;
    return (restW == 0 || cutX <= task.longest) && (restH == 0 || cutY <= task.longest);
  }

  /** Whether a piece can be cut out of a whole sheet of the stock under the trimmer's limits. */
  boolean cuttable(int stock, int t) {
    if (!limits) {
      return true;
    }
    int w = task.sheetW[stock];
    int h = task.sheetH[stock];
    boolean plain =
        task.upright[stock][t]
            && (allowed(w, h, task.w[t], task.h[t], true)
                || allowed(w, h, task.w[t], task.h[t], false));
    return plain
        || (task.turned[stock][t]
            && (allowed(w, h, task.h[t], task.w[t], true)
                || allowed(w, h, task.h[t], task.w[t], false)));
  }

  /** Lays the piece where it was found best; {@code bin} is the writable copy. */
  void commit(Bin bin) {
    int iw = bestTurned ? task.h[type] : task.w[type];
    int ih = bestTurned ? task.w[type] : task.h[type];
    bin.insert(bestNode, type, iw, ih, bestAcross, wider, marks[type]);
  }
}
