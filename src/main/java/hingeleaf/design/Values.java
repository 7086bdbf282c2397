package hingeleaf.design;

import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import hingeleaf.measure.Length;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a document says under one form, typed. Only documents without faults yield values, so every
 * required key is there; for the others ask {@link #has}.
 *
 * <p>Asking for a key that the form has not, or with another type, is a mistake of the program and
 * throws {@link IllegalArgumentException}; asking for a value that is not there throws {@link
 * IllegalStateException}.
 */
public final class Values {
  private final Form form;
  private final Trail trail;
  private final Place place;
  private final Map<String, Held> held;

  /** A value with its place and whether the maker wrote it. */
  record Held(Value value, Place place, boolean given) {}

  Values(Form form, Trail trail, Place place, Map<String, Held> held) {
    this.form = form;
    this.trail = trail;
    this.place = place;
    this.held = Collections.unmodifiableMap(new LinkedHashMap<>(held));
  }

  /** A value of one kind. */
  sealed interface Value {
    record Measured(Length length) implements Value {}

    record Lengths(List<Length> lengths, boolean listed) implements Value {}

    record Numbered(double number) implements Value {}

    record Wholly(int number) implements Value {}

    record Worded(String text) implements Value {}

    record Truth(boolean yes) implements Value {}

    record Listed(List<Value> items) implements Value {}

    record Grouped(Values values) implements Value {}

    record Chosen(Choice choice) implements Value {}
  }

  /**
   * One of several variants, as chosen.
   *
   * @param variant its key, such as {@code circle}
   * @param values under that key, the keys beside it, and the common ones
   */
  public record Choice(String variant, Values values) {
    /** The form under the variant's own key, where it has one. */
    public Values form() {
      return values.form(variant);
    }
  }

  public Form formOf() {
    return form;
  }

  /** Where this group of values begins. */
  public Place place() {
    return place;
  }

  /** Path of this group of values. */
  public String path() {
    return trail.toString();
  }

  /** Where a value stands; where the group begins if the file does not give it. */
  public Place place(String key) {
    checkKey(key);
    Held h = held.get(key);
    return h == null ? place : h.place();
  }

  /** Path of a value, whether or not the file gives it. */
  public String path(String key) {
    checkKey(key);
    return trail.key(key).toString();
  }

  /** Path of one item of a list. */
  public String path(String key, int item) {
    checkKey(key);
    return trail.key(key).item(item).toString();
  }

  /** Whether the maker wrote it; a size that was written is never changed. */
  public boolean given(String key) {
    checkKey(key);
    Held h = held.get(key);
    return h != null && h.given();
  }

  /** Whether there is a value, written or usual. */
  public boolean has(String key) {
    checkKey(key);
    return held.containsKey(key);
  }

  public Length length(String key) {
    return get(key, Value.Measured.class).length();
  }

  public Optional<Length> maybeLength(String key) {
    return has(key) ? Optional.of(length(key)) : Optional.empty();
  }

  /** The length in mm. */
  public double mm(String key) {
    return length(key).mm();
  }

  /** The lengths of a tuple, or one per stage; a single length stands alone in the list. */
  public List<Length> lengths(String key) {
    return get(key, Value.Lengths.class).lengths();
  }

  /** Whether lengths were given as a list, one for each stage. */
  public boolean perStage(String key) {
    return get(key, Value.Lengths.class).listed();
  }

  public double number(String key) {
    return get(key, Value.Numbered.class).number();
  }

  public int whole(String key) {
    return get(key, Value.Wholly.class).number();
  }

  /** A text, word, name, reference, colour or file name. */
  public String text(String key) {
    return get(key, Value.Worded.class).text();
  }

  /** Like {@link #text}, but {@code otherwise} where there is none. */
  public String text(String key, String otherwise) {
    return has(key) ? text(key) : otherwise;
  }

  /** Whether a word was chosen where something else could stand too. */
  public boolean isWord(String key) {
    checkKey(key);
    Held h = held.get(key);
    return h != null && h.value() instanceof Value.Worded;
  }

  public boolean yes(String key) {
    return get(key, Value.Truth.class).yes();
  }

  public Values form(String key) {
    return get(key, Value.Grouped.class).values();
  }

  public Choice choice(String key) {
    return get(key, Value.Chosen.class).choice();
  }

  /** The forms of a list; none where the key is absent. */
  public List<Values> forms(String key) {
    return items(key).stream().map(v -> cast(key, v, Value.Grouped.class).values()).toList();
  }

  /** The choices of a list; none where the key is absent. */
  public List<Choice> choices(String key) {
    return items(key).stream().map(v -> cast(key, v, Value.Chosen.class).choice()).toList();
  }

  /** The texts of a list; none where the key is absent. */
  public List<String> texts(String key) {
    return items(key).stream().map(v -> cast(key, v, Value.Worded.class).text()).toList();
  }

  /** The lengths of a list of lengths; none where the key is absent. */
  public List<Length> lengthItems(String key) {
    return items(key).stream().map(v -> cast(key, v, Value.Measured.class).length()).toList();
  }

  /** A blocking problem whose cause is a value here. */
  public Problem problem(String kind, String part, String key, String message) {
    return Problem.blocks(kind, part, path(key), message).at(place(key));
  }

  private List<Value> items(String key) {
    return has(key) ? get(key, Value.Listed.class).items() : List.of();
  }

  private <T extends Value> T get(String key, Class<T> type) {
    checkKey(key);
    Held h = held.get(key);
    if (h == null) {
      throw new IllegalStateException(path(key) + " is not given and has no usual value");
    }
    return cast(key, h.value(), type);
  }

  private <T extends Value> T cast(String key, Value value, Class<T> type) {
    if (!type.isInstance(value)) {
      throw new IllegalArgumentException(path(key) + " is not " + type.getSimpleName());
    }
    return type.cast(value);
  }

  private void checkKey(String key) {
    if (form.fields().stream().noneMatch(f -> f.key().equals(key))) {
      throw new IllegalArgumentException(form.name() + " has no key " + key);
    }
  }
}
