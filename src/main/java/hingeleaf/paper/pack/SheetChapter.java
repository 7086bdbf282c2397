package hingeleaf.paper.pack;

import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.paper.figure.Cells;
import hingeleaf.paper.figure.SheetFigure;
import hingeleaf.plan.SheetWork;
import hingeleaf.sheet.Cut;
import hingeleaf.sheet.CutTree;
import hingeleaf.sheet.PlannedSheet;
import hingeleaf.sheet.SheetStock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** From which sheets everything is cut, and in which order. */
final class SheetChapter {
  private static final double NM = 1e6;
  private static final int ROW = 4;

  private final Pack pack;
  private final BookStyle style;
  private final MakerUnits units;

  SheetChapter(Pack pack, BookStyle style) {
    this.pack = pack;
    this.style = style;
    this.units = pack.inputs().wants().units();
  }

  void add(List<Block> all) {
    all.add(new Block.Heading(2, "Sheets"));
    int copies = pack.inputs().wants().copies();
    all.add(
        Block.Paragraph.of(
            (copies == 1 ? "For one card" : "For " + copies + " cards")
                + " take "
                + shopping(pack.sheets())
                + ". Cut along the numbered lines in their order, every cut right across the part"
                + " in hand; below each sheet stands how wide the part is that falls off."));
    List<Cells.Cell> cells = new ArrayList<>();
    for (SheetWork need : pack.sheets()) {
      if (need.plan().isPresent()) {
        alike(need).forEach(same -> cells.add(cell(need, same.get(0), same.size())));
      } else {
        all.add(
            Block.Paragraph.of(
                need.order().stock().title()
                    + ": no plan; "
                    + String.join("; ", need.why())
                    + "."));
      }
    }
    for (int i = 0; i < cells.size(); i += ROW) {
      List<Cells.Cell> row = cells.subList(i, Math.min(cells.size(), i + ROW));
      all.add(new Block.Figure(Cells.of(row, style.width(), style.fonts()), ""));
    }
  }

  /** "2 sheets (A4) of white card 300 g/m2, 1 sheet (A4) of navy card". */
  static String shopping(List<SheetWork> needs) {
    List<String> parts = new ArrayList<>();
    for (SheetWork need : needs) {
      need.counts()
          .forEach(
              (stock, n) ->
                  parts.add(
                      n
                          + (n == 1 ? " sheet (" : " sheets (")
                          + need.order().job().stock().get(stock).name()
                          + ") of "
                          + need.order().stock().title()));
    }
    return parts.isEmpty() ? "what the lists say" : String.join(", ", parts);
  }

  /** Sheets that are cut alike, together. */
  private static Collection<List<PlannedSheet>> alike(SheetWork need) {
    Map<List<Long>, List<PlannedSheet>> alike = new LinkedHashMap<>();
    for (PlannedSheet s : need.plan().map(p -> p.sheets()).orElse(List.of())) {
      List<Long> cuts = new ArrayList<>(List.of((long) s.stock()));
      spell(s.tree(), cuts);
      alike.computeIfAbsent(cuts, k -> new ArrayList<>()).add(s);
    }
    return alike.values();
  }

  /** A cut tree as a row of numbers; equal for equal trees only. */
  private static void spell(CutTree tree, List<Long> out) {
    out.addAll(List.of(tree.w(), tree.h()));
    if (tree instanceof CutTree.Split split) {
      out.addAll(List.of(-1L, (long) split.axis().ordinal(), (long) split.parts().size()));
      split.parts().forEach(p -> spell(p, out));
    } else {
      out.add(tree instanceof CutTree.Piece p ? 2L * p.piece() + (p.rotated() ? 1 : 0) : -2L);
    }
  }

  private Cells.Cell cell(SheetWork need, PlannedSheet sheet, int count) {
    SheetStock stock = need.order().job().stock().get(sheet.stock());
    Drawing d = SheetFigure.of(need.order().job(), sheet, style.width() / 4 - 4, 56, style.fonts());
    String settings =
        sheet.cuts().stream()
            .map(Cut::setting)
            .map(nm -> units.number(nm / NM))
            .collect(Collectors.joining(", "));
    return new Cells.Cell(
        d,
        (count > 1 ? count + " × " : "")
            + stock.name()
            + ", "
            + need.order().stock().title().replaceAll(" \\([^()]*\\)$", "")
            + (SheetFigure.numbered(sheet)
                ? ". Trimmer at each cut: " + settings
                : ". Many small parts: cut the strip off, then them in any order"));
  }
}
