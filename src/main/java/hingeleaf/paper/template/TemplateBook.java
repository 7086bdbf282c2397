package hingeleaf.paper.template;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.CheckBar;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Drawing.Layer;
import hingeleaf.paper.Fold;
import hingeleaf.paper.LineKey;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.PanelNames;
import hingeleaf.paper.PieceMarks;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.Step;
import hingeleaf.paper.Wrapping;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * All pieces at 1:1: each goes upright or turned a quarter onto the first page with room, else onto
 * a new one; a piece larger than a page is tiled. The first page has the check bar and the key.
 */
public final class TemplateBook {
  private static final double INTRO = 50;

  private final TemplateStyle style;
  private final List<PageMarks> pages = new ArrayList<>();
  private final List<OpenPage> open = new ArrayList<>();

  private TemplateBook(TemplateStyle style) {
    this.style = style;
  }

  /**
   * The pages, each with one layer for each processing step on it.
   *
   * @throws IllegalArgumentException where a piece would need more than a hundred pages
   */
  public static List<Drawing> pages(List<Template> templates, TemplateStyle style) {
    TemplateBook book = new TemplateBook(style);
    List<List<Way>> pieces = templates.stream().map(t -> Way.of(t, style)).toList();
    book.intro(book.newPage(INTRO), pieces);
    pieces.forEach(book::place);
    List<Drawing> drawings = new ArrayList<>();
    for (int i = 0; i < book.pages.size(); i++) {
      drawings.add(book.pages.get(i).drawing(i + 1, book.pages.size()));
    }
    return drawings;
  }

  private OpenPage newPage(double used) {
    PageMarks marks = new PageMarks(style);
    OpenPage page = new OpenPage(marks, used);
    pages.add(marks);
    open.add(page);
    return page;
  }

  private void place(List<Way> ways) {
    if (open.stream().anyMatch(p -> p.put(ways, style))) {
      return;
    }
    if (ways.stream().noneMatch(this::fits)) {
      pages.addAll(new TiledPiece(ways.get(0).template(), style).pages(ways.get(0).piece()));
      return;
    }
    if (!newPage(0).put(ways, style)) {
      throw new IllegalStateException(
          ways.get(0).template().piece().id() + " fits a page but was not laid");
    }
  }

  private boolean fits(Way way) {
    Box area = new PageMarks(style).area();
    return Caption.cell(way.piece()) <= area.width() + 1e-6 && way.height() <= area.height() + 1e-6;
  }

  /** A piece with the names of its panels, for printing. */
  static List<Layer> layers(SeenPiece piece, TemplateStyle style) {
    List<Layer> layers = new ArrayList<>(PieceMarks.inks(piece));
    layers.addAll(PieceMarks.inkOutlines(piece));
    layers.addAll(PieceMarks.embossing(piece));
    layers.addAll(PieceMarks.glue(piece));
    layers.addAll(PieceMarks.structure(piece));
    layers.add(new Layer(Step.LEGEND, PanelNames.of(piece, Look.SMALL, Look.QUIET, style.fonts())));
    return layers;
  }

  private void intro(OpenPage first, List<List<Way>> pieces) {
    PageMarks page = first.marks();
    Box area = page.area();
    double y = area.maxY() - 5;
    Vec2 head = new Vec2(area.minX(), y);
    page.words("Print at 100 %", head, 15 * Look.PT, Weight.SEMIBOLD, Anchor.START, Look.INK);
    String how =
        "Choose “actual size”, never “fit to page”. Lay your own ruler on these bars before"
            + " you cut: if they differ, mend the print, not the pieces.";
    for (String line :
        Wrapping.lines(how, Weight.REGULAR, Look.SMALL, CheckBar.WIDTH, style.fonts())) {
      y -= 4.3;
      Vec2 at = new Vec2(area.minX(), y - 1.5);
      page.words(line, at, Look.SMALL, Weight.REGULAR, Anchor.START, Look.INK);
    }
    page.add(Step.DIMENSIONS, CheckBar.at(new Vec2(area.minX(), area.maxY() - INTRO + 12)));
    Vec2 key = new Vec2(area.minX() + CheckBar.WIDTH + 12, area.maxY() - 0.5);
    page.add(Step.LEGEND, LineKey.at(key, entries(pieces)));
  }

  private Set<LineKey.Entry> entries(List<List<Way>> pieces) {
    Set<LineKey.Entry> entries = EnumSet.of(LineKey.Entry.CUT);
    for (List<Way> ways : pieces) {
      SeenPiece p = ways.get(0).piece();
      p.scores().forEach(s -> entries.add(entry(s.fold())));
      if (!p.pressed().isEmpty()) {
        entries.add(LineKey.Entry.EMBOSS);
      }
      if (!p.glue().isEmpty()) {
        entries.add(LineKey.Entry.GLUE);
      }
      if (ways.stream().noneMatch(this::fits)) {
        entries.add(LineKey.Entry.JOIN);
      }
    }
    return entries;
  }

  private static LineKey.Entry entry(Fold fold) {
    return switch (fold) {
      case MOUNTAIN -> LineKey.Entry.MOUNTAIN;
      case VALLEY -> LineKey.Entry.VALLEY;
      case FLAT -> LineKey.Entry.FLAT;
    };
  }
}
