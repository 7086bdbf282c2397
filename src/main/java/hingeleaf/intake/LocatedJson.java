package hingeleaf.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/** A JSON value that knows its line and column; numbers stay the text that was written. */
final class LocatedJson {
  private static final int DEEPEST = 20;
  private final int line;
  private final int column;

  /** A string, or the text of a number, true, false or null; null for objects and lists. */
  private final @Nullable String text;

  private final Kind kind;
  private final Map<String, LocatedJson> members;
  private final List<LocatedJson> items;

  private enum Kind {
    OBJECT("an object"),
    LIST("a list"),
    WORD("a text"),
    NUMBER("a number"),
    YES_NO("true or false"),
    NOTHING("null");

    final String said;

    Kind(String said) {
      this.said = said;
    }
  }

  private LocatedJson(
      TokenStreamLocation at,
      Kind kind,
      @Nullable String text,
      Map<String, LocatedJson> members,
      List<LocatedJson> items) {
    line = at.getLineNr();
    column = at.getColumnNr();
    this.kind = kind;
    this.text = text;
    this.members = members;
    this.items = items;
  }

  static LocatedJson parse(String source) throws UnreadableJobException {
    JsonFactory factory =
        JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), source)) {
      if (parser.nextToken() == null) {
        throw new UnreadableJobException("the file is empty");
      }
      LocatedJson root = value(parser, 0);
      if (parser.nextToken() != null) {
        TokenStreamLocation at = parser.currentTokenLocation();
        throw new UnreadableJobException(
            "line " + at.getLineNr() + ", column " + at.getColumnNr() + ": text after the end");
      }
      return root;
    } catch (JacksonException e) {
      TokenStreamLocation at = e.getLocation();
      String where =
          at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr() + ": ";
      String why = e.getOriginalMessage();
      if (why.contains("NaN") || why.contains("INF") || why.contains("Infinity")) {
        why = "a size is a number, found one that is none (NaN or infinite)";
      }
      throw new UnreadableJobException(where + "this is not JSON: " + firstLine(why));
    }
  }

  private static String firstLine(String message) {
    String line = message.lines().findFirst().orElse("");
    int aside = line.indexOf(" (start marker"); // the library's own note on where it looked
    return aside < 0 ? line : line.substring(0, aside);
  }

  private static LocatedJson value(JsonParser parser, int depth) throws UnreadableJobException {
    TokenStreamLocation at = parser.currentTokenLocation();
    if (depth > DEEPEST) {
      throw new UnreadableJobException(
          "line " + at.getLineNr() + ": lists within lists deeper than a sheet job has");
    }
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> {
        Map<String, LocatedJson> map = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          String name = parser.currentName();
          parser.nextToken();
          map.put(name, value(parser, depth + 1));
        }
        yield new LocatedJson(at, Kind.OBJECT, null, map, List.of());
      }
      case START_ARRAY -> {
        List<LocatedJson> list = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          list.add(value(parser, depth + 1));
        }
        yield new LocatedJson(at, Kind.LIST, null, Map.of(), list);
      }
      case VALUE_STRING -> leaf(at, Kind.WORD, parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> leaf(at, Kind.NUMBER, parser.getString());
      case VALUE_TRUE, VALUE_FALSE -> leaf(at, Kind.YES_NO, parser.getString());
      default -> leaf(at, Kind.NOTHING, "null");
    };
  }

  private static LocatedJson leaf(TokenStreamLocation at, Kind kind, String text) {
    return new LocatedJson(at, kind, text, Map.of(), List.of());
  }

  UnreadableJobException fault(String sentence) {
    return new UnreadableJobException("line " + line + ", column " + column + ": " + sentence);
  }

  boolean isNull() {
    return kind == Kind.NOTHING;
  }

  private String said() {
    return kind.said + (text == null || isNull() ? "" : " " + text);
  }

  Map<String, LocatedJson> object(String what, Set<String> known) throws UnreadableJobException {
    if (kind != Kind.OBJECT) {
      throw fault(what + " is an object, found " + said());
    }
    for (Map.Entry<String, LocatedJson> e : members.entrySet()) {
      if (!known.contains(e.getKey())) {
        throw e.getValue()
            .fault(
                "\""
                    + e.getKey()
                    + "\" is not known in "
                    + what
                    + "; known are "
                    + String.join(", ", new TreeSet<>(known)));
      }
    }
    return members;
  }

  LocatedJson need(Map<String, LocatedJson> map, String name) throws UnreadableJobException {
    LocatedJson node = map.get(name);
    if (node == null) {
      throw fault("\"" + name + "\" is missing");
    }
    return node;
  }

  List<LocatedJson> list(String what) throws UnreadableJobException {
    if (kind != Kind.LIST) {
      throw fault(what + " is a list, found " + said());
    }
    return items;
  }

  String word(String what) throws UnreadableJobException {
    if (kind != Kind.WORD || text == null) {
      throw fault(what + " is a text, found " + said());
    }
    return text;
  }

  boolean yes(String what) throws UnreadableJobException {
    if (kind != Kind.YES_NO) {
      throw fault(what + " is true or false, found " + said());
    }
    return "true".equals(text);
  }

  BigDecimal number(String what) throws UnreadableJobException {
    if (kind == Kind.WORD && text != null && text.matches(".*\\d.*[a-zA-Z\"].*")) {
      throw fault(
          what + " is a bare number in the job's unit, found \"" + text + "\"; units do not mix");
    }
    if (kind != Kind.NUMBER || text == null || text.length() > 40) {
      throw fault(what + " is a number, found " + said());
    }
    BigDecimal value = new BigDecimal(text);
    if (value.signum() != 0 && Math.abs(value.precision() - value.scale()) > 30) {
      throw fault(what + " is out of all measure: " + text);
    }
    return value;
  }

  long whole(String what) throws UnreadableJobException {
    BigDecimal value = number(what);
    try {
      return value.longValueExact();
    } catch (ArithmeticException e) {
      throw fault(what + " is a whole number, found " + text);
    }
  }
}
