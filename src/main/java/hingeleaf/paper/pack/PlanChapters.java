package hingeleaf.paper.pack;

import hingeleaf.pack.Pack;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.BookStyle;
import java.util.ArrayList;
import java.util.List;

/** Chapters of the plan one by one, for readers other than the printed book: the same words. */
public enum PlanChapters {
  SHEETS,
  STEPS,
  POST,
  PRICE,
  CAUTIONS;

  /** The blocks of this chapter; none where there is nothing to tell. */
  public List<Block> of(Pack pack, Fonts fonts) {
    List<Block> all = new ArrayList<>();
    BookStyle style = new BookStyle(PackFiles.paper(pack), pack.title(), fonts);
    switch (this) {
      case SHEETS -> new SheetChapter(pack, style).add(all);
      case STEPS -> new StepChapter(pack, StepChapter.pictures(pack, style)).add(all);
      case POST -> new PostChapter(pack).add(all);
      case PRICE -> new PriceChapter(pack).add(all);
      case CAUTIONS -> Cautions.add(pack, all);
    }
    return all;
  }
}
