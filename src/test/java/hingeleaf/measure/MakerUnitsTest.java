package hingeleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MakerUnitsTest {
  private static final MakerUnits INCHES = MakerUnits.of(Unit.IN);
  private static final MakerUnits MM = MakerUnits.of(Unit.MM);
  private static final MakerUnits CM = MakerUnits.of(Unit.CM);

  /** Steps worked by hand: 1/16 in = 1.5875 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "190.5|7 1/2 in",
        "177.8|7 in",
        "12.7|1/2 in",
        "0|0 in",
        "-12.7|-1/2 in",
        "144.0625|about 5 11/16 in (0.016 in less)",
        "144.5|about 5 11/16 in (0.001 in more)",
        "150|about 5 7/8 in (0.031 in more)",
        "0.356|about 0 in (0.014 in more)",
        "190.5000001|7 1/2 in",
        "190.5001|about 7 1/2 in (under 0.001 in more)"
      })
  void text_inches(double mm, String expected) {
    assertThat(INCHES.text(mm)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "185|185 mm",
        "185.5|185.5 mm",
        "64.65|about 64.5 mm (0.15 mm more)",
        "177.8|about 178 mm (0.2 mm less)",
        "185.25|about 185.5 mm (0.25 mm less)",
        "-8|-8 mm"
      })
  void text_millimetres(double mm, String expected) {
    assertThat(MM.text(mm)).isEqualTo(expected);
  }

  @Test
  void text_centimetres() {
    assertThat(CM.text(185)).isEqualTo("18.5 cm");
    assertThat(CM.text(185.5)).isEqualTo("18.55 cm");
    assertThat(CM.text(100)).isEqualTo("10 cm");
  }

  @Test
  void sizesAndFineLengths() {
    assertThat(MM.size(198, 150)).isEqualTo("198 x 150 mm");
    assertThat(INCHES.size(228.6, 177.8)).isEqualTo("9 x 7 in");
    assertThat(INCHES.size(150, 177.8)).isEqualTo("about 5 7/8 x 7 in");
    assertThat(MM.fine(0.3556)).isEqualTo("0.36 mm");
    assertThat(INCHES.fine(0.3556)).isEqualTo("0.014 in"); // 14 pt = 0.014 in
  }

  /** What is printed can be read again and lies within half a step of the truth; seed 3. */
  @Test
  void number_readsBackWithinHalfAStep() {
    Random random = new Random(3);
    for (MakerUnits units : List.of(INCHES, MM, CM)) {
      for (int i = 0; i < 2000; i++) {
        double mm = random.nextDouble() * 400;
        Reading back = Length.read(units.rounded(mm), Unit.MM);
        assertThat(back).isInstanceOf(Reading.Read.class);
        double again = ((Reading.Read) back).length().mm();
        assertThat(Math.abs(again - mm)).isLessThanOrEqualTo(units.step().mm() / 2 + 1e-6);
      }
    }
  }

  @Test
  void text_refusesWhatIsNoLength() {
    assertThatThrownBy(() -> MM.text(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
  }
}
