package hingeleaf.plan;

import hingeleaf.geom.Box;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.sheet.JobUnit;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPiece;
import hingeleaf.sheet.SheetStock;
import hingeleaf.sheet.Trimmer;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * What has to be cut from one paper, as a job for the sheet planner.
 *
 * @param stock the paper
 * @param job sizes in whole nanometres, rounded outwards from the piece's box
 * @param priced whether the bench tells prices; where not, sheets are weighed by their area in mm2
 */
public record SheetOrder(Stock stock, SheetJob job, boolean priced) {
  private static final double NM_PER_MM = 1e6;
  private static final double MICROS = 1e6;

  /**
   * Some cards of one design.
   *
   * @param copies at least 1
   */
  public record Batch(String title, CutList cuts, int copies) {}

  /**
   * One order for each paper of all batches, in the order in which they first need it; a paper of
   * which no sheet is told is left out.
   *
   * @param dropOuts whether what falls out of openings is used for smaller pieces
   */
  public static List<SheetOrder> of(
      List<Batch> batches, Bench bench, JobUnit unit, boolean dropOuts) {
    Map<String, List<SheetPiece>> pieces = new LinkedHashMap<>();
    Map<String, List<SheetStock>> scraps = new LinkedHashMap<>();
    Map<String, Stock> stocks = new LinkedHashMap<>();
    for (Batch b : batches) {
      for (CutList.Line line : b.cuts().lines()) {
        Stock stock = line.piece().stock();
        stocks.putIfAbsent(stock.name(), stock);
        pieces
            .computeIfAbsent(stock.name(), k -> new ArrayList<>())
            .add(piece(line, b, batches.size() > 1));
        if (dropOuts) {
          scraps.computeIfAbsent(stock.name(), k -> new ArrayList<>()).addAll(fallen(line, b));
        }
      }
    }
    List<SheetOrder> orders = new ArrayList<>();
    for (Stock stock : stocks.values()) {
      if (!stock.sheets().isEmpty()) {
        List<SheetStock> free = scraps.getOrDefault(stock.name(), List.of());
        orders.add(order(stock, pieces.getOrDefault(stock.name(), List.of()), free, bench, unit));
      }
    }
    return orders;
  }

  private static SheetOrder order(
      Stock stock, List<SheetPiece> pieces, List<SheetStock> free, Bench bench, JobUnit unit) {
    boolean priced = stock.sheets().stream().allMatch(s -> s.price() > 0);
    List<SheetStock> sheets = new ArrayList<>();
    for (Stock.Sheet s : stock.sheets()) {
      double price = priced ? s.price() : s.width() * s.height();
      OptionalLong left = s.left() < 0 ? OptionalLong.empty() : OptionalLong.of(s.left());
      sheets.add(
          new SheetStock(
              s.name(),
              inside(s.width()),
              inside(s.height()),
              Math.round(price * MICROS),
              left,
              grain(s.grain())));
    }
    sheets = priced ? sheets : enough(sheets, stock, pieces);
    sheets.addAll(free);
    Trimmer trimmer =
        new Trimmer(inside(bench.trimmer().longest()), inside(bench.trimmer().step()), 0);
    boolean long1 =
        stock.sheets().stream()
            .anyMatch(s -> Math.min(s.width(), s.height()) > bench.trimmer().longest() + 1e-6);
    Trimmer used = long1 ? Trimmer.UNSAID : trimmer;
    return new SheetOrder(stock, new SheetJob(unit, sheets, pieces, used), priced);
  }

  /** Where no price tells which size is better: the smallest in which every piece fits, alone. */
  private static List<SheetStock> enough(
      List<SheetStock> sheets, Stock stock, List<SheetPiece> pieces) {
    boolean counted = stock.sheets().stream().anyMatch(s -> s.left() >= 0);
    List<SheetStock> all = new ArrayList<>(sheets);
    return counted
        ? all
        : sheets.stream()
            .filter(s -> pieces.stream().allMatch(p -> p.liesUpright(s) || p.liesTurned(s)))
            .min(Comparator.comparingDouble(s -> (double) s.w() * s.h()))
            .map(s -> new ArrayList<>(List.of(s)))
            .orElse(new ArrayList<>(all));
  }

  private static SheetPiece piece(CutList.Line line, Batch batch, boolean several) {
    String name = several ? batch.title() + ": " + line.names() : line.names();
    return new SheetPiece(
        name,
        outside(line.blankWidth()),
        outside(line.blankHeight()),
        (long) line.quantity() * batch.copies(),
        true,
        grain(line.piece().grain()));
  }

  /** The largest middle rectangles of what falls out, as stock that costs nothing. */
  private static List<SheetStock> fallen(CutList.Line line, Batch batch) {
    List<SheetStock> free = new ArrayList<>();
    for (Ring r : line.piece().apertures()) {
      Box b = rectangleIn(r.anticlockwise());
      if (b.width() >= 1 && b.height() >= 1) {
        long quantity = (long) line.quantity() * batch.copies();
        hingeleaf.sheet.Grain grain = grain(line.piece().grain());
        free.add(
            new SheetStock(
                "drop-out of " + line.names(),
                inside(b.width()),
                inside(b.height()),
                0,
                OptionalLong.of(quantity),
                grain));
      }
    }
    return free;
  }

  /**
   * The largest rectangle about a ring's middle, of the shape of its box, that lies inside: exact
   * for rectangles, circles and ellipses; a fair part of other shapes.
   */
  static Box rectangleIn(Ring ring) {
    Box box = ring.box();
    double low = 0;
    double high = 1;
    for (int i = 0; i < 40; i++) {
      double k = (low + high) / 2;
      if (holds(ring, scaled(box, k))) {
        low = k;
      } else {
        high = k;
      }
    }
    return scaled(box, holds(ring, scaled(box, 1 - 1e-9)) ? 1 : low);
  }

  private static Box scaled(Box b, double k) {
    Vec2 c = b.centre();
    return new Box(
        c.x() - k * b.width() / 2,
        c.y() - k * b.height() / 2,
        c.x() + k * b.width() / 2,
        c.y() + k * b.height() / 2);
  }

  /** Corners inside, and no point of the ring inside the box. */
  private static boolean holds(Ring ring, Box b) {
    boolean corners =
        ring.contains(new Vec2(b.minX(), b.minY()))
            && ring.contains(new Vec2(b.maxX(), b.minY()))
            && ring.contains(new Vec2(b.minX(), b.maxY()))
            && ring.contains(new Vec2(b.maxX(), b.maxY()));
    return corners && ring.points().stream().noneMatch(p -> strictlyIn(b, p));
  }

  private static boolean strictlyIn(Box b, Vec2 p) {
    double e = 1e-9;
    return p.x() > b.minX() + e
        && p.x() < b.maxX() - e
        && p.y() > b.minY() + e
        && p.y() < b.maxY() - e;
  }

  /** Room, rounded down; a ten-millionth of a millimetre is given for what floating point lost. */
  private static long inside(double mm) {
    return (long) Math.floor(mm * NM_PER_MM + 0.1);
  }

  /** Need, rounded up in the same way, so that what fits exactly still fits. */
  private static long outside(double mm) {
    return (long) Math.ceil(mm * NM_PER_MM - 0.1);
  }

  private static hingeleaf.sheet.Grain grain(Grain g) {
    return switch (g) {
      case WIDTH -> hingeleaf.sheet.Grain.W;
      case HEIGHT -> hingeleaf.sheet.Grain.H;
      case ANY -> hingeleaf.sheet.Grain.ANY;
    };
  }
}
