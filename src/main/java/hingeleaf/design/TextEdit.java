package hingeleaf.design;

import java.util.List;
import java.util.Optional;

/**
 * Makes one {@link Change} by splicing the text at the places of its values, then reads the new
 * text and compares what it means with what it should: only the value at the path may have changed.
 * Comments, spacing, line ends and every other character stay.
 */
public final class TextEdit {
  private final Tree tree;
  private final Layout layout;

  private TextEdit(Tree tree) {
    this.tree = tree;
    this.layout = new Layout(tree.source());
  }

  /** A refusal on its way out. */
  static final class No extends Exception {
    private static final long serialVersionUID = 1L;
    private final String reason;

    No(String reason) {
      super(reason, null, false, false);
      this.reason = reason;
    }

    String reason() {
      return reason;
    }
  }

  /** Makes the change, or says why it cannot be made; the tree given is left as it is. */
  public static Edit apply(Tree tree, Change change) {
    try {
      return new TextEdit(tree).checked(change);
    } catch (No no) {
      return new Edit.Refused(no.reason());
    }
  }

  private Edit checked(Change change) throws No {
    Splice splice = splice(change);
    String name = tree.source().name();
    TreeReading reading = Tree.read(name, splice.in(layout.text()));
    if (reading instanceof TreeReading.Legible r
        && Meaning.of(r.tree().root()).equals(splice.meaning())) {
      return new Edit.Done(r.tree());
    }
    return new Edit.Refused("this change would alter more than it should; edit the file by hand");
  }

  private Splice splice(Change change) throws No {
    if (change instanceof Change.Put c) {
      return put(c.path(), c.yaml());
    }
    if (change instanceof Change.Insert c) {
      return insert(c.list(), c.at(), c.yaml());
    }
    if (change instanceof Change.Remove c) {
      return remove(c.path());
    }
    if (change instanceof Change.Move c) {
      Step step = Step.last(c.path());
      return lists().move(list(step.parent(), c.path()), step.index(), c.to());
    }
    Change.Rename c = (Change.Rename) change;
    return rename(c.path(), c.key());
  }

  private ListEdit lists() {
    return new ListEdit(tree, layout);
  }

  /** What a value will mean, if it is YAML on one line and nothing else, no comment either. */
  private static Meaning meaning(String yaml) throws No {
    boolean line = !yaml.isBlank() && !yaml.contains("\n") && !yaml.contains("\r");
    if (line && Tree.read("value", yaml) instanceof TreeReading.Legible r) {
      Node root = r.tree().root();
      if (root.span().from() == 0 && root.span().to() == yaml.length()) {
        return Meaning.of(root);
      }
    }
    throw new No("`" + Wording.shortened(yaml) + "` is not a value on one line");
  }

  private Splice put(String path, String yaml) throws No {
    Meaning meaning = meaning(yaml);
    Optional<Node> there = tree.find(path);
    if (there.isPresent()) {
      return replace(there.get(), yaml, meaning);
    }
    Step step = Step.last(path);
    if (step.index() >= 0) {
      throw noSuch(path);
    }
    Optional<Node> parent = tree.find(step.parent());
    if (parent.isEmpty()) {
      String group = "{" + YamlText.of(step.key()) + ": " + yaml + "}";
      return put(step.parent(), group);
    }
    return add(parent.get(), step.key(), yaml, meaning, path);
  }

  private static No noSuch(String path) {
    return new No("there is no `" + Wording.shortened(path) + "` in this file");
  }

  private Splice replace(Node old, String yaml, Meaning meaning) {
    Meaning whole = Meaning.with(tree.root(), old, meaning);
    Span span = old.span();
    int colon = afterColon(old);
    boolean blank = old instanceof Node.Scalar s && s.blank();
    boolean below = layout.lineStart(Math.max(colon, 0)) != layout.lineStart(span.from());
    if (colon >= 0 && (blank || below)) {
      // up to the key's own line; remarks that stand between stay behind it
      String between = layout.text().substring(colon, span.from()).stripTrailing();
      return new Splice(colon, span.to(), " " + yaml + between + broken(span), whole);
    }
    boolean bareDash = blank && span.from() > 0 && layout.text().charAt(span.from() - 1) == '-';
    String space = bareDash ? " " : "";
    return new Splice(span.from(), span.to(), space + yaml + broken(span), whole);
  }

