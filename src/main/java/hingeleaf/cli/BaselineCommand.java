package hingeleaf.cli;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.HouseFonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.PaperSize;
import hingeleaf.paper.Path;
import hingeleaf.paper.pdf.PdfWriter;
import hingeleaf.paper.raster.PngWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/**
 * What any tool that prints must do, for scripts/speed to measure {@code make} against: one page
 * with the embedded face and one picture of 1600 x 1200. Do not make it faster or slower.
 */
@Command(
    name = "baseline",
    hidden = true,
    description = "One page and one picture, for scripts/speed.")
final class BaselineCommand implements Callable<Integer> {
  @Parameters(paramLabel = "DIR")
  private java.nio.file.Path folder = java.nio.file.Path.of("");

  @Override
  public Integer call() {
    Fonts fonts = HouseFonts.read();
    Mark words =
        new Mark.Words(
            "One page", new Vec2(20, 260), 8, Mark.Weight.REGULAR, Mark.Anchor.START, Look.INK, 0);
    Mark box = new Mark.Fill(Path.rectangle(40, 40, 160, 110), Look.ACCENT);
    PaperSize a4 = PaperSize.A4;
    Drawing page = Drawing.plain(a4.width(), a4.height(), "page", List.of(words));
    Drawing picture = Drawing.plain(200, 150, "picture", List.of(box));
    OutputFolder.write(
        folder,
        Map.of(
            "page.pdf",
            PdfWriter.write(List.of(page), "page", "en", PdfWriter.Layers.FLAT, fonts),
            "picture.png",
            PngWriter.write(picture, 1600, Look.PAPER, fonts)));
    return Exit.FINE;
  }
}
