package hingeleaf.fold;

import hingeleaf.card.Mechanism;

/**
 * Which facets move as one: glued facets, and all fixed facets together, found by union-find.
 *
 * <p>Body 0 is the ground if any facet is fixed; the others are numbered by their first facet.
 */
final class Bodies {
  final int[] ofFacet;
  final int count;

  /** Bodies by glue alone, where two fixed facets count as two; what a report should show. */
  final int glued;

  Bodies(Mechanism mechanism) {
    int n = mechanism.facets().size();
    int[] up = new int[n];
    for (int i = 0; i < n; i++) {
      up[i] = i;
    }
    int merged = 0;
    for (Mechanism.Bond b : mechanism.bonds()) {
      merged += join(up, b.a(), b.b());
    }
    glued = n - merged;
    for (int f : mechanism.fixed()) {
      join(up, mechanism.fixed().get(0), f);
    }
    ofFacet = new int[n];
    count = number(up, mechanism.fixed().isEmpty() ? -1 : root(up, mechanism.fixed().get(0)));
  }

  private int number(int[] up, int ground) {
    int[] name = new int[up.length];
    java.util.Arrays.fill(name, -1);
    int next = 0;
    if (ground >= 0) {
      name[ground] = next++;
    }
    for (int i = 0; i < up.length; i++) {
      int r = root(up, i);
      if (name[r] < 0) {
        name[r] = next++;
      }
      ofFacet[i] = name[r];
    }
    return next;
  }

  private static int root(int[] up, int i) {
    int r = i;
    while (up[r] != r) {
      up[r] = up[up[r]];
      r = up[r];
    }
    return r;
  }

  private static int join(int[] up, int a, int b) {
    int x = root(up, a);
    int y = root(up, b);
    up[Math.max(x, y)] = Math.min(x, y);
    return x == y ? 0 : 1;
  }
}
