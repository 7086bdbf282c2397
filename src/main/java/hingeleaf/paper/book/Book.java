package hingeleaf.paper.book;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Wrapping;
import java.util.ArrayList;
import java.util.List;

/** Blocks laid out to pages. */
public final class Book {
  private final BookStyle style;
  private final List<List<Mark>> pages = new ArrayList<>();
  private double used;

  private Book(BookStyle style) {
    this.style = style;
    turnPage();
  }

  /**
   * The pages, at least one; each has a foot with the running words and its number.
   *
   * <p>A group of blocks that is taller than a page is broken between slabs; a single figure that
   * is taller is cut off at the foot, so it is to be drawn no taller than {@link
   * BookStyle#height()}.
   */
  public static List<Drawing> pages(List<Block> blocks, BookStyle style) {
    Book book = new Book(style);
    List<Slab> slabs = new Typesetter(style.width(), style.fonts()).all(blocks);
    List<List<Slab>> pages = Breaks.pages(slabs, style.height());
    for (List<Slab> page : pages) {
      if (book.used > 0) {
        book.turnPage();
      }
      page.get(0).head().forEach(book::lay);
      page.forEach(book::lay);
    }
    return book.drawings();
  }

  private void lay(Slab slab) {
    if (used == 0 && slab.marks().isEmpty()) {
      return;
    }
    double y = used == 0 ? 0 : used + slab.before();
    Vec2 by = new Vec2(BookStyle.SIDE, style.paper().height() - BookStyle.TOP - y);
    List<Mark> page = pages.get(pages.size() - 1);
    slab.marks().forEach(m -> page.add(m.moved(by)));
    used = y + slab.height();
  }

  private void turnPage() {
    pages.add(new ArrayList<>());
    used = 0;
  }

  private List<Drawing> drawings() {
    List<Drawing> drawings = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      List<Mark> marks = new ArrayList<>(pages.get(i));
      foot(marks, i + 1);
      String title = style.running() + ", page " + (i + 1);
      drawings.add(Drawing.plain(style.paper().width(), style.paper().height(), title, marks));
    }
    return drawings;
  }

  private void foot(List<Mark> marks, int number) {
    double y = 11;
    double right = style.paper().width() - BookStyle.SIDE;
    String words =
        Wrapping.shortened(
            style.running(), Weight.ITALIC, Look.SMALL, style.width() - 20, style.fonts());
    marks.add(
        new Mark.Words(
            words,
            new Vec2(BookStyle.SIDE, y),
            Look.SMALL,
            Weight.ITALIC,
            Anchor.START,
            Look.QUIET,
            0));
    marks.add(
        new Mark.Words(
            Integer.toString(number),
            new Vec2(right, y),
            Look.SMALL,
            Weight.REGULAR,
            Anchor.END,
            Look.QUIET,
            0));
  }
}
