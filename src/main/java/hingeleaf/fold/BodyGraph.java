package hingeleaf.fold;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import java.util.List;

/** Bodies as nodes, joints as edges, with adjacency by index; parallel edges and self-loops too. */
final class BodyGraph {
  final int nodes;
  final int edges;
  final int[] a;
  final int[] b;
  private final int[] start;
  private final int[] incident;

  /** Nodes in breadth-first order, each connected piece from its lowest node. */
  final int[] order;

  /** The edge by which breadth-first search came to a node, or -1 for a first node. */
  final int[] via;

  /** How many connected pieces there are. */
  final int pieces;

  BodyGraph(Mechanism mechanism, Bodies bodies) {
    List<Joint> joints = mechanism.joints();
    nodes = bodies.count;
    edges = joints.size();
    a = new int[edges];
    b = new int[edges];
    for (int j = 0; j < edges; j++) {
      a[j] = bodies.ofFacet[joints.get(j).a()];
      b[j] = bodies.ofFacet[joints.get(j).b()];
    }
    start = new int[nodes + 1];
    incident = new int[2 * edges];
    index();
    order = new int[nodes];
    via = new int[nodes];
    pieces = search();
  }

  private void index() {
    for (int j = 0; j < edges; j++) {
      start[a[j]]++;
      if (a[j] != b[j]) {
        start[b[j]]++;
      }
    }
    int sum = 0;
    for (int i = 0; i <= nodes; i++) {
      int c = start[i];
      start[i] = sum;
      sum += c;
    }
    int[] fill = start.clone();
    for (int j = 0; j < edges; j++) {
      incident[fill[a[j]]++] = j;
      if (a[j] != b[j]) {
        incident[fill[b[j]]++] = j;
      }
    }
  }

  private int search() {
    int[] seen = new int[nodes];
    int tail = 0;
    int found = 0;
    for (int root = 0; root < nodes; root++) {
      if (seen[root] != 0) {
        continue;
      }
      found++;
      seen[root] = 1;
      via[root] = -1;
      int head = tail;
      order[tail++] = root;
      while (head < tail) {
        int v = order[head++];
        for (int i = start[v]; i < start[v + 1]; i++) {
          int w = other(incident[i], v);
          if (seen[w] == 0) {
            seen[w] = 1;
            via[w] = incident[i];
            order[tail++] = w;
          }
        }
      }
    }
    return found;
  }

  int firstEdge(int node) {
    return start[node];
  }

  int endEdge(int node) {
    return start[node + 1];
  }

  int edgeAt(int i) {
    return incident[i];
  }

  int other(int edge, int node) {
    return a[edge] == node ? b[edge] : a[edge];
  }

  /** How many independent loops there are: edges - nodes + pieces. */
  int loops() {
    return edges - nodes + pieces;
  }
}
