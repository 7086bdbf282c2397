package hingeleaf.paper.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Samples;
import hingeleaf.paper.figure.CardPicture.Area;
import hingeleaf.paper.figure.CardPicture.Kind;
import hingeleaf.paper.figure.CardPicture.Line;
import hingeleaf.paper.figure.CardPicture.Manner;
import hingeleaf.paper.figure.CardPicture.Stroke;
import hingeleaf.paper.figure.CardPicture.View;
import hingeleaf.paper.raster.PngWriter;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class CardPictureTest {
  private static final String BACKGROUND = "#f3f0e9";

  /** A navy back of 100 x 80 seen straight on, and a white side seen at 60 degrees beside it. */
  private static View view() {
    Region back = Region.of(Ring.rectangle(0, 0, 100, 80));
    Region side = Region.of(Ring.rectangle(100, 0, 120, 80));
    Region words = Region.of(Ring.rectangle(40, 30, 60, 50));
    return new View(
        List.of(
            new Area(back, Kind.PAPER, "#20304f", 1, false),
            new Area(words, Kind.INK, "#f5d76e", 1, false),
            new Area(side, Kind.PAPER, "#ffffff", 0.5, true)),
        List.of(new Line(back.outer().points(), true, Stroke.SILHOUETTE)),
        List.of(Region.of(Ring.rectangle(0, -4, 120, 4))),
        new Box(0, 0, 120, 80));
  }

  private static String at(Drawing drawing, double x, double y) throws Exception {
    byte[] png = PngWriter.write(drawing, 1280, BACKGROUND, Samples.FONTS);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    double scale = 1280 / drawing.width();
    int rgb = image.getRGB((int) (x * scale), (int) ((drawing.height() - y) * scale));
    return String.format("#%06x", rgb & 0xffffff);
  }

  @Test
  void parts_haveTheirColoursAtTheirPlaces() throws Exception {
    Drawing d = CardPicture.of(view(), "t", Manner.COLOUR, 200, 200, BACKGROUND);
    assertThat(d.width()).isCloseTo(128, within(1e-9));
    assertThat(d.height()).isCloseTo(88, within(1e-9));
    assertThat(at(d, 4 + 20, 4 + 40)).isEqualTo("#20304f");
    assertThat(at(d, 4 + 50, 4 + 40)).isEqualTo("#f5d76e");
    // 0.74 + 0.26 / 2 = 0.87 of white.
    assertThat(at(d, 4 + 110, 4 + 40)).isEqualTo("#dedede");
    assertThat(at(d, 4 + 0, 4 + 40)).isEqualTo("#23272b");
    assertThat(at(d, 1, 86)).isEqualTo(BACKGROUND);
  }

  @Test
  void shadow_isDarkerNearTheCard() throws Exception {
    Drawing d = CardPicture.of(view(), "t", Manner.COLOUR, 200, 200, BACKGROUND);
    int near = Integer.parseInt(at(d, 60, 3.2).substring(1, 3), 16);
    int far = Integer.parseInt(at(d, 126.5, 12).substring(1, 3), 16);
    assertThat(near).isLessThan(far);
    assertThat(far).isBetween(near + 5, 0xf3);
  }

  @Test
  void step_tonesOnlyWhatIsNew() throws Exception {
    Drawing d = CardPicture.of(view(), "t", Manner.STEP, 200, 200, "#ffffff");
    assertThat(at(d, 4 + 20, 4 + 40)).isEqualTo("#ffffff");
    String fresh = at(d, 4 + 110, 4 + 40);
    int red = Integer.parseInt(fresh.substring(1, 3), 16);
    int blue = Integer.parseInt(fresh.substring(5, 7), 16);
    assertThat(red - blue).isGreaterThan(20);
  }

  @Test
  void picture_isNeverLargerThanAsked_norThanLife() {
    Drawing small = CardPicture.of(view(), "t", Manner.STEP, 60, 100, "#ffffff");
    assertThat(small.width()).isCloseTo(60, within(1e-9));
    assertThat(small.height()).isLessThan(100);
    Drawing screen = CardPicture.filling(view(), "t", Manner.COLOUR, 400, 300, BACKGROUND);
    assertThat(screen.width()).isEqualTo(400);
    assertThat(screen.height()).isEqualTo(300);
  }

  @Test
  void tone_knownMixtures() {
    assertThat(Tone.shaded("#ffffff", 0.5)).isEqualTo("#808080");
    assertThat(Tone.mixed("#000000", "#0a1464", 0.1)).isEqualTo("#01020a");
  }

  /** A slope takes its paper's tone and a third of white or a fifth of black. */
  @Test
  void slopesOfAPattern_areLightAndDarkOnTheirPaper() throws Exception {
    Region back = Region.of(Ring.rectangle(0, 0, 100, 80));
    View pressed =
        new View(
            List.of(
                new Area(back, Kind.PAPER, "#204060", 1, false),
                new Area(Region.of(Ring.rectangle(10, 10, 20, 70)), Kind.LIT, "#204060", 1, false),
                new Area(
                    Region.of(Ring.rectangle(70, 10, 80, 70)), Kind.SHADED, "#204060", 1, false)),
            List.of(),
            List.of(),
            new Box(0, 0, 100, 80));
    Drawing d = CardPicture.of(pressed, "t", Manner.COLOUR, 200, 200, BACKGROUND);
    // 0x20 = 32: 32 + 0.35 x 223 = 110; 0x40: 131; 0x60: 152. Dark: 25.6, 51.2, 76.8.
    assertThat(at(d, 4 + 15, 4 + 40)).isEqualTo("#6e8398");
    assertThat(at(d, 4 + 75, 4 + 40)).isEqualTo("#1a334d");
    Drawing step = CardPicture.of(pressed, "t", Manner.STEP, 200, 200, BACKGROUND);
    // On white a step's drawing shows the dark slope alone: 0.8 of 255.
    assertThat(at(step, 4 + 15, 4 + 40)).isEqualTo("#ffffff");
    assertThat(at(step, 4 + 75, 4 + 40)).isEqualTo("#cccccc");
  }
}
