package hingeleaf.sheet.exact;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Part;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Decides whether a job can be cut at or below a cost, by enumerating all patterns worth having and
 * covering the demand with them.
 */
public final class ExactSearch {

  /** What came of it. */
  public sealed interface Answer {
    /** A plan at or below the cost. */
    record Found(List<Layout> layouts) implements Answer {}

    /** There is none. */
    record None() implements Answer {}

    /** Too much to decide within the work allowed. */
    record Unknown() implements Answer {}
  }

  private final Task task;
  private final Vectors vectors;
  private final Patterns.Work work;
  private final List<Patterns> patterns = new ArrayList<>();
  private final List<int[]> chosen = new ArrayList<>();
  private final HashSet<List<Long>> failed = new HashSet<>();
  private final int[] used;
  private final long budget;
  private final AreaPurse purse;

  private ExactSearch(Task task, long budget, Patterns.Work work) {
    this.task = task;
    this.budget = budget;
    this.work = work;
    vectors = new Vectors(task.demand);
    used = new int[task.stocks];
    purse = new AreaPurse(task);
  }

  /**
   * Looks for a plan that costs at most {@code budget}.
   *
   * @param work elementary steps allowed
   */
  public static Answer solve(Task task, long budget, long work, BooleanSupplier stop) {
    if (task.types > 80 || task.count > 4000) {
      return new Answer.Unknown();
    }
    ExactSearch search = new ExactSearch(task, budget, new Patterns.Work(work, stop));
    double need = 0;
    for (int t = 0; t < task.types; t++) {
      need += (double) task.area(t) * task.demand[t];
    }
    double waste = search.purse.most(budget, search.used) - need;
    if (waste < 0) {
      return new Answer.None();
    }
    if (waste == 0 && (task.types > 1 || task.demand[0] > 1)) {
      Answer answer = perfect(task, search.vectors, budget, work, stop);
      if (!(answer instanceof Answer.Unknown)) {
        return answer;
      }
    }
    for (int s = 0; s < task.stocks; s++) {
      Patterns p = Patterns.of(task, s, search.vectors, (long) waste, search.work);
      if (p == null) {
        return new Answer.Unknown();
      }
      search.patterns.add(p);
    }
    Boolean found = search.cover(search.vectors.demand(), need, 0);
    if (found == null) {
      return new Answer.Unknown();
    }
    return found ? new Answer.Found(search.layouts()) : new Answer.None();
  }

  private static Answer perfect(
      Task task, Vectors vectors, long budget, long work, BooleanSupplier stop) {
    Patterns.Work own = new Patterns.Work(work * 10, stop);
    return new PerfectCover(task, vectors, budget, own).solve();
  }

  /** True: covered; false: impossible; null: given up. */
  private @Nullable Boolean cover(long[] rest, double need, long cost) {
    int pivot = vectors.first(rest);
    if (pivot < 0) {
      return true;
    }
    if (purse.most(budget - cost, used) < need) {
      return false;
    }
    List<Long> key = key(rest, cost);
    if (failed.contains(key)) {
      return false;
    }
    long[] after = new long[vectors.words];
    for (int s = 0; s < task.stocks; s++) {
      if (cost + task.price[s] > budget || used[s] >= task.limit[s]) {
        continue;
      }
      Patterns.Cell cell = patterns.get(s).whole();
      used[s]++;
      double beyond = purse.most(budget - cost - task.price[s], used);
      for (int e = 0; e < cell.n; e++) {
        work.spend(1);
        if (cell.area[e] + beyond < need
            || vectors.count(cell.data, e * vectors.words, pivot) == 0) {
          continue;
        }
        if (work.over()) {
          return null;
        }
        vectors.less(rest, cell.data, e * vectors.words, after);
        chosen.add(new int[] {s, e});
        Boolean found = cover(after.clone(), areaOf(after), cost + task.price[s]);
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

  private List<Long> key(long[] rest, long cost) {
    List<Long> key = new ArrayList<>();
    for (long v : rest) {
      key.add(v);
    }
    key.add(cost);
    for (int s = 0; s < task.stocks; s++) {
      key.add(task.limit[s] < task.count ? (long) used[s] : 0L);
    }
    return key;
  }

  private double areaOf(long[] v) {
    double result = 0;
    for (int t = 0; t < task.types; t++) {
      result += (double) task.area(t) * vectors.count(v, 0, t);
    }
    return result;
  }

  private List<Layout> layouts() {
    int[] wanted = task.demand.clone();
    List<Layout> result = new ArrayList<>();
    for (int[] c : chosen) {
      Part root = patterns.get(c[0]).tree(c[1], wanted);
      result.add(new Layout(c[0], root));
    }
    return List.copyOf(result);
  }
}
