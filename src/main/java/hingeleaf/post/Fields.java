package hingeleaf.post;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;

/**
 * An object of a data file with the path that leads to it, so that every fault can be located.
 *
 * @param path such as {@code classes[0].limits[2]}
 */
record Fields(String path, JsonNode node) {
  Fields {
    if (!node.isObject()) {
      throw new IllegalArgumentException(path + ": expected an object, found " + show(node));
    }
  }

  void only(String... allowed) {
    for (String name : names()) {
      if (!List.of(allowed).contains(name)) {
        throw fault("one of " + String.join(", ", allowed), "the key " + name);
      }
    }
  }

  List<String> names() {
    return List.copyOf(node.propertyNames());
  }

  boolean has(String key) {
    return node.has(key);
  }

  String text(String key) {
    JsonNode value = required(key);
    if (!value.isString()) {
      throw fault(key + " as a text", show(value));
    }
    return value.stringValue();
  }

  double number(String key) {
    return number(key, required(key));
  }

  List<Double> numbers(String key) {
    List<Double> numbers = new ArrayList<>();
    for (JsonNode value : array(key)) {
      numbers.add(number(key, value));
    }
    return numbers;
  }

  List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    for (JsonNode value : array(key)) {
      if (!value.isString()) {
        throw fault(key + " as texts", show(value));
      }
      texts.add(value.stringValue());
    }
    return texts;
  }

  Fields child(String key) {
    return new Fields(path + "." + key, required(key));
  }

  List<Fields> list(String key) {
    List<Fields> fields = new ArrayList<>();
    for (JsonNode value : array(key)) {
      fields.add(new Fields(path + "." + key + "[" + fields.size() + "]", value));
    }
    return fields;
  }

  <T> T word(String key, Map<String, T> known) {
    T meaning = known.get(text(key));
    if (meaning == null) {
      throw fault(
          key + " to be one of " + String.join(", ", new TreeSet<>(known.keySet())), text(key));
    }
    return meaning;
  }

  IllegalArgumentException fault(String expected, String found) {
    return new IllegalArgumentException(path + ": expected " + expected + ", found " + found);
  }

  private double number(String key, JsonNode value) {
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      throw fault(key + " as a number", show(value));
    }
    return value.doubleValue();
  }

  private JsonNode array(String key) {
    JsonNode value = required(key);
    if (!value.isArray()) {
      throw fault(key + " as a list", show(value));
    }
    return value;
  }

  private JsonNode required(String key) {
    JsonNode value = node.get(key);
    if (value == null) {
      throw fault("the key " + key, "none");
    }
    return value;
  }

  private static String show(JsonNode value) {
    String text = value.toString();
    return text.length() > 60 ? text.substring(0, 60) + "..." : text;
  }
}
