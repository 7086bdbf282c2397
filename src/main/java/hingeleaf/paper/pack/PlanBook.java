package hingeleaf.paper.pack;

import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.Book;
import hingeleaf.paper.book.BookStyle;
import java.util.ArrayList;
import java.util.List;

/**
 * The plan as a small book: the card and its cuts on one page, the sheets, what to have and know
 * before, what to do in which order, masks, post, price, what may go wrong, what could hurt.
 */
final class PlanBook {
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
    if (!FrontPage.runsOver(pack)) {
      all.add(new Block.NewPage());
    }
    new SheetChapter(pack, style).add(all);
    List<Block> steps = new ArrayList<>();
    new StepChapter(pack, style).add(steps);
    new BeginChapter(pack).add(all); // after the steps, for it waits until all problems are found
    all.addAll(steps);
    new MaskChapter(pack, style).add(all);
    new PostChapter(pack).add(all);
    new PriceChapter(pack).add(all);
    new TroubleChapter(pack).add(all);
    Cautions.add(pack, all);
    return all;
  }
}
