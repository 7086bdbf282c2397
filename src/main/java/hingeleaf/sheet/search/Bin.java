package hingeleaf.sheet.search;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Part;
import hingeleaf.sheet.task.Task;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One sheet while searching: a guillotine tree in arrays. Directions alternate from level to level,
 * and each split has at most one free child, because free neighbours are joined. The order of
 * children says nothing.
 */
final class Bin {
  static final int FREE = -1;
  static final int ACROSS = -2;
  static final int STACKED = -3;
  private static final int GONE = -4;
  private static final int NONE = -1;

  int stock;
  int[] w;
  int[] h;
  int[] kind;
  double[] value;
  private int[] parent;
  private int[] child;
  private int[] next;
  int size;
  private int spare;

  /** The free parts, {@code freeCount} of them. */
  int[] free;

  int freeCount;
  private int[] place;

  /** Area covered by pieces. */
  long used;

  /** Sum of the marks of what lies here; equal contents have equal marks. */
  long mark;

  /** In which step this copy was made. */
  long stamp;

  Bin(int capacity) {
    w = new int[capacity];
    h = new int[capacity];
    kind = new int[capacity];
    value = new double[capacity];
    parent = new int[capacity];
    child = new int[capacity];
    next = new int[capacity];
    free = new int[capacity];
    place = new int[capacity];
  }

  /** Empties it and makes it a sheet of that stock. */
  void reset(Task task, int ofStock) {
    stock = ofStock;
    size = 0;
    spare = NONE;
    freeCount = 0;
    used = 0;
    mark = 0;
    int root = fresh(task.sheetW[ofStock], task.sheetH[ofStock], NONE);
    setFree(root);
  }

  void copyFrom(Bin from) {
    if (w.length < from.size) {
      grow(from.w.length);
    }
    int n = from.size;
    System.arraycopy(from.w, 0, w, 0, n);
    System.arraycopy(from.h, 0, h, 0, n);
    System.arraycopy(from.kind, 0, kind, 0, n);
    System.arraycopy(from.value, 0, value, 0, n);
    System.arraycopy(from.parent, 0, parent, 0, n);
    System.arraycopy(from.child, 0, child, 0, n);
    System.arraycopy(from.next, 0, next, 0, n);
    System.arraycopy(from.place, 0, place, 0, n);
    System.arraycopy(from.free, 0, free, 0, from.freeCount);
    stock = from.stock;
    size = n;
    spare = from.spare;
    freeCount = from.freeCount;
    used = from.used;
    mark = from.mark;
  }

  private void grow(int capacity) {
    w = Arrays.copyOf(w, capacity);
    h = Arrays.copyOf(h, capacity);
    kind = Arrays.copyOf(kind, capacity);
    value = Arrays.copyOf(value, capacity);
    parent = Arrays.copyOf(parent, capacity);
    child = Arrays.copyOf(child, capacity);
    next = Arrays.copyOf(next, capacity);
    free = Arrays.copyOf(free, capacity);
    place = Arrays.copyOf(place, capacity);
  }

  boolean isEmpty() {
    return used == 0;
  }

  /** What a free part is worth: area to a power above one, so that large ones are spared. */
  static double worth(double area) {
    return area * Math.sqrt(Math.sqrt(area));
  }

  private int fresh(int width, int height, int under) {
    int node;
    if (spare != NONE) {
      node = spare;
      spare = next[node];
    } else {
      if (size == w.length) {
        grow(size * 2);
      }
      node = size++;
    }
    w[node] = width;
    h[node] = height;
    parent[node] = under;
    child[node] = NONE;
    next[node] = NONE;
    return node;
  }

  private void recycle(int node) {
    kind[node] = GONE;
    next[node] = spare;
    spare = node;
  }

  private void setFree(int node) {
    kind[node] = FREE;
    value[node] = worth((double) w[node] * h[node]);
    place[node] = freeCount;
    free[freeCount++] = node;
  }

  private void resized(int node) {
    value[node] = worth((double) w[node] * h[node]);
  }

  private void dropFree(int node) {
    int at = place[node];
    int last = free[--freeCount];
    free[at] = last;
    place[last] = at;
  }

  private void adopt(int under, int node) {
    parent[node] = under;
    next[node] = child[under];
    child[under] = node;
  }

  private void unlink(int node) {
    int under = parent[node];
    if (child[under] == node) {
      child[under] = next[node];
      return;
    }
    int before = child[under];
    while (next[before] != node) {
      before = next[before];
    }
    next[before] = next[node];
  }

  /**
   * Lays a piece into a free part.
   *
   * @param node the free part
   * @param iw width of the piece as it lies
   * @param ih height of the piece as it lies
   * @param acrossFirst whether the first cut runs along x = iw (else along y = ih)
   * @param wider by how much the first strip is wider than the piece, so that another may lie
   *     beside it
   */
  void insert(int node, int type, int iw, int ih, boolean acrossFirst, int wider, long typeMark) {
    used += (long) iw * ih;
    mark += typeMark;
    int strip = acrossFirst ? splitAcross(node, iw + wider) : splitStacked(node, ih + wider);
    int spot = acrossFirst ? splitStacked(strip, ih) : splitAcross(strip, iw);
    if (wider > 0) {
      spot = acrossFirst ? splitAcross(spot, iw) : splitStacked(spot, ih);
    }
    dropFree(spot);
    kind[spot] = type;
  }

