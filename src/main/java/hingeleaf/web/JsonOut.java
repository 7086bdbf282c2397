package hingeleaf.web;

import java.io.StringWriter;
import java.util.Collection;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes JSON in the order in which it is told; lengths to a ten-thousandth. */
final class JsonOut {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator g;

  private JsonOut(JsonGenerator g) {
    this.g = g;
  }

  /** The text of one object. */
  static String object(Consumer<JsonOut> fields) {
    StringWriter text = new StringWriter();
    try (JsonGenerator g = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
      g.writeStartObject();
      fields.accept(new JsonOut(g));
      g.writeEndObject();
    }
    return text.toString();
  }

  JsonOut put(String key, @Nullable String value) {
    if (value == null) {
      g.writeNullProperty(key);
    } else {
      g.writeStringProperty(key, value);
    }
    return this;
  }

  JsonOut put(String key, boolean value) {
    g.writeBooleanProperty(key, value);
    return this;
  }

  JsonOut put(String key, int value) {
    g.writeNumberProperty(key, value);
    return this;
  }

  /** A number that is not finite becomes null. */
  JsonOut put(String key, double value) {
    g.writeName(key);
    number(value);
    return this;
  }

  JsonOut nothing(String key) {
    g.writeNullProperty(key);
    return this;
  }

  JsonOut group(String key, Consumer<JsonOut> fields) {
    g.writeObjectPropertyStart(key);
    fields.accept(this);
    g.writeEndObject();
    return this;
  }

  <T> JsonOut each(String key, Collection<T> items, Consumer<T> fields) {
    g.writeArrayPropertyStart(key);
    for (T item : items) {
      g.writeStartObject();
      fields.accept(item);
      g.writeEndObject();
    }
    g.writeEndArray();
    return this;
  }

  JsonOut texts(String key, Collection<String> items) {
    g.writeArrayPropertyStart(key);
    items.forEach(g::writeString);
    g.writeEndArray();
    return this;
  }

  JsonOut list(String key, Runnable items) {
    g.writeArrayPropertyStart(key);
    items.run();
    g.writeEndArray();
    return this;
  }

  /** An item of a list that is a list itself. */
  void item(Runnable items) {
    g.writeStartArray();
    items.run();
    g.writeEndArray();
  }

  /** An item of a list. */
  void string(String value) {
    g.writeString(value);
  }

  /** An item of a list, or a value after its name. */
  void number(double value) {
    if (!Double.isFinite(value)) {
      g.writeNull();
      return;
    }
    double rounded = Math.rint(value * 1e4) / 1e4;
    if (rounded == Math.rint(rounded) && Math.abs(rounded) < 1e9) {
      g.writeNumber((long) rounded);
    } else {
      g.writeNumber(rounded);
    }
  }
}
