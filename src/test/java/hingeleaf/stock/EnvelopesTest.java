package hingeleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnvelopesTest {
  /** ISO 269:1985, DIN 678-1:1998, DIN 680; mm. */
  @ParameterizedTest
  @CsvSource({
    "ISO C3,458,324", "ISO C4,324,229", "ISO C5,229,162", "ISO C6,162,114", "ISO C6/C5,229,114",
    "ISO DL,220,110", "ISO C7/C6,162,81", "ISO B4,353,250", "ISO B5,250,176", "ISO B6,176,125",
    "ISO E4,400,280"
  })
  void isoSizes_matchTheStandard(String name, double width, double height) {
    Envelope envelope = Envelopes.named(name).orElseThrow();
    assertThat(envelope.width()).isEqualTo(width);
    assertThat(envelope.height()).isEqualTo(height);
  }

  /** US envelope trade sizes, inches and the mm that trade tables print beside them. */
  @ParameterizedTest
  @CsvSource({
    "US A1,5.125,3.625,130.2,92.1", "US A2,5.75,4.375,146.1,111.1", "US A6,6.5,4.75,165.1,120.7",
    "US A7,7.25,5.25,184.2,133.4", "US A8,8.125,5.5,206.4,139.7", "US A9,8.75,5.75,222.3,146.1",
    "US A10,9.5,6,241.3,152.4", "US Slimline,8.875,3.875,225.4,98.4", "US #10,9.5,4.125,241.3,104.8"
  })
  void usSizes_matchTheTrade(String name, double w, double h, double wMm, double hMm) {
    Envelope envelope = Envelopes.named(name).orElseThrow();
    assertThat(envelope.width() / 25.4).isCloseTo(w, within(1e-9));
    assertThat(envelope.height() / 25.4).isCloseTo(h, within(1e-9));
    assertThat(envelope.width()).isCloseTo(wMm, within(0.051));
    assertThat(envelope.height()).isCloseTo(hMm, within(0.051));
  }

  @Test
  void names_sayTheirFamily_andAreUnique() {
    assertThat(Envelopes.standard()).extracting(Envelope::name).doesNotHaveDuplicates();
    assertThat(Envelopes.standard()).allMatch(e -> e.name().matches("(ISO|US) .+"));
    assertThat(Envelopes.named("A7")).isEmpty();
  }

  @Test
  void longerSide_isTheWidth() {
    Envelope envelope = new Envelope("mine", 100, 150, 0, 0);
    assertThat(envelope.width()).isEqualTo(150);
    assertThat(envelope.height()).isEqualTo(100);
  }
}
