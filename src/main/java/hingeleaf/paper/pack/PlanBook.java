package hingeleaf.paper.pack;

import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.Book;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.sight.View;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;

/**
 * The plan as a small book: the card and its cuts on one page, the sheets, what to have and know
 * before, what to do in which order, masks, post, price, what may go wrong, what could hurt.
 */
final class PlanBook {
  private final Pack pack;
  private final BookStyle style;
  private final StepPictures pictures;
  private final ForkJoinTask<View> standing = ForkJoinTask.adapt(this::grown);
  private final ForkJoinTask<List<Block>> before = ForkJoinTask.adapt(this::opening);
  private final ForkJoinTask<List<Block>> steps = ForkJoinTask.adapt(this::making);
  private final ForkJoinTask<List<Block>> after = ForkJoinTask.adapt(this::closing);

  PlanBook(Pack pack, Fonts fonts) {
    this.pack = pack;
    this.style = new BookStyle(PackFiles.paper(pack), pack.title(), fonts);
    this.pictures = StepChapter.pictures(pack, style);
  }

  /** The longest part of the book; whoever wants {@link #pages} has it run. */
  ForkJoinTask<?> steps() {
    return steps;
  }

  /** The standing card, and what comes before and after the steps, to be run likewise. */
  List<ForkJoinTask<?>> around() {
    return List.of(standing, before, after);
  }

  /** The whole card as it stands; waits until it is drawn. */
  View standing() {
    return standing.join();
  }

  /** All pages; waits for the parts. */
  List<Drawing> pages() {
    List<Block> all = new ArrayList<>();
    List.of(before, steps, after).forEach(part -> all.addAll(part.join()));
    return Book.pages(all, style);
  }

  private View grown() {
    pack.goOn();
    return pictures.standing();
  }

  private List<Block> opening() {
    List<Block> all = new ArrayList<>();
    new FrontPage(pack, style).add(standing(), all);
    if (!FrontPage.runsOver(pack)) {
      all.add(new Block.NewPage());
    }
    new SheetChapter(pack, style).add(all);
    return all;
  }

  private List<Block> making() {
    pack.goOn();
    pack.wayToBestRest(); // the other pictures show the card on its way flat
    standing();
    List<Block> steps = new ArrayList<>();
    new StepChapter(pack, pictures).add(steps);
    List<Block> all = new ArrayList<>();
    new BeginChapter(pack).add(all); // after the steps, for it waits until all problems are found
    all.addAll(steps);
    return all;
  }

  private List<Block> closing() {
    List<Block> all = new ArrayList<>();
    new MaskChapter(pack, style).add(all);
    new PostChapter(pack).add(all);
    new PriceChapter(pack).add(all);
    new TroubleChapter(pack).add(all);
    Cautions.add(pack, all);
    return all;
  }
}
