package hingeleaf.price;

import hingeleaf.finding.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a maker should know of a price, as problems. */
public final class PriceFindings {
  private static final int CENTS = 2;

  /**
   * {@code price-below-cost} warns for each price of a quote under the cost of a card.
   *
   * @param money what prices are in, such as "EUR"; may be empty
   */
  public static List<Problem> of(Quote quote, String money) {
    return quote.prices().stream()
        .filter(p -> p.amount().compareTo(quote.cost()) < 0)
        .map(p -> below(p.label(), p.amount(), quote.cost(), money))
        .toList();
  }

  /** The same for a price per card that the maker has set; empty where it covers the cost. */
  public static List<Problem> asked(Money price, Costs costs, String money) {
    Money cost = costs.perCard(costs.total());
    return price.compareTo(cost) < 0 ? List.of(below("your price", price, cost, money)) : List.of();
  }

  /**
   * {@code price-no-rate} notes work that costs nothing because no hourly rate is told; {@code
   * price-untold} notes what is used without a price.
   */
  public static List<Problem> untold(Job job) {
    List<Problem> problems = new ArrayList<>();
    if (job.minutes().signum() > 0 && job.hourlyRate().signum() == 0) {
      problems.add(
          Problem.notes(
              "price-no-rate",
              "",
              "",
              job.minutes().setScale(0, RoundingMode.HALF_UP).toPlainString()
                  + " minutes of work are counted as nothing - put your hourly rate on the bench"));
    }
    String names = withoutPrice(job);
    if (!names.isEmpty()) {
      problems.add(
          Problem.notes(
              "price-untold",
              "",
              "",
              "no price is told for " + names + " - put what you paid on the bench"));
    }
    return List.copyOf(problems);
  }

  private static String withoutPrice(Job job) {
    return Stream.concat(
            job.sheets().stream()
                .filter(s -> s.price().signum() == 0 && s.sheets() > 0)
                .map(SheetUse::name),
            job.used().stream()
                .filter(u -> u.price().signum() == 0 && u.amount().signum() > 0)
                .map(Used::name))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static Problem below(String label, Money price, Money cost, String money) {
    String unit = money.isEmpty() ? "" : " " + money;
    BigDecimal missing = cost.minus(price).rounded(CENTS);
    return Problem.warns(
            "price-below-cost",
            "",
            "",
            label
                + ": "
                + price.rounded(CENTS)
                + unit
                + " is "
                + missing
                + unit
                + " below what a card costs ("
                + cost.rounded(CENTS)
                + unit
                + ") - ask more, or save on the largest line")
        .with(
            Map.of(
                "price", price.rounded(CENTS).doubleValue(),
                "cost", cost.rounded(CENTS).doubleValue()));
  }

  private PriceFindings() {}
}
