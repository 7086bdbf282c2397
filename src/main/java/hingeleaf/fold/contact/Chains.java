package hingeleaf.fold.contact;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.fold.Linkage;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The shortest chain of joints between any two bodies. */
final class Chains {
  private final List<Joint> joints;
  private final int bodies;
  private final int[] from;
  private final int[] to;
  private final @Nullable Chain[][] known;

  Chains(Mechanism mechanism, Linkage linkage) {
    joints = mechanism.joints();
    from = joints.stream().mapToInt(j -> linkage.bodyOf(j.a())).toArray();
    to = joints.stream().mapToInt(j -> linkage.bodyOf(j.b())).toArray();
    int most = 0;
    for (int f = 0; f < mechanism.facets().size(); f++) {
      most = Math.max(most, linkage.bodyOf(f) + 1);
    }
    bodies = most;
    known = new Chain[bodies][bodies];
    for (int b = 0; b < bodies; b++) {
      search(b);
    }
  }

  /** Null where nothing joins them, or they are one. */
  @Nullable Chain between(int first, int second) {
    return known[first][second];
  }

  private void search(int root) {
    int[] via = new int[bodies];
    Arrays.fill(via, -2);
    via[root] = -1;
    ArrayDeque<Integer> queue = new ArrayDeque<>(List.of(root));
    while (!queue.isEmpty()) {
      int v = queue.remove();
      if (v != root) {
        known[root][v] = chain(root, v, via);
      }
      for (int e = 0; e < from.length; e++) {
        int w = from[e] == v ? to[e] : to[e] == v ? from[e] : -1;
        if (w >= 0 && via[w] == -2) {
          via[w] = e;
          queue.add(w);
        }
      }
    }
  }

  private Chain chain(int root, int end, int[] via) {
    List<Integer> path = new ArrayList<>();
    List<Boolean> forwards = new ArrayList<>();
    for (int v = end; v != root; ) {
      int e = via[v];
      boolean ahead = to[e] == v;
      path.add(0, e);
      forwards.add(0, ahead);
      v = ahead ? from[e] : to[e];
    }
    boolean[] ahead = new boolean[path.size()];
    for (int i = 0; i < ahead.length; i++) {
      ahead[i] = forwards.get(i);
    }
    return new Chain(joints, path.stream().mapToInt(Integer::intValue).toArray(), ahead);
  }
}
