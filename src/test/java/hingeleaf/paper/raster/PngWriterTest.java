package hingeleaf.paper.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.Samples;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngWriterTest {
  private static final String RED = "#c81e1e";
  private static final String BLUE = "#1e3cc8";

  private static BufferedImage picture(Mark... marks) throws Exception {
    Drawing drawing = Drawing.plain(100, 50, "", List.of(marks));
    byte[] png = PngWriter.write(drawing, 1000, "#faf8f3", Samples.FONTS);
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  /** The colour at a point of the drawing, mm, y up. */
  private static String at(BufferedImage image, double x, double y) {
    int rgb = image.getRGB((int) (x * 10), (int) (500 - y * 10));
    return String.format("#%06x", rgb & 0xffffff);
  }

  @Test
  void fill_coloursTheInsideButNotTheHole() throws Exception {
    Region frame =
        new Region(Ring.rectangle(10, 10, 60, 40), List.of(Ring.rectangle(20, 20, 30, 30)));
    BufferedImage image = picture(new Mark.Fill(Path.of(frame), RED));
    assertThat(image.getWidth()).isEqualTo(1000);
    assertThat(image.getHeight()).isEqualTo(500);
    assertThat(at(image, 15, 15)).isEqualTo(RED);
    assertThat(at(image, 25, 25)).isEqualTo("#faf8f3");
    assertThat(at(image, 5, 45)).isEqualTo("#faf8f3");
    assertThat(at(image, 59, 39)).isEqualTo(RED);
  }

  @Test
  void stroke_isAsWideAsItsPen() throws Exception {
    Mark line = new Mark.Stroke(Path.line(new Vec2(0, 25), new Vec2(100, 25)), Pen.solid(2, BLUE));
    BufferedImage image = picture(line);
    assertThat(at(image, 50, 25.85)).isEqualTo(BLUE);
    assertThat(at(image, 50, 26.15)).isEqualTo("#faf8f3");
    assertThat(at(image, 50, 24.15)).isEqualTo(BLUE);
    assertThat(at(image, 50, 23.85)).isEqualTo("#faf8f3");
  }

  @Test
  void window_hidesWhatLiesOutside() throws Exception {
    Mark all = new Mark.Fill(Path.rectangle(0, 0, 100, 50), RED);
    BufferedImage image =
        picture(
            new Mark.Window(new Box(40, 20, 60, 30), List.of(all)),
            new Mark.Fill(Path.rectangle(90, 0, 100, 10), BLUE));
    assertThat(at(image, 50, 25)).isEqualTo(RED);
    assertThat(at(image, 39, 25)).isEqualTo("#faf8f3");
    assertThat(at(image, 95, 5)).isEqualTo(BLUE);
  }

  @Test
  void words_standOnTheirBaselineAndAnchor() throws Exception {
    BufferedImage image =
        picture(
            new Mark.Words(
                "■", new Vec2(50, 20), 20, Mark.Weight.REGULAR, Mark.Anchor.MIDDLE, RED, 0));
    assertThat(at(image, 50, 25)).isEqualTo(RED);
    assertThat(at(image, 50, 15)).isEqualTo("#faf8f3");
    assertThat(at(image, 30, 25)).isEqualTo("#faf8f3");
    assertThat(at(image, 70, 25)).isEqualTo("#faf8f3");
  }

  @Test
  void sameInput_sameBytes() {
    Drawing d =
        Drawing.plain(20, 20, "", List.of(new Mark.Fill(Path.circle(new Vec2(9, 9), 5), RED)));
    assertThat(PngWriter.write(d, 300, "#ffffff", Samples.FONTS))
        .isEqualTo(PngWriter.write(d, 300, "#ffffff", Samples.FONTS));
  }

  @Test
  void write_tooLarge_isRefused() {
    Drawing d = Drawing.plain(1, 1000, "", List.of());
    assertThatThrownBy(() -> PngWriter.write(d, 1600, "#ffffff", Samples.FONTS))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
