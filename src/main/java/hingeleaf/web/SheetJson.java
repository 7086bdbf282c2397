package hingeleaf.web;

import hingeleaf.design.DesignDocument;
import hingeleaf.design.FieldKind;
import hingeleaf.design.Form;
import hingeleaf.design.FormField;
import hingeleaf.design.NewText;
import hingeleaf.design.Node;
import hingeleaf.design.Range;
import hingeleaf.design.Values;
import hingeleaf.measure.Length;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Pack;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * The worksheet: what the design says, field by field, with what each may be. Made from the tables
 * of the structures, so that a new structure has its worksheet without a word here.
 */
final class SheetJson implements FieldKind.Visitor<SheetJson> {
  private final JsonOut out;
  private final DesignDocument design;
  private final Unit view;
  private final boolean asWritten;
  private final double step;

  /** Where the visitor is: the values that hold the field, and its key. */
  private Values at;

  private FormField field;

  private SheetJson(JsonOut out, Pack pack, Unit view) {
    this.out = out;
    this.design = pack.inputs().design();
    this.view = view.metric() == design.unit().metric() ? design.unit() : view;
    this.asWritten = this.view == design.unit();
    this.step = pack.inputs().bench().trimmer().step();
    this.at = design.values();
    this.field = at.formOf().fields().get(0);
  }

  static void write(JsonOut out, Pack pack, Unit view) {
    SheetJson sheet = new SheetJson(out, pack, view);
    double marks = sheet.asWritten ? sheet.step : MakerUnits.of(sheet.view).step().mm();
    out.put("unit", sheet.view.word());
    out.put("step", marks);
    sheet.form(sheet.design.values());
  }

  private void form(Values v) {
    Form form = v.formOf();
    out.put("form", form.name()).put("title", form.title()).put("path", v.path());
    out.each("fields", form.fields(), f -> one(v, f));
  }

  private void one(Values v, FormField f) {
    Values before = at;
    FormField outer = field;
    at = v;
    field = f;
    out.put("key", f.key()).put("path", v.path(f.key())).put("says", f.says());
    out.put("needed", f.needed()).put("given", v.given(f.key())).put("has", v.has(f.key()));
    f.kind().accept(this);
    at = before;
    field = outer;
  }

  private boolean has() {
    return at.has(field.key());
  }

  /** The text as the maker wrote it; what is usual where they wrote nothing. */
  private String raw(String path, String otherwise) {
    return design
        .tree()
        .find(path)
        .filter(Node.Scalar.class::isInstance)
        .map(n -> ((Node.Scalar) n).raw())
        .filter(t -> !t.isEmpty())
        .orElse(otherwise);
  }

  private void measured(String path, Length length, Range range) {
    String usual = written(length);
    String text = asWritten ? withUnit(raw(path, usual)) : usual;
    out.put("text", text).put("mm", length.mm());
    bounds(range);
  }

  /** To be written over: off the ruler's steps as a decimal, which can be read back. */
  private String written(Length length) {
    MakerUnits units = MakerUnits.of(view);
    if (units.exact(length.mm())) {
      return units.rounded(length.mm());
    }
    BigDecimal value = BigDecimal.valueOf(length.in(view).toDouble());
    String decimal = value.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    return decimal + " " + view.word();
  }

  private void bounds(Range range) {
    out.put("least", range.least()).put("most", range.most());
  }

  /** A bare number gets the unit of the design behind it. */
  private String withUnit(String raw) {
    boolean bare = raw.matches("[-+\u22120-9 ./,\u2044\u00BC-\u00BE\u2150-\u215E]+");
    return bare ? raw + " " + design.unit().word() : raw;
  }

  @Override
  public SheetJson length(FieldKind.OneLength kind) {
    out.put("kind", "length");
    if (has()) {
      measured(at.path(field.key()), at.length(field.key()), kind.range());
    } else {
      bounds(kind.range());
    }
    return this;
  }

  @Override
  public SheetJson stageLengths(FieldKind.StageLengths kind) {
    out.put("kind", "stages");
    bounds(kind.range());
    if (has()) {
      lengths(at.perStage(field.key()), kind.range());
    }
    return this;
  }

  private void lengths(boolean listed, Range range) {
    String path = at.path(field.key());
    List<Length> all = at.lengths(field.key());
    List<Integer> numbers = java.util.stream.IntStream.range(0, all.size()).boxed().toList();
    out.put("listed", listed);
    out.each(
        "items",
        numbers,
        i -> {
          String p = listed ? path + "[" + i + "]" : path;
          out.put("path", p);
          measured(p, all.get(i), range);
        });
  }

