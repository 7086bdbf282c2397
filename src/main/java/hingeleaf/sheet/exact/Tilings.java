package hingeleaf.sheet.exact;

import hingeleaf.sheet.task.Part;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Sheets filled without any waste, from below: two blocks that share a whole side become one. In a
 * job without waste every part of every sheet is such a block, so if the list is complete nothing
 * is missed; when there are too many, the rarest joins come first and the answer is a heuristic
 * one.
 */
final class Tilings {
  private static final int MOST_BLOCKS = 250_000;
  private final int[] level;
  private final int mostInLevel;
  private final int shift;
  private final int[] wanted;
  private final Task task;
  private final int stock;
  private final Vectors vectors;
  private final Patterns.Work work;
  private final List<Block> blocks = new ArrayList<>();
  private final Map<Integer, List<Block>> byHeight = new HashMap<>();
  private final Map<Integer, List<Block>> byWidth = new HashMap<>();
  private final HashSet<Key> seen = new HashSet<>();
  private final PriorityQueue<Block> queue = new PriorityQueue<>();
  private final List<Block> whole = new ArrayList<>();
  private boolean complete = true;
  private boolean going = true;

  /** A rectangle filled exactly: its content and the two blocks it was joined from. */
  record Block(
      int w,
      int h,
      long[] content,
      int pieces,
      int number,
      boolean across,
      @Nullable Block one,
      @Nullable Block two,
      int type)
      implements Comparable<Block> {
    @Override
    public int compareTo(Block o) {
      return pieces != o.pieces
          ? Integer.compare(pieces, o.pieces)
          : Integer.compare(number, o.number);
    }
  }

  private record Key(int w, int h, List<Long> content) {}

  private Tilings(
      Task task,
      int stock,
      Vectors vectors,
      int[] wanted,
      Patterns.Work work,
      int mostInLevel,
      int shift) {
    this.task = task;
    this.mostInLevel = mostInLevel;
    this.shift = shift;
    this.wanted = wanted;
    level = new int[task.count + 1];
    this.stock = stock;
    this.vectors = vectors;
    this.work = work;
  }

  /**
   * Collects blocks.
   *
   * @param vectors made for {@code wanted}
   * @param wanted how many of each type may be used
   * @param mostInLevel how many blocks of one number of pieces are kept, not counting full strips
   * @param shift with which type to begin; another start keeps other blocks
   */
  static Tilings of(
      Task task,
      int stock,
      Vectors vectors,
      int[] wanted,
      Patterns.Work work,
      int mostInLevel,
      int shift) {
    Tilings t = new Tilings(task, stock, vectors, wanted, work, mostInLevel, shift);
    t.grow();
    return t;
  }

  /** Whether all blocks were found. */
  boolean complete() {
    return complete;
  }

  /** The sheets filled to the edge. */
  List<Block> whole() {
    return whole;
  }

  private void grow() {
    for (int i = 0; i < task.types; i++) {
      int t = (i + shift) % task.types;
      if (wanted[t] == 0) {
        continue;
      }
      int[] one = new int[task.types];
      one[t] = 1;
      long[] content = vectors.pack(one);
      if (task.upright[stock][t]) {
        offer(task.w[t], task.h[t], content, 1, true, null, null, t);
      }
      if (task.turned[stock][t]) {
        offer(task.h[t], task.w[t], content, 1, true, null, null, t);
      }
    }
    while (!queue.isEmpty() && going) {
      Block b = queue.poll();
      List<Block> beside = byHeight.computeIfAbsent(b.h, k -> new ArrayList<>());
      List<Block> above = byWidth.computeIfAbsent(b.w, k -> new ArrayList<>());
      beside.add(b);
      above.add(b);
      for (int i = 0; i < beside.size() && going; i++) {
        join(b, beside.get(i), true);
      }
      for (int i = 0; i < above.size() && going; i++) {
        join(b, above.get(i), false);
      }
    }
  }

  private void join(Block a, Block b, boolean across) {
    work.spend(1);
    int w = across ? a.w + b.w : a.w;
    int h = across ? a.h : a.h + b.h;
    if (w > task.sheetW[stock] || h > task.sheetH[stock]) {
      return;
    }
    if ((across ? h : w) > task.longest) {
      return;
    }
    long[] sum = new long[vectors.words];
    if (vectors.add(a.content, 0, b.content, 0, sum)) {
      return;
    }
    offer(w, h, sum, a.pieces + b.pieces, across, a, b, -1);
  }

  private void offer(
      int w,
      int h,
      long[] content,
      int pieces,
      boolean across,
      @Nullable Block one,
      @Nullable Block two,
      int type) {
    List<Long> key = new ArrayList<>(content.length);
    for (long v : content) {
      key.add(v);
    }
    if (!seen.add(new Key(w, h, key))) {
      return;
    }
    work.spend(20);
    boolean strip = w == task.sheetW[stock] || h == task.sheetH[stock];
    if (!strip && level[pieces]++ >= mostInLevel) {
      complete = false;
      return;
    }
    Block block = new Block(w, h, content, pieces, blocks.size(), across, one, two, type);
    blocks.add(block);
    if (w == task.sheetW[stock] && h == task.sheetH[stock]) {
      whole.add(block);
    } else {
      queue.add(block);
    }
    going = blocks.size() < MOST_BLOCKS && !work.over();
    complete &= going;
  }

  /** How many of each type a block holds. */
  int[] counts(Block block) {
    int[] result = new int[task.types];
    for (int t = 0; t < result.length; t++) {
      result[t] = vectors.count(block.content, 0, t);
    }
    return result;
  }

  /** The tree of a block; all its pieces are wanted. */
  Part tree(Block block) {
    if (block.one == null || block.two == null) {
      boolean turned = block.w != task.w[block.type] || block.h != task.h[block.type];
      return new Part.Laid(block.type, turned, block.w, block.h);
    }
    List<Part> parts = new ArrayList<>();
    for (Block b : List.of(block.one, block.two)) {
      Part p = tree(b);
      if (p instanceof Part.Split s && s.across() == block.across) {
        parts.addAll(s.parts());
      } else {
        parts.add(p);
      }
    }
    return new Part.Split(block.across, block.w, block.h, parts);
  }
}
