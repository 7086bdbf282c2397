package hingeleaf.design;

import java.util.List;
import java.util.Optional;

/**
 * A document read into its tree.
 *
 * @param root the outermost value
 */
public record Tree(SourceText source, Node root) {
  /**
   * Reads YAML, of which JSON is a part, by its nodes; anchors, aliases, tags, tabs as indentation,
   * keys given twice and several documents in one file are refused.
   *
   * @param name of the file, for places
   * @param bytes the file, UTF-8, at most {@link TreeReading#LIMIT_BYTES}
   */
  public static TreeReading read(String name, byte[] bytes) {
    return new TreeReader(name).read(bytes);
  }

  /** The same for a text that is at hand. */
  public static TreeReading read(String name, String text) {
    return new TreeReader(name).read(text);
  }

  /** The value at a path such as {@code base.stacked-frames.frames[1].aperture}. */
  public Optional<Node> find(String path) {
    return find(root, path, 0);
  }

  private static Optional<Node> find(Node node, String path, int from) {
    if (from == path.length()) {
      return Optional.of(node);
    }
    if (node instanceof Node.Items items && path.charAt(from) == '[') {
      return findItem(items.items(), path, from);
    }
    if (node instanceof Node.Fields fields) {
      return findKey(fields, path, from > 0 && path.charAt(from) == '.' ? from + 1 : from);
    }
    return Optional.empty();
  }

  private static Optional<Node> findItem(List<Node> items, String path, int from) {
    int end = path.indexOf(']', from);
    String number = end < 0 ? "" : path.substring(from + 1, end);
    if (!number.matches("\\d{1,6}") || Integer.parseInt(number) >= items.size()) {
      return Optional.empty();
    }
    return find(items.get(Integer.parseInt(number)), path, end + 1);
  }

  private static Optional<Node> findKey(Node.Fields fields, String path, int from) {
    for (Node.Entry e : fields.entries()) {
      String key = e.key().raw();
      int end = from + key.length();
      if (path.startsWith(key, from)
          && (end == path.length() || path.charAt(end) == '.' || path.charAt(end) == '[')) {
        Optional<Node> found = find(e.value(), path, end);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }
}
