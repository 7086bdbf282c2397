package hingeleaf.design;

import java.util.Set;
import java.util.regex.Pattern;

/** Texts that people typed, written as YAML that reads back as the same text. */
public final class YamlText {
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{Nd}]([\\p{L}\\p{Nd}._/ ½¼¾-]*[\\p{L}\\p{Nd}½¼¾])?");
  private static final Set<String> OTHERWISE_READ =
      Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n");

  private YamlText() {}

  /** Plain where that is safe in any place; else in double quotes, on one line. */
  public static String of(String text) {
    boolean word = OTHERWISE_READ.contains(text.toLowerCase(java.util.Locale.ROOT));
    return PLAIN.matcher(text).matches() && !word ? text : quoted(text);
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                out.append('\\').append((char) c);
              } else if (c == '\n') {
                out.append("\\n");
              } else if (c < ' ' || (c >= 0x7F && c < 0xA0) || c == 0x2028 || c == 0x2029) {
                out.append(String.format("\\u%04x", c));
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.append('"').toString();
  }
}
