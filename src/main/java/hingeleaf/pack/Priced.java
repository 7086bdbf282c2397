package hingeleaf.pack;

import hingeleaf.finding.Problem;
import hingeleaf.plan.RunSheet;
import hingeleaf.plan.SheetWork;
import hingeleaf.plan.WorkPlan;
import hingeleaf.price.Costs;
import hingeleaf.price.Job;
import hingeleaf.price.Money;
import hingeleaf.price.PriceFindings;
import hingeleaf.price.PriceFormula;
import hingeleaf.price.Quote;
import hingeleaf.price.SheetUse;
import hingeleaf.price.Used;
import hingeleaf.sheet.SheetStock;
import hingeleaf.stock.Bench;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * What the cards cost and what they might be sold for.
 *
 * @param job what making them takes
 * @param bySheet costs with whole sheets paid
 * @param byArea costs with the paper paid that is used
 * @param quotes prices of one card by each published formula, from the costs by sheet
 * @param money what amounts are in; empty where the bench does not tell
 * @param problems what is missing, and prices below cost
 */
public record Priced(
    Job job,
    Costs bySheet,
    Costs byArea,
    List<Quote> quotes,
    String money,
    List<Problem> problems) {
  public Priced {
    quotes = List.copyOf(quotes);
    problems = List.copyOf(problems);
  }

  /** Whether the bench told anything that costs. */
  public boolean told() {
    return !bySheet.total().isZero();
  }

  static Priced of(Pack pack) {
    Wants wants = pack.inputs().wants();
    Bench bench = pack.inputs().bench();
    Job job = job(pack, SheetUse.Count.BY_SHEET);
    Costs bySheet = Costs.of(job);
    Costs byArea = Costs.of(job(pack, SheetUse.Count.BY_AREA));
    List<Quote> quotes = new ArrayList<>();
    for (PriceFormula formula : PriceFormula.values()) {
      if (formula != PriceFormula.WITH_PROFIT || wants.price().profit().signum() > 0) {
        quotes.add(formula.quote(bySheet, PriceFormula.Carriage.ADDED));
      }
    }
    List<Problem> problems = new ArrayList<>(PriceFindings.untold(job));
    if (wants.price().asked().signum() > 0) {
      problems.addAll(PriceFindings.asked(Money.of(wants.price().asked()), bySheet, bench.money()));
    }
    quotes.forEach(q -> problems.addAll(PriceFindings.of(q, bench.money())));
    return new Priced(job, bySheet, byArea, quotes, bench.money(), problems);
  }

  private static Job job(Pack pack, SheetUse.Count count) {
    Wants wants = pack.inputs().wants();
    int copies = wants.copies();
    BigDecimal n = BigDecimal.valueOf(copies);
    PriceWants p = wants.price();
    return new Job(
        copies,
        sheets(pack),
        count,
        used(pack, copies),
        minutes(pack.work(), copies),
        BigDecimal.valueOf(pack.inputs().bench().hourlyRate()),
        p.overhead().multiply(n),
        p.packaging().multiply(n),
        p.post().multiply(n),
        p.profit().multiply(n),
        p.spoilage());
  }

  private static BigDecimal minutes(WorkPlan work, int copies) {
    return rounded(RunSheet.minutes(work, copies), 1);
  }

  private static List<SheetUse> sheets(Pack pack) {
    List<SheetUse> uses = new ArrayList<>();
    for (SheetWork work : pack.sheets()) {
      work.counts().forEach((stock, n) -> uses.add(use(work, stock, n)));
    }
    return uses;
  }

  private static SheetUse use(SheetWork work, int stock, long count) {
    SheetStock sheet = work.order().job().stock().get(stock);
    double used =
        work.plan().stream()
            .flatMap(p -> p.sheets().stream())
            .filter(s -> s.stock() == stock)
            .flatMap(s -> s.pieces().stream())
            .mapToDouble(q -> q.w() / 1e6 * (q.h() / 1e6))
            .sum();
    return new SheetUse(
        work.order().stock().title() + ", " + sheet.name(),
        count,
        work.order().priced() ? BigDecimal.valueOf(sheet.price(), 6) : BigDecimal.ZERO,
        rounded(used, 2),
        rounded(sheet.w() / 1e6 * (sheet.h() / 1e6), 2));
  }

  private static List<Used> used(Pack pack, int copies) {
    List<Used> uses = new ArrayList<>();
    for (Consumption.Use u : pack.consumption().uses()) {
      BigDecimal holds = u.pack() > 0 ? rounded(u.pack(), 3) : BigDecimal.ONE;
      double price = u.pack() > 0 ? u.price() : 0;
      uses.add(new Used(u.name(), rounded(u.amount() * copies, 3), holds, rounded(price, 4)));
    }
    if (pack.posting().first().best().wrap() instanceof hingeleaf.post.Wrap.Bought b) {
      uses.add(
          new Used(
              "envelope " + b.envelope().name(),
              BigDecimal.valueOf(copies),
              BigDecimal.ONE,
              rounded(b.envelope().price(), 4)));
    }
    return uses;
  }

  private static BigDecimal rounded(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
  }
}
