package hingeleaf.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Shapes;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Length;
import hingeleaf.measure.Reading;
import hingeleaf.measure.Unit;
import hingeleaf.stock.BasisWeight;
import hingeleaf.stock.Grain;
import hingeleaf.stock.SheetSizes;
import hingeleaf.stock.Stock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Masses and thicknesses against published tables. Grammage is mass by area (ISO 536), sizes are
 * ISO 216:2007 and ANSI/ASME Y14.1; masses below are those areas times the grammage, to the
 * hundredth.
 */
class MassTest {
  private static Piece sheet(double w, double h, double grammage) {
    Stock stock =
        new Stock(
            "s", "s", Stock.Kind.CARD, grammage, 0.3, Stock.Faces.alike("#ffffff"), List.of(), 3);
    return Piece.flat(
        "s",
        "s",
        stock,
        Grain.ANY,
        Region.of(Ring.rectangle(0, 0, w, h)),
        new Label("panel", new Vec2(1, 1)),
        "");
  }

  @ParameterizedTest
  @CsvSource({
    "A4, 80, 4.99", // the office sheet: 1/16 of a square metre less the rounding of the series
    "A5, 300, 9.32", // a folded A6 card
    "A3, 80, 9.98",
    "A4, 300, 18.71",
    "A6, 250, 3.89",
    "A5, 120, 3.73",
    "letter, 80, 4.83", // 215.9 x 279.4 mm
    "letter, 216, 13.03",
    "A2, 160, 39.92"
  })
  void sheetsWeighTheirAreaTimesGrammage(String size, double grammage, double grams) {
    SheetSizes.Size s = SheetSizes.named(size).orElseThrow();
    assertThat(sheet(s.width(), s.height(), grammage).mass()).isCloseTo(grams, within(0.005));
  }

  @Test
  void aTenBySevenInchPieceOf100PoundCover_weighs12point19Grams() {
    // 10 x 7 in = 0.0451612 m2; 100 lb cover is 270.4 g/m2, sold and reckoned as 270: 12.19 g
    assertThat(sheet(254, 177.8, 270).mass()).isCloseTo(12.19, within(0.005));
    assertThat(sheet(254, 177.8, BasisWeight.COVER.grammage(100)).mass())
        .isCloseTo(12.21, within(0.005));
  }

  @Test
  void anApertureTakesItsAreaAway() {
    Piece whole = sheet(150, 150, 300);
    Piece open =
        Piece.flat(
            "o",
            "o",
            whole.stock(),
            Grain.ANY,
            new Region(
                Ring.rectangle(0, 0, 150, 150), List.of(Shapes.circle(90).moved(new Vec2(75, 75)))),
            new Label("panel", new Vec2(1, 1)),
            "");
    // pi r2 = 6361.7 mm2 at 300 g/m2
    assertThat(whole.mass() - open.mass()).isCloseTo(Math.PI * 45 * 45 * 300e-6, within(0.002));
  }

  @ParameterizedTest
  @CsvSource({
    // published tables of art card and cover stock, "pt" beside mm or um; 1 pt = 0.001 in
    "0.008, 0.203",
    "0.009, 0.229",
    "0.010, 0.254",
    "0.012, 0.305",
    "0.013, 0.330",
    "0.014, 0.356",
    "0.016, 0.406",
    "0.018, 0.457",
    "0.007, 0.178"
  })
  void calipersInPoints_areTheirPublishedMillimetres(String inches, double mm) {
    Reading reading = Length.read(inches + " in", Unit.MM);
    assertThat(reading).isInstanceOf(Reading.Read.class);
    assertThat(((Reading.Read) reading).length().mm()).isCloseTo(mm, within(0.0006));
  }
}
