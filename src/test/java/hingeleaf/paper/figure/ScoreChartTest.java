package hingeleaf.paper.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Face;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Lengths;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Pen;
import hingeleaf.paper.Samples;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.figure.RunningScale.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ScoreChartTest {
  private static Drawing chart(Piece piece, Face face, double width) {
    return ScoreChart.of(
        SeenPiece.of(piece, face, List.of()), width, 200, Lengths.MM, Samples.FONTS);
  }

  private static List<String> words(Drawing d) {
    List<String> words = new ArrayList<>();
    for (Mark m : d.layers().get(0).marks()) {
      if (m instanceof Mark.Words w) {
        words.add(w.text());
      }
    }
    return words;
  }

  private static Box cut(Drawing d) {
    List<Vec2> points = new ArrayList<>();
    for (Mark m : d.layers().get(0).marks()) {
      if (m instanceof Mark.Stroke s && s.pen().equals(Pen.CUT)) {
        s.path().lines().forEach(points::addAll);
      }
    }
    return Box.around(points);
  }

  // Case A of the trade notes: 198 x 150, scores at 12, 24, 174, 186; round aperture of 120
  // centred:
  // (198 - 120) / 2 = 39 from the left, (150 - 120) / 2 = 15 from below.
  @Test
  void caseA_tellsItsNumbersFromTheLeftEdge() {
    Drawing d = chart(Samples.frame("near", 150, 150, 12, 12, 120), Face.FRONT, 170);
    assertThat(words(d)).contains("12", "24", "174", "186", "198", "39", "15", "150", "⌀ 120 mm");
    assertThat(d.width()).isLessThanOrEqualTo(170 + 1e-9);
    assertThat(cut(d).width() / cut(d).height()).isCloseTo(198.0 / 150, within(1e-9));
  }

  @Test
  void smallPiece_isAtTrueSize() {
    Drawing d = chart(Samples.crooked(), Face.FRONT, 170);
    assertThat(cut(d).width()).isCloseTo(60.12345, within(1e-9));
    assertThat(cut(d).height()).isCloseTo(41.3, within(1e-9));
  }

  // Common practice: a piece of 9 x 7 in from a 7 x 7 in panel with half-inch sides and tabs is
  // scored at 1/2, 1, 8, 8 1/2; no source.
  @Test
  void inches_areTheReadersNotOurs() {
    Piece piece = Samples.frame("near", 177.8, 177.8, 12.7, 12.7, 100);
    Lengths halves =
        new Lengths(v -> Math.round(v / 12.7) + "/2 in", v -> Math.round(v / 12.7) + "/2");
    Drawing d =
        ScoreChart.of(SeenPiece.of(piece, Face.FRONT, List.of()), 170, 200, halves, Samples.FONTS);
    assertThat(words(d)).contains("1/2", "2/2", "16/2", "17/2", "18/2", "14/2");
  }

  @Test
  void back_isReadFromItsOwnLeftEdge() {
    // Uprights at 15, 30, 35 of 60.12345 on the front.
    List<String> words = words(chart(Samples.crooked(), Face.BACK, 170));
    assertThat(words).contains("30.1235", "45.1235").doesNotContain("15");
  }

  @Test
  void levelScores_areReadFromTheLowerEdge() {
    Piece upright = Samples.crooked();
    Piece level =
        new Piece(
            "level",
            "level",
            upright.stock(),
            upright.grain(),
            Region.of(Ring.rectangle(0, 0, 80, 60)),
            List.of(),
            List.of(new Score("fold", Segment.of(0, 14.5, 80, 14.5), 1)),
            upright.labels(),
            List.of(),
            "level");
    Drawing d = chart(level, Face.FRONT, 170);
    assertThat(words(d)).contains("14.5", "60", "80").doesNotContain("45.5");
    double fold = 0;
    double number = 0;
    for (Mark m : d.layers().get(0).marks()) {
      if (m instanceof Mark.Stroke s && s.pen().equals(Pen.VALLEY)) {
        fold = s.path().lines().get(0).get(0).y();
      }
      if (m instanceof Mark.Words w && w.text().equals("14.5")) {
        number = w.at().y() + Dimension.SIZE * 0.33;
        assertThat(w.turn()).isZero();
      }
    }
    assertThat(number).isCloseTo(fold, within(1e-9));
    assertThat(fold - cut(d).minY()).isCloseTo(14.5, within(1e-9));
  }

  @Test
  void numbers_neverTouch_andStayNearTheirMarks() {
    Random random = new Random(23);
    for (int round = 0; round < 300; round++) {
      List<Stop> stops = new ArrayList<>();
      double x = random.nextDouble() * 10;
      int n = 1 + random.nextInt(12);
      for (int i = 0; i < n; i++) {
        stops.add(new Stop(x, "12"));
        x += random.nextDouble() * 8;
      }
      double[] places = RunningScale.spread(stops);
      double drift = 0;
      for (int i = 0; i < places.length; i++) {
        drift += places[i] - stops.get(i).at();
        if (i > 0) {
          assertThat(places[i] - places[i - 1])
              .isGreaterThanOrEqualTo(Dimension.SIZE * 1.15 - 1e-9);
        }
      }
      // A crowd is spread to both sides alike.
      assertThat(drift).isCloseTo(0, within(1e-6));
    }
  }

  @Test
  void wideMarks_areNotMoved() {
    double[] places = RunningScale.spread(List.of(new Stop(12, "12"), new Stop(24, "24")));
    assertThat(places).containsExactly(12, 24);
  }
}
