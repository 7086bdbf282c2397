package hingeleaf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Results are written whole, replaced only where they are ours, and never half. */
class OutputFolderTest {
  @TempDir Path folder;

  private static byte[] bytes(String s) {
    return s.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void secondRunReplacesOurs_andRemovesWhatIsNoLongerMade() throws IOException {
    Path out = folder.resolve("pack");
    OutputFolder.write(out, Map.of("plan.pdf", bytes("one"), "pieces/far.svg", bytes("x")));
    Files.writeString(out.resolve("notes.txt"), "mine");
    OutputFolder.write(out, Map.of("plan.pdf", bytes("two")));
    assertThat(out.resolve("plan.pdf")).hasContent("two");
    assertThat(out.resolve("pieces/far.svg")).doesNotExist();
    assertThat(out.resolve("notes.txt")).hasContent("mine");
  }

  @Test
  void aStrangersFileIsLeftAlone_andNothingElseIsWritten() throws IOException {
    Path out = folder.resolve("pack");
    Files.createDirectories(out);
    Files.writeString(out.resolve("plan.pdf"), "not ours");
    assertThatThrownBy(
            () -> OutputFolder.write(out, Map.of("a.txt", bytes("a"), "plan.pdf", bytes("b"))))
        .isInstanceOf(DoorException.class)
        .hasMessageContaining("plan.pdf was not made by hingeleaf");
    assertThat(out.resolve("plan.pdf")).hasContent("not ours");
    assertThat(out.resolve("a.txt")).doesNotExist();
  }

  @Test
  void whatWouldNotChangeKeepsItsDate_andWhatIsGoneIsMadeAgain() throws IOException {
    Path out = folder.resolve("pack");
    Map<String, byte[]> first =
        Map.of("plan.pdf", bytes("one"), "a.svg", bytes("a"), "b.svg", bytes("b"));
    OutputFolder.write(out, first);
    FileTime old = FileTime.from(Instant.parse("2020-02-02T02:02:02Z"));
    for (String name : first.keySet()) {
      Files.setLastModifiedTime(out.resolve(name), old);
    }
    Files.delete(out.resolve("b.svg"));
    OutputFolder.write(
        out, Map.of("plan.pdf", bytes("two"), "a.svg", bytes("a"), "b.svg", bytes("b")));
    assertThat(Files.getLastModifiedTime(out.resolve("a.svg"))).isEqualTo(old);
    assertThat(out.resolve("a.svg")).hasContent("a");
    assertThat(Files.getLastModifiedTime(out.resolve("plan.pdf"))).isNotEqualTo(old);
    assertThat(out.resolve("plan.pdf")).hasContent("two");
    assertThat(out.resolve("b.svg")).hasContent("b");
  }

  @Test
  void noLeftoversStay() throws IOException {
    Path out = folder.resolve("pack");
    OutputFolder.write(out, Map.of("a.txt", bytes("a")));
    try (Stream<Path> all = Files.list(out)) {
      assertThat(all.map(p -> p.getFileName().toString()))
          .containsExactlyInAnyOrder("a.txt", OutputFolder.MANIFEST);
    }
  }

  @Test
  void leftBeforeItIsFinished_everythingIsAsItWas() throws IOException {
    Path out = folder.resolve("pack");
    OutputFolder.write(out, Map.of("a.txt", bytes("old")));
    OutputFolder begun = OutputFolder.open(out);
    begun.put("a.txt", bytes("new"));
    begun.put("pieces/b.txt", bytes("b"));
    begun.close();
    assertThat(out.resolve("a.txt")).hasContent("old");
    assertThatThrownBy(() -> begun.put("c.txt", bytes("c"))).hasMessageContaining("stopped");
    assertThatThrownBy(begun::finish).hasMessageContaining("stopped");
    try (Stream<Path> all = Files.list(out)) {
      assertThat(all.map(p -> p.getFileName().toString()))
          .containsExactlyInAnyOrder("a.txt", OutputFolder.MANIFEST);
    }
  }
}
