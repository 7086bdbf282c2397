package hingeleaf.design;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import hingeleaf.measure.Length;
import hingeleaf.measure.Reading;
import hingeleaf.measure.Unit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas against a validator of JSON Schema draft 2020-12 that is none of ours. */
class SchemaTest {
  private static final Schema DESIGN = schema(SchemaText.design(TestForms.ALL));
  private static final Schema BENCH = schema(SchemaText.bench());
  private static final String TOP = "hingeleaf: 1\nbase:\n  single-leaf: {width: 100}\n";

  private static Schema schema(String text) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(text, InputFormat.JSON);
  }

  /** YAML's core schema (YAML 1.2.2, section 10.3.2): what the scalars are in JSON. */
  private static String json(Node node) {
    if (node instanceof Node.Items i) {
      return i.items().stream().map(SchemaTest::json).collect(Collectors.joining(",", "[", "]"));
    }
    if (node instanceof Node.Fields f) {
      return f.entries().stream()
          .map(e -> quoted(e.key().raw()) + ":" + json(e.value()))
          .collect(Collectors.joining(",", "{", "}"));
    }
    Node.Scalar s = (Node.Scalar) node;
    boolean plain = s.style() == Node.Style.PLAIN;
    if (plain && s.raw().matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]{1,2})?")) {
      return s.raw();
    }
    if (plain && s.raw().matches("true|false|null")) {
      return s.raw();
    }
    return s.blank() ? "null" : quoted(s.raw());
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
  }

  private static List<String> faults(Schema schema, String yaml) {
    return schema.validate(json(TreeTest.tree(yaml).root()), InputFormat.JSON).stream()
        .map(Object::toString)
        .toList();
  }

  private static boolean designReads(String yaml) {
    return DesignDocument.read("x", yaml.getBytes(StandardCharsets.UTF_8), TestForms.ALL)
        instanceof DesignDocument.Outcome.Right;
  }

  static final String MY_BENCH =
      """
      bench: 1
      title: Kitchen table
      unit: in
      country: US
      accuracy: careful
      hourly-rate: 18.50
      money: USD
      trimmer: {longest: 12, marks: 1/16}
      scoring-board: {grooves: 1/8}
      machine-width: 6
      dies:
        - {name: round-3, label: 3 in circle, shape: circle, cut: [2 15/16, 2 15/16], drop-out: [2 7/8, 2 7/8]}
      embossing-folders:
        - {name: waves, size: [4 1/4, 5 1/2]}
      stocks:
        - name: white-110
          title: white 110 lb cover
          grammage: 298 g/m2
          thickness: 0.014
          front: "#ffffff"
          grain: height
          sheets:
            - {size: letter, price: 0.22, left: 40, grain: height}
            - {size: [12, 12]}
        - {name: clear, kind: acetate, grammage: 200, thickness: 0.15 mm}
      glues:
        - {name: red tape, kind: tape, width: 1/4}
      foams:
        - {name: pads, thickness: 1/16}
      envelopes:
        - {name: usual, size: US-A7, price: 0.12, grams: 6}
      """
          .replace("red tape", "red-tape");

  @Test
  void rightDesigns_areAccepted() {
    assertThat(faults(DESIGN, TestForms.FAIR_WINDS)).isEmpty();
    assertThat(faults(DESIGN, TOP)).isEmpty();
    assertThat(designReads(TestForms.FAIR_WINDS)).isTrue();
  }

  @Test
  void rightBenches_areAccepted() {
    assertThat(faults(BENCH, MY_BENCH)).isEmpty();
    BenchDocument.Outcome outcome =
        BenchDocument.read("bench.yaml", MY_BENCH.getBytes(StandardCharsets.UTF_8));
    assertThat(outcome).isInstanceOf(BenchDocument.Outcome.Right.class);
    Values bench = ((BenchDocument.Outcome.Right) outcome).document().values();
    assertThat(bench.isWord("accuracy")).isTrue();
    assertThat(bench.number("hourly-rate")).isEqualTo(18.5);
    assertThat(bench.form("trimmer").mm("marks")).isEqualTo(1.5875);
    Values white = bench.forms("stocks").get(0);
    assertThat(white.number("grammage")).isEqualTo(298);
    assertThat(white.mm("thickness")).isEqualTo(0.3556);
    assertThat(white.text("back", "as front")).isEqualTo("as front");
    NamedSizes.Size letter = NamedSizes.SHEETS.of(white.forms("sheets").get(0), "size");
    assertThat(letter.width().mm()).isEqualTo(215.9); // ANSI/ASME Y14.1, size A: 8.5 x 11 in
    assertThat(letter.height().mm()).isEqualTo(279.4);
    assertThat(NamedSizes.SHEETS.of(white.forms("sheets").get(1), "size").width().mm())
        .isEqualTo(304.8);
    NamedSizes.Size a7 = NamedSizes.ENVELOPES.of(bench.forms("envelopes").get(0), "size");
    assertThat(a7.width()).isEqualTo(Length.of(29, Unit.IN).over(4)); // 7 1/4 in
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mat: []",
        "unit: inch",
        "title: [a]",
        "mats: {name: sea}",
        "mats: [sea]",
        "mats: [{name: sea, on: back}]",
        "mats: [{name: sea, on: back, stock: x, width: 0}]",
        "mats: [{name: sea, on: back, stock: x, width: -5 mm}]",
        "mats: [{name: sea, on: back, stock: x, width: NaN}]",
        "mats: [{name: sea, on: back, stock: x, width: 10 km}]",
        "mats: [{name: sea, on: back, stock: x, at: [1]}]",
        "mats: [{name: sea, on: back, stock: x, at: [1, 2, 3]}]",
        "mats: [{name: sea, on: back, stock: x, seen: al}]",
        "mats: [{name: 7 seas, on: back, stock: x}]",
        "words: [{text: hi, on: back, height: 9, colour: red}]",
        "mechanisms: [{dor: {name: a}}]",
        "cut-outs: [{name: c, on: b, stock: x, outline: {circle: 9, square: 9}}]",
        "cut-outs: [{name: c, on: b, stock: x, outline: {svg: ../b.svg, width: 9}}]",
        "cut-outs: [{name: c, on: b, stock: x, outline: {svg: b.svg}}]",
        "cut-outs: [{name: c, on: b, stock: x, outline: {at: [0, 0]}}]",
        "message: {on: back}"
      })
  void wrongDesigns_areRefusedByBoth(String line) {
    assertThat(faults(DESIGN, TOP + line + "\n")).isNotEmpty();
    assertThat(designReads(TOP + line + "\n")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "country: XX",
        "accuracy: sloppy",
        "accuracy: [1]",
        "trimmer: {marks: 1}",
        "stocks: [{name: a}]",
        "stocks: [{name: a, grammage: heavy, thickness: 1}]",
        "stocks: [{name: a, grammage: 1e9, thickness: 1}]",
        "dies: [{name: a, shape: star}]",
        "stocks: [{name: a, grammage: 300, thickness: 1, sheets: [{size: A44}]}]",
        "bench: 2"
      })
  void wrongBenches_areRefusedByBoth(String line) {
    String yaml = line.startsWith("bench") ? line + "\n" : "bench: 1\n" + line + "\n";
    assertThat(faults(BENCH, yaml)).isNotEmpty();
    assertThat(BenchDocument.read("b", yaml.getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(BenchDocument.Outcome.Wrong.class);
  }

  @Test
  void schemas_areValidThemselves() {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(
                com.networknt.schema.SchemaLocation.of(
                    "https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(SchemaText.design(TestForms.ALL), InputFormat.JSON)).isEmpty();
    assertThat(meta.validate(SchemaText.bench(), InputFormat.JSON)).isEmpty();
    assertThat(SchemaText.bench()).doesNotContain("\r").endsWith("}\n");
  }

  /** What the reader takes and what the schema's pattern takes, over random texts; seed 13. */
  @Test
  void lengthPattern_agreesWithTheReader() {
    String[] parts = {
      "7",
      "1/2",
      "½",
      " ",
      "-",
      "0.5",
      ",5",
      "1,5",
      "mm",
      "cm",
      "in",
      "\"",
      "'",
      "ft",
      "''",
      "inch",
      "1 1/2",
      "km",
      "e3",
      "/",
      "+",
      "in.",
      "centimetres"
    };
    Pattern pattern = Pattern.compile(Length.pattern());
    Random random = new Random(13);
    int readable = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(5); n >= 0; n--) {
        text.append(parts[random.nextInt(parts.length)]);
      }
      if (Length.read(text.toString(), Unit.MM) instanceof Reading.Read) {
        readable++;
        assertThat(text.toString()).matches(pattern);
      }
    }
    assertThat(readable).isGreaterThan(1000);
    for (String wrong : List.of("", "NaN", "1e3", "10 km", "abc", "7 in 3", "1.2.3", "5-", "½½")) {
      assertThat(wrong).doesNotMatch(pattern);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"MM", "IN"})
  void newTexts_areRightAndSoAreTheirCommentedKeys(String unit) {
    Unit u = Unit.valueOf(unit);
    String design = NewText.design(TestForms.ALL, "stacked-frames", u);
    assertThat(faults(DESIGN, design)).isEmpty();
    assertThat(designReads(design)).as(design).isTrue();
    assertThat(designReads(design.replaceAll("(?m)^( *)# ([a-z-]+: \\S)", "$1$2")))
        .as(design)
        .isTrue();
    String bench = NewText.bench(u);
    assertThat(faults(BENCH, bench)).isEmpty();
    String open = bench.replaceAll("(?m)^( *)# ([a-z-]+: \\S)", "$1$2");
    assertThat(BenchDocument.read("b", open.getBytes(StandardCharsets.UTF_8)))
        .as(open)
        .isInstanceOf(BenchDocument.Outcome.Right.class);
  }
}
