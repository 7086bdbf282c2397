package hingeleaf.paper.pack;

import hingeleaf.card.Face;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.Book;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.paper.figure.ScoreChart;
import hingeleaf.plan.ScoreChart.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The plan as a small book: the card and its cuts on one page, the sheets, what to do in which
 * order, masks, post, price, what may go wrong, what could hurt.
 */
final class PlanBook {
  /** More charts than these repeat themselves. */
  private static final int MOST_CHARTS = 4;

  private final Pack pack;
  private final BookStyle style;

  private PlanBook(Pack pack, Fonts fonts) {
    this.pack = pack;
    this.style = new BookStyle(PackFiles.paper(pack), pack.title(), fonts);
  }

  static List<Drawing> pages(Pack pack, Fonts fonts) {
    PlanBook book = new PlanBook(pack, fonts);
    return Book.pages(book.blocks(), book.style);
  }

  private List<Block> blocks() {
    List<Block> all = new ArrayList<>();
    new FrontPage(pack, style).add(all);
    new SheetChapter(pack, style).add(all);
    charts(all);
    new StepChapter(pack, style.width(), style.fonts()).add(all);
    new MaskChapter(pack, style).add(all);
    new PostChapter(pack).add(all);
    new PriceChapter(pack).add(all);
    new TroubleChapter(pack).add(all);
    findings(all);
    Cautions.add(pack, all);
    return all;
  }

  /** Charts of those kinds of pieces that are scored otherwise than the one on the first page. */
  private void charts(List<Block> all) {
    Set<Object> seen = new HashSet<>();
    int drawn = 0;
    for (Row row : pack.scores().rows()) {
      boolean fresh = seen.add(row.settings().stream().map(s -> List.of(s.up(), s.at())).toList());
      if (fresh && seen.size() > 1 && drawn < MOST_CHARTS) {
        SeenPiece piece = SeenPiece.of(row.line().piece(), Face.FRONT, List.of());
        Drawing chart =
            ScoreChart.of(piece, style.width(), 92, PackFiles.lengths(pack), style.fonts());
        List<Block> group = new ArrayList<>();
        if (drawn == 0) {
          group.add(new Block.Heading(2, "Score charts of the other pieces"));
        }
        group.add(new Block.Figure(chart, row.line().names() + ", good face up"));
        all.add(new Block.Together(group));
        drawn++;
      }
    }
  }

  private void findings(List<Block> all) {
    List<Problem> tell = pack.problems().stream().filter(p -> p.level() != Level.BLOCKS).toList();
    if (!tell.isEmpty()) {
      all.add(new Block.Heading(2, "Good to know"));
      all.add(Block.Items.of(tell.stream().map(Problem::message).toList()));
    }
  }
}
