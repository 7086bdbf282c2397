package hingeleaf.paper;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Face;
import hingeleaf.card.Label;
import hingeleaf.card.Piece;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

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

  @Test
  void nameOverAnAperture_movesToTheWidestBorder() {
    Piece frame = Samples.frame("near", 150, 150, 12, 12, 120);
    List<Label> labels = new ArrayList<>(frame.labels());
    labels.set(2, new Label("panel", new Vec2(99, 75)));
    Piece centred =
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
    Mark.Words panel = names(centred).get(2);
    // The aperture of 120 leaves 15 mm below it: the name stands in its middle.
    assertThat(panel.at().y()).isBetween(5.0, 8.0);
    assertThat(frame.shape().contains(panel.at())).isTrue();
  }

  @Test
  void pieceOfOnePanel_needsNoSecondName() {
    Piece plain = Samples.crooked();
    assertThat(names(plain)).isEmpty();
  }
}
