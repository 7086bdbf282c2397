package hingeleaf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Versions on disk, and names that try to lead out of the folder. */
class HistoryTest {
  @TempDir Path home;
  private Path cards;
  private CardFolder folder;

  @BeforeEach
  void open() {
    cards = home.resolve("cards");
    folder = CardFolder.open(cards);
    folder.addCard("a.yaml", bytes("0"));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String text(History.Version v) {
    return new String(v.bytes(), StandardCharsets.UTF_8);
  }

  private History reopened() {
    return History.of(CardFolder.open(cards), "a.yaml");
  }

  @Test
  void undoAndRedoSurviveAnotherServer() {
    reopened().now();
    reopened().save(bytes("1"));
    reopened().save(bytes("2"));
    assertThat(text(reopened().undo())).isEqualTo("1");
    assertThat(text(reopened().undo())).isEqualTo("0");
    assertThat(reopened().now().undo()).isFalse();
    assertThat(text(reopened().redo())).isEqualTo("1");
    assertThat(cards.resolve("a.yaml")).hasContent("1");
  }

  @Test
  void aChangeForgetsWhatWasUndone() {
    History h = reopened();
    h.save(bytes("1"));
    h.undo();
    h.save(bytes("3"));
    assertThat(h.now().redo()).isFalse();
    assertThat(text(h.undo())).isEqualTo("0");
  }

  @Test
  void theLastFiftyAreKept() throws IOException {
    History h = reopened();
    for (int i = 1; i <= 70; i++) {
      h.save(bytes("v" + i));
    }
    try (Stream<Path> files = Files.list(cards.resolve(".hingeleaf/versions/a.yaml"))) {
      assertThat(files.filter(f -> f.toString().endsWith(".yaml"))).hasSize(50);
    }
    History.Version oldest = h.now();
    while (oldest.undo()) {
      oldest = h.undo();
    }
    assertThat(text(oldest)).isEqualTo("v21");
  }

  @Test
  void aChangeByHandBecomesAVersion() throws IOException {
    reopened().save(bytes("1"));
    Files.writeString(cards.resolve("a.yaml"), "by hand");
    assertThat(text(reopened().now())).isEqualTo("by hand");
    assertThat(text(reopened().undo())).isEqualTo("1");
  }

  @Test
  void dyingBetweenVersionAndFileLosesNothing() throws IOException {
    reopened().save(bytes("1"));
    // As a server leaves it that died after the version was written and before the card was.
    Files.writeString(cards.resolve(".hingeleaf/versions/a.yaml/00000003.yaml"), "2");
    assertThat(text(reopened().now())).isEqualTo("1");
    assertThat(text(reopened().redo())).isEqualTo("2");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret.yaml",
        "..\\secret.yaml",
        "/etc/passwd.yaml",
        "x/../../secret.yaml",
        ".yaml",
        "..yaml",
        "a..yaml",
        "%2e%2e%2fsecret.yaml",
        "C:secret.yaml",
        "a\u0000.yaml",
        "secret",
        ".hingeleaf.yaml",
        "a.yaml/",
        ""
      })
  void namesLeadNowhereElse(String name) throws IOException {
    Files.writeString(home.resolve("secret.yaml"), "secret");
    assertThatThrownBy(() -> folder.readCard(name)).isInstanceOf(StoreException.class);
    assertThatThrownBy(() -> History.of(folder, name).now()).isInstanceOf(StoreException.class);
  }

  @Test
  void linksAreNotFollowed() throws IOException {
    Path secret = Files.writeString(home.resolve("secret.yaml"), "secret");
    Files.createSymbolicLink(cards.resolve("link.yaml"), secret);
    Files.createSymbolicLink(cards.resolve("link.svg"), secret);
    assertThat(folder.readCard("link.yaml")).isEmpty();
    assertThat(folder.readDrawing("link.svg")).isEmpty();
    assertThat(folder.cards()).isEqualTo(List.of("a.yaml"));
  }

  @Test
  void versionsAreNotWrittenThroughALink() throws IOException {
    Path elsewhere = Files.createDirectory(home.resolve("elsewhere"));
    Files.createSymbolicLink(cards.resolve(".hingeleaf"), elsewhere);
    assertThatThrownBy(() -> reopened().now()).isInstanceOf(StoreException.class);
    assertThat(elsewhere).isEmptyDirectory();
  }

  @Test
  void anotherDrawingOfThatNameStays() {
    folder.addDrawing("b.svg", bytes("<svg/>"));
    folder.addDrawing("b.svg", bytes("<svg/>"));
    assertThatThrownBy(() -> folder.addDrawing("b.svg", bytes("<svg />")))
        .isInstanceOf(StoreException.class);
    assertThat(cards.resolve("b.svg")).hasContent("<svg/>");
  }
}
