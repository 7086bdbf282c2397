package hingeleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DecimalTest {
  /** Reference: the formatter of the Java library, in the root locale. */
  @Test
  void agreesWithTheLibrarysFormatter() {
    Random r = new Random(3);
    for (int i = 0; i < 2000; i++) {
      double value = (r.nextDouble() - 0.5) * Math.pow(10, r.nextInt(7));
      int places = r.nextInt(5);
      assertThat(Decimal.fixed(value, places))
          .isEqualTo(
              String.format(Locale.ROOT, "%." + places + "f", value)
                  .replaceAll("^-(0(\\.0*)?)$", "$1"));
    }
  }

  @Test
  void halvesGoAwayFromZero() {
    assertThat(Decimal.fixed(0.125, 2)).isEqualTo("0.13");
    assertThat(Decimal.fixed(-0.125, 2)).isEqualTo("-0.13");
    assertThat(Decimal.fixed(2.5, 0)).isEqualTo("3");
  }

  @Test
  void shortest_dropsZerosAndPoint() {
    assertThat(Decimal.shortest(2.5, 2)).isEqualTo("2.5");
    assertThat(Decimal.shortest(100, 2)).isEqualTo("100");
    assertThat(Decimal.shortest(0.001, 2)).isEqualTo("0");
    assertThat(Decimal.shortest(-0.001, 2)).isEqualTo("0");
  }

  @Test
  void whatIsNoNumberIsRefused() {
    assertThatThrownBy(() -> Decimal.fixed(Double.NaN, 1))
        .isInstanceOf(NumberFormatException.class);
  }
}
