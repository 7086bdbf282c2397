package hingeleaf.design;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A parameter table: which keys something takes and what each means. The reader, the schema, the
 * text of a new file and the page are all made from it, so they cannot disagree.
 *
 * @param name the word for it in files, such as {@code stacked-frames}
 * @param title how a sentence calls one, such as "a frame"
 * @param says what it is, as a makers' sentence without a full stop
 */
public record Form(String name, String title, String says, List<FormField> fields) {
  public Form {
    fields = List.copyOf(fields);
    Set<String> seen = new HashSet<>();
    for (FormField f : fields) {
      if (!seen.add(f.key())) {
        throw new IllegalArgumentException(name + " has the key " + f.key() + " twice");
      }
    }
  }

  public static Form of(String name, String title, String says, FormField... fields) {
    return new Form(name, title, says, List.of(fields));
  }

  boolean has(String key) {
    for (FormField f : fields) {
      if (f.key().equals(key)) {
        return true;
      }
    }
    return false;
  }

  List<String> keys() {
    return fields.stream().map(FormField::key).toList();
  }
}
