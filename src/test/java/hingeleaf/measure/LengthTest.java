package hingeleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
  private static Length read(String text, Unit bare) {
    Reading reading = Length.read(text, bare);
    if (reading instanceof Reading.Read r) {
      return r.length();
    }
    return fail(text + " was not read: " + reading);
  }

  private static Reading.Fault fault(String text) {
    Reading reading = Length.read(text, Unit.MM);
    if (reading instanceof Reading.Fault f) {
      return f;
    }
    return fail(text + " was read: " + reading);
  }

  /**
   * Expected numbers by hand from 1 in = 25.4 mm exactly (agreement of six national standards
   * laboratories, 1 July 1959; Federal Register 24 FR 5348) and 1 ft = 12 in.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "7|7",
        "7 in|177.8",
        "7 1/2\"|190.5",
        "7½ in|190.5",
        "7 ½ in|190.5",
        "7-1/2 in|190.5",
        "7 - 1/2 in|190.5",
        "18.5 cm|185",
        "185mm|185",
        "185 MM|185",
        "1' 2\"|355.6",
        "1'2\"|355.6",
        "1 ft 2 in|355.6",
        "1 ft 2|355.6",
        "1 foot 2 1/2 inches|368.3",
        "2 ft|609.6",
        "1 in.|25.4",
        "1 inch|25.4",
        "½\"|12.7",
        "3/8 in|9.525",
        "3/8|0.375",
        "5⁄16″|7.9375",
        "1′ 2″|355.6",
        "0,5 cm|5",
        "0.5|0.5",
        ".5|0.5",
        "1/64 in|0.396875",
        "-8|-8",
        "−8 mm|-8",
        "- 1/2 in|-12.7",
        "+3|3",
        "0|0",
        "10000|10000",
        "1''|25.4",
        "0,125 in|3.175",
        "12,5|12.5"
      })
  void read_asPeopleWrite(String text, double mm) {
    assertThat(read(text, Unit.MM).mm()).isEqualTo(mm);
  }

  @Test
  void read_bareNumbersTakeTheUnitGiven() {
    assertThat(read("7 1/2", Unit.IN).mm()).isEqualTo(190.5);
    assertThat(read("18.5", Unit.CM).mm()).isEqualTo(185);
    assertThat(read("7 1/2 mm", Unit.IN).mm()).isEqualTo(7.5);
  }

  @Test
  void read_isExact() {
    assertThat(read("1/3 in", Unit.MM).times(3)).isEqualTo(Length.of(1, Unit.IN));
    assertThat(read("0.1", Unit.MM).times(10)).isEqualTo(Length.of(1, Unit.MM));
    assertThat(read("0.1", Unit.MM).plus(read("0.2", Unit.MM))).isEqualTo(read("0.3", Unit.MM));
    assertThat(read("1/64 in", Unit.MM).inMm()).isEqualTo(Rational.of(396_875, 1_000_000));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "NaN",
        "Infinity",
        "-inf",
        "1e309",
        "1e999999999",
        "1E5",
        "1e-3 in",
        "abc",
        "7 x 5",
        "7/0",
        "7 1/0 in",
        "7 9/8 in",
        "1.2.3",
        "1,234",
        "10 km",
        "1 m",
        "7 in 3",
        "1' 2 cm",
        "--5",
        "5-",
        "1234567890123",
        "0.1234567890123",
        "10001",
        "400 in",
        "0x10",
        "1_000",
        "½½",
        "1/2/3",
        "7 1/2 1/2",
        "٣ km",
        "5 %",
        "'",
        "\"",
        "1 ft -2 in"
      })
  void read_refusesWithASentence(String text) {
    Reading.Fault fault = fault(text);
    assertThat(fault.message()).isNotBlank().doesNotContain("Exception");
    assertThat(fault.message().toLowerCase(Locale.ROOT)).doesNotContain("null");
  }

  @Test
  void read_saysWhatIsWrong() {
    assertThat(fault("1e309").message()).contains("`1e309`").contains("exponent");
    assertThat(fault("10 km").sentence()).contains("unknown unit `km`").contains("did you mean");
    assertThat(fault("5 inchs").suggestion()).isEqualTo("inch");
    assertThat(fault("5 milimetres").suggestion()).isEqualTo("millimetres");
    assertThat(fault("1,234").message()).contains("1234").contains("1.234");
    assertThat(fault("7 1/0 in").message()).contains("0 below the line");
    assertThat(fault("1234567890123").message()).contains("12 digits");
    assertThat(fault("20000").message()).contains("10 m");
  }

  @Test
  void read_refusesALongTextAtOnce() {
    assertThat(fault("9".repeat(1_000_000)).message()).contains("too long");
    assertThat(fault("1 ".repeat(29) + "/").message()).isNotBlank();
  }

  /** Texts made of the very signs that lengths are made of; seed 11. */
  @Test
  void read_neverThrows() {
    String signs = "0123456789 ./,-'\"½⅞inftmce+′e";
    Random random = new Random(11);
    int readable = 0;
    for (int i = 0; i < 50_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(9); n >= 0; n--) {
        text.append(signs.charAt(random.nextInt(signs.length())));
      }
      if (Length.read(text.toString(), Unit.MM) instanceof Reading.Read r) {
        readable++;
        assertThat(Math.abs(r.length().mm())).isLessThanOrEqualTo(10_000);
      }
    }
    assertThat(readable).isGreaterThan(500);
  }

  /** CSS Values and Units Module, absolute lengths: 1 in = 2.54 cm = 25.4 mm. */
  @Test
  void units_agreeWithTheOpenStandard() {
    assertThat(Length.of(1, Unit.IN)).isEqualTo(read("2.54 cm", Unit.MM));
    assertThat(Length.of(1, Unit.IN)).isEqualTo(read("25.4 mm", Unit.MM));
    assertThat(read("1/72 in", Unit.MM).times(72)).isEqualTo(Length.of(1, Unit.IN));
    assertThat(read("8 1/2 in", Unit.MM).mm()).isEqualTo(215.9); // ANSI/ASME Y14.1 size A
    assertThat(read("11 in", Unit.MM).mm()).isEqualTo(279.4);
  }
}
