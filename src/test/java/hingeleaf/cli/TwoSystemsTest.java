package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Inches and millimetres are two versions of a card, each rounded to the marks of its own ruler
 * before anything is built. An inch is 25.4 mm exactly (international yard and pound agreement,
 * 1959).
 */
class TwoSystemsTest {
  @TempDir Path folder;

  private String pack(String... more) throws IOException {
    List<String> args =
        new ArrayList<>(
            List.of("make", "examples/fair-winds.yaml", "--out", folder.resolve("p").toString()));
    args.addAll(List.of(more));
    Shell s = Shell.run(args.toArray(String[]::new));
    assertThat(s.code()).as(s.err()).isZero();
    return Files.readString(folder.resolve("p").resolve("pack.json"));
  }

  private static List<Double> numbers(String json, String key) {
    List<Double> found = new ArrayList<>();
    Matcher m = Pattern.compile("\"" + key + "\":(-?[0-9.]+)").matcher(json);
    while (m.find()) {
      found.add(Double.parseDouble(m.group(1)));
    }
    return found;
  }

  @Test
  void theInchVersionStandsOnSixteenths_andNothingMisfits() throws IOException {
    String json = pack("--unit", "in");
    List<Double> scores = numbers(json, "at");
    assertThat(scores).isNotEmpty();
    for (double at : scores) {
      double sixteenths = at / 25.4 * 16;
      assertThat(Math.abs(sixteenths - Math.rint(sixteenths))).as("%s mm", at).isLessThan(1e-5);
    }
    assertThat(numbers(json, "gap")).isNotEmpty().allMatch(g -> g < 1e-6);
    assertThat(json).contains("\"kind\":\"rounded\"");
  }

  @Test
  void sidesThatAreEqualStayEqual() throws IOException {
    // 12 mm is 7.56 sixteenths: both sides and tabs become 1/2 in, never 7/16 beside 1/2.
    List<Double> at = numbers(pack("--unit", "in"), "at").subList(0, 4);
    double panel = at.get(2) - at.get(1);
    assertThat(at.get(1) - at.get(0)).isCloseTo(12.7, org.assertj.core.api.Assertions.within(1e-5));
    assertThat(at.get(3) - at.get(2)).isCloseTo(12.7, org.assertj.core.api.Assertions.within(1e-5));
    assertThat(panel).isCloseTo(5.875 * 25.4, org.assertj.core.api.Assertions.within(1e-5));
  }

  @Test
  void inItsOwnSystemASizeThatWasNamedIsNeverChanged() throws IOException {
    assertThat(numbers(pack(), "at").subList(0, 4)).containsExactly(12d, 24d, 174d, 186d);
  }
}
