package hingeleaf.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.stock.Envelope;
import hingeleaf.stock.Envelopes;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnvelopeFitTest {
  private static final Packing SNUG = Packing.usual();
  private static final Packing EASY = Packing.usual().with(Packing.Fit.EASY);

  /** Largest usual inserts of US envelopes in inches, as the envelope trade publishes them. */
  @ParameterizedTest
  @CsvSource({
    "US A1,4.875,3.5",
    "US A2,5.5,4.25",
    "US 5 Bar,5.375,3.875",
    "US A6,6.25,4.5",
    "US A7,7,5",
    "US A8,7.875,5.25",
    "US A9,8.5,5.5",
    "US A10,9.25,5.75",
    "US Slimline,8.625,3.625",
    "US #10,9.25,3.875"
  })
  void publishedInsert_goesInSnugly(String name, double width, double height) {
    Parcel insert = thin(width * 25.4, height * 25.4);
    Envelope envelope = Envelopes.named(name).orElseThrow();
    assertThat(EnvelopeFit.fitting(insert, List.of(envelope), SNUG)).hasSize(1);
    Parcel larger = thin(width * 25.4 + 3.2, height * 25.4 + 3.2);
    assertThat(EnvelopeFit.fitting(larger, List.of(envelope), EASY)).isEmpty();
  }

  /** A sheet of one ISO size goes into the envelope of the C size of its number (ISO 269). */
  @ParameterizedTest
  @CsvSource({"148,105,ISO C6", "210,148,ISO C5", "210,99,ISO DL", "297,210,ISO C4"})
  void isoCards_goIntoTheirEnvelope(double width, double height, String name) {
    Wrap wrap = EnvelopeFit.smallest(thin(width, height), Envelopes.iso(), SNUG, 1);
    assertThat(wrap).isInstanceOf(Wrap.Bought.class);
    assertThat(((Wrap.Bought) wrap).envelope().name()).isEqualTo(name);
  }

  /** 150 x 100 x 2 mm unpressed: snug needs 155 x 105, easy 158 x 108. */
  @ParameterizedTest
  @CsvSource({"155,105,1,0", "154.9,105,0,0", "155,104.9,0,0", "158,108,1,1", "157.9,108,1,0"})
  void roomIsThicknessAndClearance(double w, double h, int snug, int easy) {
    Parcel card = Parcel.flat(150, 100, 2 / 1.4, 2 / 1.4, 0, 10);
    List<Envelope> envelope = List.of(new Envelope("e", w, h, 0, 0));
    assertThat(EnvelopeFit.fitting(card, envelope, SNUG)).hasSize(snug);
    assertThat(EnvelopeFit.fitting(card, envelope, EASY)).hasSize(easy);
  }

  @Test
  void eitherWayRound_isTheSame() {
    assertThat(EnvelopeFit.fitting(thin(105, 148), Envelopes.iso(), SNUG))
        .isEqualTo(EnvelopeFit.fitting(thin(148, 105), Envelopes.iso(), SNUG))
        .isNotEmpty();
  }

  @Test
  void noneFits_givesOneToMake() {
    Wrap wrap = EnvelopeFit.smallest(thin(460, 300), Envelopes.iso(), SNUG, 1);
    assertThat(wrap).isInstanceOf(Wrap.Made.class);
    MadeEnvelope made = ((Wrap.Made) wrap).envelope();
    // 460 + 0.14 + 3 and 300 + 0.14 + 3, up to whole mm
    assertThat(made.width()).isEqualTo(464);
    assertThat(made.height()).isEqualTo(304);
  }

  /** Far too large is no fit: a card that slides about arrives with broken corners. */
  @Test
  void muchTooLarge_isNotChosen() {
    List<Envelope> only = List.of(new Envelope("huge", 324, 229, 0, 0));
    assertThat(EnvelopeFit.smallest(thin(148, 105), only, SNUG, 1)).isInstanceOf(Wrap.Made.class);
    assertThat(EnvelopeFit.fitting(thin(148, 105), only, SNUG)).hasSize(1);
  }

  /** Inch makers measure in sixteenths: 7 3/16 x 5 3/16 in for a box of 7 x 5 x 1/16 in. */
  @Test
  void madeEnvelope_isOfWholeMarks() {
    double inch = 25.4;
    Parcel card = Parcel.boxed(7 * inch, 5 * inch, inch / 16, 10);
    MadeEnvelope made = MadeEnvelope.around(card, SNUG, inch / 16);
    // 3 mm + 1/16 in = 4.5875 mm = 2.89 sixteenths, so 3 sixteenths
    assertThat(made.width() / inch).isCloseTo(7 + 3 / 16.0, within(1e-9));
    assertThat(made.height() / inch).isCloseTo(5 + 3 / 16.0, within(1e-9));
  }

  /**
   * From memory: the sheet of an envelope with flap and seams is 2.3 to 2.6 faces (bought ones).
   */
  @Test
  void madeEnvelope_usesAboutAsMuchPaperAsABoughtOne() {
    MadeEnvelope c6 = new MadeEnvelope(162, 114, 46, 15);
    assertThat(c6.sheetWidth()).isEqualTo(192);
    assertThat(c6.sheetHeight()).isEqualTo(274);
    assertThat(c6.area()).isEqualTo(162 * 274 + 2 * 15 * 114);
    assertThat(c6.area() / (162 * 114)).isBetween(2.3, 2.65);
  }

  /** Common practice, from memory: C6 at 100 g/m2 weighs 4.2 to 4.8 g, C5 8.5 to 9.6 g. */
  @ParameterizedTest
  @CsvSource({"ISO C6,4.2,4.8", "ISO C5,8.5,9.6"})
  void envelopeMass_isAsUsual(String name, double least, double most) {
    Envelope envelope = Envelopes.named(name).orElseThrow();
    assertThat(EnvelopeMass.of(envelope, SNUG)).isBetween(least, most);
  }

  @Test
  void weighedEnvelope_isBelieved() {
    assertThat(EnvelopeMass.of(new Envelope("e", 162, 114, 5.1, 0), SNUG)).isEqualTo(5.1);
  }

  /** Every envelope offered holds the card with its room; every one left out does not. */
  @Test
  void fitting_agreesWithTheDefinition() {
    Random random = new Random(5);
    for (int i = 0; i < 500; i++) {
      double rigid = random.nextDouble() * 8;
      Parcel card =
          Parcel.flat(
              60 + random.nextDouble() * 300, 60 + random.nextDouble() * 200, 0, rigid, 0, 10);
      double room = 1.4 * rigid + 3;
      double w = Math.max(card.width(), card.height()) + room;
      double h = Math.min(card.width(), card.height()) + room;
      List<Envelope> expected =
          Envelopes.standard().stream().filter(e -> e.width() >= w && e.height() >= h).toList();
      assertThat(EnvelopeFit.fitting(card, Envelopes.standard(), SNUG))
          .extracting(Wrap.Bought::envelope)
          .containsExactlyInAnyOrderElementsOf(expected);
    }
  }

  private static Parcel thin(double width, double height) {
    return Parcel.flat(width, height, 0.1, 0.1, 0, 10);
  }
}
