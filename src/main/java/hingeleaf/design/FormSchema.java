package hingeleaf.design;

import hingeleaf.measure.Length;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** From a form to the part of a JSON Schema (draft 2020-12) that describes it. */
final class FormSchema implements FieldKind.Visitor<ObjectNode> {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  ObjectNode document(Form form, String title) {
    ObjectNode schema = JSON.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", title);
    schema.setAll(form(form));
    ObjectNode defs = schema.putObject("$defs");
    defs.set("length", length(false));
    defs.set("positive-length", length(true));
    defs.set("shape", oneOf(ShapeForm.KIND, false));
    return schema;
  }

  private static ObjectNode length(boolean positive) {
    ObjectNode number = JSON.objectNode().put("type", "number");
    ObjectNode text = JSON.objectNode().put("type", "string");
    if (positive) {
      number.put("exclusiveMinimum", 0);
      text.put("pattern", Length.unsignedPattern());
    } else {
      text.put("pattern", Length.pattern());
    }
    ObjectNode schema = JSON.objectNode();
    schema.put(
        "description", "a length: a number in the file's unit, or with a unit, such as 7 1/2 in");
    schema.putArray("anyOf").add(number).add(text);
    return schema;
  }

  private ObjectNode form(Form form) {
    ObjectNode schema = object(form.fields());
    schema.put("description", form.says());
    return schema;
  }

  private ObjectNode object(Iterable<FormField> fields) {
    ObjectNode schema = JSON.objectNode().put("type", "object");
    ObjectNode properties = schema.putObject("properties");
    ArrayNode required = JSON.arrayNode();
    for (FormField f : fields) {
      properties.set(f.key(), described(f));
      if (f.needed()) {
        required.add(f.key());
      }
    }
    if (!required.isEmpty()) {
      schema.set("required", required);
    }
    schema.put("additionalProperties", false);
    return schema;
  }

  private ObjectNode described(FormField f) {
    ObjectNode schema = f.kind().accept(this);
    FormField.ByUnit usual = f.usual();
    String says = f.says();
    if (usual != null) {
      says += "; usually " + usual.metric();
      says += usual.inch().equals(usual.metric()) ? "" : ", or " + usual.inch();
    }
    schema.put("description", says);
    return schema;
  }

  private static ObjectNode ref(String name) {
    return JSON.objectNode().put("$ref", "#/$defs/" + name);
  }

  private static ObjectNode lengthIn(Range range) {
    return ref(range.open() && range.least() >= 0 ? "positive-length" : "length");
  }

  @Override
  public ObjectNode length(FieldKind.OneLength kind) {
    return lengthIn(kind.range());
  }

  @Override
  public ObjectNode stageLengths(FieldKind.StageLengths kind) {
    ObjectNode list = JSON.objectNode().put("type", "array").put("minItems", 1);
    list.set("items", lengthIn(kind.range()));
    return anyOf(lengthIn(kind.range()), list);
  }

  private static ObjectNode anyOf(ObjectNode a, ObjectNode b) {
    ObjectNode schema = JSON.objectNode();
    schema.putArray("anyOf").add(a).add(b);
    return schema;
  }

  @Override
  public ObjectNode number(FieldKind.Numeric kind) {
    ObjectNode number = JSON.objectNode().put("type", "number");
    number.put(kind.range().open() ? "exclusiveMinimum" : "minimum", kind.range().least());
    number.put("maximum", kind.range().most());
    ObjectNode text = JSON.objectNode().put("type", "string");
    text.put("pattern", "^[+-]?([0-9]+([.,][0-9]*)?|[.,][0-9]+) *" + unit(kind) + "$");
    return anyOf(number, text);
  }

  private static String unit(FieldKind.Numeric kind) {
    return kind.unit().isEmpty() ? "" : "(" + kind.unit() + ")?";
  }

  @Override
  public ObjectNode whole(FieldKind.Whole kind) {
    return JSON.objectNode()
        .put("type", "integer")
        .put("minimum", kind.least())
        .put("maximum", kind.most());
  }

  private static ObjectNode scalar() {
    ObjectNode schema = JSON.objectNode();
    schema.putArray("type").add("string").add("number").add("boolean");
    return schema;
  }

  @Override
  public ObjectNode text(FieldKind.Text kind) {
    return scalar().put("maxLength", kind.longest());
  }

  @Override
  public ObjectNode file(FieldKind.BesideFile kind) {
    String ending = kind.ending().replace(".", "\\.");
    return JSON.objectNode()
        .put("type", "string")
        .put("maxLength", 200)
        .put("pattern", "^(?!/)(?!.*(^|/)\\.\\.(/|$))[^:\\\\]*" + ending + "$");
  }

  @Override
  public ObjectNode colour(FieldKind.Colour kind) {
    return JSON.objectNode().put("type", "string").put("pattern", "^#[0-9a-fA-F]{6}$");
  }

  @Override
  public ObjectNode word(FieldKind.Word kind) {
    ObjectNode schema = JSON.objectNode();
    ArrayNode words = schema.putArray("enum");
    kind.words().forEach(words::add);
    return schema;
  }

  @Override
  public ObjectNode name(FieldKind.Name kind) {
    return JSON.objectNode()
        .put("type", "string")
        .put("pattern", "^\\p{L}[\\p{L}\\p{M}\\p{Nd}-]{0,39}$");
  }

  @Override
  public ObjectNode reference(FieldKind.Reference kind) {
    return scalar().put("maxLength", 100);
  }

  @Override
  public ObjectNode yesNo(FieldKind.YesNo kind) {
    ObjectNode schema = JSON.objectNode();
    schema.putArray("enum").add(true).add(false).add("yes").add("no");
    return schema;
  }

  @Override
  public ObjectNode tuple(FieldKind.Tuple kind) {
    ObjectNode schema = JSON.objectNode().put("type", "array");
    ArrayNode items = schema.putArray("prefixItems");
    for (FieldKind.TuplePart part : kind.parts()) {
      items.add(lengthIn(part.range()).put("title", part.name()));
    }
    return schema.put("items", false).put("minItems", kind.parts().size());
  }

  @Override
  public ObjectNode list(FieldKind.ListOf kind) {
    ObjectNode schema = JSON.objectNode().put("type", "array");
    schema.set("items", kind.item().accept(this));
    return schema.put("minItems", kind.least()).put("maxItems", kind.most());
  }

  @Override
  public ObjectNode group(FieldKind.Group kind) {
    return form(kind.form());
  }

  @Override
  public ObjectNode oneOf(FieldKind.OneOf kind) {
    return oneOf(kind, kind.equals(ShapeForm.KIND));
  }

  private ObjectNode oneOf(FieldKind.OneOf kind, boolean elsewhere) {
    if (elsewhere) {
      return ref("shape");
    }
    ObjectNode schema = JSON.objectNode();
    if (kind.variants().isEmpty()) {
      schema.putObject("not");
      return schema;
    }
    ArrayNode variants = schema.putArray("oneOf");
    for (FieldKind.Variant v : kind.variants()) {
      java.util.List<FormField> fields = new java.util.ArrayList<>();
      fields.add(v.main().required());
      fields.addAll(v.beside());
      fields.addAll(kind.common());
      variants.add(object(fields));
    }
    return schema;
  }

  @Override
  public ObjectNode wordOr(FieldKind.WordOr kind) {
    return anyOf(kind.word().accept(this), kind.other().accept(this));
  }
}
