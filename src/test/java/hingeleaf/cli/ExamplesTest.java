package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example makes its pack, and the faulty ones explain every fault. */
class ExamplesTest {
  @TempDir Path folder;

  static List<Path> examples(boolean faulty) throws IOException {
    try (Stream<Path> all = Files.list(Path.of("examples"))) {
      return all.filter(p -> p.toString().endsWith(".yaml"))
          .filter(p -> Files.exists(p) && isDesign(p))
          .filter(p -> p.toString().contains("fault") == faulty)
          .sorted()
          .toList();
    }
  }

  private static boolean isDesign(Path p) {
    try {
      return Files.readString(p).contains("hingeleaf: 1");
    } catch (IOException e) {
      return false;
    }
  }

  static List<Path> good() throws IOException {
    return examples(false);
  }

  static List<Path> faulty() throws IOException {
    return examples(true);
  }

  @ParameterizedTest
  @MethodSource("good")
  void goodExampleMakesItsPack_andPackJsonKeepsItsSchema(Path example) throws IOException {
    Path out = folder.resolve("pack");
    Shell s = Shell.run("make", example.toString(), "--out", out.toString());
    assertThat(s.code()).as(s.err()).isZero();
    for (String name : List.of("plan.pdf", "templates.pdf", "picture.png", "card.glb")) {
      assertThat(out.resolve(name)).isNotEmptyFile();
    }
    String schema = Shell.run("schema", "pack").out();
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(Files.readString(out.resolve("pack.json")), InputFormat.JSON))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("good")
  void sameInputGivesTheSameBytes(Path example) throws IOException {
    Path one = folder.resolve("one");
    Path two = folder.resolve("two");
    assertThat(Shell.run("make", example.toString(), "--out", one.toString()).code()).isZero();
    assertThat(Shell.run("make", example.toString(), "--out", two.toString()).code()).isZero();
    try (Stream<Path> all = Files.walk(one)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        assertThat(two.resolve(one.relativize(p))).as(p.toString()).hasSameBinaryContentAs(p);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("faulty")
  void faultyExampleExplainsItself(Path example) {
    Shell s = Shell.run("check", example.toString());
    assertThat(s.code()).isEqualTo(Exit.CONTENT);
    assertThat(s.out()).contains(example + ":").contains(": blocks: ");
  }

  @Test
  void everyFaultyLineOfTheGardenGateIsNamed() {
    // The lines that were written wrong on purpose, counted by hand in the file.
    String out = Shell.run("check", "examples/garden-gate-fault.yaml").out();
    for (int line : new int[] {9, 11, 12, 14, 15, 17, 19}) {
      assertThat(out).contains("garden-gate-fault.yaml:" + line + ":");
    }
  }

  @Test
  void whatNewPrintsIsACardWithoutRed() throws IOException {
    for (String unit : List.of("mm", "cm", "in")) {
      Path file = folder.resolve("new-" + unit + ".yaml");
      Shell made = Shell.run("new", "stacked-frames", "--unit", unit);
      assertThat(made.code()).isZero();
      Files.write(file, made.out().getBytes(StandardCharsets.UTF_8));
      Shell s = Shell.run("check", file.toString());
      assertThat(s.code()).as(s.out() + s.err()).isZero();
      assertThat(s.out()).contains("0 blocking, 0 to watch").doesNotContain("off-groove");
    }
  }
}
