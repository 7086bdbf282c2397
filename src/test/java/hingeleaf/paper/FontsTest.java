package hingeleaf.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.paper.Mark.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FontsTest {
  private static final Fonts FONTS = Samples.FONTS;

  @ParameterizedTest
  @CsvSource({
    "7 1/2 in, 7½ in",
    "1/4 in, ¼ in",
    "9 x 7 11/16, 9 x 7¹¹⁄₁₆",
    "3/64, ³⁄₆₄",
    "12-3/8, 12⅜",
    "page 1/3, page 1/3",
    "4/8, 4/8",
    "24/11/2026, 24/11/2026",
    "1/2/3, 1/2/3",
    "white 300 g/m², white 300 g/m²"
  })
  void set_fractions(String written, String set) {
    assertThat(FONTS.set(written)).isEqualTo(set);
  }

  @ParameterizedTest
  @CsvSource({"Kärtchen → ½, Kärtchen → ½", "a\uD83C\uDF41b, a□b", "漢字, □□", "Łódź, Łódź"})
  void set_signsThatTheFaceLacks(String written, String set) {
    assertThat(FONTS.set(written)).isEqualTo(set);
  }

  @Test
  void set_controlAndJoiners() {
    assertThat(FONTS.set("a\tb\u0007c")).isEqualTo("a b c");
    assertThat(FONTS.set("e\u0301te\u0301")).isEqualTo("été");
    // A family is four signs and three joiners: four boxes.
    assertThat(FONTS.set("\uD83D\uDC68\u200D\uD83D\uDC69\u200D\uD83D\uDC67\u200D\uD83D\uDC66"))
        .isEqualTo("□□□□");
    assertThat(FONTS.set("\uD800")).isEqualTo("□");
  }

  @Test
  void set_twice_changesNothing() {
    for (String s : new String[] {"7 1/2 in", "9 x 7 11/16", "a\uD83C\uDF41\t漢", "1 1/64"}) {
      assertThat(FONTS.set(FONTS.set(s))).isEqualTo(FONTS.set(s));
    }
  }

  @ParameterizedTest
  @EnumSource(Weight.class)
  void width_figuresAllHaveOne(Weight weight) {
    double one = FONTS.width("1", weight, 1);
    for (char c = '0'; c <= '9'; c++) {
      assertThat(FONTS.width(String.valueOf(c), weight, 1)).isEqualTo(one);
    }
  }

  // Source Sans 3 Regular 3.52 in its own horizontal metrics: figures 497, space 200 of 1000 units.
  @Test
  void width_isThatOfTheFace() {
    assertThat(FONTS.width("15 0", Weight.REGULAR, 10)).isCloseTo(3 * 4.97 + 2.0, within(1e-9));
  }

  @Test
  void outline_isAsLongAsItsWords() {
    var box = FONTS.outline("Hinge", Weight.SEMIBOLD).getBounds2D();
    assertThat(box.getMaxX()).isLessThanOrEqualTo(FONTS.width("Hinge", Weight.SEMIBOLD, 1));
    assertThat(box.getMaxX()).isGreaterThan(0.9 * FONTS.width("Hinge", Weight.SEMIBOLD, 1));
    assertThat(box.getMaxY()).isBetween(0.6, 0.8);
  }
}
