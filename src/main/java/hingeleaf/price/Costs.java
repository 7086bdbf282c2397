package hingeleaf.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What a batch costs, line by line.
 *
 * @param copies good cards
 * @param lines amounts for the whole batch, in the order in which they are shown
 * @param profit wanted for the whole batch; no cost
 */
public record Costs(int copies, List<Line> lines, Money profit) {
  public Costs {
    lines = List.copyOf(lines);
  }

  /** What a line is for. */
  public enum Kind {
    SHEETS,
    USED,
    SPOILED_MATERIALS,
    LABOUR,
    SPOILED_LABOUR,
    OVERHEAD,
    PACKAGING,
    POST
  }

  /** One line; lines of 0 are left out. */
  public record Line(Kind kind, String name, Money amount) {}

  private static final int MINUTES_PER_HOUR = 60;

  /** Adds up a job. */
  public static Costs of(Job job) {
    List<Line> lines = new ArrayList<>();
    job.sheets().forEach(s -> add(lines, Kind.SHEETS, s.name(), s.cost(job.count())));
    job.used().forEach(u -> add(lines, Kind.USED, u.name(), u.cost()));
    Money materials = sum(lines, Kind.SHEETS, Kind.USED);
    Money labour = Money.of(job.hourlyRate()).times(job.minutes()).dividedBy(MINUTES_PER_HOUR);
    String spoilage = "spoilage " + percent(job.spoilage()) + " of ";
    add(lines, Kind.SPOILED_MATERIALS, spoilage + "materials", materials.times(job.spoilage()));
    add(lines, Kind.LABOUR, "labour", labour);
    add(lines, Kind.SPOILED_LABOUR, spoilage + "labour", labour.times(job.spoilage()));
    add(lines, Kind.OVERHEAD, "overhead", Money.of(job.overhead()));
    add(lines, Kind.PACKAGING, "packaging", Money.of(job.packaging()));
    add(lines, Kind.POST, "post", Money.of(job.post()));
    return new Costs(job.copies(), lines, Money.of(job.profit()));
  }

  /** Papers and what is used up, spoilage included; for the batch. */
  public Money materials() {
    return sum(lines, Kind.SHEETS, Kind.USED, Kind.SPOILED_MATERIALS);
  }

  /** Work, spoilage included; for the batch. */
  public Money labour() {
    return sum(lines, Kind.LABOUR, Kind.SPOILED_LABOUR);
  }

  public Money overhead() {
    return sum(lines, Kind.OVERHEAD);
  }

  /** Packaging and post; for the batch. */
  public Money carriage() {
    return sum(lines, Kind.PACKAGING, Kind.POST);
  }

  /** Everything; for the batch. */
  public Money total() {
    return sum(lines, Kind.values());
  }

  /** An amount for the batch, for one card. */
  public Money perCard(Money batch) {
    return batch.dividedBy(copies);
  }

  private static Money sum(List<Line> lines, Kind... kinds) {
    return lines.stream()
        .filter(l -> List.of(kinds).contains(l.kind()))
        .map(Line::amount)
        .reduce(Money.ZERO, Money::plus);
  }

  private static void add(List<Line> lines, Kind kind, String name, Money amount) {
    if (!amount.isZero()) {
      lines.add(new Line(kind, name, amount));
    }
  }

  private static String percent(BigDecimal share) {
    return share.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
  }
}
