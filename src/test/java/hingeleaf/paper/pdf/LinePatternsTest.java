package hingeleaf.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.Samples;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines as they come out of the file, drawn at 2400 dots to the inch and measured dot by dot:
 * widths of ISO 128-2:2020 (0.13, 0.18, 0.25, 0.35, 0.5 mm) and elements in line widths d. Line 02,
 * dashes: 12 d drawn, 3 d open. Folds by Yoshizawa-Randlett as Western books draw them: a valley is
 * a row of dashes, a mountain dash, dot, dot (Lang, Origami Design Secrets), so a mountain here is
 * line 02 with two dots of 1 d in each gap (the dots of line 05 are 0.5 d, from memory; at 0.35 mm
 * a home printer loses them). What lies behind is dotted, line 07: gaps of 3 d (from memory).
 */
class LinePatternsTest {
  private static final double DOTS_PER_MM = 2400 / 25.4;
  private static final double LONG = 40;
  private static final double FROM = 5;
  private static final double HIGH = 3;

  /** Two dots of the measuring grid, for each end may fall within one. */
  private static final double TWO_DOTS = 2 / DOTS_PER_MM;

  private static final Map<String, Pen> PENS =
      Map.of(
          "cut", Pen.CUT,
          "valley", Pen.VALLEY,
          "mountain", Pen.MOUNTAIN,
          "flat", Pen.FLAT,
          "hidden", Pen.HIDDEN,
          "pressed", Pen.PRESSED,
          "dimension", Pen.DIMENSION,
          "glue", Pen.GLUE,
          "edge", Pen.EDGE,
          "fine edge", Pen.FINE_EDGE);

  @ParameterizedTest
  @CsvSource({
    // line, its width, what is drawn and open in turn, in widths; empty for a whole line
    "cut, 0.5, ''",
    "valley, 0.35, 12 3",
    "mountain, 0.35, 12 3 1 3 1 3",
    "flat, 0.35, 3 9", // an existing score: short dashes, for it does not bend
    "hidden, 0.25, 1 3",
    "pressed, 0.18, 6 6",
    "dimension, 0.18, ''",
    "glue, 0.13, ''",
    "edge, 0.35, ''",
    "fine edge, 0.18, ''",
  })
  void measured(String line, double width, String elements) throws IOException {
    BufferedImage image = drawn(Objects.requireNonNull(PENS.get(line)));
    int middle = image.getHeight() / 2;
    List<Double> runs = runs(image, middle);
    if (elements.isEmpty()) {
      assertThat(runs).hasSize(1);
      // Round ends reach half a width further at either end.
      assertThat(runs.get(0)).isBetween(LONG - TWO_DOTS, LONG + width + TWO_DOTS);
    } else {
      List<Double> wanted = Arrays.stream(elements.split(" ")).map(Double::valueOf).toList();
      assertThat(runs.size()).isGreaterThan(2 * wanted.size());
      for (int i = 0; i < runs.size() - 1; i++) {
        double element = wanted.get(i % wanted.size()) * width;
        assertThat(runs.get(i)).as("element %d", i).isCloseTo(element, within(TWO_DOTS));
      }
    }
    assertThat(thickness(image)).isCloseTo(width, within(TWO_DOTS));
  }

  private static BufferedImage drawn(Pen pen) throws IOException {
    Vec2 from = new Vec2(FROM, HIGH);
    Path path = Path.line(from, from.plus(new Vec2(LONG, 0)));
    Mark mark = new Mark.Stroke(path, pen.coloured("#000000"));
    Drawing page = Drawing.plain(LONG + 2 * FROM, 2 * HIGH, "line", List.of(mark));
    byte[] file =
        PdfWriter.write(List.of(page), "line", "en", PdfWriter.Layers.FLAT, Samples.FONTS);
    try (PDDocument document = Loader.loadPDF(file)) {
      return new PDFRenderer(document).renderImageWithDPI(0, 2400);
    }
  }

  private static boolean dark(BufferedImage image, int x, int y) {
    return (image.getRGB(x, y) & 0xff) < 128;
  }

  /** Lengths along the line, drawn and open in turn, from its first dot to its last, mm. */
  private static List<Double> runs(BufferedImage image, int y) {
    List<Double> runs = new ArrayList<>();
    int since = -1;
    boolean on = false;
    int last = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      boolean now = dark(image, x, y);
      last = now ? x : last;
      if (now != on && (since >= 0 || now)) {
        if (since >= 0) {
          runs.add((x - since) / DOTS_PER_MM);
        }
        since = x;
      }
      on = now;
    }
    assertThat(last).as("something is drawn").isPositive();
    return runs;
  }

  /** How thick the first element is in its middle, mm. */
  private static double thickness(BufferedImage image) {
    int x = (int) Math.round((FROM + 0.12) * DOTS_PER_MM);
    int dots = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      dots += dark(image, x, y) ? 1 : 0;
    }
    return dots / DOTS_PER_MM;
  }
}
