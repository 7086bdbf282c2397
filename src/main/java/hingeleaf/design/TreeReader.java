package hingeleaf.design;

import hingeleaf.finding.Problem;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * From bytes to a {@link Tree}: checks size, encoding and characters itself, then lets {@link
 * TreeBuilder} follow the events of the YAML parser. One object reads one file.
 */
final class TreeReader {
  private static final Pattern TAB_INDENT =
      Pattern.compile("(?m)^ *+\\t[\\t ]*+(?![\\t \\r\\n]|$)");

  private final String name;

  TreeReader(String name) {
    this.name = name;
  }

  TreeReading read(byte[] bytes) {
    if (bytes.length > TreeReading.LIMIT_BYTES) {
      return refused("too-large", new SourceText(name, ""), 0, "this file is larger than 2 MB");
    }
    if (isUtf16(bytes)) {
      return refused(
          "not-utf8", new SourceText(name, ""), 0, "this file is UTF-16 text; save it as UTF-8");
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      return notUtf8(new SourceText(name, text), bytes[in.position()] & 0xFF);
    }
    return read(text);
  }

  private static boolean isUtf16(byte[] bytes) {
    if (bytes.length < 2) {
      return false;
    }
    int first = ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
    return first == 0xFEFF || first == 0xFFFE;
  }

  private TreeReading notUtf8(SourceText readSoFar, int bad) {
    return refused(
        "not-utf8",
        readSoFar,
        readSoFar.text().length(),
        String.format(
            "this is not UTF-8 text (byte 0x%02X); save the file as UTF-8, or check that it is a"
                + " text file",
            bad));
  }

  TreeReading read(String text) {
    SourceText source = new SourceText(name, text);
    if (text.length() > TreeReading.LIMIT_BYTES) {
      return refused("too-large", source, 0, "this file is larger than 2 MB");
    }
    int odd = oddCharacter(text);
    if (odd >= 0) {
      return refused(
          "not-text",
          source,
          odd,
          String.format(
              "a character that belongs in no text stands here (U+%04X); is this a text file?",
              text.codePointAt(odd)));
    }
    List<Problem> problems = new ArrayList<>(tabs(source));
    if (!problems.isEmpty()) {
      return new TreeReading.Illegible(problems);
    }
    return build(source);
  }

  private TreeReading build(SourceText source) {
    TreeBuilder builder = new TreeBuilder(source);
    Optional<Node> root = builder.build();
    if (!builder.problems().isEmpty()) {
      return new TreeReading.Illegible(builder.problems());
    }
    Node node = root.orElse(null);
    return node == null || isBlank(node)
        ? refused("empty-file", source, 0, "nothing stands in this file")
        : new TreeReading.Legible(new Tree(source, node));
  }

  private static boolean isBlank(@Nullable Node node) {
    return node instanceof Node.Scalar s && s.blank();
  }

  /** Offset of the first control character or lone surrogate; -1 where there is none. */
  private static int oddCharacter(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean control = c < ' ' && c != '\n' && c != '\r' && c != '\t';
      boolean mark = c == '\uFEFF' && i > 0;
      if (control || c == 0x7F || (c >= 0x80 && c < 0xA0 && c != 0x85) || c >= 0xFFFE || mark) {
        return i;
      }
      if (Character.isSurrogate(c)) {
        if (!Character.isHighSurrogate(c)
            || i + 1 == text.length()
            || !Character.isLowSurrogate(text.charAt(i + 1))) {
          return i;
        }
        i++;
      }
    }
    return -1;
  }

  /** Tabs before the first word of a line, except in JSON, where indentation means nothing. */
  private static List<Problem> tabs(SourceText source) {
    List<Problem> found = new ArrayList<>();
    String start = source.text().replaceFirst("^\uFEFF", "").stripLeading();
    if (start.startsWith("{")) {
      return found;
    }
    Matcher m = TAB_INDENT.matcher(source.text());
    while (m.find() && found.size() < 20) {
      int tab = source.text().indexOf('\t', m.start());
      found.add(
          problem("tab", source, tab, "this line is indented with a tab; use spaces instead"));
    }
    return found;
  }

  private static TreeReading refused(String kind, SourceText source, int offset, String message) {
    return new TreeReading.Illegible(List.of(problem(kind, source, offset, message)));
  }

  static Problem problem(String kind, SourceText source, int offset, String message) {
    return Problem.blocks(kind, "", "", message).at(source.place(offset));
  }
}
