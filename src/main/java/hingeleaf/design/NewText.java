package hingeleaf.design;

import hingeleaf.measure.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The text of a new file: every key that its form takes, with what it means behind it; those that a
 * maker can leave out stand as comments.
 */
public final class NewText {
  private static final int REMARKS = 34;

  private final Unit unit;
  private final StringBuilder out = new StringBuilder();

  private NewText(Unit unit) {
    this.unit = unit;
  }

  /**
   * A new design.
   *
   * @param base the name of one of the bases
   * @param unit mm or in
   */
  public static String design(DesignForms forms, String base, Unit unit) {
    Form form =
        forms.bases().stream()
            .filter(f -> f.name().equals(base))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("there is no base " + base));
    NewText text = new NewText(unit);
    for (FormField f : forms.document().fields()) {
      if (f.key().equals("base")) {
        text.line("", "base:", f.says());
        text.line("  ", form.name() + ":", form.says());
        form.fields().forEach(inner -> text.field("    ", inner));
      } else {
        text.field("", f);
      }
    }
    return text.out.toString();
  }

  /** A new bench; {@code unit} mm or in. */
  public static String bench(Unit unit) {
    NewText text = new NewText(unit);
    BenchForm.DOCUMENT.fields().forEach(f -> text.field("", f));
    return text.out.toString();
  }

  private void field(String indent, FormField f) {
    FormField.ByUnit example = f.example();
    FormField.ByUnit usual = f.usual();
    if (example != null) {
      lines(indent, f.key(), example.in(unit), remark(f));
    } else if (f.kind() instanceof FieldKind.ListOf list) {
      sample(indent, f, list.item());
    } else if (f.kind() instanceof FieldKind.Group group) {
      line(indent, "# " + f.key() + ": " + flow(group.form()), f.says());
    } else {
      line(indent, "# " + f.key() + ":" + (usual == null ? "" : " " + usual.in(unit)), remark(f));
    }
  }

  /** A key with its value behind it, or below it where that has lines of its own. */
  private void lines(String indent, String key, String value, String remark) {
    if (!value.startsWith("- ") && !value.contains("\n")) {
      line(indent, key + ": " + value, remark);
      return;
    }
    line(indent, key + ":", remark);
    value.lines().forEach(l -> out.append(indent).append("  ").append(l).append('\n'));
  }

  /** A list that can be left out, with one item as a sample, all as a comment. */
  private void sample(String indent, FormField f, FieldKind item) {
    List<String> samples = new ArrayList<>();
    if (item instanceof FieldKind.Group g) {
      samples.add(flow(g.form()));
    } else if (item instanceof FieldKind.OneOf one) {
      for (FieldKind.Variant v : one.variants()) {
        if (v.main().kind() instanceof FieldKind.Group g) {
          samples.add(v.main().key() + ": " + flow(g.form()));
        }
      }
    }
    line(indent, "# " + f.key() + ":", f.says());
    for (String sample : samples) {
      out.append(indent).append("#   - ").append(sample).append('\n');
    }
  }

  private String flow(Form form) {
    List<String> pairs = new ArrayList<>();
    sample(form, unit).forEach((key, text) -> pairs.add(key + ": " + text));
    return "{" + String.join(", ", pairs) + "}";
  }

  /** What a form must be given, with an example for each key, as YAML on one line. */
  public static Map<String, String> sample(Form form, Unit unit) {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (FormField f : form.fields()) {
      FormField.ByUnit example = f.example();
      if (f.needed() && example != null) {
        pairs.put(f.key(), example.in(unit));
      }
    }
    return pairs;
  }

  private static String remark(FormField f) {
    if (f.kind() instanceof FieldKind.Word word) {
      List<String> words = new ArrayList<>();
      word.choices().forEach(c -> words.add(c.word()));
      return f.says() + ": " + String.join(", ", words);
    }
    return f.says();
  }

  private void line(String indent, String text, String remark) {
    String line = indent + text;
    int gap = Math.max(1, REMARKS - line.codePointCount(0, line.length()));
    out.append(line).append(" ".repeat(gap)).append("# ").append(remark).append('\n');
  }
}
