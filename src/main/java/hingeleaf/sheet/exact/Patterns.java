package hingeleaf.sheet.exact;

import hingeleaf.sheet.bound.NormalPoints;
import hingeleaf.sheet.task.Part;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * All maximal contents that a guillotine pattern of one stock can have with no more waste than
 * allowed, by a table over normal points. In a plan that wastes at most so much in all, no part of
 * any sheet wastes more, so nothing is lost by leaving out what does.
 */
final class Patterns {
  private static final int TRIM_W = 1;
  private static final int TRIM_H = 2;
  private static final int ACROSS = 3;
  private static final int STACKED = 4;
  private static final int PIECE = 5;
  private final Task task;
  private final int stock;
  private final Vectors vectors;
  private final NormalPoints xs;
  private final NormalPoints ys;
  private final long waste;
  private final Work work;
  private final Cell[][] cells;
  private final long[] sum;

  /** The contents of one rectangle: packed counts, area, and how each came about. */
  final class Cell {
    long[] data = new long[4 * vectors.words];
    double[] area = new double[4];
    long[] from = new long[4];
    int[] fromA = new int[4];
    int[] fromB = new int[4];
    int n;

    boolean offer(long[] v, int at, double covered, long how, int a, int b) {
      int stride = vectors.words;
      work.spend(n + 1);
      for (int i = 0; i < n; i++) {
        if (area[i] >= covered && vectors.covers(data, i * stride, v, at)) {
          return false;
        }
      }
      int kept = 0;
      for (int i = 0; i < n; i++) {
        if (area[i] > covered || !vectors.covers(v, at, data, i * stride)) {
          move(i, kept++);
        }
      }
      n = kept;
      grow();
      System.arraycopy(v, at, data, n * stride, stride);
      area[n] = covered;
      from[n] = how;
      fromA[n] = a;
      fromB[n] = b;
      n++;
      return true;
    }

    private void move(int i, int to) {
      if (i != to) {
        System.arraycopy(data, i * vectors.words, data, to * vectors.words, vectors.words);
        area[to] = area[i];
        from[to] = from[i];
        fromA[to] = fromA[i];
        fromB[to] = fromB[i];
      }
    }

    private void grow() {
      if (n == area.length) {
        data = Arrays.copyOf(data, data.length * 2);
        area = Arrays.copyOf(area, n * 2);
        from = Arrays.copyOf(from, n * 2);
        fromA = Arrays.copyOf(fromA, n * 2);
        fromB = Arrays.copyOf(fromB, n * 2);
      }
    }
  }

  /** A count of elementary steps that can run out. */
  static final class Work {
    private long left;
    private final BooleanSupplier stop;

    Work(long left, BooleanSupplier stop) {
      this.left = left;
      this.stop = stop;
    }

    void spend(long n) {
      left -= n;
    }

    boolean over() {
      return left <= 0 || stop.getAsBoolean();
    }

    boolean spent() {
      return left <= 0;
    }
  }

  private Patterns(
      Task task, int stock, Vectors vectors, NormalPoints xs, NormalPoints ys, long waste, Work w) {
    this.task = task;
    this.stock = stock;
    this.vectors = vectors;
    this.xs = xs;
    this.ys = ys;
    this.waste = waste;
    work = w;
    cells = new Cell[xs.size()][ys.size()];
    sum = new long[vectors.words];
  }

  /** Enumerates, or null when there is too much of it for the work allowed. */
  static @Nullable Patterns of(Task task, int stock, Vectors vectors, long waste, Work work) {
    int n = task.types;
    int[] sizesX = new int[2 * n];
    int[] sizesY = new int[2 * n];
    int[] often = new int[2 * n];
    for (int t = 0; t < n; t++) {
      sizesX[2 * t] = task.upright[stock][t] ? task.w[t] : 0;
      sizesX[2 * t + 1] = task.turned[stock][t] ? task.h[t] : 0;
      sizesY[2 * t] = task.upright[stock][t] ? task.h[t] : 0;
      sizesY[2 * t + 1] = task.turned[stock][t] ? task.w[t] : 0;
      often[2 * t] = task.demand[t];
      often[2 * t + 1] = task.demand[t];
    }
    NormalPoints xs = NormalPoints.of(task.sheetW[stock], sizesX, often, 1200);
    NormalPoints ys = NormalPoints.of(task.sheetH[stock], sizesY, often, 1200);
    if (xs == null || ys == null || (long) xs.size() * ys.size() > 600_000) {
      return null;
    }
    Patterns p = new Patterns(task, stock, vectors, xs, ys, waste, work);
    return p.fill() ? p : null;
  }

  private boolean fill() {
    int[][] cutsX = xs.cuts();
    int[][] cutsY = ys.cuts();
    for (int i = 0; i < xs.size(); i++) {
      for (int j = 0; j < ys.size(); j++) {
        cells[i][j] = new Cell();
      }
    }
    for (int t = 0; t < task.types; t++) {
      if (task.upright[stock][t]) {
        seed(t, task.w[t], task.h[t]);
      }
      if (task.turned[stock][t]) {
        seed(t, task.h[t], task.w[t]);
      }
    }
    for (int i = 1; i < xs.size(); i++) {
      for (int j = 1; j < ys.size(); j++) {
        fill(i, j, cutsX[i], cutsY[j]);
        if (work.over()) {
          return false;
        }
      }
    }
    return true;
  }

