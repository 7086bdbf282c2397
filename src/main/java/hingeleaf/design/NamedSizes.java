package hingeleaf.design;

import hingeleaf.measure.Length;
import hingeleaf.measure.Rational;
import hingeleaf.measure.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sizes that have names: sheets and envelopes, upright for sheets, lying for envelopes.
 *
 * <p>ISO 216:2007 (A and B series), ISO 269:1985 and DIN 678-1 (C series and DL), ANSI/ASME Y14.1
 * (letter, tabloid); craft squares and the US envelopes are common trade sizes. ISO and US names
 * clash (A7), so the US ones carry {@code US-}.
 */
public final class NamedSizes {
  /** Sheets. */
  public static final NamedSizes SHEETS = new NamedSizes();

  /** Envelopes, by their outer size. */
  public static final NamedSizes ENVELOPES = new NamedSizes();

  static {
    SHEETS.mm("A5", 148, 210).mm("A4", 210, 297).mm("A3", 297, 420).mm("A2", 420, 594);
    SHEETS.mm("B5", 176, 250).mm("B4", 250, 353).mm("B3", 353, 500);
    SHEETS.eighths("letter", 68, 88).eighths("legal", 68, 112).eighths("tabloid", 88, 136);
    SHEETS.eighths("12x12", 96, 96).eighths("8x8", 64, 64).eighths("6x6", 48, 48);
    SHEETS.mm("300x300", 300, 300);
    ENVELOPES.mm("C7", 114, 81).mm("C6", 162, 114).mm("C5", 229, 162).mm("C4", 324, 229);
    ENVELOPES.mm("C3", 458, 324).mm("DL", 220, 110).mm("C6/C5", 229, 114).mm("C7/C6", 162, 81);
    ENVELOPES.mm("B6", 176, 125).mm("B5", 250, 176).mm("B4", 353, 250).mm("E4", 400, 280);
    ENVELOPES.eighths("US-A1", 41, 29).eighths("US-A2", 46, 35).eighths("US-A6", 52, 38);
    ENVELOPES.eighths("US-A7", 58, 42).eighths("US-A8", 65, 44).eighths("US-A9", 70, 46);
    ENVELOPES.eighths("US-A10", 76, 48).eighths("US-slimline", 71, 31).eighths("US-10", 76, 33);
    ENVELOPES.eighths("US-5in", 40, 40).eighths("US-6in", 48, 48).eighths("US-7in", 56, 56);
    ENVELOPES.eighths("US-8in", 64, 64).eighths("US-9in", 72, 72);
  }

  /** A size, exact. */
  public record Size(Length width, Length height) {}

  private final Map<String, Size> sizes = new LinkedHashMap<>();

  private NamedSizes() {}

  private NamedSizes mm(String name, long width, long height) {
    sizes.put(name, new Size(Length.of(width, Unit.MM), Length.of(height, Unit.MM)));
    return this;
  }

  /** Sizes in eighths of an inch. */
  private NamedSizes eighths(String name, long width, long height) {
    sizes.put(
        name,
        new Size(
            Length.of(Rational.of(width, 8), Unit.IN), Length.of(Rational.of(height, 8), Unit.IN)));
    return this;
  }

  public List<String> names() {
    return List.copyOf(sizes.keySet());
  }

  public Optional<Size> get(String name) {
    return Optional.ofNullable(sizes.get(name));
  }

  /** The size that a field of {@link #field} tells. */
  public Size of(Values values, String key) {
    if (values.isWord(key)) {
      return get(values.text(key)).orElseThrow();
    }
    List<Length> both = values.lengths(key);
    return new Size(both.get(0), both.get(1));
  }

  /** A field that takes one of these names, or {@code [width, height]}. */
  public FormField field(String key, double most, String says) {
    FieldKind.Word word =
        new FieldKind.Word(names().stream().map(n -> new FieldKind.Choosable(n, "")).toList());
    return FormField.of(key, new FieldKind.WordOr(word, FormField.sizeKind(most)), says);
  }
}
