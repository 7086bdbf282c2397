package hingeleaf.design;

import hingeleaf.finding.Place;
import java.util.ArrayList;
import java.util.List;

/** Values that no file holds, given the place and path of the group that they belong to. */
final class Rebased {
  private Rebased() {}

  static Node node(Node node, Place place, Trail trail) {
    if (node instanceof Node.Scalar s) {
      return scalar(s, place, trail);
    }
    if (node instanceof Node.Items i) {
      List<Node> items = new ArrayList<>();
      for (Node item : i.items()) {
        items.add(node(item, place, trail.item(items.size())));
      }
      return new Node.Items(items, i.flow(), i.dashes(), i.span(), place, trail);
    }
    Node.Fields f = (Node.Fields) node;
    List<Node.Entry> entries = new ArrayList<>();
    for (Node.Entry e : f.entries()) {
      Trail next = trail.key(e.key().raw());
      entries.add(new Node.Entry(scalar(e.key(), place, next), node(e.value(), place, next)));
    }
    return new Node.Fields(entries, f.flow(), f.span(), place, trail);
  }

  private static Node.Scalar scalar(Node.Scalar s, Place place, Trail trail) {
    return new Node.Scalar(s.raw(), s.style(), s.span(), place, trail);
  }
}
