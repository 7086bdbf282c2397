package hingeleaf.sheet.task;

import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPiece;
import hingeleaf.sheet.SheetStock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A job in the numbers that the search works with. Sizes are divided by their greatest common
 * divisor; pieces of equal size and freedom are one type. Arrays are indexed by type or stock and
 * are not to be written to.
 */
public final class Task {
  /** Sizes after division must stay below this, so that areas fit in 63 bits. */
  public static final long MOST = 1L << 30;

  /** Nanometres in one unit of this task. */
  public final long scale;

  public final int types;
  public final int[] w;
  public final int[] h;
  public final int[] demand;
  public final int stocks;
  public final int[] sheetW;
  public final int[] sheetH;
  public final long[] price;
  public final int[] limit;

  /** {@code upright[stock][type]}: may lie as written, grain and size considered. */
  public final boolean[][] upright;

  /** {@code turned[stock][type]}: may lie turned by a quarter; false for squares. */
  public final boolean[][] turned;

  /** Longest cut, {@link Integer#MAX_VALUE} when not given. */
  public final int longest;

  /** Narrowest part that may fall off, 0 when not given. */
  public final int leastStrip;

  /** For each type the indices of the job's pieces that belong to it. */
  public final List<List<Integer>> members;

  /** How many single pieces there are. */
  public final int count;

  private Task(SheetJob job, long scale, List<List<Integer>> members) {
    this.scale = scale;
    this.members = members;
    types = members.size();
    stocks = job.stock().size();
    w = new int[types];
    h = new int[types];
    demand = new int[types];
    sheetW = new int[stocks];
    sheetH = new int[stocks];
    price = new long[stocks];
    limit = new int[stocks];
    upright = new boolean[stocks][types];
    turned = new boolean[stocks][types];
    long wanted = 0;
    for (int t = 0; t < types; t++) {
      SheetPiece first = job.pieces().get(members.get(t).get(0));
      w[t] = Math.toIntExact(first.w() / scale);
      h[t] = Math.toIntExact(first.h() / scale);
      long sum = members.get(t).stream().mapToLong(i -> job.pieces().get(i).quantity()).sum();
      demand[t] = Math.toIntExact(sum);
      wanted += sum;
    }
    count = Math.toIntExact(wanted);
    for (int s = 0; s < stocks; s++) {
      fillStock(job, s);
    }
    long cut = job.trimmer().longest();
    longest = cut == 0 ? Integer.MAX_VALUE : (int) Math.min(Integer.MAX_VALUE, cut / scale);
    long strip = job.trimmer().leastStrip();
    leastStrip = (int) Math.min(MOST, (strip + scale - 1) / scale);
  }

  private void fillStock(SheetJob job, int s) {
    SheetStock stock = job.stock().get(s);
    sheetW[s] = Math.toIntExact(stock.w() / scale);
    sheetH[s] = Math.toIntExact(stock.h() / scale);
    price[s] = stock.price();
    limit[s] = (int) Math.min(count, stock.most());
    for (int t = 0; t < types; t++) {
      SheetPiece piece = job.pieces().get(members.get(t).get(0));
      boolean square = piece.w() == piece.h();
      upright[s][t] = piece.liesUpright(stock) || (square && piece.liesTurned(stock));
      turned[s][t] = !square && piece.liesTurned(stock);
    }
  }

  /**
   * Makes a job ready. The job must be free of faults.
   *
   * @throws ArithmeticException when the sizes are too fine for the sheet's size
   */
  public static Task of(SheetJob job) {
    long scale = scaleOf(job);
    Map<List<Object>, List<Integer>> kinds = new LinkedHashMap<>();
    for (int i = 0; i < job.pieces().size(); i++) {
      kinds.computeIfAbsent(kind(job, job.pieces().get(i)), k -> new ArrayList<>()).add(i);
    }
    return new Task(job, scale, List.copyOf(kinds.values()));
  }

  /** The greatest common divisor of all sizes of a job, in nm. */
  public static long scaleOf(SheetJob job) {
    long scale = 0;
    for (SheetStock stock : job.stock()) {
      scale = gcd(gcd(scale, stock.w()), stock.h());
    }
    for (SheetPiece piece : job.pieces()) {
      scale = gcd(gcd(scale, piece.w()), piece.h());
    }
    return Math.max(1, scale);
  }

  private static List<Object> kind(SheetJob job, SheetPiece piece) {
    List<Object> key = new ArrayList<>(List.of(piece.w(), piece.h()));
    for (SheetStock stock : job.stock()) {
      key.add(piece.liesUpright(stock));
      key.add(piece.liesTurned(stock));
    }
    return key;
  }

  /** Greatest common divisor; of 0 and n it is n. */
  public static long gcd(long a, long b) {
    return b == 0 ? Math.abs(a) : gcd(b, a % b);
  }

  /** Area of one piece of a type. */
  public long area(int type) {
    return (long) w[type] * h[type];
  }

  /** Area of one sheet of a stock. */
  public long sheetArea(int stock) {
    return (long) sheetW[stock] * sheetH[stock];
  }

  /** The smallest step between two different costs: the common divisor of the prices. */
  public long costStep() {
    return Math.max(1, Arrays.stream(price).reduce(0, Task::gcd));
  }

  /** Whether a type may lie on a stock in some way. */
  public boolean fits(int stock, int type) {
    return upright[stock][type] || turned[stock][type];
  }
}
