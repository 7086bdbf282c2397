package hingeleaf.paper.book;

import hingeleaf.paper.Drawing;
import java.util.ArrayList;
import java.util.List;

/** What flows down the pages. A closed family: a {@link Visitor} must know all of them. */
public sealed interface Block {
  /** Calls the one method of the visitor that is for this kind of block. */
  <R> R accept(Visitor<R> visitor);

  /** What is made of each kind of block. */
  interface Visitor<R> {
    R heading(Heading heading);

    R paragraph(Paragraph paragraph);

    R items(Items items);

    R table(Table table);

    R figure(Figure figure);

    R pair(Pair pair);

    R numbered(Numbered numbered);

    R caution(Caution caution);

    R together(Together together);

    R gap(Gap gap);

    R newPage(NewPage newPage);
  }

  /**
   * A heading; it stays with what follows.
   *
   * @param level 1 the document, 2 a chapter, 3 a part of it
   */
  record Heading(int level, String text) implements Block {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.heading(this);
    }
  }

  /** Words, broken into lines of a comfortable length. */
  record Paragraph(List<Span> spans) implements Block {
    public Paragraph {
      spans = List.copyOf(spans);
    }

    public static Paragraph of(String text) {
      return new Paragraph(List.of(Span.plain(text)));
    }

    /** Said in a low voice: small and quiet. */
    public static Paragraph note(String text) {
      return new Paragraph(List.of(new Span(text, Span.Voice.QUIET)));
    }

    /** The same with more words after it. */
    public Paragraph and(String text, Span.Voice voice) {
      List<Span> more = new ArrayList<>(spans);
      more.add(new Span(text, voice));
      return new Paragraph(more);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.paragraph(this);
    }
  }

  /** A list whose order does not matter. */
  record Items(List<Paragraph> items) implements Block {
    public Items {
      items = List.copyOf(items);
    }

    public static Items of(List<String> items) {
      return new Items(items.stream().map(Paragraph::of).toList());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.items(this);
    }
  }

  /**
   * Rows of cells; the head is repeated on every page.
   *
   * @param rows each as many cells as there are columns
   */
  record Table(List<Column> columns, List<List<String>> rows) implements Block {
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(
              "a row has " + row.size() + " cells for " + columns.size() + " columns");
        }
      }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.table(this);
    }
  }

  /** A column of a table. */
  record Column(String title, Align align, boolean strong) {
    public static Column text(String title) {
      return new Column(title, Align.LEFT, false);
    }

    public static Column name(String title) {
      return new Column(title, Align.LEFT, true);
    }

    public static Column number(String title) {
      return new Column(title, Align.NUMBER, false);
    }
  }

  /** How the cells of a column stand under each other. */
  enum Align {
    LEFT,
    RIGHT,
    /** Whole numbers end at one line; decimals, fractions and units follow after it. */
    NUMBER
  }

  /**
   * A drawing at its own size, never scaled.
   *
   * @param caption below it; empty for none
   */
  record Figure(Drawing drawing, String caption) implements Block {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.figure(this);
    }
  }

  /**
   * Two columns side by side, not broken over pages.
   *
   * @param share of the width that the left one has, 0.1 to 0.9
   */
  record Pair(List<Block> left, List<Block> right, double share) implements Block {
    public Pair {
      left = List.copyOf(left);
      right = List.copyOf(right);
      if (!(share >= 0.1 && share <= 0.9)) {
        throw new IllegalArgumentException("a share of " + share + " leaves no room");
      }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.pair(this);
    }
  }

  /** A step of work: its number in the margin, what is done beside it; kept together. */
  record Numbered(int number, List<Block> body) implements Block {
    public Numbered {
      body = List.copyOf(body);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.numbered(this);
    }
  }

  /** What could hurt or spoil; a bar beside it. */
  record Caution(String title, Paragraph text) implements Block {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.caution(this);
    }
  }

  /** Blocks on one page, if they fit one at all. */
  record Together(List<Block> blocks) implements Block {
    public Together {
      blocks = List.copyOf(blocks);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.together(this);
    }
  }

  /** Room, mm; none at the top of a page. */
  record Gap(double height) implements Block {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.gap(this);
    }
  }

  /** What follows starts a page. */
  record NewPage() implements Block {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.newPage(this);
    }
  }
}
