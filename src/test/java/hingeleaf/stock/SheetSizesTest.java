package hingeleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetSizesTest {
  /** ISO 216:2007, trimmed sizes of the A and B series; ISO 269:1985, C series. In mm. */
  @ParameterizedTest
  @CsvSource({
    "A0,841,1189",
    "A1,594,841",
    "A2,420,594",
    "A3,297,420",
    "A4,210,297",
    "A5,148,210",
    "A6,105,148",
    "A7,74,105",
    "A8,52,74",
    "A9,37,52",
    "A10,26,37",
    "B0,1000,1414",
    "B1,707,1000",
    "B2,500,707",
    "B3,353,500",
    "B4,250,353",
    "B5,176,250",
    "B6,125,176",
    "B7,88,125",
    "B8,62,88",
    "B9,44,62",
    "B10,31,44",
    "C0,917,1297",
    "C1,648,917",
    "C2,458,648",
    "C3,324,458",
    "C4,229,324",
    "C5,162,229",
    "C6,114,162",
    "C7,81,114",
    "C8,57,81",
    "C9,40,57",
    "C10,28,40"
  })
  void isoSeries_matchThePublishedTable(String name, double width, double height) {
    SheetSizes.Size size = SheetSizes.named(name).orElseThrow();
    assertThat(size.width()).isEqualTo(width);
    assertThat(size.height()).isEqualTo(height);
  }

  /** ANSI/ASME Y14.1, inches; letter and legal as sold. */
  @ParameterizedTest
  @CsvSource({
    "letter,8.5,11",
    "legal,8.5,14",
    "ANSI A,8.5,11",
    "ANSI B,11,17",
    "ANSI C,17,22",
    "ANSI D,22,34",
    "ANSI E,34,44",
    "half letter,5.5,8.5"
  })
  void usSizes_areTheirInches(String name, double width, double height) {
    SheetSizes.Size size = SheetSizes.named(name).orElseThrow();
    assertThat(size.width() / 25.4).isCloseTo(width, within(1e-12));
    assertThat(size.height() / 25.4).isCloseTo(height, within(1e-12));
  }

  /** ISO 216: two sheets side by side make the next larger, within 1 mm of dropped fractions. */
  @ParameterizedTest
  @ValueSource(strings = {"A", "B", "C"})
  void halves_makeTheNextLarger(String letter) {
    for (int i = 1; i <= 10; i++) {
      SheetSizes.Size small = SheetSizes.named(letter + i).orElseThrow();
      SheetSizes.Size large = SheetSizes.named(letter + (i - 1)).orElseThrow();
      assertThat(small.height()).isEqualTo(large.width());
      assertThat(large.height() - 2 * small.width()).isBetween(0.0, 1.0);
    }
  }

  /** ISO 216:2007, tolerances. */
  @ParameterizedTest
  @CsvSource({"148,1.5", "150,1.5", "150.1,2", "600,2", "600.1,3", "1189,3"})
  void tolerance_stepsWithTheSide(double side, double expected) {
    assertThat(SheetSizes.tolerance(side)).isEqualTo(expected);
  }

  @Test
  void named_forgivesCaseAndSpaces() {
    assertThat(SheetSizes.named("a4")).isEqualTo(SheetSizes.named("A4")).isPresent();
    assertThat(SheetSizes.named("12x12in").orElseThrow().width()).isEqualTo(12 * 25.4);
    assertThat(SheetSizes.named("A11")).isEmpty();
    assertThat(SheetSizes.named("")).isEmpty();
  }
}
