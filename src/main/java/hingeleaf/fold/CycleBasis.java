package hingeleaf.fold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A short basis of the loops of a body graph: candidates from breadth-first trees in order of
 * length, kept where they are independent over GF(2) (J. D. Horton, SIAM J. Computing 16(2), 1987).
 *
 * <p>Short loops matter: they stay planar or spherical, and keep the stages of a card apart, which
 * the cycles of one spanning tree do not. Up to {@link #REACH} joints a loop is shortest; what a
 * large graph has beyond is completed from its spanning tree.
 */
final class CycleBasis {
  /** Longest loop that is sought from every body when the graph is large. */
  private static final int REACH = 16;

  /** Bodies times joints up to which loops of any length are sought. */
  private static final long SMALL = 400_000;

  /** One loop: edges once round, and for each whether it is run through from a to b. */
  record Cycle(int[] edges, double[] signs) {}

  private final BodyGraph graph;
  private final Budget budget;
  private final int rank;
  private final List<Cycle> found = new ArrayList<>();
  private final Map<Integer, int[]> rows = new HashMap<>();
  private final int[] depth;
  private final int[] up;
  private final int[] stamp;
  private final int[] queue;
  private int now;

  private CycleBasis(BodyGraph graph, Budget budget) {
    this.graph = graph;
    this.budget = budget;
    rank = graph.loops();
    depth = new int[graph.nodes];
    up = new int[graph.nodes];
    stamp = new int[graph.nodes];
    queue = new int[graph.nodes];
  }

  static List<Cycle> of(BodyGraph graph, Budget budget) {
    CycleBasis basis = new CycleBasis(graph, budget);
    basis.shortOnes();
    boolean small = (long) graph.nodes * graph.edges <= SMALL;
    int reach = small ? graph.nodes : Math.min(REACH, graph.nodes);
    if (small) {
      basis.allAtOnce();
    } else {
      for (int length = 3; length <= reach && basis.wanting(); length++) {
        basis.ofLength(length);
      }
    }
    basis.fromTree();
    return basis.found;
  }

  private boolean wanting() {
    return found.size() < rank;
  }

  /** Joints inside one body, and pairs of joints between the same two bodies. */
  private void shortOnes() {
    Map<Long, Integer> first = new HashMap<>();
    for (int e = 0; e < graph.edges; e++) {
      int x = Math.min(graph.a[e], graph.b[e]);
      int y = Math.max(graph.a[e], graph.b[e]);
      if (x == y) {
        keep(new int[] {e}, x);
        continue;
      }
      Integer before = first.putIfAbsent((long) x * graph.nodes + y, e);
      if (before != null) {
        keep(new int[] {before, e}, x);
      }
    }
  }

  private void allAtOnce() {
    List<long[]> candidates = new ArrayList<>();
    for (int root = 0; root < graph.nodes && wanting(); root++) {
      grow(root, graph.nodes);
      for (int e = 0; e < graph.edges; e++) {
        int length = lengthThrough(e);
        if (length > 2) {
          candidates.add(new long[] {length, root, e});
        }
      }
    }
    candidates.sort(
        (p, q) -> p[0] != q[0] ? Long.compare(p[0], q[0]) : Arrays.compare(p, 1, 3, q, 1, 3));
    int rooted = -1;
    for (long[] c : candidates) {
      if (!wanting()) {
        return;
      }
      if (rooted != (int) c[1]) {
        rooted = (int) c[1];
        grow(rooted, graph.nodes);
      }
      take(rooted, (int) c[2], false);
    }
  }

  private void ofLength(int length) {
    for (int root = 0; root < graph.nodes && wanting(); root++) {
      int reached = grow(root, length / 2);
      for (int i = 0; i < reached; i++) {
        int v = queue[i];
        for (int k = graph.firstEdge(v); k < graph.endEdge(v); k++) {
          int e = graph.edgeAt(k);
          if (graph.a[e] == v && lengthThrough(e) == length) {
            take(root, e, false);
          }
        }
      }
    }
  }

  private void fromTree() {
    for (int i = 0; i < graph.nodes && wanting(); i++) {
      if (graph.via[graph.order[i]] < 0) {
        grow(graph.order[i], graph.nodes);
        for (int e = 0; e < graph.edges && wanting(); e++) {
          if (lengthThrough(e) > 1) {
            take(graph.order[i], e, true);
          }
        }
      }
    }
  }

  /** Breadth-first tree from a root, to a depth; returns how many nodes it holds. */
  private int grow(int root, int reach) {
    now++;
    int tail = 0;
    visit(root, -1, 0);
    queue[tail++] = root;
    for (int head = 0; head < tail; head++) {
      int v = queue[head];
      if (depth[v] >= reach) {
        continue;
      }
      for (int i = graph.firstEdge(v); i < graph.endEdge(v); i++) {
        int w = graph.other(graph.edgeAt(i), v);
        if (stamp[w] != now) {
          visit(w, graph.edgeAt(i), depth[v] + 1);
          queue[tail++] = w;
        }
      }
    }
    budget.spend(1 + tail / 64);
    return tail;
  }

  private void visit(int v, int edge, int d) {
    stamp[v] = now;
    up[v] = edge;
    depth[v] = d;
  }

  /** Length of the loop that an edge closes with the present tree, or 0. */
  private int lengthThrough(int e) {
    int x = graph.a[e];
    int y = graph.b[e];
    if (x == y || stamp[x] != now || stamp[y] != now || up[x] == e || up[y] == e) {
      return 0;
    }
    return depth[x] + depth[y] + 1;
  }

  /** Keeps the loop through an edge; only if it runs through the root, unless any will do. */
  private void take(int root, int e, boolean any) {
    int x = graph.a[e];
    int y = graph.b[e];
    while (x != y) {
      if (depth[x] >= depth[y]) {
        x = graph.other(up[x], x);
      } else {
        y = graph.other(up[y], y);
      }
    }
    if (x == root || any) {
      keep(path(e, x), x);
    }
  }

  private int[] path(int e, int meet) {
    List<Integer> down = new ArrayList<>();
    for (int v = graph.a[e]; v != meet; v = graph.other(up[v], v)) {
      down.add(0, up[v]);
    }
    down.add(e);
    for (int v = graph.b[e]; v != meet; v = graph.other(up[v], v)) {
      down.add(up[v]);
    }
    return down.stream().mapToInt(Integer::intValue).toArray();
  }

  private void keep(int[] edges, int from) {
    int[] row = edges.clone();
    Arrays.sort(row);
    while (row.length > 0) {
      int[] other = rows.get(row[row.length - 1]);
      if (other == null) {
        rows.put(row[row.length - 1], row);
        found.add(new Cycle(edges, signs(edges, from)));
        return;
      }
      budget.spend(1 + row.length / 64);
      row = sum(row, other);
    }
  }

  private double[] signs(int[] edges, int from) {
    double[] s = new double[edges.length];
    int v = from;
    for (int k = 0; k < edges.length; k++) {
      s[k] = graph.a[edges[k]] == v ? 1 : -1;
      v = graph.other(edges[k], v);
    }
    return s;
  }

  /** Symmetric difference of two sorted sets. */
  private static int[] sum(int[] p, int[] q) {
    int[] out = new int[p.length + q.length];
    int n = 0;
    int i = 0;
    int j = 0;
    while (i < p.length || j < q.length) {
      if (j == q.length || (i < p.length && p[i] < q[j])) {
        out[n++] = p[i++];
      } else if (i == p.length || q[j] < p[i]) {
        out[n++] = q[j++];
      } else {
        i++;
        j++;
      }
    }
    return Arrays.copyOf(out, n);
  }
}
