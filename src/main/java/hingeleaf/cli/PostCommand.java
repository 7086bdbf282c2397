package hingeleaf.cli;

import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Mass;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Postage;
import hingeleaf.paper.json.PackJson;
import hingeleaf.plan.Leans;
import hingeleaf.post.Decision;
import hingeleaf.post.PostWords;
import hingeleaf.post.Wrap;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Tells how a card is posted. */
@Command(
    name = "post",
    mixinStandardHelpOptions = true,
    description = "Tell what a card weighs, its envelope, and as what it is posted.",
    footer = {"", "Example: hingeleaf post card.yaml --bench bench.yaml"})
final class PostCommand implements Callable<Integer> {
  @Mixin private DesignFile design = new DesignFile();

  @Mixin private Common common = new Common();

  @Mixin private JsonAnswer json = new JsonAnswer();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    Common.Loaded loaded = common.load(design.path(), false);
    Pack pack = loaded.pack();
    if (pack == null || pack.blocked()) {
      Common.talk(
          spec.commandLine().getErr(),
          Telling.lines(pack == null ? loaded.problems() : pack.problems()).stripTrailing());
      return Exit.CONTENT;
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      out.print(PackJson.post(pack));
    } else {
      pack.posting().offers().forEach(o -> tell(pack, o, out));
    }
    out.flush();
    return Exit.FINE;
  }

  private static void tell(Pack pack, Postage.Offer offer, PrintWriter out) {
    MakerUnits units = pack.inputs().wants().units();
    PostWords words = new PostWords(units.unit() == Unit.IN);
    Decision d = offer.best().decision();
    Mass m = offer.mass();
    out.println(words.taken(d));
    String leans =
        offer.rest() < 0 ? "boxed" : Leans.words(pack.flats().states().get(offer.rest()));
    out.println("  " + leans + ", in " + wrap(offer.best().wrap(), units));
    out.println(
        String.format(
            Locale.ROOT,
            "  %.1f g: card %.1f, glue %.1f, foam %.1f, envelope %.1f",
            m.posted(),
            m.card(),
            m.glue(),
            m.foam(),
            m.envelope()));
    String margin = words.thickness(d);
    out.println(
        "  "
            + units.fine(d.mail().thickness())
            + " thick"
            + (margin.isEmpty() ? "" : ", " + margin + ", the bound of the cheapest class"));
    d.missed().forEach(miss -> out.println("  " + words.missed(miss, d.mail())));
  }

  private static String wrap(Wrap wrap, MakerUnits units) {
    if (wrap instanceof Wrap.Bought b) {
      return b.envelope().name() + ", " + units.size(b.envelope().width(), b.envelope().height());
    } else if (wrap instanceof Wrap.Made m) {
      return "an envelope of your own, " + units.size(m.envelope().width(), m.envelope().height());
    }
    return "no envelope";
  }
}
