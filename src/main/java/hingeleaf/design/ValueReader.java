package hingeleaf.design;

import hingeleaf.design.Values.Choice;
import hingeleaf.design.Values.Value;
import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.measure.Length;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.NearestWord;
import hingeleaf.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads one node as whatever kind is asked for; where that fails the answer is empty and a problem
 * told.
 */
final class ValueReader implements FieldKind.Visitor<Optional<Value>> {
  static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{Nd}-]{0,39}");
  private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,12}([.,]\\d{0,12})?|[.,]\\d{1,12})");

  private final FormReader reader;
  private final Node node;

  ValueReader(FormReader reader, Node node) {
    this.reader = reader;
    this.node = node;
  }

  private Optional<Value> fault(String kind, String message) {
    reader.add(kind, node, message);
    return Optional.empty();
  }

  @Override
  public Optional<Value> length(FieldKind.OneLength kind) {
    Length length = readLength(node, kind.range(), kind.expected());
    return Optional.ofNullable(length).map(Value.Measured::new);
  }

  private @Nullable Length readLength(Node at, Range range, String expected) {
    if (!(at instanceof Node.Scalar s)) {
      reader.bad(at, expected);
      return null;
    }
    Reading reading = Length.read(s.raw(), reader.unit());
    if (reading instanceof Reading.Fault f) {
      reader.add("bad-length", at, f.sentence());
      return null;
    }
    Length length = ((Reading.Read) reading).length();
    if (!range.holds(length.mm())) {
      MakerUnits units = MakerUnits.of(reader.unit());
      outOfRange(
          at,
          s.raw(),
          length.mm(),
          range,
          units.rounded(range.least()),
          units.rounded(range.most()));
      return null;
    }
    return length;
  }

  private void outOfRange(
      Node at, String raw, double value, Range range, String least, String most) {
    String path = at.path();
    String key = path.substring(path.lastIndexOf('.') + 1);
    String message =
        key
            + ": `"
            + Wording.shortened(raw)
            + "` is out of range; it must be "
            + (range.open() ? "more than " : "at least ")
            + least
            + " and at most "
            + most;
    reader.add(
        Problem.blocks("out-of-range", "", path, message)
            .at(at.place())
            .with(Map.of("value", value, "least", range.least(), "most", range.most()))
            .wanting(new Want(path, range.least(), range.most())));
  }

  @Override
  public Optional<Value> stageLengths(FieldKind.StageLengths kind) {
    if (!(node instanceof Node.Items items)) {
      Length one = readLength(node, kind.range(), kind.expected());
      return Optional.ofNullable(one).map(l -> new Value.Lengths(List.of(l), false));
    }
    if (items.items().isEmpty()) {
      return fault("bad-value", "expected " + kind.expected() + "; found an empty list");
    }
    List<Length> all = new ArrayList<>();
    for (Node item : items.items()) {
      Length one = readLength(item, kind.range(), "a length");
      if (one != null) {
        all.add(one);
      }
    }
    return all.size() < items.items().size()
        ? Optional.empty()
        : Optional.of(new Value.Lengths(List.copyOf(all), true));
  }

  @Override
  public Optional<Value> number(FieldKind.Numeric kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    String text = raw.strip();
    if (!kind.unit().isEmpty() && text.endsWith(kind.unit())) {
      text = text.substring(0, text.length() - kind.unit().length()).strip();
    }
    if (!NUMBER.matcher(text).matches()) {
      return fault("bad-number", "expected " + kind.expected() + "; found " + node.sort());
    }
    double number = Double.parseDouble(text.replace(',', '.'));
    if (!kind.range().holds(number)) {
      outOfRange(
          node, raw, number, kind.range(), shown(kind.range().least()), shown(kind.range().most()));
      return Optional.empty();
    }
    return Optional.of(new Value.Numbered(number));
  }

  private static String shown(double bound) {
    return java.math.BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString();
  }

  @Override
  public Optional<Value> whole(FieldKind.Whole kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    if (!raw.matches("[+-]?\\d{1,9}")) {
      return fault("bad-number", "expected " + kind.expected() + "; found " + node.sort());
    }
    int number = Integer.parseInt(raw);
    if (number < kind.least() || number > kind.most()) {
      return fault("out-of-range", "expected " + kind.expected() + "; found " + node.sort());
    }
    return Optional.of(new Value.Wholly(number));
  }

  /** The text of a scalar; null, with a problem, for lists and groups. */
  private @Nullable String plain(String expected) {
    if (node instanceof Node.Scalar s) {
      return s.raw();
    }
    reader.bad(node, expected);
    return null;
  }

  @Override
  public Optional<Value> text(FieldKind.Text kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    if (raw.codePointCount(0, raw.length()) > kind.longest()) {
      return fault("too-long", "this text is longer than " + kind.longest() + " characters");
    }
    return Optional.of(new Value.Worded(raw));
  }

  @Override
  public Optional<Value> file(FieldKind.BesideFile kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    boolean inside =
        raw.length() <= 200
            && !raw.startsWith("/")
            && !raw.contains("\\")
            && !raw.contains(":")
            && !List.of(raw.split("/", -1)).contains("..");
    if (!inside || !raw.toLowerCase(Locale.ROOT).endsWith(kind.ending())) {
      return fault("bad-file", "expected " + kind.expected() + "; found " + node.sort());
    }
    return Optional.of(new Value.Worded(raw));
  }

  @Override
  public Optional<Value> colour(FieldKind.Colour kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    return COLOUR.matcher(raw).matches()
        ? Optional.of(new Value.Worded(raw.toLowerCase(Locale.ROOT)))
        : reader.bad(node, kind.expected());
  }

  @Override
  public Optional<Value> word(FieldKind.Word kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    return kind.words().contains(raw)
        ? Optional.of(new Value.Worded(raw))
        : unknownWord(raw, kind.words(), kind.expected());
  }

  private Optional<Value> unknownWord(String raw, List<String> words, String expected) {
    return fault(
        "unknown-word",
        "unknown word `"
            + Wording.shortened(raw)
            + "`"
            + "; expected "
            + expected
            + Wording.didYouMean(NearestWord.to(raw, words)));
  }

  @Override
  public Optional<Value> name(FieldKind.Name kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    if (!NAME.matcher(raw).matches()) {
      return fault("bad-name", "expected " + kind.expected() + "; found " + node.sort());
    }
    Place first = reader.firstNamed(kind.space(), raw, node.place());
    if (first != null) {
      return fault(
          "name-twice",
          "the name `" + raw + "` is used twice; it stands in line " + first.line() + " already");
    }
    return Optional.of(new Value.Worded(raw));
  }

  @Override
  public Optional<Value> reference(FieldKind.Reference kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    return raw.length() <= 100
        ? Optional.of(new Value.Worded(raw))
        : reader.bad(node, kind.expected());
  }

  @Override
  public Optional<Value> yesNo(FieldKind.YesNo kind) {
    String raw = plain(kind.expected());
    if (raw == null) {
      return Optional.empty();
    }
    return switch (raw) {
      case "yes", "true" -> Optional.of(new Value.Truth(true));
      case "no", "false" -> Optional.of(new Value.Truth(false));
      default -> unknownWord(raw, List.of("yes", "no"), kind.expected());
    };
  }

  @Override
  public Optional<Value> tuple(FieldKind.Tuple kind) {
    if (!(node instanceof Node.Items items) || items.items().size() != kind.parts().size()) {
      String found = node instanceof Node.Items i ? i.items().size() + " values" : node.sort();
      return fault("bad-value", "expected " + kind.expected() + "; found " + found);
    }
    List<Length> all = new ArrayList<>();
    for (int i = 0; i < kind.parts().size(); i++) {
      FieldKind.TuplePart part = kind.parts().get(i);
      Length one = readLength(items.items().get(i), part.range(), "a length (" + part.name() + ")");
      if (one != null) {
        all.add(one);
      }
    }
    if (all.size() < kind.parts().size()) {
      return Optional.empty();
    }
    String wrong = kind.rule().faultOf(all);
    return wrong.isEmpty()
        ? Optional.of(new Value.Lengths(List.copyOf(all), true))
        : fault("out-of-range", wrong);
  }

  @Override
  public Optional<Value> list(FieldKind.ListOf kind) {
    if (!(node instanceof Node.Items items)) {
      return reader.bad(node, "a list, each line of it beginning with `- `");
    }
    int n = items.items().size();
    if (n < kind.least() || n > kind.most()) {
      String bounds =
          kind.least() == 0
              ? "at most " + kind.most()
              : "from " + kind.least() + " to " + kind.most();
      return fault("out-of-range", "this list takes " + bounds + " items; it has " + n);
    }
    List<Value> all = new ArrayList<>();
    for (Node item : items.items()) {
      reader.value(kind.item(), item).ifPresent(all::add);
    }
    return all.size() < n ? Optional.empty() : Optional.of(new Value.Listed(List.copyOf(all)));
  }

  @Override
  public Optional<Value> group(FieldKind.Group kind) {
    return Optional.of(new Value.Grouped(reader.read(kind.form(), node)));
  }

  @Override
  public Optional<Value> oneOf(FieldKind.OneOf kind) {
    if (!(node instanceof Node.Fields fields)) {
      return reader.bad(node, kind.expected());
    }
    List<FieldKind.Variant> chosen =
        kind.variants().stream().filter(v -> fields.get(v.main().key()).isPresent()).toList();
    if (chosen.size() == 1) {
      FieldKind.Variant v = chosen.get(0);
      return Optional.of(
          new Value.Chosen(new Choice(v.main().key(), reader.variantValues(kind, v, fields))));
    }
    if (chosen.size() > 1) {
      List<String> both = chosen.stream().map(v -> v.main().key()).toList();
      return fault(
          "two-at-once", kind.what() + " is one thing; give only one of " + Wording.oneOf(both));
    }
    return noVariant(kind, fields);
  }

  private Optional<Value> noVariant(FieldKind.OneOf kind, Node.Fields fields) {
    Set<String> common = Set.copyOf(kind.common().stream().map(FormField::key).toList());
    Optional<Node.Entry> odd =
        fields.entries().stream().filter(e -> !common.contains(e.key().raw())).findFirst();
    if (odd.isEmpty()) {
      return reader.bad(node, kind.expected());
    }
    Node.Scalar key = odd.get().key();
    reader.addPlain(
        "unknown-word",
        key,
        "unknown word `"
            + Wording.shortened(key.raw())
            + "`"
            + "; expected "
            + kind.expected()
            + Wording.didYouMean(NearestWord.to(key.raw(), kind.words())));
    return Optional.empty();
  }

  @Override
  public Optional<Value> wordOr(FieldKind.WordOr kind) {
    if (!(node instanceof Node.Scalar s)) {
      return reader.value(kind.other(), node);
    }
    if (kind.word().words().contains(s.raw())) {
      return Optional.of(new Value.Worded(s.raw()));
    }
    boolean wordy = s.raw().isEmpty() || Character.isLetter(s.raw().codePointAt(0));
    if (wordy || kind.other() instanceof FieldKind.Tuple) {
      return unknownWord(s.raw(), kind.word().words(), kind.expected());
    }
    return reader.value(kind.other(), node);
  }
}
