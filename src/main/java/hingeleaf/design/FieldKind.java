package hingeleaf.design;

import hingeleaf.measure.Length;
import java.util.List;

/**
 * What may stand behind a key. A closed family: the reader, the schema and the page each visit
 * every kind, so that none can be forgotten.
 */
public sealed interface FieldKind {
  /** What a maker should write, such as "a length, such as `12 mm`". */
  String expected();

  <R> R accept(Visitor<R> visitor);

  /** One length; {@code range} in mm. */
  record OneLength(Range range) implements FieldKind {
    @Override
    public String expected() {
      return "a length, such as `12 mm` or `1/2 in`";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.length(this);
    }
  }

  /** One length for all stages, or a list with one for each; {@code range} in mm. */
  record StageLengths(Range range) implements FieldKind {
    @Override
    public String expected() {
      return "a length, or a list with one for each stage, such as `[12, 18]`";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stageLengths(this);
    }
  }

  /**
   * A number.
   *
   * @param unit word that may stand behind it, such as "g/m2"; empty where none
   */
  record Numeric(Range range, String unit) implements FieldKind {
    @Override
    public String expected() {
      return unit.isEmpty() ? "a number" : "a number of " + unit;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.number(this);
    }
  }

  /** A whole number. */
  record Whole(int least, int most) implements FieldKind {
    @Override
    public String expected() {
      return least == most ? "`" + least + "`" : "a whole number from " + least + " to " + most;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.whole(this);
    }
  }

  /** Any text of at most so many characters. */
  record Text(int longest) implements FieldKind {
    @Override
    public String expected() {
      return "a text";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.text(this);
    }
  }

  /** The name of a file beside this one, with this ending, such as ".svg". */
  record BesideFile(String ending) implements FieldKind {
    @Override
    public String expected() {
      return "the name of a file beside this one, such as `boat" + ending + "`";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.file(this);
    }
  }

  /** A colour, {@code #rrggbb}. */
  record Colour() implements FieldKind {
    @Override
    public String expected() {
      return "a colour, such as \"#1d3557\" in quotes";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.colour(this);
    }
  }

  /** One of some words. */
  record Word(List<Choosable> choices) implements FieldKind {
    public Word {
      choices = List.copyOf(choices);
    }

    List<String> words() {
      return choices.stream().map(Choosable::word).toList();
    }

    @Override
    public String expected() {
      return Wording.oneOf(words());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.word(this);
    }
  }

  /** A word that can be chosen, and what it means. */
  record Choosable(String word, String says) {}

  /**
   * The name that a part is given; no two in one space may be alike.
   *
   * @param space such as "part"
   */
  record Name(String space) implements FieldKind {
    @Override
    public String expected() {
      return "a name of letters, digits and hyphens, such as `far`";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.name(this);
    }
  }

  /**
   * The name of something that is named elsewhere; whether it is there is for others to tell.
   *
   * @param what such as "a panel" or "a paper of the bench"
   */
  record Reference(String what) implements FieldKind {
    @Override
    public String expected() {
      return "the name of " + what;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.reference(this);
    }
  }

  /** Yes or no. */
  record YesNo() implements FieldKind {
    @Override
    public String expected() {
      return "`yes` or `no`";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.yesNo(this);
    }
  }

  /**
   * A fixed number of lengths in brackets, such as {@code [80, 60]}.
   *
   * @param rule what must hold between them
   */
  record Tuple(List<TuplePart> parts, Rule rule) implements FieldKind {
    public Tuple {
      parts = List.copyOf(parts);
    }

    public Tuple(List<TuplePart> parts) {
      this(parts, lengths -> "");
    }

    String shape() {
      return "[" + String.join(", ", parts.stream().map(TuplePart::name).toList()) + "]";
    }

    @Override
    public String expected() {
      return parts.size() + " lengths `" + shape() + "`";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.tuple(this);
    }
  }

  /** What must hold between the lengths of a tuple. */
  @FunctionalInterface
  interface Rule {
    /** A sentence telling what is wrong; empty where all is well. */
    String faultOf(List<Length> lengths);
  }

  /** One length of a tuple; the range in mm. */
  record TuplePart(String name, Range range) {}

  /** A list, one thing after the other. */
  record ListOf(FieldKind item, int least, int most) implements FieldKind {
    @Override
    public String expected() {
      return "a list";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.list(this);
    }
  }

  /** Keys of a form of its own. */
  record Group(Form form) implements FieldKind {
    @Override
    public String expected() {
      return "keys with values: " + Wording.oneOf(form.keys());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.group(this);
    }
  }

  /**
   * Exactly one of several keys, each with its own kind of value: {@code circle: 90}.
   *
   * @param what such as "a shape"
   * @param common keys that may stand beside any of them
   */
  record OneOf(String what, List<Variant> variants, List<FormField> common) implements FieldKind {
    public OneOf {
      variants = List.copyOf(variants);
      common = List.copyOf(common);
    }

    List<String> words() {
      return variants.stream().map(v -> v.main().key()).toList();
    }

    @Override
    public String expected() {
      return variants.isEmpty() ? "nothing yet" : what + ": one of " + Wording.oneOf(words());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.oneOf(this);
    }
  }

  /**
   * One key of a {@link OneOf}.
   *
   * @param main the key that tells the variant
   * @param beside further keys that only this variant takes
   */
  record Variant(FormField main, List<FormField> beside) {
    public Variant {
      beside = List.copyOf(beside);
    }

    /** A variant whose value is a form, named by the form. */
    public static Variant of(Form form) {
      return new Variant(
          FormField.of(form.name(), new Group(form), form.says()).required(), List.of());
    }
  }

  /** A word, or something else: {@code A4} or {@code [210, 297]}. */
  record WordOr(Word word, FieldKind other) implements FieldKind {
    @Override
    public String expected() {
      return word.words().size() > 12
          ? other.expected() + ", or a known word such as `" + word.words().get(0) + "`"
          : word.expected() + ", or " + other.expected();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.wordOr(this);
    }
  }

  /** Something done for every kind. */
  interface Visitor<R> {
    R length(OneLength kind);

    R stageLengths(StageLengths kind);

    R number(Numeric kind);

    R whole(Whole kind);

    R text(Text kind);

    R file(BesideFile kind);

    R colour(Colour kind);

    R word(Word kind);

    R name(Name kind);

    R reference(Reference kind);

    R yesNo(YesNo kind);

    R tuple(Tuple kind);

    R list(ListOf kind);

    R group(Group kind);

    R oneOf(OneOf kind);

    R wordOr(WordOr kind);
  }
}
