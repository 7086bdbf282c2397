package hingeleaf.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingeleaf.sheet.Grain;
import hingeleaf.sheet.SheetJob;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetJobReaderTest {

  private static String job(String unit, String stock, String piece) {
    return "{\"unit\":\"" + unit + "\",\n\"stock\":[" + stock + "],\n\"pieces\":[" + piece + "]}";
  }

  @Test
  void readsSizesExactly() throws UnreadableJobException {
    SheetJob job =
        SheetJobReader.read(
            job(
                "in",
                "{\"w\":12,\"h\":8.5,\"price\":0.35,\"qty\":3,\"grain\":\"h\"}",
                "{\"name\":\"tag\",\"w\":0.015625,\"h\":2.1e0,\"qty\":7,\"rotate\":false}"));
    assertThat(job.stock().get(0).w()).isEqualTo(304_800_000);
    assertThat(job.stock().get(0).h()).isEqualTo(215_900_000);
    assertThat(job.stock().get(0).price()).isEqualTo(350_000);
    assertThat(job.stock().get(0).most()).isEqualTo(3);
    assertThat(job.stock().get(0).grain()).isEqualTo(Grain.H);
    assertThat(job.pieces().get(0).w()).isEqualTo(396_875);
    assertThat(job.pieces().get(0).h()).isEqualTo(53_340_000);
    assertThat(job.pieces().get(0).rotate()).isFalse();
    assertThat(job.pieces().get(0).quantity()).isEqualTo(7);
  }

  @Test
  void readsTheTrimmer() throws UnreadableJobException {
    SheetJob job =
        SheetJobReader.read(
            "{\"unit\":\"cm\",\"trimmer\":{\"longest\":31,\"step\":0.1},\"least_strip\":0.5,"
                + "\"stock\":[{\"w\":21,\"h\":29.7,\"qty\":null}],\"pieces\":[{\"w\":1,\"h\":1}]}");
    assertThat(job.trimmer().longest()).isEqualTo(310_000_000);
    assertThat(job.trimmer().step()).isEqualTo(1_000_000);
    assertThat(job.trimmer().leastStrip()).isEqualTo(5_000_000);
    assertThat(job.stock().get(0).quantity()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{\"w\":0,\"h\":5}|w must be above zero, found 0",
        "{\"w\":-2,\"h\":5}|w must be above zero, found -2",
        "{\"w\":NaN,\"h\":5}|not JSON",
        "{\"w\":\"NaN\",\"h\":5}|w is a number, found a text NaN",
        "{\"w\":\"2in\",\"h\":5}|units do not mix",
        "{\"w\":2}|\"h\" is missing",
        "{\"w\":2,\"h\":5,\"qty\":0}|a quantity of pieces is a whole number from 1, found 0",
        "{\"w\":2,\"h\":5,\"qty\":1.5}|the quantity is a whole number, found 1.5",
        "{\"w\":2,\"h\":5,\"qty\":1e999999999}|the quantity is",
        "{\"w\":1e300,\"h\":5}|w is",
        "{\"w\":1e9,\"h\":5}|above 100 m",
        "{\"w\":2,\"h\":5,\"turn\":true}|\"turn\" is not known in a piece",
        "{\"w\":2,\"h\":5,\"grain\":\"x\"}|the grain is",
        "{\"w\":2,\"w\":3,\"h\":5}|not JSON",
        "7|a piece is an object, found a number 7"
      })
  void saysWhereAndWhatIsWrong(String piece, String sentence) {
    assertThatThrownBy(() -> SheetJobReader.read(job("mm", "{\"w\":10,\"h\":10}", piece)))
        .isInstanceOf(UnreadableJobException.class)
        .hasMessageStartingWith("line 3, column ")
        .hasMessageContaining(sentence);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "~~|the file is empty",
        "[]|a sheet job is an object",
        "{}|the unit is missing",
        "{\"unit\":\"mm\"}|\"stock\" is missing",
        "{\"unit\":\"pt\"}|the unit is one of mm, cm, in",
        "{\"unit\":\"mm\",\"stock\":[{\"w\":1,\"h\":1,\"price\":1},{\"w\":1,\"h\":1}],\"pieces\":[]}|no"
            + " price",
        "{\"unit\":\"mm\" |this is not JSON"
      })
  void refusesWhatIsNoJob(String text, String sentence) {
    assertThatThrownBy(() -> SheetJobReader.read(text))
        .isInstanceOf(UnreadableJobException.class)
        .hasMessageContaining(sentence);
  }

  @Test
  void refusesEndlessNesting() {
    String deep = "{\"unit\":" + "[".repeat(5000) + "]".repeat(5000) + "}";
    assertThatThrownBy(() -> SheetJobReader.read(deep)).isInstanceOf(UnreadableJobException.class);
  }
}
