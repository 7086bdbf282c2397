package hingeleaf.design;

/**
 * A replacement of one stretch of a text, and what the whole document shall mean after it.
 *
 * @param instead what stands there afterwards
 * @param meaning of the whole document afterwards
 */
record Splice(int from, int to, String instead, Meaning meaning) {
  String in(String text) {
    return text.substring(0, from) + instead + text.substring(to);
  }
}
