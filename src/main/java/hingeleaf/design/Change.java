package hingeleaf.design;

/**
 * One change of a document's text; the only way in which a design file is edited. Values are given
 * as YAML on one line, such as {@code 126} or {@code {circle: 126}}; texts that people typed go
 * through {@link YamlText#of} first.
 */
public sealed interface Change {
  /**
   * Gives the value at a path; a key that is not there yet is added.
   *
   * @param path such as {@code base.stacked-frames.tab} or {@code words[0].at[1]}
   */
  record Put(String path, String yaml) implements Change {}

  /**
   * Adds an item to a list.
   *
   * @param at which item it becomes, from 0 to the number there are
   */
  record Insert(String list, int at, String yaml) implements Change {}

  /** Takes a key or a list item away, with what it holds. */
  record Remove(String path) implements Change {}

  /**
   * Moves a list item to another place in its list.
   *
   * @param to which item it becomes
   */
  record Move(String path, int to) implements Change {}

  /** Gives a key another name. */
  record Rename(String path, String key) implements Change {}
}
