package hingeleaf.cli;

import hingeleaf.finding.Problem;
import hingeleaf.mend.Rescued;
import hingeleaf.paper.json.PackJson;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes what became of a rescue as JSON; lengths are mm. */
final class RescueJson {
  private static final JsonFactory FACTORY = new JsonFactory();

  private RescueJson() {}

  /**
   * @param benchText of the bench file as measured; empty where nothing of it was
   */
  static String text(Rescued rescued, String benchText) {
    StringWriter text = new StringWriter();
    try (JsonGenerator g = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
      g.writeStartObject();
      g.writeStringProperty("unit", "mm");
      g.writeArrayPropertyStart("pieces");
      rescued.rows().forEach(r -> row(g, r));
      g.writeEndArray();
      sentences(g, "sight", rescued.sight());
      sentences(g, "post", rescued.post());
      sentences(g, "bench", rescued.bench());
      problems(g, "appeared", rescued.appeared());
      problems(g, "gone", rescued.gone());
      g.writeStringProperty("design", rescued.text());
      if (!benchText.isEmpty()) {
        g.writeStringProperty("benchFile", benchText);
      }
      g.writeEndObject();
    }
    return text.append('\n').toString();
  }

  private static void row(JsonGenerator g, Rescued.Row r) {
    g.writeStartObject();
    g.writeStringProperty("piece", r.piece());
    g.writeStringProperty("verdict", r.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    number(g, "width", r.width());
    number(g, "height", r.height());
    number(g, "flatWidth", r.flatWidth());
    number(g, "flatHeight", r.flatHeight());
    g.writeArrayPropertyStart("scores");
    r.scores().forEach(s -> g.writeNumber(rounded(s)));
    g.writeEndArray();
    g.writeStringProperty("words", r.words());
    g.writeEndObject();
  }

  private static void sentences(JsonGenerator g, String name, List<String> all) {
    g.writeArrayPropertyStart(name);
    all.forEach(g::writeString);
    g.writeEndArray();
  }

  /** As every command writes problems. */
  private static void problems(JsonGenerator g, String name, List<Problem> problems) {
    String whole = PackJson.problems(problems).strip();
    g.writeName(name);
    g.writeRawValue(whole.substring(whole.indexOf('['), whole.lastIndexOf(']') + 1));
  }

  private static void number(JsonGenerator g, String name, double mm) {
    g.writeName(name);
    g.writeNumber(rounded(mm));
  }

  private static BigDecimal rounded(double mm) {
    BigDecimal n = BigDecimal.valueOf(mm).setScale(6, RoundingMode.HALF_EVEN);
    return n.signum() == 0
        ? BigDecimal.ZERO
        : new BigDecimal(n.stripTrailingZeros().toPlainString());
  }
}
