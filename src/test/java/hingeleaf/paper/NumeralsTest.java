package hingeleaf.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumeralsTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "-0.00004, 0",
    "198, 198",
    "12.5, 12.5",
    "0.1, 0.1",
    "-3.0625, -3.0625",
    "1e-4, 0.0001",
    "0.00995, 0.01",
    "25.4, 25.4",
    "100.03, 100.03",
    "123456.789, 123456.789"
  })
  void of_knownValues(double value, String text) {
    assertThat(Numerals.of(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e9})
  void of_noLength_isRefused(double value) {
    assertThatThrownBy(() -> Numerals.of(value)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void of_readBack_isWithinHalfAStep() {
    Random random = new Random(7);
    for (int i = 0; i < 5000; i++) {
      double v = (random.nextDouble() - 0.5) * 2000;
      assertThat(Double.parseDouble(Numerals.of(v))).isCloseTo(v, within(0.500001e-4));
    }
  }
}
