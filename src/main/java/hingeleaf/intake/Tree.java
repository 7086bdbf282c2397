package hingeleaf.intake;

import hingeleaf.finding.Place;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/** JSON with the place of every value. A closed family. */
sealed interface Tree {
  Place place();

  /** What it is, for a message. */
  String told();

  record Obj(Place place, Map<String, Tree> entries) implements Tree {
    @Override
    public String told() {
      return "an object";
    }

    @Nullable Tree get(String key) {
      return entries.get(key);
    }
  }

  record Arr(Place place, List<Tree> items) implements Tree {
    @Override
    public String told() {
      return "a list of " + items.size();
    }
  }

  record Num(Place place, double value) implements Tree {
    @Override
    public String told() {
      return "the number " + value;
    }
  }

  record Text(Place place, String value) implements Tree {
    @Override
    public String told() {
      return "\"" + value + "\"";
    }
  }

  /** true, false or null. */
  record Word(Place place, String told) implements Tree {}

  /**
   * Reads one JSON value that is the whole text; duplicate keys are refused.
   *
   * @param source the name under which the text was given
   */
  static Tree read(String source, String text) throws BadInput {
    try (JsonParser p = new JsonFactory().createParser(ObjectReadContext.empty(), text)) {
      if (p.nextToken() == null) {
        throw new BadInput(
            new Place(source, 1, 1), "the file is empty; expected an object { ... }");
      }
      Tree tree = value(source, p);
      if (p.nextToken() != null) {
        throw new BadInput(
            place(source, p.currentTokenLocation()), "something follows the end of the object");
      }
      return tree;
    } catch (JacksonException e) {
      String message = String.valueOf(e.getOriginalMessage()).lines().findFirst().orElse("");
      message = message.replaceAll(" \\(start marker.*", "");
      message = message.contains("'NaN'") ? "NaN is no number" : message;
      throw new BadInput(place(source, e.getLocation()), "this is not JSON: " + message);
    } catch (IOException e) {
      throw new BadInput(new Place(source, 1, 1), "cannot be read: " + e.getMessage());
    }
  }

  private static Place place(String source, @Nullable TokenStreamLocation at) {
    return at == null
        ? new Place(source, 1, 1)
        : new Place(source, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
  }

  private static Tree value(String source, JsonParser p) throws BadInput, IOException {
    Place here = place(source, p.currentTokenLocation());
    JsonToken token = p.currentToken();
    return switch (token) {
      case START_OBJECT -> object(source, p, here);
      case START_ARRAY -> {
        List<Tree> items = new ArrayList<>();
        while (p.nextToken() != JsonToken.END_ARRAY) {
          items.add(value(source, p));
        }
        yield new Arr(here, List.copyOf(items));
      }
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Num(here, Double.parseDouble(p.getString()));
      case VALUE_STRING -> new Text(here, p.getString());
      default -> new Word(here, String.valueOf(p.getString()));
    };
  }

  private static Tree object(String source, JsonParser p, Place here) throws BadInput, IOException {
    Map<String, Tree> entries = new LinkedHashMap<>();
    while (p.nextToken() != JsonToken.END_OBJECT) {
      String key = p.currentName();
      Place at = place(source, p.currentTokenLocation());
      p.nextToken();
      if (entries.put(key, value(source, p)) != null) {
        throw new BadInput(at, "the key \"" + key + "\" stands here twice");
      }
    }
    return new Obj(here, entries);
  }
}
