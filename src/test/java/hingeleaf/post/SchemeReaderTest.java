package hingeleaf.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SchemeReaderTest {
  private static final String SMALL =
      """
      {"name": "p", "title": "P", "country": "", "unit": "in", "weight": "oz", "advice": "ask",
       "sources": {"d": {"document": "a document", "seen": "2026-11-25"}},
       "classes": [{"name": "c", "title": "C", "rank": 1, "limits": [
         {"figure": "thickness", "most": 0.25, "from": "d", "sure": "seen",
          "when": [{"figure": "weight", "over": 1, "most": 2}]}],
         "steps": {"most": [1, 2], "from": "d", "sure": "memory"}}]}
      """;

  /** Inch of 25.4 mm and pound of 453.59237 g: international agreement of 1959. */
  @Test
  void inchesAndOunces_becomeMillimetresAndGrams() {
    PostClass one = read(SMALL).classes().get(0);
    Limit limit = one.limits().get(0);
    assertThat(limit.most()).isCloseTo(6.35, within(1e-12));
    assertThat(limit.least()).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(limit.when().get(0).over()).isCloseTo(453.59237 / 16, within(1e-9));
    assertThat(limit.source()).isEqualTo(new Limit.Source("a document", "2026-11-25"));
    assertThat(one.steps().get(1).most()).isCloseTo(453.59237 / 8, within(1e-9));
    assertThat(one.steps().get(1).confidence()).isEqualTo(Limit.Confidence.MEMORY);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"title\": \"P\"|\"titel\": \"P\"|post limits: expected one of name, title",
        "\"unit\": \"in\"|\"unit\": \"cm\"|post limits: expected unit to be one of in, mm, found cm",
        "\"from\": \"d\", \"sure\": \"seen\"|\"from\": \"e\", \"sure\": \"seen\"|limits[0]: expected from to be one of d, found e",
        "\"sure\": \"seen\"|\"sure\": \"certain\"|found certain",
        "\"figure\": \"thickness\"|\"figure\": \"depth\"|found depth",
        "\"most\": 0.25|\"most\": \"0.25\"|classes[0].limits[0]: expected most as a number",
        "\"most\": 0.25, |''|expected a least or a most, found neither",
        "\"most\": 0.25|\"most\": 1e999|expected most as a number",
        "\"most\": 0.25|\"most\": 0.25, \"least\": 1|cannot both hold",
        "\"rank\": 1, |''|classes[0]: expected the key rank, found none",
        "[1, 2]|[2, 1]|the steps of weight must rise",
        "\"country\": \"\"|\"name\": \"q\"|not JSON",
        "}]}|}]|not JSON"
      })
  void faults_areLocated(String from, String to, String message) {
    assertThat(SMALL).contains(from);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> read(SMALL.replace(from, to)))
        .withMessageContaining(message);
  }

  static Stream<Scheme> schemes() {
    return Schemes.all().stream();
  }

  @ParameterizedTest
  @MethodSource("schemes")
  void everyLimitThatWasReadHasItsDay(Scheme scheme) {
    assertThat(scheme.classes())
        .flatExtracting(PostClass::limits)
        .extracting(Limit.class::cast)
        .allSatisfy(
            l -> {
              boolean read =
                  l.confidence() == Limit.Confidence.SEEN
                      || l.confidence() == Limit.Confidence.SECONDARY;
              assertThat(l.source().seen()).matches(read ? "2026-\\d\\d-\\d\\d" : "");
              assertThat(l.source().document()).isNotBlank();
            });
    assertThat(scheme.advice()).containsIgnoringCase("ask your post office");
  }

  /** Prices change every year and are the maker's own. */
  @Test
  void noPriceIsShipped() {
    for (String name : Schemes.NAMES) {
      String text = new String(Schemes.bytes(name), StandardCharsets.UTF_8);
      assertThat(text).doesNotContainPattern("[$£€]").doesNotContain("\"price\"");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "US,usps",
    "GB,uk",
    "de,germany",
    "FR,france",
    "CA,canada",
    "AU,australia",
    "IE,ireland",
    "NZ,upu",
    "'',upu"
  })
  void forCountry_fallsBackToThePostAbroad(String country, String name) {
    assertThat(Schemes.forCountry(country).name()).isEqualTo(name);
  }

  @Test
  void unknownPost_isRefusedWithTheKnownOnes() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Schemes.named("../post/usps"))
        .withMessageContaining("expected one of usps, uk");
  }

  private static Scheme read(String json) {
    return SchemeReader.read(json.getBytes(StandardCharsets.UTF_8));
  }
}