  private void seed(int t, int w, int h) {
    int[] one = new int[task.types];
    one[t] = 1;
    int turned = w == task.w[t] && h == task.h[t] ? 0 : 1;
    cells[xs.floor(w)][ys.floor(h)].offer(
        vectors.pack(one), 0, task.area(t), PIECE, 2 * t + turned, 0);
  }

  private void fill(int i, int j, int[] cutsX, int[] cutsY) {
    Cell cell = cells[i][j];
    double least = (double) xs.at(i) * ys.at(j) - waste;
    boolean whole = i == xs.size() - 1 && j == ys.size() - 1;
    if (whole) {
      least = Math.min(least, (double) task.sheetArea(stock) - waste);
    }
    inherit(cell, cells[i - 1][j], TRIM_W, least);
    inherit(cell, cells[i][j - 1], TRIM_H, least);
    if (ys.at(j) <= task.longest) {
      for (int c = 0; c < cutsX.length && !work.spent(); c += 2) {
        join(cell, cells[cutsX[c]][j], cells[cutsX[c + 1]][j], ACROSS, cutsX, c, least);
      }
    }
    if (xs.at(i) <= task.longest) {
      for (int c = 0; c < cutsY.length && !work.spent(); c += 2) {
        join(cell, cells[i][cutsY[c]], cells[i][cutsY[c + 1]], STACKED, cutsY, c, least);
      }
    }
  }

  private void inherit(Cell cell, Cell from, int how, double least) {
    for (int e = 0; e < from.n; e++) {
      if (from.area[e] >= least) {
        cell.offer(from.data, e * vectors.words, from.area[e], how, e, 0);
      }
    }
  }

  private void join(Cell cell, Cell a, Cell b, int how, int[] cuts, int c, double least) {
    int stride = vectors.words;
    work.spend((long) a.n * b.n + 1);
    long code = how | ((long) cuts[c] << 4) | ((long) cuts[c + 1] << 32);
    for (int p = 0; p < a.n && !work.spent(); p++) {
      for (int q = 0; q < b.n; q++) {
        double covered = a.area[p] + b.area[q];
        if (covered < least) {
          continue;
        }
        if (vectors.add(a.data, p * stride, b.data, q * stride, sum)) {
          covered = areaOf(sum);
          if (covered < least) {
            continue;
          }
        }
        cell.offer(sum, 0, covered, code, p, q);
      }
    }
  }

  private double areaOf(long[] v) {
    double result = 0;
    for (int t = 0; t < task.types; t++) {
      result += (double) task.area(t) * vectors.count(v, 0, t);
    }
    return result;
  }

  /** The contents of the whole sheet. */
  Cell whole() {
    return cells[xs.size() - 1][ys.size() - 1];
  }

  /** The tree of one content of the whole sheet; at most the wanted counts are laid. */
  Part tree(int entry, int[] wanted) {
    return tree(
        xs.size() - 1, ys.size() - 1, entry, task.sheetW[stock], task.sheetH[stock], wanted);
  }

  private Part tree(int i, int j, int entry, int w, int h, int[] wanted) {
    Cell cell = cells[i][j];
    int how = (int) (cell.from[entry] & 15);
    int a = (int) ((cell.from[entry] >>> 4) & 0xFFFFFFF);
    int b = (int) (cell.from[entry] >>> 32);
    int ea = cell.fromA[entry];
    int eb = cell.fromB[entry];
    return switch (how) {
      case TRIM_W -> tree(i - 1, j, ea, w, h, wanted);
      case TRIM_H -> tree(i, j - 1, ea, w, h, wanted);
      case ACROSS -> {
        int cut = xs.at(a);
        Part first = tree(a, j, ea, cut, h, wanted);
        yield split(true, w, h, first, tree(b, j, eb, w - cut, h, wanted));
      }
      case STACKED -> {
        int cut = ys.at(a);
        Part first = tree(i, a, ea, w, cut, wanted);
        yield split(false, w, h, first, tree(i, b, eb, w, h - cut, wanted));
      }
      default -> piece(ea / 2, ea % 2 == 1, w, h, wanted);
    };
  }

  private Part piece(int type, boolean turned, int w, int h, int[] wanted) {
    if (wanted[type] == 0) {
      return new Part.Free(w, h);
    }
    wanted[type]--;
    int pw = turned ? task.h[type] : task.w[type];
    int ph = turned ? task.w[type] : task.h[type];
    Part part = new Part.Laid(type, turned, pw, ph);
    if (ph < h) {
      part = split(false, pw, h, part, new Part.Free(pw, h - ph));
    }
    return pw < w ? split(true, w, h, part, new Part.Free(w - pw, h)) : part;
  }

  /** A split of two parts, flattened into one level per direction, free neighbours joined. */
  private static Part split(boolean across, int w, int h, Part one, Part two) {
    if (one instanceof Part.Free && two instanceof Part.Free) {
      return new Part.Free(w, h);
    }
    List<Part> parts = new ArrayList<>();
    int free = 0;
    for (Part p : List.of(one, two)) {
      List<Part> own = p instanceof Part.Split s && s.across() == across ? s.parts() : List.of(p);
      for (Part q : own) {
        if (q instanceof Part.Free) {
          free += across ? q.w() : q.h();
        } else {
          parts.add(q);
        }
      }
    }
    if (free > 0) {
      parts.add(across ? new Part.Free(free, h) : new Part.Free(w, free));
    }
    return new Part.Split(across, w, h, parts);
  }
}
