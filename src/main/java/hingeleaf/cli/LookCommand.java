package hingeleaf.cli;

import hingeleaf.card.Posed;
import hingeleaf.card.Rest;
import hingeleaf.fold.FoldWay;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.pack.Looks;
import hingeleaf.paper.raster.PngWriter;
import hingeleaf.paper.svg.SvgWriter;
import hingeleaf.sight.Look;
import hingeleaf.sight.Scene;
import hingeleaf.sight.Sight;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Draws the card as it looks, standing or on its way flat. */
@Command(
    name = "look",
    mixinStandardHelpOptions = true,
    description = "Draw the card as it looks, standing or on its way flat.",
    footer = {
      "",
      "Example: hingeleaf look card.yaml --from front --out front.png",
      "         hingeleaf look card.yaml --folded 60 --out half.svg"
    })
final class LookCommand implements Callable<Integer> {
  private static final int PIXELS = 1600;
  private static final int STEPS = 100;

  @Mixin private DesignFile design = new DesignFile();

  @Mixin private Common common = new Common();

  @Option(
      names = "--from",
      paramLabel = "SIDE",
      description = "front, right, left or behind (default: ${DEFAULT-VALUE})")
  private String from = "right";

  @Option(
      names = "--folded",
      paramLabel = "PERCENT",
      description = "how far it is folded: 0 standing, 100 flat (default: ${DEFAULT-VALUE})")
  private int folded = 0;

  @Option(
      names = "--way",
      paramLabel = "N",
      description = "which of the ways that fold lists, from 1 (default: ${DEFAULT-VALUE})")
  private int way = 1;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "picture to write: .png or .svg")
  private Path out = Path.of("");

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    Common.Loaded loaded = common.load(design.path(), false);
    Pack pack = loaded.pack();
    if (pack == null || pack.blocked()) {
      throw new DoorException(
          Exit.CONTENT,
          Telling.lines(pack == null ? loaded.problems() : pack.problems()).stripTrailing());
    }
    Scene scene = scene(pack);
    Drawing drawing = Looks.drawing(Sight.look(scene, look()), pack.title());
    String name = out.toString().toLowerCase(Locale.ROOT);
    if (!name.endsWith(".png") && !name.endsWith(".svg")) {
      throw new DoorException(Exit.USAGE, "--out ends in .png or .svg, not " + out);
    }
    byte[] bytes =
        name.endsWith(".svg")
            ? SvgWriter.write(drawing, pack.title()).getBytes(StandardCharsets.UTF_8)
            : PngWriter.write(drawing, PIXELS, hingeleaf.paper.Look.PAPER, loaded.fonts());
    OutputFile.write(out, bytes);
    Common.talk(spec.commandLine().getErr(), out + ": drawn");
    return Exit.FINE;
  }

  private Look look() {
    return switch (from) {
      case "front" -> Look.straightOn();
      case "right" -> Look.threeQuarter();
      case "left" -> Look.threeQuarterLeft();
      case "behind" -> Look.fromBehind();
      default ->
          throw new DoorException(
              Exit.USAGE, "--from takes front, right, left or behind, not " + from);
    };
  }

  private Scene scene(Pack pack) {
    if (folded < 0 || folded > STEPS) {
      throw new DoorException(Exit.USAGE, "--folded takes 0 to 100, not " + folded);
    }
    if (folded == 0) {
      return pack.scene();
    }
    List<Rest> rests = pack.flats().states();
    if (way < 1 || way > rests.size()) {
      throw new DoorException(Exit.USAGE, "--way takes 1 to " + rests.size() + ", not " + way);
    }
    Rest rest = rests.get(way - 1);
    if (folded == STEPS) {
      return Scene.pressed(pack.made(), rest.posed());
    }
    List<Posed> poses = FoldWay.between(pack.made(), rest, STEPS);
    return Scene.of(pack.made(), poses.get(Math.min(folded, poses.size() - 1)));
  }
}
