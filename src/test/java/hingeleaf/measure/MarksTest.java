package hingeleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class MarksTest {
  private static final Marks EIGHTHS = new Marks(Length.of(Rational.of(1, 8), Unit.IN));

  private static Length eighths(long top, long below) {
    return Length.of(Rational.of(top, below), Unit.IN);
  }

  @Test
  void exactMarks() {
    assertThat(EIGHTHS.down(eighths(5, 16))).isEqualTo(eighths(1, 4));
    assertThat(EIGHTHS.up(eighths(5, 16))).isEqualTo(eighths(3, 8));
    assertThat(EIGHTHS.nearest(eighths(5, 16))).isEqualTo(eighths(3, 8));
    assertThat(EIGHTHS.nearest(eighths(9, 32))).isEqualTo(eighths(1, 4));
    assertThat(EIGHTHS.up(eighths(1, 2))).isEqualTo(eighths(1, 2));
    assertThat(EIGHTHS.down(eighths(-5, 16))).isEqualTo(eighths(-3, 8));
  }

  @Test
  void marksInMillimetres_forgiveRoundingErrors() {
    assertThat(EIGHTHS.on(12.7)).isTrue();
    assertThat(EIGHTHS.on(3.175 * 3 + 1e-9)).isTrue();
    assertThat(EIGHTHS.on(12)).isFalse();
    assertThat(EIGHTHS.down(12.7 - 1e-9)).isCloseTo(12.7, within(1e-9));
    assertThat(EIGHTHS.up(12.7 + 1e-9)).isCloseTo(12.7, within(1e-9));
    assertThat(EIGHTHS.nearest(12.0)).isCloseTo(12.7, within(1e-9));
    assertThat(EIGHTHS.down(12.0)).isCloseTo(9.525, within(1e-9));
  }

  @Test
  void noStep_isRefused() {
    assertThatThrownBy(() -> new Marks(Length.ZERO)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void nearestWord() {
    List<String> keys = List.of("aperture", "name", "frames", "side", "stock");
    assertThat(NearestWord.to("apperture", keys)).contains("aperture");
    assertThat(NearestWord.to("Aperture", keys)).contains("aperture");
    assertThat(NearestWord.to("sied", keys)).contains("side");
    assertThat(NearestWord.to("frmes", keys)).contains("frames");
    assertThat(NearestWord.to("colour", keys)).isEmpty();
    assertThat(NearestWord.to("", keys)).isEmpty();
    assertThat(NearestWord.to("x".repeat(100_000), keys)).isEmpty();
    // Kukich, Techniques for Automatically Correcting Words in Text (1992): one swap is one error
    assertThat(NearestWord.distance("teh", "the")).isEqualTo(1);
    // the usual worked example of Levenshtein distance
    assertThat(NearestWord.distance("kitten", "sitting")).isEqualTo(3);
  }
}
