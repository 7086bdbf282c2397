package hingeleaf.design;

import hingeleaf.design.Values.Held;
import hingeleaf.design.Values.Value;
import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import hingeleaf.measure.NearestWord;
import hingeleaf.measure.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * From a tree and a form to typed values and a list of everything that is wrong. One object reads
 * one document, because names are compared over the whole of it.
 */
public final class FormReader {
  private static final int MOST_PROBLEMS = 100;

  private final Unit unit;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Map<String, Place>> names = new LinkedHashMap<>();

  /** What silent fields hold, where that is a value without a place: a card has hundreds. */
  private final Map<FormField, Value> usuals = new IdentityHashMap<>();

  /**
   * @param unit how bare numbers are meant
   */
  public FormReader(Unit unit) {
    this.unit = unit;
  }

  Unit unit() {
    return unit;
  }

  /** Everything found wrong so far, in the order of the text, at most a hundred. */
  public List<Problem> problems() {
    return problems.stream().sorted(Comparator.comparing(FormReader::place)).toList();
  }

  private static long place(Problem p) {
    Place at = p.place();
    return at == null ? 0 : ((long) at.line() << 32) + at.column();
  }

  /** Reads a form; the values are complete only if no {@link #problems} were found. */
  public Values read(Form form, Node node) {
    if (node instanceof Node.Fields fields) {
      return values(form, fields, unknownKeys(form, fields));
    }
    add("bad-value", node, expectedFound(node, "keys with values: " + Wording.oneOf(form.keys())));
    return new Values(form, node.trail(), node.place(), Map.of());
  }

  /**
   * The fields of a form out of what is written.
   *
   * @param misspelt keys that stand there in another spelling, and so are not missed
   */
  private Values values(Form form, Node.Fields fields, Set<String> misspelt) {
    Map<String, Held> held = new LinkedHashMap<>();
    for (FormField f : form.fields()) {
      Optional<Node> written = fields.get(f.key());
      boolean needed = f.needed() && !misspelt.contains(f.key());
      Held h = written.isPresent() ? given(f, written.get()) : silent(form, f, fields, needed);
      if (h != null) {
        held.put(f.key(), h);
      }
    }
    return new Values(form, fields.trail(), fields.place(), held);
  }

  private @Nullable Held given(FormField f, Node node) {
    return value(f.kind(), node).map(v -> new Held(v, node.place(), true)).orElse(null);
  }

  private @Nullable Held silent(Form form, FormField f, Node.Fields fields, boolean needed) {
    FormField.ByUnit usual = f.usual();
    if (usual != null) {
      Value known = usuals.get(f);
      Value value = known == null ? usual(form, f, usual.in(unit), fields) : known;
      return new Held(value, fields.place(), false);
    }
    if (needed) {
      addPlain(
          "missing",
          fields,
          Wording.shortened(form.title())
              + " needs `"
              + f.key()
              + "` ("
              + f.says()
              + "): "
              + f.kind().expected());
    }
    return null;
  }

  private Value usual(Form form, FormField f, String yaml, Node.Fields fields) {
    Node node = usualNode(f, yaml, fields);
    Value value =
        value(f.kind(), node)
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        form.name() + "." + f.key() + " has a faulty usual value"));
    if (node instanceof Node.Scalar) {
      usuals.put(f, value);
    }
    return value;
  }

  private static Node usualNode(FormField f, String yaml, Node.Fields parent) {
    TreeReading reading = Tree.read(f.key(), yaml);
    if (reading instanceof TreeReading.Legible r) {
      return Rebased.node(r.tree().root(), parent.place(), parent.trail().key(f.key()));
    }
    throw new IllegalStateException(f.key() + " has a usual value that is no YAML: " + yaml);
  }

  /** Reads one value; empty, with a problem added, where it cannot be read. */
  Optional<Value> value(FieldKind kind, Node node) {
    if (node instanceof Node.Scalar s && s.blank()) {
      add("missing", node, "nothing stands here; expected " + kind.expected());
      return Optional.empty();
    }
    return kind.accept(new ValueReader(this, node));
  }

  /** Tells of every key that the form has not; returns the keys that were probably meant. */
  private Set<String> unknownKeys(Form form, Node.Fields fields) {
    if (fields.entries().stream().allMatch(e -> form.has(e.key().raw()))) {
      return Set.of();
    }
    List<String> keys = form.keys();
    Set<String> written = new HashSet<>();
    fields.entries().forEach(e -> written.add(e.key().raw()));
    Set<String> meant = new HashSet<>();
    for (Node.Entry e : fields.entries()) {
      String key = e.key().raw();
      if (!keys.contains(key)) {
        List<String> free = keys.stream().filter(k -> !written.contains(k)).toList();
        Optional<String> near = NearestWord.to(key, free).or(() -> NearestWord.to(key, keys));
        near.ifPresent(meant::add);
        addPlain(
            "unknown-key",
            e.key(),
            "unknown key `"
                + Wording.shortened(key)
                + "` in "
                + form.title()
                + (near.isPresent()
                    ? Wording.didYouMean(near)
                    : "; it takes " + Wording.oneOf(keys)));
      }
    }
    return meant;
  }

  /** A value written as something else. */
  Optional<Value> bad(Node node, String expected) {
    add("bad-value", node, expectedFound(node, expected));
    return Optional.empty();
  }

  private static String expectedFound(Node node, String expected) {
    return "expected " + expected + "; found " + node.sort();
  }

  void add(String kind, Node node, String message) {
    add(Problem.blocks(kind, "", node.path(), inFront(node) + message).at(node.place()));
  }

  /** Without its key in front, for sentences that name it themselves. */
  void addPlain(String kind, Node node, String message) {
    add(Problem.blocks(kind, "", node.path(), message).at(node.place()));
  }

  void add(Problem problem) {
    if (problems.size() < MOST_PROBLEMS) {
      problems.add(problem);
    }
  }

  /** The key a sentence speaks of, unless the sentence names it itself. */
  private static String inFront(Node node) {
    String path = node.path();
    String last = path.substring(path.lastIndexOf('.') + 1);
    return last.isEmpty() ? "" : last + ": ";
  }

  /** Where a name of a space was given first; null if now. */
  @Nullable Place firstNamed(String space, String name, Place place) {
    return names.computeIfAbsent(space, s -> new LinkedHashMap<>()).putIfAbsent(name, place);
  }

  /** The form that a variant's keys make up together. */
  Values variantValues(FieldKind.OneOf kind, FieldKind.Variant variant, Node.Fields fields) {
    List<FormField> all = new ArrayList<>(List.of(variant.main()));
    all.addAll(variant.beside());
    all.addAll(kind.common());
    Form form = new Form(variant.main().key(), kind.what(), variant.main().says(), all);
    return values(form, fields, unknownKeys(form, fields));
  }
}
