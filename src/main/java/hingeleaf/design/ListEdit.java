package hingeleaf.design;

import java.util.ArrayList;
import java.util.List;

/** Splices that add, take away or move the items of a list, in brackets or as lines. */
final class ListEdit {
  private final Tree tree;
  private final Layout layout;

  ListEdit(Tree tree, Layout layout) {
    this.tree = tree;
    this.layout = layout;
  }

  Splice insert(Node.Items list, int at, String yaml, Meaning item) throws TextEdit.No {
    int n = list.items().size();
    if (at < 0 || at > n) {
      throw new TextEdit.No("this list has " + n + " items; there is no place " + at + " in it");
    }
    Meaning whole = Meaning.with(tree.root(), list, Meaning.plus(list, at, item));
    if (n == 0) {
      return new Splice(list.span().from(), list.span().to(), "[" + yaml + "]", whole);
    }
    if (list.flow()) {
      int place =
          at < n ? list.items().get(at).span().from() : Layout.last(list.items()).span().to();
      return new Splice(place, place, at < n ? yaml + ", " : ", " + yaml, whole);
    }
    String indent = layout.dashIndent(list);
    if (at == 0) {
      int first = list.items().get(0).span().from();
      String line = yaml + layout.newLine() + indent + "- ";
      return new Splice(first, first, line, whole);
    }
    return layout.below(list.items().get(at - 1).span().to(), indent + "- " + yaml, whole);
  }

  /** Takes one of at least two items away. */
  Splice remove(Node.Items list, int at) throws TextEdit.No {
    Meaning whole = Meaning.with(tree.root(), list, Meaning.minus(list, at));
    int n = list.items().size();
    Span span = list.items().get(at).span();
    if (list.flow()) {
      int next = at + 1 < n ? list.items().get(at + 1).span().from() : -1;
      int before = at > 0 ? list.items().get(at - 1).span().to() : -1;
      return outOfFlow(span.from(), span.to(), before, next, whole);
    }
    int dash = dash(list, at);
    if (layout.firstInLine(dash)) {
      int end = span.to();
      int after = layout.atLineStart(end) && end > dash ? end : layout.nextLine(end);
      return new Splice(layout.lineStart(dash), after, "", whole);
    }
    return new Splice(span.from(), list.items().get(at + 1).span().from(), "", whole);
  }

  private int dash(Node.Items list, int at) throws TextEdit.No {
    int dash = layout.dash(list, at);
    if (dash < 0) {
      throw new TextEdit.No("I cannot find the dash of this item; edit the file by hand");
    }
    return dash;
  }

  /** Takes something out of brackets with the one comma that goes with it. */
  static Splice outOfFlow(int from, int to, int before, int next, Meaning whole) {
    return next >= 0 ? new Splice(from, next, "", whole) : new Splice(before, to, "", whole);
  }

  Splice move(Node.Items list, int from, int to) throws TextEdit.No {
    int n = list.items().size();
    if (from >= n || to < 0 || to >= n) {
      throw new TextEdit.No("this list has only " + n + " items");
    }
    Meaning whole = Meaning.with(tree.root(), list, Meaning.moved(list, from, to));
    List<Span> chunks = list.flow() ? spans(list) : lines(list);
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      order.add(i);
    }
    order.add(to, order.remove(from));
    return new Splice(
        chunks.get(0).from(), Layout.last(chunks).to(), reordered(chunks, order), whole);
  }

  /** The chunks in their new order, what stands between them left in its place. */
  private String reordered(List<Span> chunks, List<Integer> order) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < chunks.size(); i++) {
      Span chunk = chunks.get(order.get(i));
      out.append(layout.text(), chunk.from(), chunk.to());
      if (i + 1 < chunks.size()) {
        out.append(layout.text(), chunks.get(i).to(), chunks.get(i + 1).from());
      }
    }
    return out.toString();
  }

  private static List<Span> spans(Node.Items list) {
    return list.items().stream().map(Node::span).toList();
  }

  /**
   * Whole lines of each item: from the comments above its dash to the comment behind it. Comments
   * above the first item belong to the list and stay; where the first dash stands behind another,
   * only the values move.
   */
  private List<Span> lines(Node.Items list) throws TextEdit.No {
    if (!layout.firstInLine(dash(list, 0))) {
      return spans(list);
    }
    List<Span> chunks = new ArrayList<>();
    int from = layout.lineStart(dash(list, 0));
    for (Node item : list.items()) {
      int end = layout.chunkEnd(item);
      chunks.add(new Span(from, end));
      from = layout.atLineStart(end) ? end : Math.min(layout.nextLine(end), layout.text().length());
    }
    return chunks;
  }
}