  /** Cuts a free part at x = iw; returns the free part of that width. */
  private int splitAcross(int node, int iw) {
    if (w[node] == iw) {
      return node;
    }
    int under = parent[node];
    if (under != NONE && kind[under] == ACROSS) {
      int strip = fresh(iw, h[node], under);
      adopt(under, strip);
      w[node] -= iw;
      resized(node);
      setFree(strip);
      return strip;
    }
    dropFree(node);
    kind[node] = ACROSS;
    int strip = fresh(iw, h[node], node);
    int rest = fresh(w[node] - iw, h[node], node);
    adopt(node, strip);
    adopt(node, rest);
    setFree(strip);
    setFree(rest);
    return strip;
  }

  /** Cuts a free part at y = ih; returns the free part of that height. */
  private int splitStacked(int node, int ih) {
    if (h[node] == ih) {
      return node;
    }
    int under = parent[node];
    if (under != NONE && kind[under] == STACKED) {
      int strip = fresh(w[node], ih, under);
      adopt(under, strip);
      h[node] -= ih;
      resized(node);
      setFree(strip);
      return strip;
    }
    dropFree(node);
    kind[node] = STACKED;
    int strip = fresh(w[node], ih, node);
    int rest = fresh(w[node], h[node] - ih, node);
    adopt(node, strip);
    adopt(node, rest);
    setFree(strip);
    setFree(rest);
    return strip;
  }

  /** The types of what lies here, sorted. */
  int[] content() {
    int[] result = new int[size];
    int n = 0;
    for (int i = 0; i < size; i++) {
      if (kind[i] >= 0) {
        result[n++] = kind[i];
      }
    }
    result = Arrays.copyOf(result, n);
    Arrays.sort(result);
    return result;
  }

  /** Whether something lies at or under this node. */
  boolean isRemovable(int node) {
    return kind[node] >= 0 || kind[node] == ACROSS || kind[node] == STACKED;
  }

  boolean isRoot(int node) {
    return parent[node] == NONE;
  }

  /** The node above, or the node itself at the root. */
  int above(int node) {
    return parent[node] == NONE ? node : parent[node];
  }

  /** Takes out everything at or under a node and joins what becomes free. */
  void remove(int node, Loose loose) {
    gather(node, loose);
    setFree(node);
    int at = node;
    while (parent[at] != NONE) {
      int under = parent[at];
      joinFree(under, at);
      if (next[child[under]] != NONE) {
        return;
      }
      dropFree(at);
      recycle(at);
      child[under] = NONE;
      setFree(under);
      at = under;
    }
  }

  private void gather(int node, Loose loose) {
    if (kind[node] >= 0) {
      used -= (long) w[node] * h[node];
      mark -= loose.markOf(kind[node]);
      loose.add(kind[node]);
      return;
    }
    int c = child[node];
    while (c != NONE) {
      int after = next[c];
      if (kind[c] == FREE) {
        dropFree(c);
      } else {
        gather(c, loose);
      }
      recycle(c);
      c = after;
    }
    child[node] = NONE;
  }

  private void joinFree(int under, int node) {
    for (int c = child[under]; c != NONE; c = next[c]) {
      if (c != node && kind[c] == FREE) {
        if (kind[under] == ACROSS) {
          w[node] += w[c];
        } else {
          h[node] += h[c];
        }
        dropFree(c);
        unlink(c);
        recycle(c);
        resized(node);
        return;
      }
    }
  }

  /** Becomes a copy of a layout's sheet; it must be empty. */
  void load(Part part, long[] marks) {
    if (!(part instanceof Part.Free)) {
      freeCount = 0;
      load(0, part, marks);
    }
  }

  private void load(int node, Part part, long[] marks) {
    if (part instanceof Part.Free) {
      setFree(node);
    } else if (part instanceof Part.Laid laid) {
      kind[node] = laid.type();
      used += (long) laid.w() * laid.h();
      mark += marks[laid.type()];
    } else if (part instanceof Part.Split split) {
      kind[node] = split.across() ? ACROSS : STACKED;
      for (Part p : split.parts()) {
        int under = fresh(p.w(), p.h(), node);
        adopt(node, under);
        load(under, p, marks);
      }
    }
  }

  /** This sheet as a layout. */
  Layout layout(Task task) {
    return new Layout(stock, part(task, 0));
  }

  private Part part(Task task, int node) {
    int k = kind[node];
    if (k == FREE) {
      return new Part.Free(w[node], h[node]);
    }
    if (k >= 0) {
      boolean turned = w[node] != task.w[k] || h[node] != task.h[k];
      return new Part.Laid(k, turned, w[node], h[node]);
    }
    List<Part> parts = new ArrayList<>();
    for (int c = child[node]; c != NONE; c = next[c]) {
      parts.add(part(task, c));
    }
    return new Part.Split(k == ACROSS, w[node], h[node], parts);
  }
}
