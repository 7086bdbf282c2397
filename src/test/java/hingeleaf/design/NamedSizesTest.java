package hingeleaf.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamedSizesTest {
  private static void check(NamedSizes.Size size, double width, double height, double tolerance) {
    assertThat(size.width().mm()).isCloseTo(width, within(tolerance));
    assertThat(size.height().mm()).isCloseTo(height, within(tolerance));
  }

  /**
   * ISO 216:2007: A0 is 841 x 1189 mm, B0 1000 x 1414 mm; ISO 269:1985: C0 is 917 x 1297 mm; the
   * next size is half of it across the long side, fractions of a millimetre dropped.
   */
  @ParameterizedTest
  @CsvSource({
    "A, 841, 1189, 2, 5, false",
    "B, 1000, 1414, 3, 5, false",
    "B, 1000, 1414, 4, 6, true",
    "C, 917, 1297, 3, 7, true"
  })
  void isoSizes_areHalvesOfTheLastLarger(
      String series, int width, int height, int first, int last, boolean envelope) {
    int w = width;
    int h = height;
    for (int n = 1; n <= last; n++) {
      int half = h / 2;
      h = w;
      w = half;
      if (n >= first) {
        NamedSizes sizes = envelope ? NamedSizes.ENVELOPES : NamedSizes.SHEETS;
        NamedSizes.Size size = sizes.get(series + n).orElseThrow();
        check(size, envelope ? h : w, envelope ? w : h, 0);
      }
    }
  }

  /** ISO 269:1985 (DL, C6/C5, C7/C6) and DIN 678-1 (E4). */
  @ParameterizedTest
  @CsvSource({"DL, 220, 110", "C6/C5, 229, 114", "C7/C6, 162, 81", "E4, 400, 280"})
  void otherIsoEnvelopes(String name, double width, double height) {
    check(NamedSizes.ENVELOPES.get(name).orElseThrow(), width, height, 0);
  }

  /** ANSI/ASME Y14.1: A is 8.5 x 11 in, B is 11 x 17 in; legal 8.5 x 14 in. */
  @ParameterizedTest
  @CsvSource({"letter, 8.5, 11", "tabloid, 11, 17", "legal, 8.5, 14", "12x12, 12, 12"})
  void usSheets(String name, double width, double height) {
    check(NamedSizes.SHEETS.get(name).orElseThrow(), width * 25.4, height * 25.4, 1e-9);
  }

  /** Common practice: the US trade's announcement envelopes, in inches. */
  @ParameterizedTest
  @CsvSource({
    "US-A1, 5.125, 3.625", "US-A2, 5.75, 4.375", "US-A6, 6.5, 4.75", "US-A7, 7.25, 5.25",
    "US-A8, 8.125, 5.5", "US-A9, 8.75, 5.75", "US-A10, 9.5, 6", "US-slimline, 8.875, 3.875",
    "US-10, 9.5, 4.125", "US-6in, 6, 6"
  })
  void usEnvelopes(String name, double width, double height) {
    check(NamedSizes.ENVELOPES.get(name).orElseThrow(), width * 25.4, height * 25.4, 1e-9);
  }

  @Test
  void noName_standsForTwoSizes() {
    assertThat(NamedSizes.ENVELOPES.get("A7")).isEmpty();
    assertThat(NamedSizes.SHEETS.names()).doesNotHaveDuplicates().contains("A4", "letter");
  }
}
