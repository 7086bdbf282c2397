package hingeleaf.fold;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * An elimination order that keeps a sparse Cholesky factor sparse: minimum degree on the quotient
 * graph (A. George and J. W. H. Liu, SIAM Review 31(1), 1989), ties to the lowest number.
 */
final class FillOrder {
  private final int[][] near;
  private final int[][] elements;
  private final int[][] members;
  private final boolean[] gone;
  private final int[] stamp;
  private int now;

  private FillOrder(int[][] graph) {
    int n = graph.length;
    near = graph.clone();
    elements = new int[n][];
    Arrays.fill(elements, new int[0]);
    members = new int[n][];
    gone = new boolean[n];
    stamp = new int[n];
  }

  /**
   * @param graph for each unknown the others that share an equation with it
   * @return the unknowns in the order in which to eliminate them
   */
  static int[] of(int[][] graph) {
    return new FillOrder(graph).order();
  }

  private int[] order() {
    int n = near.length;
    int[] degree = new int[n];
    PriorityQueue<long[]> queue =
        new PriorityQueue<>(
            (p, q) -> p[0] != q[0] ? Long.compare(p[0], q[0]) : Long.compare(p[1], q[1]));
    for (int i = 0; i < n; i++) {
      degree[i] = near[i].length;
      queue.add(new long[] {degree[i], i});
    }
    int[] out = new int[n];
    int done = 0;
    while (done < n) {
      long[] top = queue.remove();
      int v = (int) top[1];
      if (gone[v] || top[0] != degree[v]) {
        continue;
      }
      out[done++] = v;
      int[] reach = eliminate(v);
      for (int w : reach) {
        degree[w] = reachable(w).length;
        queue.add(new long[] {degree[w], w});
      }
    }
    return out;
  }

  /** Turns an unknown into an element: the clique of what it still reached. */
  private int[] eliminate(int v) {
    int[] reach = reachable(v);
    gone[v] = true;
    members[v] = reach;
    int[] absorbed = elements[v];
    for (int w : reach) {
      int[] kept = Arrays.stream(elements[w]).filter(e -> !contains(absorbed, e)).toArray();
      elements[w] = Arrays.copyOf(kept, kept.length + 1);
      elements[w][kept.length] = v;
    }
    mark(reach);
    for (int w : reach) {
      int at = now;
      near[w] = Arrays.stream(near[w]).filter(x -> x != v && stamp[x] != at).toArray();
    }
    return reach;
  }

  private void mark(int[] set) {
    now++;
    for (int x : set) {
      stamp[x] = now;
    }
  }

  private int[] reachable(int v) {
    now++;
    stamp[v] = now;
    int[] out = new int[16];
    int n = 0;
    for (int w : near[v]) {
      if (!gone[w] && stamp[w] != now) {
        stamp[w] = now;
        out = put(out, n++, w);
      }
    }
    for (int e : elements[v]) {
      for (int w : members[e]) {
        if (!gone[w] && stamp[w] != now) {
          stamp[w] = now;
          out = put(out, n++, w);
        }
      }
    }
    return Arrays.copyOf(out, n);
  }

  private static int[] put(int[] to, int at, int value) {
    int[] out = at < to.length ? to : Arrays.copyOf(to, 2 * to.length);
    out[at] = value;
    return out;
  }

  private static boolean contains(int[] set, int x) {
    for (int y : set) {
      if (y == x) {
        return true;
      }
    }
    return false;
  }
}
