package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SheetsCommandTest {
  @TempDir Path dir;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    return SheetsCommand.run(
        args,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private String file(String text) throws IOException {
    Path path = dir.resolve("job.json");
    Files.writeString(path, text);
    return path.toString();
  }

  private static final String GOOD =
      "{\"unit\":\"in\",\"stock\":[{\"w\":12,\"h\":12,\"price\":0.4}],"
          + "\"pieces\":[{\"name\":\"mat\",\"w\":5.5,\"h\":4.25,\"qty\":4}]}";

  @Test
  void printsACuttingList() throws IOException {
    assertThat(run(file(GOOD))).isZero();
    String text = out.toString(StandardCharsets.UTF_8);
    assertThat(text)
        .startsWith("1 sheet, cost 0.4; no cheaper plan exists (area).")
        .contains("set the trimmer to ")
        .contains("mat falls off");
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("gap 0.0 %");
  }

  @Test
  void printsJsonInTheJobsUnit() throws IOException {
    assertThat(run(file(GOOD), "--json", "--seconds", "2")).isZero();
    JsonNode plan = JsonMapper.builder().build().readTree(out.toString(StandardCharsets.UTF_8));
    assertThat(plan.get("unit").asString()).isEqualTo("in");
    assertThat(plan.get("cost").asDouble()).isEqualTo(0.4);
    assertThat(plan.get("proven_optimal").asBoolean()).isTrue();
    JsonNode piece = plan.get("sheets").get(0).get("pieces").get(0);
    assertThat(piece.get("w").asDouble() * piece.get("h").asDouble()).isEqualTo(5.5 * 4.25);
    assertThat(plan.get("sheets").get(0).get("cuts").get(0).get("axis").asString()).isIn("x", "y");
    assertThat(plan.get("trimmer_settings").asInt()).isPositive();
  }

  @Test
  void tellsItsFaultsByExitCode() throws IOException {
    assertThat(run(file("{"))).isEqualTo(1);
    assertThat(run(file(GOOD.replace("5.5", "15.5")))).isEqualTo(1);
    assertThat(run(dir.resolve("none.json").toString())).isEqualTo(3);
    assertThat(run()).isEqualTo(2);
    assertThat(run(file(GOOD), "--seconds", "NaN")).isEqualTo(2);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("fits on no sheet")
        .contains("there is no file")
        .doesNotContain("Exception");
  }
}
