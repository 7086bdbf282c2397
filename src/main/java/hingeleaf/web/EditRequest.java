package hingeleaf.web;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Edit;
import hingeleaf.design.TextEdit;
import hingeleaf.design.Tree;
import hingeleaf.design.YamlText;
import hingeleaf.measure.Length;
import hingeleaf.measure.Reading;
import hingeleaf.measure.Unit;
import hingeleaf.mend.Rearrange;
import hingeleaf.mend.Trial;
import hingeleaf.structure.Structures;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads what the page asks to be changed, and makes it: all of it, or nothing. */
final class EditRequest {
  private static final int MOST_CHANGES = 100;
  private static final JsonMapper MAPPER = new JsonMapper();

  private final JsonNode asked;
  private final Unit view;

  private EditRequest(JsonNode asked, Unit view) {
    this.asked = asked;
    this.view = view;
  }

  /** An object sent as JSON. */
  static JsonNode object(byte[] body) {
    try {
      JsonNode node = MAPPER.readTree(body);
      if (node != null && node.isObject()) {
        return node;
      }
    } catch (JacksonException e) {
      throw new Refusal(400, "this is not JSON");
    }
    throw new Refusal(400, "this is not a JSON object");
  }

  static String text(JsonNode node, String key) {
    JsonNode value = node.get(key);
    if (value == null || !value.isString() || value.stringValue().length() > 4000) {
      throw new Refusal(400, "`" + key + "` is missing, or is no text");
    }
    return value.stringValue();
  }

  static int whole(JsonNode node, String key) {
    JsonNode value = node.get(key);
    if (value == null || !value.isInt()) {
      throw new Refusal(400, "`" + key + "` is missing, or is no whole number");
    }
    return value.intValue();
  }

  /**
   * The design after the changes asked for.
   *
   * @param view unit in which bare lengths were typed
   * @throws Refusal with the reason where one of them cannot be made
   */
  static DesignDocument apply(JsonNode asked, DesignDocument design, Unit view) {
    return new EditRequest(asked, view).run(design);
  }

  private DesignDocument run(DesignDocument design) {
    JsonNode changes = asked.get("changes");
    if (changes == null || !changes.isArray() || changes.size() > MOST_CHANGES) {
      throw new Refusal(400, "`changes` is missing, or has more than " + MOST_CHANGES);
    }
    DesignDocument now = design;
    List<JsonNode> all = new ArrayList<>();
    changes.forEach(all::add);
    for (int i = 0; i < all.size(); i++) {
      boolean last = i == all.size() - 1;
      now = last ? read(now, all.get(i)) : between(now, all.get(i));
    }
    return now;
  }

  private DesignDocument read(DesignDocument now, JsonNode change) {
    Trial trial = Trial.of(now.tree(), changes(now, change));
    if (trial instanceof Trial.Refused r) {
      throw new Refusal(422, r.reason());
    }
    return ((Trial.Read) trial).design();
  }

  /** Several changes together need to be right only at their end. */
  private DesignDocument between(DesignDocument now, JsonNode change) {
    Tree tree = now.tree();
    for (Change c : changes(now, change)) {
      Edit edit = TextEdit.apply(tree, c);
      if (edit instanceof Edit.Refused r) {
        throw new Refusal(422, r.reason());
      }
      tree = ((Edit.Done) edit).tree();
    }
    DesignDocument.Outcome outcome = DesignDocument.read(tree, Structures.FORMS);
    return outcome instanceof DesignDocument.Outcome.Right r
        ? r.document()
        : new DesignDocument(tree, now.unit(), now.values());
  }

  private List<Change> changes(DesignDocument design, JsonNode change) {
    String path = text(change, "path");
    return switch (text(change, "op")) {
      case "put" -> List.of(new Change.Put(path, text(change, "yaml")));
      case "text" -> List.of(new Change.Put(path, YamlText.of(text(change, "text"))));
      case "length" -> List.of(new Change.Put(path, length(design, text(change, "text"))));
      case "clear" ->
          design.tree().find(path).isPresent() ? List.of(new Change.Remove(path)) : List.of();
      case "insert" -> Rearrange.insert(design, path, whole(change, "at"), text(change, "yaml"));
      case "remove" -> Rearrange.remove(design, path);
      case "move" -> Rearrange.move(design, path, whole(change, "to"));
      case "rename" -> Rearrange.rename(design, path, text(change, "text"));
      default -> throw new Refusal(400, "there is no such change");
    };
  }

  /** A length as somebody typed it, with its unit where the design would read it otherwise. */
  private String length(DesignDocument design, String typed) {
    String text = typed.strip();
    Reading shown = Length.read(text, view);
    if (shown instanceof Reading.Fault f) {
      throw new Refusal(422, f.sentence());
    }
    Length meant = ((Reading.Read) shown).length();
    Unit unit = design.unit();
    String bare = text.replaceFirst("\\s*" + unit.word() + "$", "");
    String shortest = means(bare, unit, meant) ? bare : means(text, unit, meant) ? text : "";
    if (shortest.isEmpty()) {
      shortest = text + " " + view.word();
    }
    boolean plain = shortest.matches("-?[0-9]+([.][0-9]+)?( [0-9]+)?(/[0-9]+)?( (mm|cm|in))?");
    return plain ? shortest : YamlText.of(shortest);
  }

  private static boolean means(String text, Unit unit, Length meant) {
    return Length.read(text, unit) instanceof Reading.Read r && r.length().compareTo(meant) == 0;
  }
}
