package hingeleaf.pack;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Edit;
import hingeleaf.design.TextEdit;
import hingeleaf.finding.Level;
import hingeleaf.measure.Length;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Reading;
import hingeleaf.measure.Unit;
import hingeleaf.plan.SheetOrder;
import hingeleaf.plan.SheetWork;
import hingeleaf.sheet.JobUnit;
import hingeleaf.structure.Structures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How the sheets that a card needs step as one size of its design goes through a range.
 *
 * @param size path of the size in the design
 * @param rows from the smallest to the largest, one for each mark of the trimmer
 */
public record SizeSweep(String size, MakerUnits units, boolean priced, List<Row> rows) {
  private static final int MOST_ROWS = 400;

  public SizeSweep {
    rows = List.copyOf(rows);
  }

  /**
   * One size.
   *
   * @param mm the size
   * @param sheets how many sheets one card takes; -1 where it cannot be made
   * @param cost in the bench's money, or mm2 of sheet where it tells no price
   * @param why it cannot be made; empty where it can
   */
  public record Row(double mm, int sheets, double cost, String why) {}

  /** What came of a question. */
  public sealed interface Outcome {
    record Swept(SizeSweep sweep) implements Outcome {}

    record Refused(String why) implements Outcome {}
  }

  /**
   * Sweeps a size.
   *
   * @param size path such as {@code base.width}; the structure's name may be left out
   * @param range such as {@code 140..155}, in the design's unit where none is written
   */
  public static Outcome of(Pack pack, String size, String range, boolean dropOuts) {
    Unit unit = pack.inputs().design().unit();
    String[] ends = range.split("\\.\\.", -1);
    if (ends.length != 2) {
      return new Outcome.Refused("a range is written like 140..155, not " + range);
    }
    if (!(Length.read(ends[0], unit) instanceof Reading.Read from)
        || !(Length.read(ends[1], unit) instanceof Reading.Read to)) {
      return new Outcome.Refused("a range is two lengths, such as 140..155, not " + range);
    }
    String path = path(pack, size);
    if (pack.inputs().design().tree().find(path).isEmpty()) {
      return new Outcome.Refused("the design gives no size " + size);
    }
    double step = pack.inputs().bench().trimmer().step();
    double count = (to.length().mm() - from.length().mm()) / step;
    if (!(count >= 0) || count > MOST_ROWS) {
      return new Outcome.Refused(
          "from "
              + ends[0]
              + " to "
              + ends[1]
              + " are not 1 to "
              + MOST_ROWS
              + " marks of the trimmer");
    }
    return sweep(pack, path, from.length().mm(), step, (int) Math.floor(count + 1e-6), dropOuts);
  }

  private static String path(Pack pack, String size) {
    String base = "base." + pack.inputs().design().base().variant();
    return size.startsWith("base.") && !size.startsWith(base + ".")
        ? base + size.substring("base".length())
        : size;
  }

  private static Outcome sweep(
      Pack pack, String path, double from, double step, int count, boolean dropOuts) {
    List<Row> rows = new ArrayList<>();
    boolean priced = false;
    for (int i = 0; i <= count; i++) {
      double mm = from + i * step;
      String yaml = MakerUnits.of(mm(pack)).text(mm);
      Edit edit =
          TextEdit.apply(pack.inputs().design().tree(), new Change.Put(path, written(pack, mm)));
      if (edit instanceof Edit.Refused r) {
        return new Outcome.Refused(path + " cannot be set to " + yaml + ": " + r.reason());
      }
      DesignDocument.Outcome read =
          DesignDocument.read(((Edit.Done) edit).tree(), Structures.FORMS);
      Row row = row(pack, mm, read, dropOuts);
      rows.add(row);
    }
    for (SheetOrder order : orders(pack, dropOuts)) {
      priced = order.priced();
    }
    return new Outcome.Swept(new SizeSweep(path, pack.inputs().wants().units(), priced, rows));
  }

