package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class FoldFileTest {
  private static final String BOX =
      """
      {"panels": [
        {"id": "L", "outline": [[0,0,0],[-100,0,0],[-100,140,0],[0,140,0]]},
        {"id": "R", "outline": [[0,0,0],[0,0,100],[0,140,100],[0,140,0]]},
        {"id": "fL", "outline": [[-30,40,0],[-30,40,40],[-30,90,40],[-30,90,0]]},
        {"id": "fR", "outline": [[0,40,40],[-30,40,40],[-30,90,40],[0,90,40]]}],
       "folds": [
        {"id": "gutter", "a": "L", "b": "R", "axis": [[0,0,0],[0,140,0]]},
        {"id": "cL", "a": "L", "b": "fL", "axis": [[-30,40,0],[-30,90,0]]},
        {"id": "ridge", "a": "fL", "b": "fR", "axis": [[-30,40,40],[-30,90,40]]},
        {"id": "cR", "a": "fR", "b": "R", "axis": [[0,40,40],[0,90,40]]}],
       "fixed": "L",
       "states": [STATES]}
      """;

  @TempDir Path dir;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String text, boolean json) throws IOException {
    Path file = dir.resolve("box.json");
    Files.writeString(file, text);
    return FoldFile.run(file, json, stream(out), stream(err));
  }

  private static PrintStream stream(ByteArrayOutputStream to) {
    return new PrintStream(to, true, StandardCharsets.UTF_8);
  }

  private JsonNode json() {
    return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
  }

  @Test
  void writesEveryStateInItsPlace() throws IOException {
    int code = run(BOX.replace("STATES", "{\"drive\": {\"gutter\": 0.5}}, {\"drive\": {}}"), true);
    assertThat(code).isZero();
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    JsonNode report = json();
    assertThat(report.propertyNames())
        .containsExactly("mobility", "bodies", "hinges", "loops", "flat", "states");
    assertThat(report.get("mobility").asInt()).isEqualTo(1);
    assertThat(report.get("loops").asInt()).isEqualTo(1);
    JsonNode state = report.get("states").get(0);
    assertThat(state.propertyNames())
        .containsExactly("drive", "reached", "folds", "panels", "closure_mm", "error_mm");
    assertThat(state.get("folds").get("ridge").asDouble()).isCloseTo(-0.5, within(1e-12));
    JsonNode tip = state.get("panels").get("fL").get(1);
    // A parallelogram: the ridge moves as the right leaf's foot does, 40 from the gutter.
    assertThat(tip.get(0).asDouble()).isCloseTo(40 * Math.sin(0.5) - 30, within(1e-10));
    assertThat(tip.get(2).asDouble()).isCloseTo(40 * Math.cos(0.5), within(1e-10));
    assertThat(report.get("flat").get("count").asInt()).isEqualTo(2);
  }

  @Test
  void saysWhatCannotBeReachedAndExitsWithOne() throws IOException {
    String wrong = "{\"drive\": {\"gutter\": 0.5, \"cL\": 0.1}}";
    assertThat(run(BOX.replace("STATES", wrong), true)).isEqualTo(1);
    JsonNode state = json().get("states").get(0);
    assertThat(state.get("reached").asBoolean()).isFalse();
    assertThat(state.get("why").asString())
        .contains("cannot be brought to")
        .contains("the nearest");
  }

  @Test
  void theSameFileGivesTheSameBytes() throws IOException {
    String text = BOX.replace("STATES", "{\"drive\": {\"gutter\": -1.2}}");
    run(text, true);
    String first = out.toString(StandardCharsets.UTF_8);
    out.reset();
    run(text, true);
    assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo(first).endsWith("}\n");
  }

  @Test
  void talksInSentencesWithoutJson() throws IOException {
    assertThat(run(BOX.replace("STATES", "{\"drive\": {\"gutter\": -1.2}}"), false)).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("moves in one way")
        .contains("reached");
  }

  @Test
  void aFaultyFileGetsOneLocatedSentence() throws IOException {
    assertThat(run(BOX.replace("STATES", "{\"drive\": {\"guter\": 0.5}}"), true)).isEqualTo(1);
    assertThat(out.size()).isZero();
    assertThat(err.toString(StandardCharsets.UTF_8).strip())
        .contains("box.json:12:")
        .contains("did you mean \"gutter\"?")
        .doesNotContain("\n");
  }

  @Test
  void aMissingFileCannotBeRead() {
    assertThat(FoldFile.run(dir.resolve("no.json"), true, stream(out), stream(err))).isEqualTo(3);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("cannot be read");
  }
}
