package hingeleaf.paper.pack;

import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SheetNeed;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.paper.figure.Cells;
import hingeleaf.paper.figure.SheetFigure;
import hingeleaf.sheet.Cut;
import hingeleaf.sheet.PlannedSheet;
import hingeleaf.sheet.SheetStock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** From which sheets everything is cut, and in which order. */
final class SheetChapter {
  private static final double NM = 1e6;
  private static final int MOST_SHEETS = 12;

  private final Pack pack;
  private final BookStyle style;
  private final MakerUnits units;

  SheetChapter(Pack pack, BookStyle style) {
    this.pack = pack;
    this.style = style;
    this.units = pack.inputs().wants().units();
  }

  void add(List<Block> all) {
    all.add(new Block.NewPage());
    all.add(new Block.Heading(2, "Sheets"));
    int copies = pack.inputs().wants().copies();
    all.add(
        Block.Paragraph.of(
            (copies == 1 ? "For one card" : "For " + copies + " cards")
                + " take "
                + shopping()
                + ". Cut along the numbered lines in their order, every cut right across the part"
                + " in hand. Parts for templates have room round them."));
    for (SheetNeed need : pack.sheets()) {
      paper(need, all);
    }
  }

  private String shopping() {
    List<String> parts = new ArrayList<>();
    for (SheetNeed need : pack.sheets()) {
      need.counts()
          .forEach(
              (stock, n) ->
                  parts.add(
                      n
                          + " "
                          + need.job().stock().get(stock).name()
                          + " of "
                          + need.stock().title()));
    }
    return parts.isEmpty() ? "what the lists say" : String.join(", ", parts);
  }

  private void paper(SheetNeed need, List<Block> all) {
    List<Block> group = new ArrayList<>();
    group.add(new Block.Heading(3, need.stock().title()));
    if (!need.trouble().isEmpty()) {
      group.add(Block.Paragraph.of("No sheet plan: " + String.join("; ", need.trouble()) + "."));
      all.addAll(group);
      return;
    }
    List<Cells.Cell> cells = new ArrayList<>();
    alike(need).forEach((sheet, n) -> cells.add(cell(need, sheet, n)));
    int shown = Math.min(MOST_SHEETS, cells.size());
    Drawing row = Cells.of(cells.subList(0, shown), style.width(), style.fonts());
    group.add(new Block.Figure(row, ""));
    all.add(new Block.Together(group));
  }

  /** Sheets that are cut alike, counted. */
  private static Map<PlannedSheet, Integer> alike(SheetNeed need) {
    Map<Object, PlannedSheet> first = new LinkedHashMap<>();
    Map<PlannedSheet, Integer> counts = new LinkedHashMap<>();
    for (PlannedSheet s : need.plan().sheets()) {
      List<Object> key = List.of(s.stock(), s.tree());
      PlannedSheet known = first.computeIfAbsent(key, k -> s);
      counts.merge(known, 1, Integer::sum);
    }
    return counts;
  }

  private Cells.Cell cell(SheetNeed need, PlannedSheet sheet, int count) {
    SheetStock stock = need.job().stock().get(sheet.stock());
    Drawing d =
        SheetFigure.of(need.job(), sheet, style.width() / 3 - 4, 62, style.fonts());
    String settings =
        sheet.cuts().stream().map(Cut::setting).map(nm -> units.number(nm / NM)).collect(
            Collectors.joining(", "));
    return new Cells.Cell(
        d, (count > 1 ? count + " × " : "") + stock.name() + "; falls off at each cut: " + settings);
  }
}
