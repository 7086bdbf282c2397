package hingeleaf.post;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every post at its published limits, 0.1 mm and 1 g to either side; see limits.csv. */
class LimitsTest {
  private static final Map<String, Scheme> SCHEMES =
      Schemes.all().stream().collect(Collectors.toMap(Scheme::name, Function.identity()));

  record Case(
      String post, Mail mail, String figure, int outward, String at, String outside, String from) {
    Decision moved(int by) {
      double mm = figure.equals("mass") ? 0 : 0.1 * by;
      Mail m = mail;
      Mail moved =
          new Mail(
              m.length() + (figure.equals("length") ? mm : 0),
              m.height() + (figure.equals("height") ? mm : 0),
              m.thickness() + (figure.equals("thickness") ? mm : 0),
              m.uneven(),
              m.bends(),
              m.grams() + (figure.equals("mass") ? by : 0));
      return Decision.of(Objects.requireNonNull(SCHEMES.get(post)), moved);
    }
  }

  static List<Case> cases() throws IOException {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(LimitsTest.class.getResourceAsStream("limits.csv")),
                StandardCharsets.UTF_8))) {
      return in.lines().filter(l -> !l.startsWith("#")).map(LimitsTest::parse).toList();
    }
  }

  private static Case parse(String line) {
    String[] f = line.split(";", -1);
    double[] n = new double[4];
    for (int i = 0; i < n.length; i++) {
      n[i] = Double.parseDouble(f[i + 1]);
    }
    Mail mail = new Mail(n[0], n[1], n[2], 0, true, n[3]);
    return new Case(f[0], mail, f[5], f[6].equals("+") ? 1 : -1, f[7], f[8], f[9]);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void classChangesExactlyBeyondTheLimit(Case c) {
    assertThat(taken(c.moved(0))).as("at the limit").isEqualTo(c.at());
    assertThat(taken(c.moved(-c.outward()))).as("inside the limit").isEqualTo(c.at());
    Decision outside = c.moved(c.outward());
    assertThat(taken(outside)).as("outside the limit").isEqualTo(c.outside());
    assertThat(outside.missed())
        .filteredOn(m -> m.postClass().name().equals(c.at()) && m.step() == 0)
        .singleElement()
        .satisfies(m -> assertThat(m.failures()).hasSize(1));
  }

  @Test
  void everyPostHasAtLeastEightCitedLimits() throws IOException {
    Map<String, Long> counts =
        cases().stream().collect(Collectors.groupingBy(Case::post, Collectors.counting()));
    assertThat(counts.keySet()).containsExactlyInAnyOrderElementsOf(Schemes.NAMES);
    assertThat(counts).allSatisfy((post, n) -> assertThat(n).as(post).isGreaterThanOrEqualTo(8));
    assertThat(cases()).allSatisfy(c -> assertThat(c.from()).isNotBlank());
  }

  private static String taken(Decision decision) {
    return decision.taken().map(PostClass::name).orElse("none");
  }
}
