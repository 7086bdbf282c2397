package hingeleaf.post;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * An object of a data file with the path that leads to it, so that every fault can be located.
 *
 * @param path such as {@code classes[0].limits[2]}
 * @param values by key: maps, lists, texts and numbers
 */
record Fields(String path, Map<String, Object> values) {
  static Fields of(String path, Object value) {
    if (!(value instanceof Map<?, ?> map)) {
      throw new IllegalArgumentException(path + ": expected an object, found " + show(value));
    }
    Map<String, Object> values = new LinkedHashMap<>();
    map.forEach((k, v) -> values.put((String) k, v));
    return new Fields(path, values);
  }

  void only(String... allowed) {
    for (String name : names()) {
      if (!List.of(allowed).contains(name)) {
        throw fault("one of " + String.join(", ", allowed), "the key " + name);
      }
    }
  }

  List<String> names() {
    return List.copyOf(values.keySet());
  }

  boolean has(String key) {
    return values.containsKey(key);
  }

  String text(String key) {
    return text(key, required(key));
  }

  double number(String key) {
    return number(key, required(key));
  }

  List<Double> numbers(String key) {
    return array(key).stream().map(v -> number(key, v)).toList();
  }

  List<String> texts(String key) {
    return array(key).stream().map(v -> text(key, v)).toList();
  }

  Fields child(String key) {
    return of(path + "." + key, required(key));
  }

  List<Fields> list(String key) {
    List<Fields> fields = new ArrayList<>();
    for (Object value : array(key)) {
      fields.add(of(path + "." + key + "[" + fields.size() + "]", value));
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

  private String text(String key, Object value) {
    if (value instanceof String text) {
      return text;
    }
    throw fault(key + " as a text", show(value));
  }

  private double number(String key, Object value) {
    if (value instanceof Double number && Double.isFinite(number)) {
      return number;
    }
    throw fault(key + " as a number", show(value));
  }

  private List<?> array(String key) {
    Object value = required(key);
    if (value instanceof List<?> list) {
      return list;
    }
    throw fault(key + " as a list", show(value));
  }

  private Object required(String key) {
    Object value = values.get(key);
    if (value == null) {
      throw fault("the key " + key, "none");
    }
    return value;
  }

  private static String show(Object value) {
    String text = value instanceof String ? '"' + value.toString() + '"' : value.toString();
    return text.length() > 60 ? text.substring(0, 60) + "..." : text;
  }
}
