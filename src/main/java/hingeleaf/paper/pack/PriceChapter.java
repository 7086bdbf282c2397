package hingeleaf.paper.pack;

import hingeleaf.finding.Problem;
import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Priced;
import hingeleaf.paper.book.Block;
import hingeleaf.price.Costs;
import hingeleaf.price.Money;
import hingeleaf.price.Quote;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a card costs, and what it might be sold for. */
final class PriceChapter {
  private static final int CENTS = 2;

  private final Pack pack;
  private final Priced priced;

  private static final Set<String> UNTOLD = Set.of("price-no-rate", "price-untold");

  PriceChapter(Pack pack) {
    this.pack = pack;
    this.priced = pack.price();
  }

  void add(List<Block> all) {
    all.add(new Block.Heading(2, "Price"));
    if (priced.told()) {
      costs(all);
      prices(all);
    } else {
      all.add(
          Block.Paragraph.of(
              "Your bench tells neither what things cost nor what your hour is worth, so no price"
                  + " is made up here. What there is to be paid for "
                  + (copies() == 1 ? "one card" : copies() + " cards")
                  + ":"));
      all.add(Block.Items.of(amounts()));
    }
    // Where nothing is told that was just said; where something is, what is missing matters.
    List<String> missing =
        new ArrayList<>(
            new LinkedHashSet<>(
                priced.problems().stream()
                    .filter(p -> priced.told() || !UNTOLD.contains(p.kind()))
                    .map(Problem::message)
                    .toList()));
    if (!missing.isEmpty()) {
      all.add(Block.Paragraph.of("Mind:"));
      all.add(Block.Items.of(missing));
    }
  }

  private int copies() {
    return priced.job().copies();
  }

  private List<String> amounts() {
    List<String> amounts = new ArrayList<>();
    priced.job().sheets().forEach(s -> amounts.add(s.sheets() + " × " + s.name()));
    for (var u : pack.consumption().uses()) {
      amounts.add(Quantity.of(u.amount() * copies(), u.unit(), units()) + " of " + u.name());
    }
    amounts.add(FrontPage.hours(priced.job().minutes().doubleValue()) + " of your work");
    return amounts;
  }

  private MakerUnits units() {
    return pack.inputs().wants().units();
  }

  private void costs(List<Block> all) {
    List<List<String>> rows = new ArrayList<>();
    for (Costs.Line line : priced.bySheet().lines()) {
      rows.add(row(line.name(), line.amount()));
    }
    rows.add(row("all together", priced.bySheet().total()));
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("Cost"),
                Block.Column.number("For " + copies() + unit()),
                Block.Column.number("For one card")),
            rows));
    Money area = priced.byArea().perCard(priced.byArea().total());
    all.add(
        Block.Paragraph.note(
            "Whole sheets are paid here. Counting only the paper that is used, because scraps go"
                + " back into the drawer, a card costs "
                + told(area)
                + "."));
  }

  private String unit() {
    return priced.money().isEmpty() ? "" : ", " + priced.money();
  }

  private List<String> row(String name, Money batch) {
    return List.of(
        name,
        batch.rounded(CENTS).toPlainString(),
        priced.bySheet().perCard(batch).rounded(CENTS).toPlainString());
  }

  private String told(Money amount) {
    return amount.rounded(CENTS).toPlainString()
        + (priced.money().isEmpty() ? "" : " " + priced.money());
  }

  private void prices(List<Block> all) {
    List<List<String>> rows = new ArrayList<>();
    for (Quote q : priced.quotes()) {
      for (Quote.Price p : q.prices()) {
        rows.add(List.of(p.label(), told(p.amount()), q.formula().formula()));
      }
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("Price of one card"),
                Block.Column.text("Amount"),
                Block.Column.text("By the formula")),
            rows));
    all.add(
        Block.Paragraph.note(
            "“Wholesale” has two published meanings, the cost itself or twice that; each row says"
                + " which. Packaging and post are added at cost."));
  }
}
