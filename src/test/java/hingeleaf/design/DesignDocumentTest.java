package hingeleaf.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;

import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.measure.Length;
import hingeleaf.measure.Rational;
import hingeleaf.measure.Unit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DesignDocumentTest {
  private static final String TOP = "hingeleaf: 1\nbase:\n  single-leaf: {width: 100}\n";

  private static DesignDocument document(String text) {
    DesignDocument.Outcome outcome =
        DesignDocument.read("card.yaml", text.getBytes(StandardCharsets.UTF_8), TestForms.ALL);
    if (outcome instanceof DesignDocument.Outcome.Right r) {
      return r.document();
    }
    return fail("not read: " + outcome);
  }

  private static List<Problem> problems(String text) {
    DesignDocument.Outcome outcome =
        DesignDocument.read("card.yaml", text.getBytes(StandardCharsets.UTF_8), TestForms.ALL);
    if (outcome instanceof DesignDocument.Outcome.Wrong w) {
      return w.problems();
    }
    return fail("was read: " + outcome);
  }

  private static Problem only(String text) {
    List<Problem> all = problems(text);
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  @Test
  void read_theWholeExample() {
    DesignDocument d = document(TestForms.FAIR_WINDS);
    assertThat(d.title()).isEqualTo("Fair winds ⛵");
    assertThat(d.unit()).isEqualTo(Unit.MM);
    assertThat(d.base().variant()).isEqualTo("stacked-frames");
    Values stack = d.base().form();
    assertThat(stack.length("width")).isEqualTo(Length.of(150, Unit.MM));
    assertThat(stack.given("width")).isTrue();
    assertThat(stack.lengths("side"))
        .containsExactly(
            Length.of(12, Unit.MM), Length.of(18, Unit.MM), Length.of(Rational.of(1, 2), Unit.IN));
    assertThat(stack.perStage("side")).isTrue();
    assertThat(stack.path("side")).isEqualTo("base.stacked-frames.side");
    assertThat(stack.place("side")).isEqualTo(new Place("card.yaml", 9, 11));
    assertThat(d.mechanisms())
        .singleElement()
        .satisfies(m -> assertThat(m.form().text("hinge")).isEqualTo("left"));
    assertThat(d.mats()).hasSize(1);
    assertThat(d.windows()).isEmpty();
    assertThat(d.message()).isEmpty();
    assertThat(d.cutOuts().get(0).mm("raised-by")).isEqualTo(2);
    assertThat(d.words().get(0).text("seen")).isEqualTo("all");
  }

  @Test
  void read_shapes() {
    DesignDocument d = document(TestForms.FAIR_WINDS);
    List<Values> frames = d.base().form().forms("frames");
    assertThat(frames).extracting(f -> f.text("name")).containsExactly("far", "middle", "near");
    Shape.Standard middle = (Shape.Standard) Shape.of(frames.get(1).choice("aperture"));
    assertThat(middle.sort()).isEqualTo(Shape.Sort.RECTANGLE);
    assertThat(middle.at().y()).isEqualTo(-5);
    assertThat(middle.ring().area()).isEqualTo(4800);
    assertThat(frames.get(1).choice("aperture").values().path("rect"))
        .isEqualTo("base.stacked-frames.frames[1].aperture.rect");
    Shape boat = Shape.of(d.cutOuts().get(0).choice("outline"));
    assertThat(boat)
        .isEqualTo(new Shape.Drawn("boat.svg", Length.of(55, Unit.MM), Length.ZERO, Length.ZERO));
  }

  @Test
  void usualValues_holdWhereTheFileIsSilentAndAreNotGiven() {
    String sides = "          side: [12, 18 mm, 1/2 in]\n".substring(6);
    String silent = TestForms.FAIR_WINDS.replace(sides, "");
    assertThat(silent).hasSizeLessThan(TestForms.FAIR_WINDS.length());
    Values stack = document(silent).base().form();
    assertThat(stack.lengths("side")).containsExactly(Length.of(12, Unit.MM));
    assertThat(stack.given("side")).isFalse();
    assertThat(stack.perStage("side")).isFalse();
    assertThat(stack.path("side")).isEqualTo("base.stacked-frames.side");
    assertThat(stack.place("side")).isEqualTo(stack.place());
    Values inches =
        document(
                silent
                    .replace("unit: mm", "unit: in")
                    .replace("150", "6")
                    .replace("90", "3")
                    .replace("130", "5")
                    .replace("[80, 60]", "[3, 2]")
                    .replace("width: 55", "width: 2")
                    .replace("raised-by: 2", "raised-by: 1/8")
                    .replace("height: 9", "height: 1/2"))
            .base()
            .form();
    assertThat(inches.lengths("side")).containsExactly(Length.of(Rational.of(1, 2), Unit.IN));
    Values mat = document(TestForms.FAIR_WINDS).mats().get(0);
    assertThat(mat.has("width")).isFalse();
    assertThat(mat.path("width")).isEqualTo("mats[0].width");
    assertThat(mat.place("width")).isEqualTo(mat.place());
  }

  @Test
  void unit_setsWhatBareNumbersMean() {
    DesignDocument d = document("hingeleaf: 1\nunit: in\nbase: {single-leaf: {width: 7 1/2}}\n");
    assertThat(d.base().form().mm("width")).isEqualTo(190.5);
    assertThat(
            document("hingeleaf: 1\nunit: cm\nbase: {single-leaf: {width: 18.5}}\n")
                .base()
                .form()
                .mm("width"))
        .isEqualTo(185);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "mat:|unknown-key|did you mean `mats`?|1",
        "unit: inch|unknown-word|did you mean `in`?|7",
        "title: [a]|bad-value|found a list|8",
        "mats: {name: sea}|bad-value|a list|7",
        "mats: [sea]|bad-value|keys with values|8",
        "mats: [{name: sea, on: back}]|missing|needs `stock`|8",
        "mats: [{name: sea, on: back, stock: x, width: 0}]|out-of-range|more than 0 mm|47",
        "mats: [{name: sea, on: back, stock: x, width: -5}]|out-of-range|`-5`|47",
        "mats: [{name: sea, on: back, stock: x, width: NaN}]|bad-length|`NaN`|47",
        "mats: [{name: sea, on: back, stock: x, width: 1e309}]|bad-length|exponent|47",
        "mats: [{name: sea, on: back, stock: x, width: 1e999999999}]|bad-length|exponent|47",
        "mats: [{name: sea, on: back, stock: x, width: 10 km}]|bad-length|unknown unit `km`|47",
        "mats: [{name: sea, on: back, stock: x, width: }]|missing|nothing stands here|46",
        "mats: [{name: sea, on: back, stock: x, at: [1]}]|bad-value|`[x, y]`; found 1 values|44",
        "mats: [{name: sea, on: back, stock: x, seen: al}]|unknown-word|did you mean `all`?|46",
        "mats: [{name: 7 seas, on: back, stock: x}]|bad-name|letters|15",
        "words: [{text: hi, on: back, height: 9, colour: red}]|bad-value|a colour|49",
        "mechanisms: [{dor: {name: a}}]|unknown-word|did you mean `door`?|15",
        "mechanisms: [door]|bad-value|one of `door`|14",
        "windows: [{name: a, on: b, stock: c, overlap: ''}]|bad-length|missing|47"
      })
  void faults_areToldWithPlaceAndHelp(String line, String kind, String says, int column) {
    Problem p = only(TOP + line + "\n");
    assertThat(p.kind()).isEqualTo(kind);
    assertThat(p.message()).contains(says);
    assertThat(p.place()).isEqualTo(new Place("card.yaml", 4, column));
  }

  @Test
  void shapes_thatAreWrong() {
    String cut = "cut-outs: [{name: c, on: back, stock: x, outline: ";
    assertThat(only(TOP + cut + "{circel: 9}}]").message()).contains("did you mean `circle`?");
    assertThat(only(TOP + cut + "{circle: 9, square: 9}}]").kind()).isEqualTo("two-at-once");
    assertThat(only(TOP + cut + "{at: [0, 0]}}]").kind()).isEqualTo("bad-value");
    assertThat(only(TOP + cut + "{circle: 9, width: 9}}]").kind()).isEqualTo("unknown-key");
    assertThat(only(TOP + cut + "{svg: boat.svg}}]").message()).contains("needs `width`");
    assertThat(only(TOP + cut + "{svg: ../boat.svg, width: 9}}]").kind()).isEqualTo("bad-file");
    assertThat(only(TOP + cut + "{svg: /etc/x.svg, width: 9}}]").kind()).isEqualTo("bad-file");
    assertThat(only(TOP + cut + "{rounded: [9, 9, 5]}}]").kind()).isEqualTo("out-of-range");
    assertThat(only(TOP + cut + "circle}]").kind()).isEqualTo("bad-value");
  }

  @Test
  void outOfRange_tellsWhatWouldCure() {
    Problem p = only("hingeleaf: 1\nbase: {single-leaf: {width: 3 m}}\n".replace("3 m", "3000"));
    assertThat(p.origin()).isEqualTo("base.single-leaf.width");
    assertThat(p.numbers()).containsEntry("value", 3000.0).containsEntry("most", 1000.0);
    assertThat(p.wants()).containsExactly(new Want("base.single-leaf.width", 0, 1000));
  }

  @Test
  void nameTwice_isToldOverTheWholeDocument() {
    Problem p = only(TestForms.FAIR_WINDS.replace("name: boat", "name: sea"));
    assertThat(p.kind()).isEqualTo("name-twice");
    assertThat(p.message()).contains("`sea`").contains("line 19");
  }

  @Test
  void allFaults_areTold() {
    List<Problem> all =
        problems(
            TestForms.FAIR_WINDS
                .replace("width: 150", "width: 0")
                .replace("apperture", "aperture")
                .replace("aperture: {circle: 90}", "apperture: {circle: 90}")
                .replace("1/2 in]", "1/2 inn]"));
    assertThat(all)
        .extracting(Problem::kind)
        .containsExactly("out-of-range", "bad-length", "unknown-key");
    assertThat(all.get(2).message()).contains("did you mean `aperture`?").contains("a frame");
    assertThat(all.get(2).origin()).isEqualTo("base.stacked-frames.frames[0].apperture");
  }

  @Test
  void faults_comeInTheOrderOfTheText() {
    List<Problem> all =
        problems("words: [{text: a, on: b}]\nmats: 7\nhingeleaf: 1\ntitel: x\nbase: {}\n");
    assertThat(all)
        .extracting(p -> p.place() == null ? 0 : p.place().line())
        .containsExactly(1, 2, 4, 5);
  }

  @Test
  void endlessFaults_areCutOff() {
    assertThat(problems(TOP + "mats: [" + "{q: 1},".repeat(399) + "{q: 1}]")).hasSize(100);
    assertThat(only(TOP + "mats: [" + "1,".repeat(5000) + "1]").message()).contains("400");
  }

  @Test
  void fileKinds() {
    assertThat(FileKind.of(TreeTest.tree("panels: []"))).isEqualTo(FileKind.PANELS);
    assertThat(FileKind.of(TreeTest.tree("pieces: []"))).isEqualTo(FileKind.PIECES);
    assertThat(FileKind.of(TreeTest.tree("bench: 1"))).isEqualTo(FileKind.BENCH);
    assertThat(FileKind.of(TreeTest.tree("- a"))).isEqualTo(FileKind.OTHER);
    assertThat(only("bench: 1\n").message()).contains("expected a design").contains("a bench");
    assertThat(only("hingleaf: 1\n").message()).contains("did you mean `hingeleaf`?");
    assertThat(only("just text").message()).contains("`just text`");
    assertThat(only("hingeleaf: 2\nbase: {single-leaf: {width: 9}}\n").message())
        .contains("expected `1`");
  }

  @Test
  void values_guardAgainstMistakesOfTheProgram() {
    Values mat = document(TestForms.FAIR_WINDS).mats().get(0);
    assertThatThrownBy(() -> mat.length("colour")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> mat.length("stock")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> mat.length("width")).isInstanceOf(IllegalStateException.class);
  }
}
