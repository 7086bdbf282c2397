package hingeleaf.intake;

import hingeleaf.sheet.Grain;
import hingeleaf.sheet.JobUnit;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPiece;
import hingeleaf.sheet.SheetStock;
import hingeleaf.sheet.Trimmer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a sheet job from JSON: {@code unit}, {@code stock}, {@code pieces}, and if wanted {@code
 * trimmer} and {@code least_strip}. Sizes are numbers in the job's unit.
 */
public final class SheetJobReader {
  private static final BigDecimal MILLION = BigDecimal.valueOf(1_000_000);
  private static final Set<String> TOP =
      Set.of("unit", "note", "title", "stock", "pieces", "trimmer", "least_strip");
  private static final Set<String> STOCK = Set.of("name", "w", "h", "price", "qty", "grain");
  private static final Set<String> PIECE = Set.of("name", "w", "h", "qty", "rotate", "grain");
  private static final Set<String> TRIMMER = Set.of("longest", "step", "least_strip");
  private final LocatedJson root;
  private JobUnit unit = JobUnit.MM;

  private SheetJobReader(LocatedJson root) {
    this.root = root;
  }

  /**
   * Reads a job.
   *
   * @throws UnreadableJobException when the text is no sheet job; the message says where and why
   */
  public static SheetJob read(String text) throws UnreadableJobException {
    return new SheetJobReader(LocatedJson.parse(text)).job();
  }

  private SheetJob job() throws UnreadableJobException {
    Map<String, LocatedJson> top = root.object("a sheet job", TOP);
    unit = unit(top.get("unit"));
    List<SheetStock> stock = new ArrayList<>();
    boolean priced = false;
    List<LocatedJson> sheets = root.need(top, "stock").list("stock");
    for (LocatedJson node : sheets) {
      priced |= node.object("a stock", STOCK).containsKey("price");
    }
    for (LocatedJson node : sheets) {
      stock.add(stock(node, priced));
    }
    List<SheetPiece> pieces = new ArrayList<>();
    for (LocatedJson node : root.need(top, "pieces").list("pieces")) {
      pieces.add(piece(node, pieces.size() + 1));
    }
    return new SheetJob(unit, stock, pieces, trimmer(top));
  }

  private JobUnit unit(@Nullable LocatedJson node) throws UnreadableJobException {
    if (node == null) {
      throw root.fault("the unit is missing: write \"unit\": \"mm\", \"cm\" or \"in\"");
    }
    String word = node.word("the unit");
    for (JobUnit u : JobUnit.values()) {
      if (u.label().equals(word)) {
        return u;
      }
    }
    throw node.fault("the unit is one of mm, cm, in for the whole job, found \"" + word + "\"");
  }

  private SheetStock stock(LocatedJson node, boolean priced) throws UnreadableJobException {
    Map<String, LocatedJson> map = node.object("a stock", STOCK);
    LocatedJson price = map.get("price");
    if (price == null && priced) {
      throw node.fault("this stock has no price, but others have: give all of them one, or none");
    }
    long money = price == null ? 1_000_000 : money(price);
    LocatedJson name = map.get("name");
    return new SheetStock(
        name == null ? "" : name.word("the name"),
        size(node.need(map, "w"), "w"),
        size(node.need(map, "h"), "h"),
        money,
        quantity(map.get("qty")),
        grain(map.get("grain")));
  }

  private OptionalLong quantity(@Nullable LocatedJson node) throws UnreadableJobException {
    if (node == null || node.isNull()) {
      return OptionalLong.empty();
    }
    long n = node.whole("the quantity");
    if (n < 0) {
      throw node.fault("a quantity of stock is 0 or more, or null for no limit; found " + n);
    }
    return OptionalLong.of(n);
  }

  private long money(LocatedJson node) throws UnreadableJobException {
    BigDecimal value = node.number("the price");
    if (value.signum() < 0 || value.compareTo(BigDecimal.valueOf(1_000_000_000L)) > 0) {
      throw node.fault("a price lies between 0 and a thousand million, found " + value);
    }
    return value.multiply(MILLION).setScale(0, RoundingMode.HALF_UP).longValueExact();
  }

  private SheetPiece piece(LocatedJson node, int number) throws UnreadableJobException {
    Map<String, LocatedJson> map = node.object("a piece", PIECE);
    LocatedJson name = map.get("name");
    LocatedJson qty = map.get("qty");
    LocatedJson rotate = map.get("rotate");
    long count = qty == null ? 1 : qty.whole("the quantity");
    if (count < 1) {
      throw java.util.Objects.requireNonNull(qty)
          .fault("a quantity of pieces is a whole number from 1, found " + count);
    }
    return new SheetPiece(
        name == null ? "piece " + number : name.word("the name"),
        size(node.need(map, "w"), "w"),
        size(node.need(map, "h"), "h"),
        count,
        rotate == null || rotate.yes("rotate"),
        grain(map.get("grain")));
  }

  private Grain grain(@Nullable LocatedJson node) throws UnreadableJobException {
    if (node == null || node.isNull()) {
      return Grain.ANY;
    }
    String word = node.word("the grain");
    return switch (word) {
      case "w" -> Grain.W;
      case "h" -> Grain.H;
      case "any" -> Grain.ANY;
      default -> throw node.fault("the grain is \"w\", \"h\" or \"any\", found \"" + word + "\"");
    };
  }

  private Trimmer trimmer(Map<String, LocatedJson> top) throws UnreadableJobException {
    LocatedJson node = top.get("trimmer");
    Map<String, LocatedJson> map =
        node == null || node.isNull() ? Map.of() : node.object("the trimmer", TRIMMER);
    long strip = optional(top.get("least_strip"), "least_strip");
    return new Trimmer(
        optional(map.get("longest"), "longest"),
        optional(map.get("step"), "step"),
        Math.max(strip, optional(map.get("least_strip"), "least_strip")));
  }

  private long optional(@Nullable LocatedJson node, String name) throws UnreadableJobException {
    return node == null || node.isNull() ? 0 : size(node, name);
  }

  private long size(LocatedJson node, String name) throws UnreadableJobException {
    BigDecimal value = node.number(name);
    if (value.signum() <= 0) {
      throw node.fault(name + " must be above zero, found " + value.toPlainString());
    }
    BigDecimal nm = value.multiply(BigDecimal.valueOf(unit.nanometres()));
    if (nm.compareTo(BigDecimal.valueOf(100_000_000_000L)) > 0) {
      throw node.fault(name + " is above 100 m, which no sheet is");
    }
    if (nm.compareTo(BigDecimal.ONE) < 0) {
      throw node.fault(name + " is less than a nanometre");
    }
    return unit.toNanometres(value);
  }
}
