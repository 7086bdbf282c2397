package hingeleaf.post;

import hingeleaf.measure.Decimal;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Sentences about the post for a maker who works in mm and g, or in inches and ounces. What must
 * change is rounded up and room that is left is rounded down, so that no sentence promises too
 * much.
 *
 * @param inches whether lengths are told in decimals of an inch and masses in ounces
 */
public record PostWords(boolean inches) {
  private static final double INCH = 25.4;
  private static final double OUNCE = 28.349523125;
  private static final double SAME = 1e-6;

  /** One failed limit: "thickness 6.3 mm is more than 5 mm (by 1.3 mm)". */
  public String failure(Failure failure) {
    Figure figure = failure.limit().figure();
    if (figure == Figure.STIFF) {
      return "it does not bend";
    }
    String side = failure.outside() > 0 ? "more" : "less";
    return figure.words()
        + " "
        + plain(figure, failure.value())
        + " is "
        + side
        + " than "
        + plain(figure, failure.bound())
        + " (by "
        + up(figure, Math.abs(failure.outside()))
        + ")"
        + doubt(failure.limit().confidence());
  }

  /** What reaches a cheaper offer: "1.3 mm thinner goes as Letter". */
  public String reach(Decision.Missed missed, Mail mail) {
    String target = missed.postClass().title();
    String step = missed.step() > 0 ? " of the step to " + plain(Figure.WEIGHT, missed.step()) : "";
    return joined(missed.changes(mail)) + " goes as " + target + step;
  }

  /**
   * What that means for the pile of card in the envelope.
   *
   * @param from mm as it is
   * @param to mm at most
   */
  public String pile(double from, double to) {
    return "lower what raises the card, so that its pile is "
        + down(Figure.THICKNESS, to)
        + " instead of "
        + plain(Figure.THICKNESS, from);
  }

  /** That a reckoned mass is close to where a price ends. */
  public String weigh(Decision decision, double bound) {
    return taken(decision)
        + ": reckoned at "
        + plain(Figure.WEIGHT, decision.mail().grams())
        + ", and its price ends at "
        + plain(Figure.WEIGHT, bound)
        + " - paper varies: weigh the finished card";
  }

  /** Why a cheaper offer is missed: its title, each failed limit, and what would reach it. */
  public String missed(Decision.Missed missed, Mail mail) {
    String why = missed.failures().stream().map(this::failure).collect(Collectors.joining("; "));
    return "not " + missed.postClass().title() + ": " + why + " - " + reach(missed, mail);
  }

  /** The class taken: "USPS (United States): letter", with its step where it has steps. */
  public String taken(Decision decision) {
    String post = decision.scheme().title() + ": ";
    if (decision.taken().isEmpty()) {
      return post + "no class takes it";
    }
    String step = decision.step() > 0 ? ", up to " + plain(Figure.WEIGHT, decision.step()) : "";
    return post + decision.taken().get().title() + step;
  }

  /** The room to the thickness of the cheapest class: "0.7 mm under 5 mm"; empty without one. */
  public String thickness(Decision decision) {
    if (decision.thicknessMargin().isEmpty()) {
      return "";
    }
    double margin = decision.thicknessMargin().get();
    String bound = plain(Figure.THICKNESS, decision.mail().thickness() + margin);
    return margin >= 0
        ? down(Figure.THICKNESS, margin) + " under " + bound
        : up(Figure.THICKNESS, -margin) + " over " + bound;
  }

  /** The room of a margin: "0.3 mm under 5 mm". */
  public String room(Decision.Margin margin) {
    Figure figure = margin.limit().figure();
    return down(figure, margin.room()) + " under " + plain(figure, margin.limit().most());
  }

  private String joined(List<Change> changes) {
    List<String> all = changes.stream().map(c -> c.told(this)).toList();
    int last = all.size() - 1;
    return last < 1
        ? String.join("", all)
        : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
  }

  String by(Figure figure, double by) {
    return up(figure, Math.abs(by)) + " " + comparative(figure, by > 0);
  }

  private static String comparative(Figure figure, boolean more) {
    return switch (figure) {
      case LENGTH -> more ? "longer" : "shorter";
      case HEIGHT -> more ? "higher" : "less high";
      case THICKNESS -> more ? "thicker" : "thinner";
      case WEIGHT -> more ? "heavier" : "lighter";
      case SUM, LENGTH_AND_GIRTH -> (more ? "more in " : "less in ") + figure.words();
      case UNEVEN -> more ? "more uneven" : "less uneven";
      case RATIO, STIFF -> figure.words();
    };
  }

  String proportion(double length, double height, boolean slimmer) {
    String longSide =
        slimmer ? "least " + up(Figure.LENGTH, length) : "most " + down(Figure.LENGTH, length);
    String shortSide =
        slimmer ? "most " + down(Figure.HEIGHT, height) : "least " + up(Figure.HEIGHT, height);
    return "an envelope at " + longSide + " long, or at " + shortSide + " high,";
  }

  private static String doubt(Limit.Confidence confidence) {
    return switch (confidence) {
      case SEEN, SECONDARY -> "";
      case MEMORY -> " [limit from memory, not verified]";
      case COMMON_PRACTICE -> " [no number is published]";
    };
  }

  private String up(Figure figure, double value) {
    return shown(figure, value, Rounding.UP);
  }

  private String down(Figure figure, double value) {
    return shown(figure, value, Rounding.DOWN);
  }

  private String plain(Figure figure, double value) {
    return shown(figure, value, Rounding.NEAREST);
  }

  private String shown(Figure figure, double value, Rounding rounding) {
    return switch (figure.sort()) {
      case MM ->
          inches
              ? decimals(value / INCH, 3, rounding) + " in"
              : decimals(value, value < 1 && rounding == Rounding.NEAREST ? 2 : 1, rounding)
                  + " mm";
      case GRAMS ->
          inches
              ? decimals(value / OUNCE, 2, rounding) + " oz"
              : decimals(value, 1, rounding) + " g";
      case NUMBER -> decimals(value, 2, rounding);
    };
  }

  private enum Rounding {
    UP,
    DOWN,
    NEAREST
  }

  /** At most so many decimals, without trailing zeros. */
  private static String decimals(double value, int places, Rounding rounding) {
    double unit = Math.pow(10, places);
    double scaled = value * unit;
    long whole =
        switch (rounding) {
          case UP -> (long) Math.ceil(scaled - SAME);
          case DOWN -> (long) Math.floor(scaled + SAME);
          case NEAREST -> Math.round(scaled);
        };
    return Decimal.shortest(whole / unit, places);
  }
}
