package hingeleaf.cli;

import hingeleaf.fold.accuracy.CuttingReport;
import hingeleaf.fold.accuracy.CuttingStudy;
import hingeleaf.fold.accuracy.FourBar;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.figure.AccuracyFigures;
import hingeleaf.paper.svg.SvgWriter;
import hingeleaf.stock.Accuracy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the figures of docs/accuracy.md anew, from a design and from the closed forms. */
@Command(
    name = "figures",
    hidden = true,
    description = "The figures of docs/accuracy.md, for scripts/figures.")
final class FiguresCommand implements Callable<Integer> {
  @Parameters(paramLabel = "DESIGN")
  private Path design = Path.of("");

  @Mixin private Common common = new Common();

  @Option(names = "--out", paramLabel = "DIR", required = true)
  private Path out = Path.of("");

  @Override
  public Integer call() {
    Common.Loaded loaded = common.load(design, false);
    Pack pack = loaded.pack();
    if (pack == null || pack.blocked() || pack.best() < 0) {
      throw new DoorException(Exit.CONTENT, design + " gives no card that lies flat");
    }
    List<CuttingReport> reports =
        Arrays.stream(Accuracy.values())
            .map(a -> CuttingStudy.of(pack.made(), pack.flats().states().get(pack.best()), a.mm()))
            .toList();
    // Panel 150.5 on feet 150 apart, sides of 12: the worked case of two ways of gluing.
    write("glued-two-ways.svg", AccuracyFigures.twoWays(new FourBar(150, 12, 150.5, 12)));
    write("jam-heights.svg", AccuracyFigures.jamCurve(150, 12));
    List<String> hands = List.of("A careful hand", "An average hand", "A class");
    write("cut-shares.svg", AccuracyFigures.shares(hands, reports));
    return Exit.FINE;
  }

  private void write(String name, Drawing drawing) {
    String svg = SvgWriter.write(drawing, drawing.title());
    OutputFile.write(out.resolve(name), svg.getBytes(StandardCharsets.UTF_8));
  }
}
