package hingeleaf.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
  /** What binary fractions and 34 decimal digits both get wrong. */
  @Test
  void thirdsMakeAWhole() {
    Money third = Money.of("1").dividedBy(3);
    assertThat(third.plus(third).plus(third)).isEqualTo(Money.of("1.00"));
    assertThat(Money.of("0.1").plus(Money.of("0.2"))).isEqualTo(Money.of("0.3"));
  }

  @ParameterizedTest
  @CsvSource({
    "0.005,2,0.01",
    "0.0049,2,0.00",
    "2.675,2,2.68",
    "1.005,2,1.01",
    "-0.005,2,-0.01",
    "1234.5,0,1235",
    "0,2,0.00"
  })
  void rounded_roundsHalvesUp(String amount, int digits, BigDecimal expected) {
    assertThat(Money.of(amount).rounded(digits)).isEqualTo(expected);
  }

  @Test
  void plusAndMinus_undoEachOther() {
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      Money a = Money.of(BigDecimal.valueOf(random.nextInt(100000), 2)).dividedBy(7);
      Money b = Money.of(BigDecimal.valueOf(random.nextInt(100000), 3)).dividedBy(11);
      assertThat(a.plus(b).minus(b)).isEqualTo(a);
      BigDecimal factor = BigDecimal.valueOf(1 + random.nextInt(999), 2);
      assertThat(a.times(factor).dividedBy(factor)).isEqualTo(a);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e999999999", "1e31", "1e-31", "-1e-999999999"})
  void hugeNumbers_areRefusedAtOnce(String amount) {
    assertThatIllegalArgumentException().isThrownBy(() -> Money.of(amount));
  }

  @Test
  void largeExponents_areExact() {
    assertThat(Money.of("1e3")).isEqualTo(Money.of("1000"));
    assertThat(Money.of("1.50")).isEqualTo(Money.of("1.5"));
  }

  @Test
  void sharingAmongNobody_isRefused() {
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(() -> Money.of("1").dividedBy(0));
  }
}
