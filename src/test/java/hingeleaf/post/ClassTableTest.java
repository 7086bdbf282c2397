package hingeleaf.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.stock.Envelopes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Standard envelopes, thin and light (1 mm, 15 g), through the posts. Worked by hand from the
 * published limits (USPS DMM 101; Ofcom; Deutsche Post 2025; An Post, Canada Post and Australia
 * Post size pages; La Poste: 140 x 90 to a sum of 1000 mm; UPU Letter-post Regulations art. 203:
 * standardised to 235 x 120 mm, 20 g, 1.4 times as long as high, else format P to 245 x 165 x 5 mm,
 * 100 g) and the outer sizes of ISO 269 and the US envelope trade. At the limits, by 0.1 mm and 1
 * g: {@link LimitsTest}.
 */
class ClassTableTest {
  @ParameterizedTest
  @CsvSource({
    "ISO C6,    letter, letter,       standard, letter,         standard, small, lettre, standardised",
    "ISO C5,    flat,   letter,       gross,    letter,         other,    large, lettre, small",
    "ISO DL,    letter, letter,       standard, letter,         standard, small, lettre, standardised",
    "ISO B6,    letter, letter,       standard, letter,         standard, small, lettre, small",
    "US A2,     letter, letter,       gross,    letter,         standard, small, lettre, small",
    "US A6,     letter, letter,       gross,    letter,         standard, small, lettre, small",
    "US A7,     letter, letter,       gross,    letter,         standard, large, lettre, small",
    "US A10,    letter, large-letter, gross,    large-envelope, standard, large, lettre, small"
  })
  void envelopes_goAsPublished(
      String name,
      String us,
      String uk,
      String de,
      String ie,
      String ca,
      String au,
      String fr,
      String upu) {
    Mail mail = thin(name);
    assertThat(taken("usps", mail)).isEqualTo(us);
    assertThat(taken("uk", mail)).isEqualTo(uk);
    assertThat(taken("germany", mail)).isEqualTo(de);
    assertThat(taken("ireland", mail)).isEqualTo(ie);
    assertThat(taken("canada", mail)).isEqualTo(ca);
    assertThat(taken("australia", mail)).isEqualTo(au);
    assertThat(taken("france", mail)).isEqualTo(fr);
    assertThat(taken("upu", mail)).isEqualTo(upu);
  }

  /** A square of 5.75 in: DMM 101.1.2 a (ratio), Deutsche Post (1.4), Canada from memory. */
  @Test
  void square_costsMoreWhereMachinesSort() {
    Mail square = new Mail(146.05, 146.05, 1, 0, true, 15);
    assertThat(taken("usps", square)).isEqualTo("letter-nonmachinable");
    assertThat(taken("uk", square)).isEqualTo("letter");
    assertThat(taken("germany", square)).isEqualTo("gross");
    assertThat(taken("ireland", square)).isEqualTo("letter");
    assertThat(taken("canada", square)).isEqualTo("other");
    assertThat(taken("australia", square)).isEqualTo("large");
    assertThat(taken("upu", square)).isEqualTo("small");
    assertThat(taken("france", square)).isEqualTo("lettre");
  }

  /** Ratios of the outer sizes, to three decimals, as published beside them. */
  @ParameterizedTest
  @CsvSource({
    "ISO C6,1.421",
    "ISO C5,1.414",
    "ISO DL,2.000",
    "ISO B6,1.408",
    "US A2,1.314",
    "US A6,1.368",
    "US A7,1.381",
    "US A10,1.583"
  })
  void ratios_areThePublishedOnes(String name, double ratio) {
    assertThat(thin(name).figure(Figure.RATIO)).isCloseTo(ratio, within(5.1e-4));
  }

  /** A closed box card 6 mm thick, 150 x 105 mm, 40 g: stiff. */
  @Test
  void boxOfSixMillimetres_isALargeLetterOrSurcharged() {
    Mail box = new Mail(150, 105, 6, 0, false, 40);
    assertThat(taken("uk", box)).isEqualTo("large-letter");
    assertThat(taken("usps", box)).isEqualTo("letter-nonmachinable");
    assertThat(taken("germany", box)).isEqualTo("kompakt");
    assertThat(taken("australia", box)).isEqualTo("parcel");
    Mail wide = new Mail(150, 126, 6, 0, false, 40);
    assertThat(taken("germany", wide)).isEqualTo("gross");
  }

  /** USPS Postal Bulletin 22213 (2007): what does not bend is never a flat. */
  @Test
  void stiffFlat_isAParcelWithUsps() {
    assertThat(taken("usps", new Mail(300, 200, 10, 0, true, 150))).isEqualTo("flat");
    assertThat(taken("usps", new Mail(300, 200, 10, 0, false, 150))).isEqualTo("parcel");
  }

  /** Guides to DMM 2.0: more than 1/4 in of bumps makes a flat a parcel. */
  @ParameterizedTest
  @CsvSource({"6.25,flat", "6.35,flat", "6.45,parcel"})
  void unevenFlat_isAParcelWithUsps(double uneven, String expected) {
    assertThat(taken("usps", new Mail(300, 200, 10, uneven, true, 150))).isEqualTo(expected);
  }

  /** DMM 101.1.2: thinner than 0.009 in is nonmachinable over 4.25 in high or 6 in long. */
  @ParameterizedTest
  @CsvSource({
    "150,105,0.2,letter",
    "153,105,0.2,letter-nonmachinable",
    "150,109,0.2,letter-nonmachinable",
    "153,105,0.23,letter",
    "150,105,0.17,none"
  })
  void thinLetter_isNonmachinableOnlyWhenLarge(double l, double h, double t, String expected) {
    assertThat(taken("usps", new Mail(l, h, t, 0, true, 15))).isEqualTo(expected);
  }

  /** Smallest square that USPS takes: 5 in (guides). */
  @Test
  void squareUnderFiveInches_isNotTaken() {
    assertThat(taken("usps", new Mail(127, 127, 2, 0, true, 15))).isEqualTo("letter-nonmachinable");
    assertThat(taken("usps", new Mail(126.9, 126.9, 2, 0, true, 15))).isEqualTo("none");
  }

  /**
   * Steps of weight: La Poste 2023; Royal Mail guides; Canada Post; Australia Post; USPS ounces.
   */
  @ParameterizedTest
  @CsvSource({
    "france,200,130,3,20,20", "france,200,130,3,21,100", "france,200,130,3,101,250",
    "france,200,130,3,251,500", "france,200,130,3,501,1000", "uk,300,200,10,100,100",
    "uk,300,200,10,101,250", "uk,300,200,10,501,750", "canada,200,130,3,30,30",
    "canada,200,130,3,31,50", "australia,300,200,10,125,125", "australia,300,200,10,126,250",
    "usps,200,130,3,28,28.35", "usps,200,130,3,29,56.70", "germany,200,125,3,15,0"
  })
  void stepOfWeight_isTheNextAbove(
      String post, double l, double h, double t, double grams, double step) {
    Decision decision = Decision.of(Schemes.named(post), new Mail(l, h, t, 0, true, grams));
    assertThat(decision.step()).isCloseTo(step, within(0.005));
  }

  private static Mail thin(String envelope) {
    var e = Envelopes.named(envelope).orElseThrow();
    return new Mail(e.width(), e.height(), 1, 0, true, 15);
  }

  private static String taken(String post, Mail mail) {
    return Decision.of(Schemes.named(post), mail).taken().map(PostClass::name).orElse("none");
  }
}
