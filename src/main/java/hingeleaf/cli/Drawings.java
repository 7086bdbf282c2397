package hingeleaf.cli;

import hingeleaf.design.DesignDocument;
import hingeleaf.design.Node;
import java.util.Set;
import java.util.TreeSet;

/** The drawings that a design names: every value of a key {@code svg}. */
final class Drawings {
  private Drawings() {}

  static Set<String> named(DesignDocument design) {
    Set<String> names = new TreeSet<>();
    collect(design.tree().root(), names);
    return names;
  }

  private static void collect(Node node, Set<String> names) {
    if (node instanceof Node.Items items) {
      items.items().forEach(i -> collect(i, names));
    } else if (node instanceof Node.Fields fields) {
      for (Node.Entry e : fields.entries()) {
        if (e.key().raw().equals("svg") && e.value() instanceof Node.Scalar s) {
          names.add(s.raw());
        } else {
          collect(e.value(), names);
        }
      }
    }
  }
}
