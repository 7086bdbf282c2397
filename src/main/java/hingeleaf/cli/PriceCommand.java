package hingeleaf.cli;

import hingeleaf.pack.Pack;
import hingeleaf.pack.PriceWants;
import hingeleaf.pack.Priced;
import hingeleaf.paper.json.PackJson;
import hingeleaf.price.Costs;
import hingeleaf.price.Money;
import hingeleaf.price.Quote;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells what cards cost and what they might be sold for. */
@Command(
    name = "price",
    mixinStandardHelpOptions = true,
    description = "Tell what a card or a batch costs, and prices by published formulas.",
    footer = {
      "",
      "Amounts are for one card, in the bench's money. What nobody told is counted as nothing,",
      "and the answer says so.",
      "Example: hingeleaf price card.yaml --bench bench.yaml --copies 50 --post 1.80"
    })
final class PriceCommand implements Callable<Integer> {
  private static final BigDecimal MOST_SPOILAGE = new BigDecimal(100);

  @Mixin private DesignFile design = new DesignFile();

  @Mixin private Common common = new Common();

  @Option(
      names = "--overhead",
      paramLabel = "AMOUNT",
      converter = Amount.class,
      description = "rent, wear, fees")
  private BigDecimal overhead = BigDecimal.ZERO;

  @Option(
      names = "--packaging",
      paramLabel = "AMOUNT",
      converter = Amount.class,
      description = "sleeve, box, label")
  private BigDecimal packaging = BigDecimal.ZERO;

  @Option(names = "--post", paramLabel = "AMOUNT", converter = Amount.class, description = "stamps")
  private BigDecimal post = BigDecimal.ZERO;

  @Option(
      names = "--profit",
      paramLabel = "AMOUNT",
      converter = Amount.class,
      description = "wanted beyond your wage")
  private BigDecimal profit = BigDecimal.ZERO;

  @Option(
      names = "--ask",
      paramLabel = "AMOUNT",
      converter = Amount.class,
      description = "the price you think of")
  private BigDecimal asked = BigDecimal.ZERO;

  @Option(
      names = "--spoilage",
      paramLabel = "PERCENT",
      converter = Amount.class,
      description = "cards in a hundred that go wrong; 5 where left out")
  private BigDecimal spoilage = new BigDecimal(5);

  @Mixin private JsonAnswer json = new JsonAnswer();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    Common.Loaded loaded = common.load(design.path(), wants -> wants.with(told()));
    Pack pack = loaded.pack();
    if (pack == null || pack.blocked()) {
      Common.talk(
          spec.commandLine().getErr(),
          Telling.lines(pack == null ? loaded.problems() : pack.problems()).stripTrailing());
      return Exit.CONTENT;
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json.wanted()) {
      out.print(PackJson.price(pack));
    } else {
      tell(pack.price(), out);
      Common.talk(
          spec.commandLine().getErr(), Telling.lines(pack.price().problems()).stripTrailing());
    }
    out.flush();
    return Exit.FINE;
  }

  private PriceWants told() {
    if (spoilage.compareTo(MOST_SPOILAGE) > 0) {
      throw new DoorException(Exit.USAGE, "--spoilage takes 0 to 100, not " + spoilage);
    }
    return new PriceWants(overhead, packaging, post, profit, asked, spoilage.movePointLeft(2));
  }

  private static void tell(Priced p, PrintWriter out) {
    String money = p.money().isEmpty() ? "" : " " + p.money();
    out.println("costs of " + p.job().copies() + (p.job().copies() == 1 ? " card" : " cards"));
    for (Costs.Line line : p.bySheet().lines()) {
      out.println("  " + line.name() + ": " + told(line.amount()) + money);
    }
    out.println(
        "one card costs "
            + each(p.bySheet())
            + money
            + ", whole sheets paid; "
            + each(p.byArea())
            + money
            + " by the paper used");
    for (Quote q : p.quotes()) {
      out.println(q.formula().formula());
      q.prices().forEach(x -> out.println("  " + x.label() + ": " + told(x.amount()) + money));
    }
  }

  private static String each(Costs costs) {
    return told(costs.perCard(costs.total()));
  }

  private static String told(Money amount) {
    return amount.rounded(2).toPlainString();
  }
}
