package hingeleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BasisWeightTest {
  /** Whole g/m2 of cover stock as printers' conversion tables print them, to half a unit. */
  @ParameterizedTest
  @CsvSource({"65,176", "80,216", "90,243", "100,270", "110,297.5", "130,351.5"})
  void cover_matchesPrintedTables(double pounds, double grammage) {
    assertThat(BasisWeight.COVER.grammage(pounds)).isCloseTo(grammage, within(0.5));
  }

  /**
   * Factors from the definition, worked by hand: 453.59237 g / (500 x w x h x 0.00064516 m2).
   * Printed conversion tables agree to their last digit, but for cover, where some print 2.708.
   */
  @ParameterizedTest
  @CsvSource({
    "COVER,2.7041",
    "TEXT,1.4801",
    "BOND,3.7597",
    "INDEX,1.8080",
    "TAG,1.6275",
    "BRISTOL,2.1928"
  })
  void onePound_isTheBasisFactor(BasisWeight basis, double factor) {
    assertThat(basis.grammage(1)).isCloseTo(factor, within(5e-5));
  }

  /** Envelope makers' table: 20, 24, 28 lb bond papers are sold as 75, 90, 105 g/m2. */
  @ParameterizedTest
  @CsvSource({"20,75", "24,90", "28,105"})
  void bond_matchesEnvelopePapers(double pounds, double grammage) {
    assertThat(BasisWeight.BOND.grammage(pounds)).isCloseTo(grammage, within(0.5));
  }

  @ParameterizedTest
  @EnumSource
  void pounds_undoGrammage(BasisWeight basis) {
    assertThat(basis.pounds(basis.grammage(80))).isCloseTo(80, within(1e-12));
  }
}
