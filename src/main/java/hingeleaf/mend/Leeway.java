package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.design.Change;
import hingeleaf.design.Node;
import hingeleaf.design.Tree;
import hingeleaf.design.TreeReading;
import hingeleaf.measure.Length;
import hingeleaf.measure.Reading;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which changes a rescue may make: gluing and foam are always free, pieces that are not cut are,
 * and of a cut piece what only takes a strip off it. What hangs on the card does not go far from
 * where it was designed for another's sake.
 */
final class Leeway {
  /** A leaf or stay goes no further, nor becomes smaller by more: common practice, no source. */
  private static final double MOST_CHANGED_MM = 3;

  private static final double EPS = 1e-6;

  private final Pack start;
  private final Measures measures;
  private final Map<String, String> recut;

  /**
   * @param recut names of the cut pieces that are given up, as they become known
   */
  Leeway(Pack start, Measures measures, Map<String, String> recut) {
    this.start = start;
    this.measures = measures;
    this.recut = recut;
  }

  boolean free(Mend mend) {
    return mend.changes().stream().allMatch(this::free);
  }

  /** What is easiest for the maker comes first: gluing elsewhere, then cutting, then trimming. */
  int effort(Mend mend) {
    if (mend.changes().stream().allMatch(Leeway::gluing)) {
      return 0;
    }
    return mend.changes().stream().noneMatch(this::trims) ? 1 : 2;
  }

  private static boolean gluing(Change change) {
    return change instanceof Change.Put put && (glued(put) || put.path().contains(".at"));
  }

  /** A tab is only ever made narrower here, and that can be trimmed. */
  private static boolean glued(Change.Put put) {
    return put.path().endsWith(".tab-widths")
        || put.path().endsWith(".set-in")
        || put.path().endsWith(".raised-by");
  }

  private boolean trims(Change change) {
    return change instanceof Change.Put put
        && measures.cut().stream()
            .anyMatch(name -> put.path().startsWith(path(name) + ".") && !placed(name, put));
  }

  private boolean free(Change change) {
    if (!(change instanceof Change.Put put)) {
      return false;
    }
    if (glued(put)) {
      return true;
    }
    return near(put) && measures.cut().stream().allMatch(name -> leaves(name, put));
  }

  /** Whether a cut piece stays as it is, or only loses a strip. */
  private boolean leaves(String name, Change.Put put) {
    if (recut.containsKey(name)) {
      return true;
    }
    boolean own = put.path().startsWith(path(name) + ".");
    if (own && !placed(name, put) && !smaller(name, put)) {
      return false;
    }
    return !Stack.layer(start, name) || !common(put) && !inside(name, put);
  }

  private boolean placed(String name, Change.Put put) {
    return put.path().startsWith(path(name) + ".at");
  }

  /** A size of the card that all its layers share. */
  private boolean common(Change.Put put) {
    String base = Stack.basePath(start);
    return put.path().startsWith(base) && !put.path().startsWith(base + ".frames[");
  }

  /** Of a door that is cut into this piece. */
  private boolean inside(String name, Change.Put put) {
    return Sizes.cutIn(start).stream()
        .filter(v -> put.path().startsWith(v.path() + "."))
        .anyMatch(v -> Sizes.host(start, v).equals(name));
  }

  String path(String name) {
    return Stack.layer(start, name) ? Stack.path(start, name) : start.card().piece(name).origin();
  }

  /** A cut sheet can still be trimmed. */
  private boolean smaller(String name, Change.Put put) {
    Piece p = start.card().piece(name);
    boolean sheet =
        p.scores().isEmpty()
            && List.of("mats[", "windows[", "message").stream().anyMatch(p.origin()::startsWith);
    if (!sheet) {
      return false;
    }
    return Sizes.of(start, p).all().stream()
        .filter(o -> o.path().equals(put.path()))
        .anyMatch(o -> number(put.yaml()) < measures.size(name, o.word(), o.mm()) + EPS);
  }

  private boolean near(Change.Put put) {
    if (!put.path().startsWith("mechanisms[")) {
      return true;
    }
    List<Double> now = numbers(start.inputs().design().tree(), put.path());
    List<Double> then = numbers(tree(put.yaml()), "");
    for (int i = 0; i < then.size(); i++) {
      double was = i < now.size() ? now.get(i) : 0;
      if (Math.abs(then.get(i) - was) > MOST_CHANGED_MM + EPS) {
        return false;
      }
    }
    return true;
  }

  private double number(String yaml) {
    List<Double> all = numbers(tree(yaml), "");
    return all.isEmpty() ? Double.POSITIVE_INFINITY : all.get(0);
  }

  private static Optional<Tree> tree(String yaml) {
    return Tree.read("value", yaml) instanceof TreeReading.Legible l
        ? Optional.of(l.tree())
        : Optional.empty();
  }

  private List<Double> numbers(Optional<Tree> tree, String path) {
    return tree.map(t -> numbers(t, path)).orElse(List.of());
  }

  /** The lengths at a path, mm. */
  private List<Double> numbers(Tree tree, String path) {
    List<Double> all = new ArrayList<>();
    Node there = tree.find(path).orElse(null);
    List<Node> nodes =
        there instanceof Node.Items items
            ? items.items()
            : there == null ? List.of() : List.of(there);
    for (Node n : nodes) {
      if (n instanceof Node.Scalar s
          && Length.read(s.raw(), start.inputs().design().unit()) instanceof Reading.Read r) {
        all.add(r.length().mm());
      }
    }
    return all;
  }
}
