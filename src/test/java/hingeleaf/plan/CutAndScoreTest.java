package hingeleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Face;
import hingeleaf.card.Label;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Shapes;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.stock.Grain;
import hingeleaf.structure.SampleStacks;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cut list and the score chart against layouts that can be checked by hand. */
class CutAndScoreTest {
  private static final double IN = 25.4;

  private static Piece piece(String id, double w, double h, List<Ring> holes, List<Score> scores) {
    return new Piece(
        id,
        id,
        SampleStacks.card(0.356),
        Grain.ANY,
        new Region(Ring.rectangle(0, 0, w, h), holes),
        List.of(),
        scores,
        List.of(new Label("panel", new Vec2(0.5, 0.5))),
        List.of(),
        id);
  }

  @Test
  void identicalFramesAreCountedTogether() {
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 3, 0.356);
    CutList cuts = CutList.of(made.card().pieces(), BuiltInBench.metric());
    assertThat(cuts.lines()).extracting(CutList.Line::quantity).containsExactly(1, 3);
    assertThat(cuts.lines().get(1).names()).isEqualTo("far, middle and near");
    assertThat(cuts.lines()).allMatch(CutList.Line::rectangular);
  }

  @Test
  void sevenInchFrame_scoredOnGrooves4_8_64_68() {
    // common practice, no source: scoring-board grooves an eighth of an inch apart; scores at 1/2,
    // 1,
    // 8 and 8 1/2 in are then the 4th, 8th, 64th and 68th
    MadeCard made = SampleStacks.plain(7 * IN, 7 * IN, IN / 2, IN / 2, 1, 0.356);
    ScoreChart chart =
        ScoreChart.of(
            CutList.of(made.card().pieces(), BuiltInBench.inches()), BuiltInBench.inches());
    List<ScoreChart.Setting> s = chart.rows().get(0).settings();
    assertThat(BuiltInBench.inches().scoringBoard().step()).isCloseTo(IN / 8, within(1e-9));
    assertThat(s)
        .extracting(ScoreChart.Setting::groove)
        .containsExactly(Optional.of(4), Optional.of(8), Optional.of(64), Optional.of(68));
    assertThat(s).allMatch(x -> x.up() == Face.FRONT && !x.quarterTurn());
    assertThat(chart.rows().get(0).turnsOver()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    // common practice, no source: eighth-inch grooves, read from the stop at the left edge
    "0.125, 1",
    "0.5, 4",
    "0.625, 5",
    "1, 8",
    "3.25, 26",
    "5.5, 44",
    "8.5, 68",
    "11.875, 95"
  })
  void grooveNumbersOnAnEighthInchBoard(double inches, int groove) {
    double at = inches * IN;
    Score score = new Score("s", Segment.of(at, 0, at, 50), -1);
    Piece p = piece("p", 12 * IN, 50, List.of(), List.of(score));
    ScoreChart chart =
        ScoreChart.of(CutList.of(List.of(p), BuiltInBench.inches()), BuiltInBench.inches());
    assertThat(chart.rows().get(0).settings().get(0).groove()).contains(groove);
  }

  @Test
  void scoresOffTheGrooves_askForRulerAndStylus() {
    MadeCard made = SampleStacks.plain(150, 150, 12, 12, 1, 0.356);
    ScoreChart chart =
        ScoreChart.of(
            CutList.of(made.card().pieces(), BuiltInBench.metric()), BuiltInBench.metric());
    assertThat(chart.rows().get(0).settings())
        .extracting(ScoreChart.Setting::at)
        .containsExactly(12d, 24d, 174d, 186d);
    assertThat(chart.rows().get(0).settings()).allMatch(s -> s.groove().isEmpty());
  }

  @Test
  void aValleyIsScoredWithTheBackUp_measuredFromTheOtherEdge() {
    Score mountain = new Score("m", Segment.of(20, 0, 20, 50), -1);
    Score valley = new Score("v", Segment.of(30, 0, 30, 50), 1);
    Piece p = piece("p", 100, 50, List.of(), List.of(mountain, valley));
    ScoreChart chart =
        ScoreChart.of(CutList.of(List.of(p), BuiltInBench.metric()), BuiltInBench.metric());
    ScoreChart.Row row = chart.rows().get(0);
    assertThat(row.turnsOver()).isTrue();
    assertThat(row.settings().get(0).at()).isEqualTo(20);
    assertThat(row.settings().get(0).up()).isEqualTo(Face.FRONT);
    assertThat(row.settings().get(1).at()).isEqualTo(70); // 100 - 30
    assertThat(row.settings().get(1).up()).isEqualTo(Face.BACK);
  }

  @Test
  void aLevelValleyStaysAtItsHeightWhenThePieceIsTurnedOverLeftToRight() {
    Score valley = new Score("v", Segment.of(0, 20, 60, 20), 1);
    Score mountain = new Score("m", Segment.of(0, 8, 60, 8), -1);
    Piece p = piece("p", 60, 28, List.of(), List.of(mountain, valley));
    ScoreChart.Row row =
        ScoreChart.of(CutList.of(List.of(p), BuiltInBench.metric()), BuiltInBench.metric())
            .rows()
            .get(0);
    assertThat(row.settings()).allMatch(ScoreChart.Setting::quarterTurn);
    assertThat(row.settings()).extracting(ScoreChart.Setting::at).containsExactly(8d, 20d);
    assertThat(row.settings())
        .extracting(ScoreChart.Setting::up)
        .containsExactly(Face.FRONT, Face.BACK);
  }

  @Test
  void openingIsToldByTwoEdges_andCutByTheDieThatReallyFits() {
    double cut =
        BuiltInBench.metric().dies().stream()
            .filter(d -> d.shape() == hingeleaf.stock.Die.Shape.CIRCLE)
            .findFirst()
            .orElseThrow()
            .cutWidth();
    Ring fits = Shapes.circle(cut).moved(new Vec2(60, 70));
    Piece p = piece("p", 120, 150, List.of(fits), List.of());
    CutList.Opening o =
        CutList.of(List.of(p), BuiltInBench.metric()).lines().get(0).openings().get(0);
    assertThat(o.shape()).isEqualTo("circle");
    assertThat(o.width()).isCloseTo(cut, within(0.01));
    assertThat(o.fromLeft()).isCloseTo(60 - cut / 2, within(0.01));
    assertThat(o.fromBottom()).isCloseTo(70 - cut / 2, within(0.01));
    assertThat(o.die()).isPresent();
    Ring larger = Shapes.circle(cut + 1).moved(new Vec2(60, 70));
    assertThat(
            CutList.of(
                    List.of(piece("q", 120, 150, List.of(larger), List.of())),
                    BuiltInBench.metric())
                .lines()
                .get(0)
                .openings()
                .get(0)
                .die())
        .isEmpty();
  }

  @Test
  void openingsAreCalledByTheirShapes() {
    Ring[] rings = {
      Shapes.circle(40),
      Shapes.square(40),
      Shapes.rectangle(60, 40),
      Shapes.ellipse(60, 40),
      Shapes.arch(40, 60),
      Shapes.rounded(60, 40, 8),
      new Ring(List.of(new Vec2(-20, -20), new Vec2(20, -20), new Vec2(0, 20)))
    };
    List<Ring> holes = java.util.Arrays.stream(rings).map(r -> r.moved(new Vec2(60, 70))).toList();
    List<String> words =
        holes.stream()
            .map(h -> piece("p", 150, 150, List.of(h), List.of()))
            .map(p -> CutList.of(List.of(p), BuiltInBench.metric()).lines().get(0))
            .map(l -> l.openings().get(0).shape())
            .toList();
    assertThat(words)
        .containsExactly(
            "circle", "square", "rectangle", "ellipse", "arch", "rounded rectangle", "shape");
  }
}
