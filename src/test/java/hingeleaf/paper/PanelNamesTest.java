package hingeleaf.paper;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Face;
import hingeleaf.card.Label;
import hingeleaf.card.Piece;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelNamesTest {
  private static List<Mark.Words> names(Piece piece) {
    List<Mark.Words> words = new ArrayList<>();
    SeenPiece seen = SeenPiece.of(piece, Face.FRONT, List.of());
    for (Mark m : PanelNames.of(seen, Look.SMALL, Look.QUIET, Samples.FONTS)) {
      words.add((Mark.Words) m);
    }
    return words;
  }

  @Test
  void names_standInTheirPanels() {
    List<Mark.Words> names = names(Samples.frame("near", 150, 150, 12, 12, 120));
    assertThat(names)
        .extracting(Mark.Words::text)
        .containsExactly("left tab", "left side", "panel", "right side", "right tab");
    double[] from = {0, 12, 24, 174, 186};
    double[] to = {12, 24, 174, 186, 198};
    for (int i = 0; i < 5; i++) {
      assertThat(names.get(i).at().x()).isBetween(from[i], to[i]);
    }
  }

  /** Over the aperture, in a corner, in a border: wherever the label is tied. */
  @ParameterizedTest
  @CsvSource({"99, 75", "25, 1", "173, 149", "99, 3"})
  void name_standsOnTheWidestBorder_notOverTheAperture(double x, double y) {
    Piece frame = Samples.frame("near", 150, 150, 12, 12, 110);
    List<Label> labels = new ArrayList<>(frame.labels());
    labels.set(2, new Label("panel", new Vec2(x, y)));
    Piece moved =
        new Piece(
            frame.id(),
            frame.name(),
            frame.stock(),
            frame.grain(),
            frame.shape(),
            frame.slits(),
            frame.scores(),
            labels,
            frame.inks(),
            frame.origin());
    Mark.Words panel = names(moved).get(2);
    // An aperture of 110 leaves 20 mm above and below it; the name is some 8 mm long.
    assertThat(panel.at().x()).isBetween(24.0 + 4, 174.0 - 4);
    assertThat(panel.at().y()).isBetween(1.0, 149.0);
    for (double dx = -4; dx <= 4; dx++) {
      assertThat(frame.shape().contains(panel.at().plus(new Vec2(dx, 1)))).isTrue();
    }
  }

  @Test
  void pieceOfOnePanel_needsNoSecondName() {
    Piece plain = Samples.crooked();
    assertThat(names(plain)).isEmpty();
  }
}
