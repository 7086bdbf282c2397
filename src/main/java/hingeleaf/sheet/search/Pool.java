package hingeleaf.sheet.search;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.List;

/** Good sheets seen so far, each content once. */
final class Pool {
  private final Task task;
  private final long[] marks;
  private final int most;
  private long[] table = new long[1024];
  private int filled;
  private final List<Layout> layouts = new ArrayList<>();
  private final List<int[]> contents = new ArrayList<>();

  Pool(Task task, int most) {
    this.task = task;
    this.most = most;
    marks = new long[task.types];
    long z = 0x9E3779B97F4A7C15L;
    for (int t = 0; t < task.types; t++) {
      z += 0x9E3779B97F4A7C15L;
      long m = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
      m = (m ^ (m >>> 27)) * 0x94D049BB133111EBL;
      marks[t] = m ^ (m >>> 31);
    }
  }

  long[] marks() {
    return marks;
  }

  int size() {
    return layouts.size();
  }

  List<Layout> layouts() {
    return layouts;
  }

  /** For each layout the types on it, sorted, one entry for each piece. */
  List<int[]> contents() {
    return contents;
  }

  /** Keeps a sheet if its content is new and it is well filled. */
  void offer(Bin bin) {
    if (bin.used * 4 < task.sheetArea(bin.stock) * 3) {
      return;
    }
    keep(bin);
  }

  /** Keeps a sheet if its content is new, however well it is filled; tells whether it was. */
  boolean keep(Bin bin) {
    if (filled >= most || bin.isEmpty()) {
      return false;
    }
    long key = bin.mark + 31L * bin.stock + 1;
    if (add(key)) {
      layouts.add(bin.layout(task));
      contents.add(bin.content());
      return true;
    }
    return false;
  }

  private boolean add(long key) {
    if (filled * 2 > table.length) {
      long[] old = table;
      table = new long[old.length * 2];
      filled = 0;
      for (long k : old) {
        if (k != 0) {
          add(k);
        }
      }
    }
    int at = (int) (key ^ (key >>> 32)) & (table.length - 1);
    while (table[at] != 0) {
      if (table[at] == key) {
        return false;
      }
      at = (at + 1) & (table.length - 1);
    }
    table[at] = key;
    filled++;
    return true;
  }
}
