package hingeleaf.sheet.exact;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Covers the demand exactly with sheets that have no waste at all. */
final class PerfectCover {
  private static final int[] WIDTHS = {Integer.MAX_VALUE, 400, 1500, 1500, 6000, 6000};
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
        Tilings t = Tilings.of(task, s, vectors, work, WIDTHS[attempt], attempt * 7);
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
    }
    return new ExactSearch.Answer.Unknown();
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
