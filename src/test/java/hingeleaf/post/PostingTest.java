package hingeleaf.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.stock.Envelope;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PostingTest {
  private static final Packing USUAL = Packing.usual();
  private static final PostWords MM = new PostWords(false);
  private static final PostWords INCHES = new PostWords(true);
  private static final Envelope C6 = new Envelope("ISO C6", 162, 114, 4.5, 0);
  private static final Envelope SQUARE = new Envelope("square 130", 130, 130, 4.2, 0);

  /** By hand: 2 mm of rigid card stand 2.8 mm unpressed, with walls 3.05 mm; 15 + 4.5 g. */
  @Test
  void mail_isThePileUnpressedInItsEnvelope() {
    Mail mail = Mail.of(Parcel.flat(150, 100, 1, 2, 0.5, 15), C6, USUAL);
    assertThat(mail.length()).isEqualTo(162);
    assertThat(mail.height()).isEqualTo(114);
    assertThat(mail.thickness()).isCloseTo(3.05, within(1e-12));
    assertThat(mail.grams()).isEqualTo(19.5);
    Mail box = Mail.of(Parcel.boxed(150, 100, 2, 15), C6, USUAL);
    assertThat(box.thickness()).isCloseTo(2.25, within(1e-12));
  }

  @Test
  void pileFor_undoesTheUnpressedFactor() {
    double pile = USUAL.pileFor(5, true);
    Mail mail = Mail.of(Parcel.flat(150, 100, 0, pile, 0, 15), C6, USUAL);
    assertThat(mail.thickness()).isCloseTo(5, within(1e-12));
    assertThat(USUAL.pileFor(0.1, true)).isZero();
    assertThat(USUAL.pileFor(5, false)).isEqualTo(4.75);
  }

  /**
   * The smaller square envelope costs more in Germany (ratio 1.4), so the longer one comes first.
   */
  @Test
  void cheapestClassComesBeforeSmallestEnvelope() {
    Packing loose = new Packing(1.4, 0.25, 100, 2.45, Packing.Fit.SNUG, 60);
    Parcel card = Parcel.flat(110, 105, 0.5, 0.7, 0, 12);
    List<Posting> options =
        Posting.options(card, List.of(SQUARE, C6), Schemes.named("germany"), loose, 1);
    assertThat(options).hasSize(3);
    assertThat(options.get(0).wrap()).isInstanceOf(Wrap.Bought.class);
    assertThat(options.get(0).mail().length()).isEqualTo(162);
    assertThat(options.get(0).decision().taken().orElseThrow().name()).isEqualTo("standard");
    assertThat(options.get(1).decision().taken().orElseThrow().name()).isEqualTo("gross");
  }

  @Test
  void boxMayGoBare() {
    Parcel box = Parcel.boxed(70, 65, 120, 60);
    List<Posting> options = Posting.options(box, List.of(C6), Schemes.named("uk"), USUAL, 1);
    assertThat(options).extracting(Posting::wrap).contains(new Wrap.Bare());
    Mail bare = Mail.bare(box);
    assertThat(List.of(bare.length(), bare.height(), bare.thickness()))
        .containsExactly(120.0, 70.0, 65.0);
  }

  /** Length is the longest side, girth the way round the others: 300 + 2 x (200 + 100) = 900. */
  @Test
  void girth_goesRoundTheShorterSides() {
    Mail flat = new Mail(300, 200, 100, 0, false, 1);
    assertThat(flat.figure(Figure.LENGTH_AND_GIRTH)).isEqualTo(900);
    assertThat(flat.figure(Figure.SUM)).isEqualTo(600);
    Mail tall = new Mail(200, 100, 300, 0, false, 1);
    assertThat(tall.figure(Figure.LENGTH_AND_GIRTH)).isEqualTo(900);
  }

  @Test
  void thinnerGoesAsALetter() {
    Decision decision = decide("uk", new Mail(200, 130, 6.3, 0, true, 20));
    Decision.Missed nearest = decision.nearest().orElseThrow();
    assertThat(MM.reach(nearest, decision.mail())).isEqualTo("1.3 mm thinner goes as Letter");
    assertThat(MM.missed(nearest, decision.mail()))
        .isEqualTo(
            "not Letter: thickness 6.3 mm is more than 5 mm (by 1.3 mm)"
                + " - 1.3 mm thinner goes as Letter");
    assertThat(MM.taken(decision))
        .isEqualTo("Royal Mail (United Kingdom): Large Letter, up to 100 g");
    assertThat(MM.thickness(decision)).isEqualTo("1.3 mm over 5 mm");
    assertThat(decision.thicknessMargin().orElseThrow()).isCloseTo(-1.3, within(1e-12));
  }

  /** A change told must be enough: it is rounded up, room is rounded down. */
  @Test
  void changesAreRoundedUpAndRoomDown() {
    Decision over = decide("uk", new Mail(200, 130, 6.31, 0, true, 20));
    assertThat(MM.reach(over.nearest().orElseThrow(), over.mail())).startsWith("1.4 mm thinner");
    Decision under = decide("uk", new Mail(200, 130, 4.21, 0, true, 20));
    assertThat(MM.thickness(under)).isEqualTo("0.7 mm under 5 mm");
    Decision inch = decide("usps", new Mail(200, 130, 6.5, 0, true, 20));
    assertThat(INCHES.reach(inch.nearest().orElseThrow(), inch.mail()))
        .isEqualTo("0.006 in thinner goes as letter");
  }

  @Test
  void everyFailedLimitIsNamed() {
    Decision decision = decide("germany", new Mail(146, 111, 6, 0, true, 60));
    Decision.Missed standard = decision.missed().get(0);
    assertThat(standard.failures())
        .extracting(f -> f.limit().figure())
        .containsExactly(Figure.THICKNESS, Figure.WEIGHT, Figure.RATIO);
    assertThat(MM.reach(standard, decision.mail()))
        .isEqualTo(
            "1 mm thinner, 40 g lighter and an envelope at least 155.4 mm long,"
                + " or at most 104.2 mm high, goes as Standardbrief");
  }

  /** Obeying the advice reaches the class: checked by doing it. */
  @Test
  void proportionAdvice_holds() {
    Decision decision = decide("usps", new Mail(150, 120, 2, 0, true, 20));
    assertThat(decision.taken().orElseThrow().name()).isEqualTo("letter-nonmachinable");
    Change.Proportion change =
        (Change.Proportion) decision.missed().get(0).changes(decision.mail()).get(0);
    assertThat(change.length()).isCloseTo(156, within(1e-9));
    assertThat(taken("usps", new Mail(change.length(), 120, 2, 0, true, 20))).isEqualTo("letter");
    assertThat(taken("usps", new Mail(150, change.height(), 2, 0, true, 20))).isEqualTo("letter");
  }

  @Test
  void lowerStepOfTheSameClass_isMissedByItsMass() {
    Decision decision = decide("france", new Mail(200, 130, 3, 0, true, 23.2));
    assertThat(MM.reach(decision.nearest().orElseThrow(), decision.mail()))
        .isEqualTo("3.2 g lighter goes as lettre of the step to 20 g");
  }

  @ParameterizedTest
  @ValueSource(doubles = {4.6, 5.0})
  void tightThickness_isWarned(double thickness) {
    List<Problem> problems =
        PostFindings.of(decide("uk", new Mail(200, 130, thickness, 0, true, 20)), USUAL, MM);
    assertThat(problems).extracting(Problem::kind).containsExactly("post-tight");
    assertThat(problems.get(0).level()).isEqualTo(Level.WARNS);
    assertThat(problems.get(0).message()).contains("only just").contains("under 5 mm");
  }

  @ParameterizedTest
  @CsvSource({"3,0", "4.4,0", "5.2,1", "6.2,1", "6.4,0"})
  void cheaperClass_isNotedOnlyWhenNear(double thickness, int notes) {
    List<Problem> problems =
        PostFindings.of(decide("uk", new Mail(200, 130, thickness, 0, true, 20)), USUAL, MM);
    assertThat(problems).filteredOn(p -> p.kind().equals("post-cheaper")).hasSize(notes);
  }

  /** By hand: (5 - 0.25) / 1.4 = 3.39 instead of (5.6 - 0.25) / 1.4 = 3.82. */
  @Test
  void cheaperClass_tellsThePileThatReachesIt() {
    Mail mail = new Mail(200, 130, 5.6, 0, true, 20);
    Problem note = PostFindings.of(decide("uk", mail), USUAL, MM).get(0);
    assertThat(note.message())
        .endsWith(
            "0.6 mm thinner goes as Letter - lower what raises the card,"
                + " so that its pile is 3.3 mm instead of 3.8 mm");
    assertThat(note.numbers().get("pile")).isCloseTo(4.75 / 1.4, within(1e-12));
    Parcel lowered = Parcel.flat(190, 120, 0, 3.3, 0, 15);
    Mail again = Mail.of(lowered, new Envelope("e", 200, 130, 5, 0), USUAL);
    assertThat(taken("uk", again)).isEqualTo("letter");
  }

  @ParameterizedTest
  @CsvSource({"germany,18.9,0", "germany,19.1,1", "germany,20,1", "france,96,1", "france,90,0"})
  void massNearTheEndOfItsPrice_isToBeWeighed(String post, double grams, int notes) {
    List<Problem> problems =
        PostFindings.of(decide(post, new Mail(200, 120, 3, 0, true, grams)), USUAL, MM);
    assertThat(problems).filteredOn(p -> p.kind().equals("post-weigh")).hasSize(notes);
  }

  @Test
  void nothingTakesIt_isWarnedWithTheReason() {
    List<Problem> problems =
        PostFindings.of(decide("upu", new Mail(130, 88, 2, 0, true, 20)), USUAL, MM);
    assertThat(problems).extracting(Problem::kind).containsExactly("post-none");
    assertThat(problems.get(0).message())
        .contains("no class takes it")
        .contains("length 130 mm is less than 140 mm (by 10 mm)")
        .contains("10 mm longer and 2 mm higher");
  }

  @Test
  void doubtfulLimits_sayThatTheyAre() {
    Decision uneven = decide("usps", new Mail(200, 130, 3, 2, true, 20));
    assertThat(MM.failure(uneven.missed().get(0).failures().get(0)))
        .endsWith("[no number is published]");
    Decision small = decide("uk", new Mail(135, 95, 3, 0, true, 20));
    assertThat(MM.failure(small.missed().get(0).failures().get(0)))
        .endsWith("[limit from memory, not verified]");
  }

  @Test
  void impossibleFigures_areRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Parcel.flat(0, 1, 0, 0, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Parcel.flat(1, 1, 2, 1, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Parcel.flat(1, 1, 0, Double.NaN, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Mail(1, 2, 1, 0, true, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> USUAL.withUnpressed(0.9));
  }

  private static Decision decide(String post, Mail mail) {
    return Decision.of(Schemes.named(post), mail);
  }

  private static String taken(String post, Mail mail) {
    return decide(post, mail).taken().map(PostClass::name).orElse("none");
  }
}
