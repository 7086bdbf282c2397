package hingeleaf.design;

import hingeleaf.measure.Unit;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line of a parameter table.
 *
 * @param says what it means, as a makers' sentence without a full stop
 * @param needed whether a file must give it
 * @param usual what holds where the file is silent, as YAML; null where nothing does
 * @param example what a new file gets to start from, as YAML; null to leave it out. May have
 *     several lines, which are then set below the key
 */
public record FormField(
    String key,
    FieldKind kind,
    String says,
    boolean needed,
    @Nullable ByUnit usual,
    @Nullable ByUnit example) {
  /** A text for makers who work in millimetres, and one for those who work in inches. */
  public record ByUnit(String metric, String inch) {
    public String in(Unit unit) {
      return unit.metric() ? metric : inch;
    }
  }

  public static FormField of(String key, FieldKind kind, String says) {
    return new FormField(key, kind, says, false, null, null);
  }

  public static FormField length(String key, Range mm, String says) {
    return of(key, new FieldKind.OneLength(mm), says);
  }

  /** One length, or a list with one for each stage. */
  public static FormField lengths(String key, Range mm, String says) {
    return of(key, new FieldKind.StageLengths(mm), says);
  }

  /** A number with the word of its unit, which may be empty. */
  public static FormField number(String key, Range range, String unit, String says) {
    return of(key, new FieldKind.Numeric(range, unit), says);
  }

  public static FormField whole(String key, int least, int most, String says) {
    return of(key, new FieldKind.Whole(least, most), says);
  }

  public static FormField text(String key, int longest, String says) {
    return of(key, new FieldKind.Text(longest), says);
  }

  /** The name of a part, unlike that of any other part of the document. */
  public static FormField name(String says) {
    return named("part", says);
  }

  /** A name unlike that of anything else in its space, such as "stock". */
  public static FormField named(String space, String says) {
    return of("name", new FieldKind.Name(space), says);
  }

  /** The name of something named elsewhere, such as "a panel". */
  public static FormField reference(String key, String what, String says) {
    return of(key, new FieldKind.Reference(what), says);
  }

  public static FormField colour(String key, String says) {
    return of(key, new FieldKind.Colour(), says);
  }

  public static FormField yesNo(String key, String says) {
    return of(key, new FieldKind.YesNo(), says);
  }

  /** One of some words, each written "word: what it means". */
  public static FormField word(String key, String says, String... choices) {
    return of(key, new FieldKind.Word(choosables(choices)), says);
  }

  /** An offset {@code [x, y]}, up to {@code most} mm either way. */
  public static FormField point(String key, double most, String says) {
    Range range = Range.eitherWay(most);
    return of(
        key,
        new FieldKind.Tuple(
            List.of(new FieldKind.TuplePart("x", range), new FieldKind.TuplePart("y", range))),
        says);
  }

  /** {@code [width, height]}, each more than 0 and up to {@code most} mm. */
  public static FormField size(String key, double most, String says) {
    return of(key, sizeKind(most), says);
  }

  /** The kind of {@link #size}. */
  public static FieldKind.Tuple sizeKind(double most) {
    Range range = Range.positive(most);
    return new FieldKind.Tuple(
        List.of(new FieldKind.TuplePart("width", range), new FieldKind.TuplePart("height", range)));
  }

  public static FormField group(String key, Form form, String says) {
    return of(key, new FieldKind.Group(form), says);
  }

  public static FormField list(String key, FieldKind item, int least, int most, String says) {
    return of(key, new FieldKind.ListOf(item, least, most), says);
  }

  public static FormField forms(String key, Form item, int least, int most, String says) {
    return list(key, new FieldKind.Group(item), least, most, says);
  }

  static List<FieldKind.Choosable> choosables(String... choices) {
    return Arrays.stream(choices)
        .map(c -> c.split(": ", 2))
        .map(c -> new FieldKind.Choosable(c[0], c.length > 1 ? c[1] : ""))
        .toList();
  }

  public FormField required() {
    return new FormField(key, kind, says, true, usual, example);
  }

  /** What holds where the file is silent, the same in every unit; lengths must tell their unit. */
  public FormField usually(String yaml) {
    return usually(yaml, yaml);
  }

  /** What holds where the file is silent; lengths must tell their unit. */
  public FormField usually(String metric, String inch) {
    return new FormField(key, kind, says, needed, new ByUnit(metric, inch), example);
  }

  public FormField example(String yaml) {
    return example(yaml, yaml);
  }

  /** What a new file starts from; bare numbers are in the unit of the file: mm or in. */
  public FormField example(String metric, String inch) {
    return new FormField(key, kind, says, needed, usual, new ByUnit(metric, inch));
  }
}
