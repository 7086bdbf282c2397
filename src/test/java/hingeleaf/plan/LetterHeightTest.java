package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Capital heights by NUREG-0700 (1.3.1-4), worked out to a micrometre for three distances. */
class LetterHeightTest {
  @ParameterizedTest
  @CsvSource({
    "300, 5, 0.436",
    "300, 16, 1.396",
    "300, 20, 1.745",
    "300, 24, 2.094",
    "400, 5, 0.582",
    "400, 10, 1.164",
    "400, 16, 1.862",
    "400, 20, 2.327",
    "400, 22, 2.560",
    "500, 10, 1.454",
    "500, 16, 2.327",
    "500, 22, 3.200",
    "500, 24, 3.491"
  })
  void agreesWithTheTable(double distance, double minutes, double height) {
    assertThat(LetterHeight.of(distance, minutes)).isEqualTo(height, Offset.offset(0.0006));
  }

  @ParameterizedTest
  @CsvSource({"300, 1.5", "400, 2", "500, 2.5"})
  void sixteenToTwentyFourMinutesHoldTheRuleOfThumb(double distance, double twoHundredth) {
    // Federal Aviation Administration, Human Factors Design Standard: distance / 200
    assertThat(twoHundredth)
        .isBetween(LetterHeight.of(distance, 16), LetterHeight.of(distance, 24));
  }
}