  @Override
  public SheetJson number(FieldKind.Numeric kind) {
    out.put("kind", "number").put("unit", kind.unit());
    bounds(kind.range());
    if (has()) {
      double n = at.number(field.key());
      String plain = n == Math.rint(n) ? String.valueOf((long) n) : String.valueOf(n);
      out.put("text", raw(at.path(field.key()), plain));
    }
    return this;
  }

  @Override
  public SheetJson whole(FieldKind.Whole kind) {
    out.put("kind", "whole").put("least", kind.least()).put("most", kind.most());
    if (has()) {
      out.put("text", String.valueOf(at.whole(field.key())));
    }
    return this;
  }

  private SheetJson words(String kind) {
    out.put("kind", kind);
    if (has()) {
      out.put("text", at.text(field.key()));
    }
    return this;
  }

  @Override
  public SheetJson text(FieldKind.Text kind) {
    out.put("most", kind.longest());
    return words("text");
  }

  @Override
  public SheetJson file(FieldKind.BesideFile kind) {
    return words("file");
  }

  @Override
  public SheetJson colour(FieldKind.Colour kind) {
    return words("colour");
  }

  @Override
  public SheetJson word(FieldKind.Word kind) {
    out.each("choices", kind.choices(), c -> out.put("word", c.word()).put("says", c.says()));
    return words("word");
  }

  @Override
  public SheetJson name(FieldKind.Name kind) {
    return words("name");
  }

  @Override
  public SheetJson reference(FieldKind.Reference kind) {
    out.put("what", kind.what());
    return words("reference");
  }

  @Override
  public SheetJson yesNo(FieldKind.YesNo kind) {
    out.put("kind", "yesNo");
    if (has()) {
      out.put("yes", at.yes(field.key()));
    }
    return this;
  }

  @Override
  public SheetJson tuple(FieldKind.Tuple kind) {
    out.put("kind", "tuple");
    out.texts("names", kind.parts().stream().map(FieldKind.TuplePart::name).toList());
    if (has()) {
      String path = at.path(field.key());
      List<Length> all = at.lengths(field.key());
      List<Integer> numbers = java.util.stream.IntStream.range(0, all.size()).boxed().toList();
      out.each(
          "items",
          numbers,
          i -> {
            out.put("path", path + "[" + i + "]").put("name", kind.parts().get(i).name());
            measured(path + "[" + i + "]", all.get(i), kind.parts().get(i).range());
          });
    }
    return this;
  }

  @Override
  public SheetJson list(FieldKind.ListOf kind) {
    out.put("kind", "list").put("least", kind.least()).put("most", kind.most());
    if (kind.item() instanceof FieldKind.Group g) {
      out.put("of", g.form().name()).put("one", g.form().title());
      out.each("items", at.forms(field.key()), this::form);
    } else if (kind.item() instanceof FieldKind.OneOf one) {
      out.each("sorts", one.variants(), this::sort);
      out.each("items", at.choices(field.key()), this::choice);
    }
    return this;
  }

  /** One of the sorts that can be added to a list, with what it must be given. */
  private void sort(FieldKind.Variant v) {
    out.put("word", v.main().key()).put("says", v.main().says());
    if (v.main().kind() instanceof FieldKind.Group g) {
      out.put("title", g.form().title());
      Unit unit = design.unit() == Unit.IN ? Unit.IN : Unit.MM;
      out.group("sample", o -> NewText.sample(g.form(), unit).forEach(o::put));
    }
  }

  @Override
  public SheetJson group(FieldKind.Group kind) {
    out.put("kind", "group");
    if (has()) {
      out.group("value", o -> form(at.form(field.key())));
    }
    return this;
  }

  @Override
  public SheetJson oneOf(FieldKind.OneOf kind) {
    out.put("kind", "oneOf").put("what", kind.what());
    out.each(
        "variants",
        kind.variants(),
        v -> out.put("word", v.main().key()).put("says", v.main().says()));
    if (has()) {
      out.group("value", o -> choice(at.choice(field.key())));
    }
    return this;
  }

  private void choice(Values.Choice c) {
    out.put("variant", c.variant());
    form(c.values());
  }

  @Override
  public SheetJson wordOr(FieldKind.WordOr kind) {
    if (has() && !at.isWord(field.key())) {
      return kind.other().accept(this);
    }
    return kind.word().accept(this);
  }
}
