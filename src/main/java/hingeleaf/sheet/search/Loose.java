package hingeleaf.sheet.search;

import java.util.Arrays;

/** The pieces that lie on no sheet at the moment, by type, one entry each. */
final class Loose {
  int[] types;
  int count;
  private final long[] marks;

  Loose(int capacity, long[] marks) {
    types = new int[Math.max(4, capacity)];
    this.marks = marks;
  }

  void add(int type) {
    if (count == types.length) {
      types = Arrays.copyOf(types, count * 2);
    }
    types[count++] = type;
  }

  long markOf(int type) {
    return marks[type];
  }

  void copyFrom(Loose from) {
    if (types.length < from.count) {
      types = new int[from.types.length];
    }
    System.arraycopy(from.types, 0, types, 0, from.count);
    count = from.count;
  }
}
