package hingeleaf.design;

import java.util.ArrayList;
import java.util.List;

/**
 * What a tree says, without places and spelling: to compare a text before and after an edit.
 * Changes are made here once more, on the meaning alone, and both must agree.
 */
sealed interface Meaning {
  record Text(String raw) implements Meaning {}

  record Many(List<Meaning> items) implements Meaning {
    public Many {
      items = List.copyOf(items);
    }
  }

  record Keyed(List<Pair> pairs) implements Meaning {
    public Keyed {
      pairs = List.copyOf(pairs);
    }
  }

  record Pair(String key, Meaning value) {}

  static Meaning of(Node node) {
    if (node instanceof Node.Scalar s) {
      return new Text(s.raw());
    }
    if (node instanceof Node.Items i) {
      return new Many(i.items().stream().map(Meaning::of).toList());
    }
    return new Keyed(
        ((Node.Fields) node)
            .entries().stream().map(e -> new Pair(e.key().raw(), of(e.value()))).toList());
  }

  /** What the tree will mean with one node meaning something else. */
  static Meaning with(Node root, Node changed, Meaning instead) {
    if (root == changed) {
      return instead;
    }
    if (root instanceof Node.Items i) {
      return new Many(i.items().stream().map(n -> with(n, changed, instead)).toList());
    }
    if (root instanceof Node.Fields f) {
      return new Keyed(
          f.entries().stream()
              .map(e -> new Pair(e.key().raw(), with(e.value(), changed, instead)))
              .toList());
    }
    return of(root);
  }

  static Keyed plus(Node.Fields fields, String key, Meaning value) {
    List<Pair> pairs = new ArrayList<>(((Keyed) of(fields)).pairs());
    pairs.add(new Pair(key, value));
    return new Keyed(pairs);
  }

  static Keyed minus(Node.Fields fields, String key) {
    List<Pair> pairs = new ArrayList<>(((Keyed) of(fields)).pairs());
    pairs.removeIf(p -> p.key().equals(key));
    return new Keyed(pairs);
  }

  static Keyed renamed(Node.Fields fields, String key, String other) {
    return new Keyed(
        ((Keyed) of(fields))
            .pairs().stream()
                .map(p -> p.key().equals(key) ? new Pair(other, p.value()) : p)
                .toList());
  }

  static Many plus(Node.Items list, int at, Meaning item) {
    List<Meaning> items = new ArrayList<>(((Many) of(list)).items());
    items.add(at, item);
    return new Many(items);
  }

  static Many minus(Node.Items list, int at) {
    List<Meaning> items = new ArrayList<>(((Many) of(list)).items());
    items.remove(at);
    return new Many(items);
  }

  static Many moved(Node.Items list, int from, int to) {
    List<Meaning> items = new ArrayList<>(((Many) of(list)).items());
    items.add(to, items.remove(from));
    return new Many(items);
  }
}
