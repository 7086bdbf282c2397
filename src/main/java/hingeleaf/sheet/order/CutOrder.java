package hingeleaf.sheet.order;

import hingeleaf.sheet.task.Layout;
import hingeleaf.sheet.task.Part;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The sequence of cuts over all sheets with few settings. In a split every part but the last is cut
 * off by its own measure, in any order, scraps last: a sheet is not true to size (ISO 216 allows 2
 * mm either way from 150 to 600 mm), so pieces are measured and scraps are what is left. What can
 * be cut with the present setting is cut at once: that never costs a later setting. Only the choice
 * of the next setting is searched, with a beam.
 */
public final class CutOrder {

  /** Cut a part off a split: which sheet, which split, which of its parts, with which setting. */
  public record Step(int sheet, int node, int part, int setting) {}

  private final List<Node> nodes = new ArrayList<>();
  private final List<Integer> roots = new ArrayList<>();

  /** A split: its sheet, its part, and for each of its parts the node under it or -1. */
  private record Node(int sheet, Part.Split split, int[] under) {
    int size(int k) {
      Part p = split.parts().get(k);
      return split.across() ? p.w() : p.h();
    }
  }

  private CutOrder(List<Layout> layouts) {
    for (int s = 0; s < layouts.size(); s++) {
      int node = add(s, layouts.get(s).root());
      if (node >= 0) {
        roots.add(node);
      }
    }
  }

  private int add(int sheet, Part part) {
    if (!(part instanceof Part.Split split)) {
      return -1;
    }
    int id = nodes.size();
    int[] under = new int[split.parts().size()];
    nodes.add(new Node(sheet, split, under));
    for (int k = 0; k < under.length; k++) {
      under[k] = add(sheet, split.parts().get(k));
    }
    return id;
  }

  /** The steps and how many settings they take. Nodes are numbered sheet by sheet in preorder. */
  public record Result(List<Step> steps, int settings) {}

  /**
   * Finds a good order.
   *
   * @param width how many states the beam keeps; 1 is greedy
   */
  public static Result of(List<Layout> layouts, int width) {
    CutOrder order = new CutOrder(layouts);
    int beam = order.nodes.size() > 600 ? 1 : width;
    return order.search(beam);
  }

  private final class State {
    final boolean[][] off = new boolean[nodes.size()][];
    final int[] left = new int[nodes.size()];
    final ArrayList<Integer> open = new ArrayList<>();
    final ArrayList<Step> steps = new ArrayList<>();
    int settings;
    int pending;
    int kinds;

    State() {
      for (int n = 0; n < off.length; n++) {
        off[n] = new boolean[nodes.get(n).under.length];
        left[n] = off[n].length;
        pending += left[n] - 1;
      }
      open.addAll(roots);
    }

    State(State from) {
      for (int n = 0; n < off.length; n++) {
        off[n] = from.off[n].clone();
        left[n] = from.left[n];
      }
      open.addAll(from.open);
      steps.addAll(from.steps);
      settings = from.settings;
      pending = from.pending;
    }

    /** Cuts all that this setting can cut. */
    void cut(int setting) {
      settings++;
      ArrayDeque<Integer> queue = new ArrayDeque<>(open);
      open.clear();
      while (!queue.isEmpty()) {
        int n = queue.poll();
        Node node = nodes.get(n);
        for (int k = 0; k < off[n].length && left[n] > 1; k++) {
          if (mayCut(n, k) && node.size(k) == setting) {
            off[n][k] = true;
            left[n]--;
            pending--;
            steps.add(new Step(node.sheet, n, k, setting));
            if (node.under[k] >= 0) {
              queue.add(node.under[k]);
            }
          }
        }
        if (left[n] > 1) {
          open.add(n);
        } else {
          freeLast(n, node, queue);
        }
      }
      open.sort(null);
    }

    private void freeLast(int n, Node node, ArrayDeque<Integer> queue) {
      for (int k = 0; k < off[n].length; k++) {
        if (!off[n][k] && node.under[k] >= 0) {
          queue.add(node.under[k]);
        }
      }
    }

    /**
     * Whether a part may be cut off by its own measure now. A scrap waits until only scraps are
     * left: sheets are not true to size, so what is wanted is measured, and what is left over is
     * not.
     */
    boolean mayCut(int n, int k) {
      if (off[n][k]) {
        return false;
      }
      if (!(nodes.get(n).split.parts().get(k) instanceof Part.Free)) {
        return true;
      }
      for (int other = 0; other < off[n].length; other++) {
        if (!off[n][other] && !(nodes.get(n).split.parts().get(other) instanceof Part.Free)) {
          return false;
        }
      }
      return true;
    }

    TreeSet<Integer> choices() {
      TreeSet<Integer> result = new TreeSet<>();
      for (int n : open) {
        for (int k = 0; k < off[n].length; k++) {
          if (mayCut(n, k)) {
            result.add(nodes.get(n).size(k));
          }
        }
      }
      return result;
    }

    /** How many different measures could still be needed. */
    void countKinds() {
      TreeSet<Integer> sizes = new TreeSet<>();
      for (int n = 0; n < off.length; n++) {
        for (int k = 0; k < off[n].length && left[n] > 1; k++) {
          if (mayCut(n, k)) {
            sizes.add(nodes.get(n).size(k));
          }
        }
      }
      kinds = sizes.size();
    }
  }

  private Result search(int width) {
    List<State> beam = List.of(new State());
    while (true) {
      for (State s : beam) {
        if (s.pending == 0) {
          return new Result(List.copyOf(s.steps), s.settings);
        }
      }
      List<State> next = new ArrayList<>();
      for (State s : beam) {
        for (int setting : width == 1 ? List.of(commonest(s)) : s.choices()) {
          State t = new State(s);
          t.cut(setting);
          t.countKinds();
          next.add(t);
        }
      }
      next.sort(
          (a, b) ->
              a.kinds != b.kinds
                  ? Integer.compare(a.kinds, b.kinds)
                  : Integer.compare(a.pending, b.pending));
      beam = next.subList(0, Math.min(width, next.size()));
    }
  }

  private int commonest(State s) {
    java.util.TreeMap<Integer, Integer> often = new java.util.TreeMap<>();
    for (int n : s.open) {
      for (int k = 0; k < s.off[n].length; k++) {
        if (s.mayCut(n, k)) {
          often.merge(nodes.get(n).size(k), 1, Integer::sum);
        }
      }
    }
    int best = often.firstKey();
    for (var e : often.entrySet()) {
      if (e.getValue() > often.getOrDefault(best, 0)) {
        best = e.getKey();
      }
    }
    return best;
  }
}
