package hingeleaf.design;

/**
 * A path cut before its last step.
 *
 * @param key the last step where it is a key; else empty
 * @param index the last step where it is a list item; else -1
 */
record Step(String parent, String key, int index) {
  static Step last(String path) {
    int open = path.lastIndexOf('[');
    if (path.endsWith("]") && path.substring(open + 1, path.length() - 1).matches("\\d{1,6}")) {
      int index = Integer.parseInt(path.substring(open + 1, path.length() - 1));
      return new Step(path.substring(0, open), "", index);
    }
    int dot = path.lastIndexOf('.');
    return dot < 0
        ? new Step("", path, -1)
        : new Step(path.substring(0, dot), path.substring(dot + 1), -1);
  }
}
