package hingeleaf.sheet.exact;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Covers the demand exactly with sheets that have no waste at all. */
final class PerfectCover {
  private static final int[] WIDTHS = {Integer.MAX_VALUE, 200, 400, 800, 1500, 3000};
  private final Task task;
  private final Vectors vectors;
  private final long budget;
  private final Patterns.Work work;
  private final List<Tilings> tilings = new ArrayList<>();
  private final int[] used;
  private final List<Layout> chosen = new ArrayList<>();
  private final HashSet<List<Long>> failed = new HashSet<>();

  PerfectCover(Task task, Vectors vectors, long budget, Patterns.Work work) {
    this.task = task;
    this.vectors = vectors;
    this.budget = budget;
    this.work = work;
    used = new int[task.stocks];
  }

  /** Tries a complete list of blocks first, then several thinned ones. */
  ExactSearch.Answer solve() {
    for (int attempt = 0; attempt < WIDTHS.length && !work.over(); attempt++) {
      tilings.clear();
      failed.clear();
      chosen.clear();
      boolean complete = true;
      for (int s = 0; s < task.stocks; s++) {
        Tilings t = Tilings.of(task, s, vectors, task.demand, work, WIDTHS[attempt], attempt * 7);
        complete &= t.complete();
        tilings.add(t);
      }
      Boolean found = cover(vectors.demand(), 0);
      if (found != null && found) {
        return new ExactSearch.Answer.Found(List.copyOf(chosen));
      }
      if (found != null && complete) {
        return new ExactSearch.Answer.None();
      }
      chosen.clear();
      if (task.stocks == 1 && nested(task.demand.clone(), attempt)) {
        return new ExactSearch.Answer.Found(List.copyOf(chosen));
      }
    }
    return new ExactSearch.Answer.Unknown();
  }

  /**
   * Fixes one full sheet after the other and collects blocks anew from what is left, which are far
   * fewer.
   */
  private boolean nested(int[] rest, int attempt) {
    int pieces = 0;
    double area = 0;
    for (int t = 0; t < rest.length; t++) {
      pieces += rest[t];
      area += (double) task.area(t) * rest[t];
    }
    long sheets = Math.round(area / task.sheetArea(0));
    int width = sheets == 1 ? 300 : 500;
    Tilings t = Tilings.of(task, 0, new Vectors(rest), rest, work, width, attempt * 5);
    int tries = sheets == 1 ? Integer.MAX_VALUE : sheets == 2 ? 150 : 12;
    List<Tilings.Block> whole = t.whole();
    int stride = Math.max(1, whole.size() / tries);
    for (int i = attempt % stride; i < whole.size() && !work.over(); i += stride) {
      Tilings.Block block = whole.get(i);
      if (sheets == 1 && block.pieces() < pieces) {
        continue;
      }
      chosen.add(new Layout(0, t.tree(block)));
      int[] after = rest.clone();
      int[] counts = t.counts(block);
      for (int k = 0; k < after.length; k++) {
        after[k] -= counts[k];
      }
      if (sheets == 1 || nested(after, attempt)) {
        return true;
      }
      chosen.remove(chosen.size() - 1);
    }
    return false;
  }

  private @Nullable Boolean cover(long[] rest, long cost) {
    int pivot = vectors.first(rest);
    if (pivot < 0) {
      return true;
    }
    List<Long> key = new ArrayList<>();
    for (long v : rest) {
      key.add(v);
    }
    key.add(cost);
    for (int u : used) {
      key.add((long) u);
    }
    if (failed.contains(key)) {
      return false;
    }
    long[] after = new long[vectors.words];
    for (int s = 0; s < task.stocks; s++) {
      if (cost + task.price[s] > budget || used[s] >= task.limit[s]) {
        continue;
      }
      used[s]++;
      for (Tilings.Block block : tilings.get(s).whole()) {
        work.spend(1);
        if (vectors.count(block.content(), 0, pivot) == 0
            || !vectors.covers(rest, 0, block.content(), 0)) {
          continue;
        }
        if (work.over()) {
          return null;
        }
        vectors.less(rest, block.content(), 0, after);
        chosen.add(new Layout(s, tilings.get(s).tree(block)));
        Boolean found = cover(after.clone(), cost + task.price[s]);
        if (found == null || found) {
          return found;
        }
        chosen.remove(chosen.size() - 1);
      }
      used[s]--;
    }
    failed.add(key);
    return false;
  }
}