  private static Unit mm(Pack pack) {
    return pack.inputs().design().unit();
  }

  /**
   * A size as the design would write it: exact, since the steps are marks of the design's system.
   */
  private static String written(Pack pack, double mm) {
    Unit unit = pack.inputs().design().unit();
    if (unit == Unit.IN) {
      long sixtyFourths = Math.round(mm / 25.4 * 64);
      return sixtyFourths + "/64 in";
    }
    return String.format(Locale.ROOT, "%.3f mm", mm);
  }

  private static Row row(Pack pack, double mm, DesignDocument.Outcome read, boolean dropOuts) {
    if (read instanceof DesignDocument.Outcome.Wrong w) {
      return new Row(mm, -1, 0, w.problems().get(0).message());
    }
    DesignDocument design = ((DesignDocument.Outcome.Right) read).document();
    Pack.Inputs in = pack.inputs();
    Pack one =
        Pack.of(new Pack.Inputs(design, in.drawings(), in.bench(), in.lettering(), in.wants()));
    if (one.blocked()) {
      return new Row(mm, -1, 0, blocking(one));
    }
    List<SheetWork> work = SheetWork.of(orders(one, dropOuts), () -> false);
    for (SheetWork w : work) {
      if (w.plan().isEmpty()) {
        return new Row(mm, -1, 0, String.join("; ", w.why()));
      }
    }
    int sheets = work.stream().mapToInt(SheetWork::sheets).sum();
    double cost = work.stream().mapToDouble(w -> w.plan().orElseThrow().cost() / 1e6).sum();
    return new Row(mm, sheets, cost, "");
  }

  private static String blocking(Pack pack) {
    return pack.problems().stream()
        .filter(p -> p.level() == Level.BLOCKS)
        .map(p -> p.message())
        .findFirst()
        .orElse("it cannot be made");
  }

  private static List<SheetOrder> orders(Pack pack, boolean dropOuts) {
    if (pack.blocked()) {
      return List.of();
    }
    SheetOrder.Batch one =
        new SheetOrder.Batch(pack.title(), pack.cuts(), pack.inputs().wants().copies());
    return SheetOrder.of(List.of(one), pack.inputs().bench(), JobUnit.MM, dropOuts);
  }

  /** A row as a line of a table. */
  public String line(Row row) {
    String at = String.format(Locale.ROOT, "%12s", units.rounded(row.mm()));
    if (row.sheets() < 0) {
      return at + "  cannot be made: " + row.why();
    }
    String cost =
        priced
            ? String.format(Locale.ROOT, "%.2f", row.cost())
            : String.format(Locale.ROOT, "%.0f cm2 of sheet", row.cost() / 100);
    return at + "  " + row.sheets() + (row.sheets() == 1 ? " sheet,  " : " sheets, ") + cost;
  }

  /** Where the cost steps up by a tenth or more, as sentences; the steepest first. */
  public List<String> cliffs() {
    List<String> told = new ArrayList<>();
    List<double[]> found = new ArrayList<>();
    for (int i = 1; i < rows.size(); i++) {
      Row below = rows.get(i - 1);
      Row above = rows.get(i);
      if (below.sheets() > 0 && above.sheets() > 0 && above.cost() > 1.1 * below.cost()) {
        found.add(new double[] {i, above.cost() / below.cost()});
      }
    }
    found.sort((a, b) -> Double.compare(b[1], a[1]));
    for (double[] f : found) {
      Row below = rows.get((int) f[0] - 1);
      Row above = rows.get((int) f[0]);
      told.add(
          units.rounded(below.mm())
              + " instead of "
              + units.rounded(above.mm())
              + ": "
              + below.sheets()
              + " instead of "
              + above.sheets()
              + " sheets, "
              + Math.round(100 * (1 - below.cost() / above.cost()))
              + " % less for card");
    }
    return told;
  }
}
