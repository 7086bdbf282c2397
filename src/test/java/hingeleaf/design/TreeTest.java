package hingeleaf.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TreeTest {
  static Tree tree(String text) {
    TreeReading reading = Tree.read("card.yaml", text);
    if (reading instanceof TreeReading.Legible r) {
      return r.tree();
    }
    return fail("not read: " + reading);
  }

  static List<Problem> problems(String text) {
    return problems(text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<Problem> problems(byte[] bytes) {
    TreeReading reading = Tree.read("card.yaml", bytes);
    if (reading instanceof TreeReading.Illegible u) {
      return u.problems();
    }
    return fail("was read: " + reading);
  }

  private static void checkNode(Tree tree, String path, String written, int line, int column) {
    Node node = tree.find(path).orElseThrow(() -> new AssertionError("no " + path));
    Span span = node.span();
    assertThat(tree.source().text().substring(span.from(), span.to())).isEqualTo(written);
    assertThat(node.place()).isEqualTo(new Place("card.yaml", line, column));
    assertThat(node.path()).isEqualTo(path);
  }

  @Test
  void everyNode_knowsItsPlaceSpanAndPath() {
    Tree tree = tree(TestForms.FAIR_WINDS);
    checkNode(tree, "title", "Fair winds ⛵", 2, 8);
    checkNode(tree, "base.stacked-frames.width", "150", 6, 12);
    checkNode(tree, "base.stacked-frames.side[1]", "18 mm", 9, 16);
    checkNode(
        tree, "base.stacked-frames.frames[1].aperture", "{rect: [80, 60], at: [0, -5]}", 12, 34);
    checkNode(tree, "base.stacked-frames.frames[1].aperture.at[1]", "-5", 12, 59);
    checkNode(tree, "base.stacked-frames.frames[2].aperture.square", "130", 15, 19);
    checkNode(tree, "words[0].text", "\"Fair winds\"", 23, 12);
  }

  @Test
  void places_countAnEmojiAsOneSign() {
    Tree tree = tree("\uFEFFa: {b: ⛵😀, c: 7}\r\nd: 😀😀 x\r\n");
    checkNode(tree, "a.c", "7", 1, 15);
    checkNode(tree, "d", "😀😀 x", 2, 4);
    assertThat(tree.find("d").orElseThrow().span().from()).isEqualTo(23);
  }

  @Test
  void scalars_stayAsWritten() {
    Tree tree = tree("a: 007\nb: '7 1/2\"'\nc: \"x\\ty\"\nd: |\n  one\n  two\ne:\nf: 1e309\n");
    assertThat(raw(tree, "a")).isEqualTo("007");
    assertThat(raw(tree, "b")).isEqualTo("7 1/2\"");
    assertThat(raw(tree, "c")).isEqualTo("x\ty");
    assertThat(raw(tree, "d")).isEqualTo("one\ntwo\n");
    assertThat(raw(tree, "e")).isEmpty();
    assertThat(raw(tree, "f")).isEqualTo("1e309");
  }

  private static String raw(Tree tree, String path) {
    return ((Node.Scalar) tree.find(path).orElseThrow()).raw();
  }

  /** RFC 8259 section 13, the first example (shortened), is YAML too. */
  @Test
  void json_isYaml() {
    Tree tree =
        tree(
            "{\n\t\"Image\": {\n\t\t\"Width\":  800,\n\t\t\"Title\": \"View from 15th \\u00e9\","
                + "\n\t\t\"IDs\": [116, 943]\n\t}\n}");
    checkNode(tree, "Image.Width", "800", 3, 13);
    assertThat(raw(tree, "Image.Title")).isEqualTo("View from 15th é");
    checkNode(tree, "Image.IDs[1]", "943", 5, 16);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "~~|empty-file|1|1",
        "~# only a remark\n~|empty-file|1|1",
        "~a: &x 1\n~|anchor|1|4",
        "~a: 1\nb: *x\n~|alias|2|4",
        "~a: !!str 1\n~|tag|1|4",
        "~a: !thing {b: 1}\n~|tag|1|4",
        "~a: 1\nb: 2\na: 3\n~|key-twice|3|1",
        "~a: {b: 1, c: 2, b: 3}\n~|key-twice|1|17",
        "~a:\n\tb: 1\n~|tab|2|1",
        "~a:\n  \tb: 1\n~|tab|2|3",
        "~a: 1\n---\nb: 2\n~|several-documents|2|1",
        "~a: [1, 2\nb: 3\n~|yaml|2|2",
        "~a: b: c\n~|yaml|1|5",
        "~a: 1\n  b: 2\n~|yaml|2|4",
        "~a: \"open\n~|yaml|2|1",
        "~? [a, b]\n: 1\n~|yaml|1|3",
        "~a: @b\n~|yaml|1|4",
        "~a: 1\nb\n~|yaml|3|1"
      })
  void unreadable_isToldWithItsPlace(String text, String kind, int line, int column) {
    Problem first = problems(text).get(0);
    assertThat(first.kind()).isEqualTo(kind);
    assertThat(first.place()).isEqualTo(new Place("card.yaml", line, column));
    assertThat(first.message()).isNotBlank().doesNotContain("Exception").doesNotContain("null");
  }

  @Test
  void several_areAllTold() {
    assertThat(problems("a: &x 1\nb: !t 2\nb: 3\nc: *x\n"))
        .extracting(Problem::kind)
        .containsExactly("anchor", "tag", "key-twice", "alias");
    assertThat(problems("a:\n\tb: 1\n\tc: 1\n")).hasSize(2);
  }

  @Test
  void bytes_thatAreNoText() {
    byte[] latin1 = "title: Gr\u00fc\u00dfe\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(problems(latin1).get(0).kind()).isEqualTo("not-utf8");
    assertThat(problems(latin1).get(0).place()).isEqualTo(new Place("card.yaml", 1, 10));
    assertThat(problems("a: 1\n".getBytes(StandardCharsets.UTF_16)).get(0).message())
        .contains("UTF-16");
    assertThat(problems("a: 1\nb: \u0000\n").get(0).place())
        .isEqualTo(new Place("card.yaml", 2, 4));
    assertThat(problems(new byte[] {(byte) 0x89, 'P', 'N', 'G'}).get(0).kind())
        .isEqualTo("not-utf8");
    byte[] noise = new byte[5000];
    new Random(1).nextBytes(noise);
    assertThat(problems(noise)).isNotEmpty();
  }

  @Test
  void tooMuch_isRefused() {
    assertThat(problems(new byte[TreeReading.LIMIT_BYTES + 1]).get(0).kind())
        .isEqualTo("too-large");
    assertThat(problems("[".repeat(1_000_000)).get(0).kind()).isEqualTo("too-deep");
    assertThat(problems("a: " + "{b: ".repeat(200)).get(0).kind()).isEqualTo("too-deep");
    assertThat(problems("- ".repeat(500) + "x").get(0).kind()).isEqualTo("too-deep");
    assertThat(problems("[" + "1,".repeat(900_000) + "1]").get(0).kind()).isEqualTo("too-large");
    assertThat(problems("x".repeat(2000) + ": 1").get(0).kind()).isEqualTo("yaml");
    assertThat(problems("'" + "x".repeat(500) + "': 1").get(0).message())
        .contains("100 characters");
  }

  /** Buffers of parsers are often powers of two long. */
  @Test
  void emoji_mayStandAnywhere() {
    for (int size : new int[] {1024, 2048, 4096, 8192}) {
      for (int before = size - 4; before <= size + 2; before++) {
        String title = "x".repeat(before - 3) + "😀😀😀 ⛵";
        assertThat(raw(tree("a: " + title + "\nb: 1\n"), "a")).isEqualTo(title);
      }
    }
  }

  @Test
  void fortyDeep_isStillRead() {
    assertThat(tree("[".repeat(39) + "1" + "]".repeat(39)).root()).isInstanceOf(Node.Items.class);
  }

  /**
   * Real text with signs knocked out, doubled or swapped: read or refused, never thrown. Seed 5.
   */
  @Test
  void damagedText_neverThrows() {
    Random random = new Random(5);
    String signs = "{}[]:-#'\"&*!|>%@`\t\n ,?\\~⛵";
    int refused = 0;
    for (int i = 0; i < 3000; i++) {
      StringBuilder text = new StringBuilder(TestForms.FAIR_WINDS);
      for (int n = random.nextInt(4); n >= 0; n--) {
        int at = random.nextInt(text.length());
        text.replace(at, at + random.nextInt(2), "" + signs.charAt(random.nextInt(signs.length())));
      }
      TreeReading reading = Tree.read("card.yaml", text.toString());
      if (reading instanceof TreeReading.Illegible u) {
        refused++;
        assertThat(u.problems()).isNotEmpty().allSatisfy(p -> assertThat(p.place()).isNotNull());
      } else {
        DesignDocument.read(((TreeReading.Legible) reading).tree(), TestForms.ALL);
      }
    }
    assertThat(refused).isBetween(300, 2900);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "base.nothing", "words[7]", "words[x]", "title.x", "words[", "base[0]"})
  void find_whatIsNotThere(String path) {
    Tree tree = tree(TestForms.FAIR_WINDS);
    assertThat(tree.find(path).isPresent()).isEqualTo(path.isEmpty());
  }
}
