package hingeleaf.post;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * JSON bytes as maps, lists, texts and numbers. Built on the streaming parser alone: binding to
 * classes would cost a cold start a third of a second.
 */
final class JsonTree {
  private static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  /**
   * @throws IllegalArgumentException where the bytes are no single JSON value, or keys come twice
   */
  static Object read(byte[] json) {
    try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), json)) {
      parser.nextToken();
      Object value = value(parser);
      if (parser.nextToken() != null) {
        throw new IllegalArgumentException("post limits: not JSON: something after the end");
      }
      return value;
    } catch (JacksonException e) {
      throw new IllegalArgumentException("post limits: not JSON: " + e.getOriginalMessage(), e);
    }
  }

  private static Object value(JsonParser parser) {
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      Map<String, Object> object = new LinkedHashMap<>();
      while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
        String key = parser.currentName();
        parser.nextToken();
        object.put(key, value(parser));
      }
      return object;
    }
    if (token == JsonToken.START_ARRAY) {
      List<Object> list = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        list.add(value(parser));
      }
      return list;
    }
    if (token == JsonToken.VALUE_STRING) {
      return parser.getString();
    }
    if (token != null && token.isNumeric()) {
      return parser.getDoubleValue();
    }
    throw new IllegalArgumentException(
        "post limits: expected an object, a list, a text or a number, found " + token);
  }

  private JsonTree() {}
}
