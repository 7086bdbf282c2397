package hingeleaf.design;

import java.util.List;

/** Lines, indents and dashes of a text, as its maker laid them out. */
final class Layout {
  private final SourceText source;
  private final String text;

  Layout(SourceText source) {
    this.source = source;
    this.text = source.text();
  }

  String text() {
    return text;
  }

  /** How this text ends its lines. */
  String newLine() {
    int at = text.indexOf('\n');
    if (at < 0) {
      return text.indexOf('\r') >= 0 ? "\r" : "\n";
    }
    return at > 0 && text.charAt(at - 1) == '\r' ? "\r\n" : "\n";
  }

  int lineStart(int offset) {
    return source.lineStart(offset);
  }

  /** Where the line with this place ends, before its line break. */
  int lineEnd(int offset) {
    int at = offset;
    while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
    return at;
  }

  /** The start of the line after the one with this place, or the end of the text. */
  int nextLine(int offset) {
    int end = lineEnd(offset);
    if (text.startsWith("\r\n", end)) {
      return end + 2;
    }
    return Math.min(end + 1, text.length());
  }

  /** Whether a place is the first of a line: what ends there has taken its line break along. */
  boolean atLineStart(int offset) {
    return offset > 0 && lineStart(offset) == offset;
  }

  /** What stands before a place in its line, with everything but spaces turned into spaces. */
  String indent(int offset) {
    String before = text.substring(lineStart(offset), offset).replace("\uFEFF", "");
    return " ".repeat(before.codePointCount(0, before.length()));
  }

  /** Whether only spaces stand before a place in its line. */
  boolean firstInLine(int offset) {
    return text.substring(lineStart(offset), offset).replace("\uFEFF", "").isBlank();
  }

  /** A splice that adds a line below whatever ends at a place, comment included. */
  Splice below(int end, String line, Meaning meaning) {
    if (atLineStart(end)) {
      return new Splice(end, end, line + newLine(), meaning);
    }
    int at = lineEnd(end);
    return new Splice(at, at, newLine() + line, meaning);
  }

  /** Where the dash of a list item written as lines stands. */
  int dash(Node.Items list, int item) {
    int floor = item == 0 ? list.span().from() : list.items().get(item - 1).span().to();
    int start = list.items().get(item).span().from();
    for (int line = lineStart(start); line >= lineStart(floor); line = lineStart(line - 1)) {
      int dash = line + list.dashes();
      if (dash >= floor
          && dash <= start
          && text.startsWith("-", dash)
          && text.substring(line, dash).replace("\uFEFF", "").replace('-', ' ').isBlank()) {
        return dash;
      }
      if (line == 0) {
        break;
      }
    }
    return -1;
  }

  /** The spaces before the dashes of a list. */
  String dashIndent(Node.Items list) {
    return indent(list.span().from());
  }

  /** The end of what belongs to a value in block style: its last line, comment included. */
  int chunkEnd(Node node) {
    int end = node.span().to();
    return atLineStart(end) && end > node.span().from() ? end : lineEnd(end);
  }

  /** The last of some values. */
  static <T> T last(List<T> values) {
    return values.get(values.size() - 1);
  }
}