  /** The place behind the colon of the key whose value this is; -1 for list items and the top. */
  private int afterColon(Node value) {
    Step step = Step.last(value.path());
    if (step.index() >= 0 || !(tree.find(step.parent()).orElse(null) instanceof Node.Fields f)) {
      return -1;
    }
    return f.entry(step.key())
        .filter(e -> e.value() == value)
        .map(e -> layout.text().indexOf(':', e.key().span().to()) + 1)
        .filter(colon -> colon > 0 && colon <= value.span().from())
        .orElse(-1);
  }

  /** The line break that a value over several lines took along. */
  private String broken(Span span) {
    return span.to() > span.from() && layout.atLineStart(span.to()) ? layout.newLine() : "";
  }

  private Splice add(Node parent, String key, String yaml, Meaning meaning, String path) throws No {
    String pair = YamlText.of(key) + ": " + yaml;
    if (parent instanceof Node.Scalar s && s.blank()) {
      return replace(
          s, "{" + pair + "}", new Meaning.Keyed(List.of(new Meaning.Pair(key, meaning))));
    }
    if (!(parent instanceof Node.Fields fields)) {
      throw noSuch(path);
    }
    Meaning whole = Meaning.with(tree.root(), fields, Meaning.plus(fields, key, meaning));
    if (fields.entries().isEmpty()) {
      return new Splice(fields.span().from(), fields.span().to(), "{" + pair + "}", whole);
    }
    int end = Layout.last(fields.entries()).value().span().to();
    if (fields.flow()) {
      return new Splice(end, end, ", " + pair, whole);
    }
    int first = fields.entries().get(0).key().span().from();
    return layout.below(end, layout.indent(first) + pair, whole);
  }

  private Splice insert(String path, int at, String yaml) throws No {
    Meaning meaning = meaning(yaml);
    Optional<Node> there = tree.find(path);
    boolean blank = there.isPresent() && there.get() instanceof Node.Scalar s && s.blank();
    if (at == 0 && (there.isEmpty() || blank)) {
      return put(path, "[" + yaml + "]");
    }
    return lists().insert(list(path, path), at, yaml, meaning);
  }

  private Node.Items list(String path, String asked) throws No {
    if (tree.find(path).orElse(null) instanceof Node.Items items) {
      return items;
    }
    throw noSuch(asked);
  }

  private Splice remove(String path) throws No {
    if (tree.find(path).isEmpty() || path.isEmpty()) {
      throw noSuch(path);
    }
    Step step = Step.last(path);
    if (step.index() >= 0) {
      Node.Items list = list(step.parent(), path);
      return list.items().size() == 1
          ? replace(list, "[]", new Meaning.Many(List.of()))
          : lists().remove(list, step.index());
    }
    Node.Fields fields = (Node.Fields) tree.find(step.parent()).orElseThrow(() -> noSuch(path));
    return removeKey(fields, step.key());
  }

  private Splice removeKey(Node.Fields fields, String key) {
    int n = fields.entries().size();
    Meaning whole = Meaning.with(tree.root(), fields, Meaning.minus(fields, key));
    if (n == 1) {
      return replace(fields, "{}", new Meaning.Keyed(List.of()));
    }
    int i = fields.entries().indexOf(fields.entry(key).orElseThrow());
    Node.Entry entry = fields.entries().get(i);
    int from = entry.key().span().from();
    int to = entry.value().span().to();
    if (fields.flow()) {
      int next = i + 1 < n ? fields.entries().get(i + 1).key().span().from() : -1;
      int before = i > 0 ? fields.entries().get(i - 1).value().span().to() : -1;
      return ListEdit.outOfFlow(from, to, before, next, whole);
    }
    if (layout.firstInLine(from)) {
      int after = layout.atLineStart(to) && to > from ? to : layout.nextLine(to);
      return new Splice(layout.lineStart(from), after, "", whole);
    }
    // the first key stands beside a dash, which stays for the second
    return new Splice(from, fields.entries().get(1).key().span().from(), "", whole);
  }

  private Splice rename(String path, String key) throws No {
    Step step = Step.last(path);
    Node.Entry entry =
        tree.find(step.parent())
            .filter(Node.Fields.class::isInstance)
            .flatMap(n -> ((Node.Fields) n).entry(step.key()))
            .orElseThrow(() -> noSuch(path));
    Node.Fields fields = (Node.Fields) tree.find(step.parent()).orElseThrow(() -> noSuch(path));
    Meaning whole = Meaning.with(tree.root(), fields, Meaning.renamed(fields, step.key(), key));
    Span span = entry.key().span();
    return new Splice(span.from(), span.to(), YamlText.of(key), whole);
  }
}
