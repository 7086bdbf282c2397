package hingeleaf.design;

import java.util.LinkedHashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** What the YAML parser says, in a maker's words. */
final class YamlWords {
  private static final Map<String, String> PLAIN = new LinkedHashMap<>();

  static {
    PLAIN.put("TAB", "a tab stands here; use spaces instead");
    PLAIN.put(
        "mapping values are not allowed",
        "a second `:` in this line, or a line indented too far; put a text with `:` in quotes");
    PLAIN.put("could not find expected ':'", "this line has no `:` after its key");
    PLAIN.put(
        "expected <block end>", "this line is indented differently from the lines it belongs to");
    PLAIN.put("block sequence entries are not allowed", "a `- ` cannot stand here; put it below");
    PLAIN.put("expected ',' or '}'", "a `,` or `}` is missing before this");
    PLAIN.put("expected ',' or ']'", "a `,` or `]` is missing before this");
    PLAIN.put("unexpected end of stream", "a quote that was opened is not closed before the end");
    PLAIN.put("unknown escape character", "an unknown `\\` sign in quotes; write `\\\\` for `\\`");
    PLAIN.put(
        "that cannot start any token", "a value cannot begin with this sign; put it in quotes");
    PLAIN.put("expected the node content", "a value is missing here, or a bracket is not closed");
    PLAIN.put("undefined alias", "aliases (*name) are not used in these files");
    PLAIN.put("found undefined tag handle", "tags (!name) are not used in these files");
    PLAIN.put("document start", "a line that belongs to nothing; is a bracket closed too early?");
  }

  private YamlWords() {}

  static String plain(MarkedYamlEngineException e) {
    String problem = String.valueOf(e.getProblem());
    for (Map.Entry<String, String> known : PLAIN.entrySet()) {
      if (problem.contains(known.getKey())) {
        return known.getValue();
      }
    }
    return "this cannot be read as YAML: " + Wording.shortened(problem);
  }

  static String firstLine(YamlEngineException e) {
    return Wording.shortened(String.valueOf(e.getMessage()).split("\n", 2)[0]);
  }
}
