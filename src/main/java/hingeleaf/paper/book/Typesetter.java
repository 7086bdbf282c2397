package hingeleaf.paper.book;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Path;
import hingeleaf.paper.Wrapping;
import java.util.ArrayList;
import java.util.List;

/** Blocks to slabs in a column of one width. */
final class Typesetter implements Block.Visitor<List<Slab>> {
  private static final double INDENT = 5;
  private static final double NUMBER = 12;
  private static final double GUTTER = 8;

  /** Taller steps may go over two pages, mm: half of a page. */
  private static final double TALL_STEP = 130;

  private static final int HEAD_SLABS = 5;

  /** A few lines, the drawing and the check. */
  private static final int END_SLABS = 4;

  /** A column of some 32 signs, below which words beside a drawing are hard to read, mm. */
  private static final double LEAST_COLUMN = 56;

  /** Side by side must save as much as this to be worth a narrower column. */
  private static final double MUCH_SHORTER = 0.88;

  private static final double[] HEAD_SIZE = {24 * Look.PT, 15 * Look.PT, 11.5 * Look.PT};
  private static final double[] HEAD_ROOM = {0, 9, 5.5};

  private final double width;
  private final Fonts fonts;

  Typesetter(double width, Fonts fonts) {
    this.width = width;
    this.fonts = fonts;
  }

  List<Slab> all(List<Block> blocks) {
    List<Slab> slabs = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      List<Slab> set = blocks.get(i).accept(this);
      // A word of introduction stays with the first step that it introduces.
      boolean leads =
          blocks.get(i) instanceof Block.Paragraph
              && i + 1 < blocks.size()
              && blocks.get(i + 1) instanceof Block.Numbered;
      set.forEach(s -> slabs.add(leads ? s.staying(true) : s));
    }
    return slabs;
  }

  private Typesetter narrowed(double by) {
    return new Typesetter(Math.max(20, width - by), fonts);
  }

  @Override
  public List<Slab> heading(Block.Heading h) {
    int level = Math.min(Math.max(h.level(), 1), 3) - 1;
    double size = HEAD_SIZE[level];
    double line = size * 1.2;
    List<Slab> slabs = new ArrayList<>();
    for (String words : Wrapping.lines(h.text(), Weight.SEMIBOLD, size, width, fonts)) {
      Mark mark =
          new Mark.Words(
              words, new Vec2(0, -size * 0.93), size, Weight.SEMIBOLD, Anchor.START, Look.INK, 0);
      double before = slabs.isEmpty() ? HEAD_ROOM[level] : 0;
      slabs.add(Slab.of(before, line, List.of(mark)).staying(true));
    }
    return slabs;
  }

  @Override
  public List<Slab> paragraph(Block.Paragraph p) {
    return Lines.set(p.spans(), Math.min(width, BookStyle.MEASURE), fonts, 2.4);
  }

  @Override
  public List<Slab> items(Block.Items items) {
    List<Slab> slabs = new ArrayList<>();
    for (Block.Paragraph item : items.items()) {
      double measure = Math.min(width, BookStyle.MEASURE) - INDENT;
      List<Slab> lines = Lines.set(item.spans(), measure, fonts, slabs.isEmpty() ? 1.6 : 0.7);
      for (int i = 0; i < lines.size(); i++) {
        Slab line = lines.get(i).moved(INDENT);
        slabs.add(i == 0 ? dotted(line) : line);
      }
    }
    return slabs;
  }

  private static Slab dotted(Slab line) {
    List<Mark> marks = new ArrayList<>(line.marks());
    marks.add(new Mark.Fill(Path.circle(new Vec2(1.6, -2.55), 0.55), Look.QUIET));
    return new Slab(line.before(), line.height(), marks, line.stays(), line.head(), line.breaks());
  }

  @Override
  public List<Slab> table(Block.Table table) {
    return new TableSetter(table, width, fonts).slabs();
  }

  @Override
  public List<Slab> figure(Block.Figure figure) {
    double high = figure.drawing().height();
    Vec2 down = new Vec2(0, -high);
    List<Slab> slabs = new ArrayList<>();
    slabs.add(Slab.of(3, high, List.of(figure.drawing().moved(down))));
    if (!figure.caption().isEmpty()) {
      double measure = Math.max(40, Math.min(figure.drawing().width(), BookStyle.MEASURE));
      Span caption = new Span(figure.caption(), Span.Voice.QUIET);
      slabs.addAll(Lines.set(List.of(caption), Math.min(width, measure), fonts, 1.2));
    }
    return Slab.together(slabs);
  }

  @Override
  public List<Slab> pair(Block.Pair pair) {
    double left = (width - GUTTER) * pair.share();
    double right = width - GUTTER - left;
    Slab a = Slab.stacked(new Typesetter(left, fonts).all(pair.left()));
    Slab b = Slab.stacked(new Typesetter(right, fonts).all(pair.right())).moved(left + GUTTER);
    List<Mark> marks = new ArrayList<>(a.marks());
    marks.addAll(b.marks());
    double before = Math.max(a.before(), b.before());
    return List.of(Slab.of(before, Math.max(a.height(), b.height()), marks));
  }

  @Override
  public List<Slab> numbered(Block.Numbered numbered) {
    List<Slab> body =
        new ArrayList<>(
            narrowed(NUMBER).step(numbered.body()).stream().map(s -> s.moved(NUMBER)).toList());
    if (body.isEmpty()) {
      return body;
    }
    Slab first = body.get(0);
    List<Mark> marks = new ArrayList<>(first.marks());
    double size = 16 * Look.PT;
    marks.add(
        new Mark.Words(
            Integer.toString(numbered.number()),
            new Vec2(NUMBER - 4, -Lines.BASE),
            size,
            Weight.SEMIBOLD,
            Anchor.END,
            Look.ACCENT,
            0));
    body.set(0, Slab.of(5, first.height(), marks).staying(first.stays()));
    return Slab.stacked(body).height() > TALL_STEP ? broken(body) : Slab.together(body);
  }

  /** A step that is most of a page: its head together, and its end; between them it may break. */
  private static List<Slab> broken(List<Slab> body) {
    List<Slab> loose = new ArrayList<>();
    for (int i = 0; i < body.size(); i++) {
      boolean held = i < HEAD_SLABS || i >= body.size() - END_SLABS;
      Slab s = body.get(i);
      loose.add(s.staying(i + 1 < body.size() && (held || s.stays())));
    }
    return loose;
  }

  /**
   * Words and a drawing under each other, or side by side where that is much shorter and leaves the
   * words a column that reads well.
   */
  private List<Slab> step(List<Block> body) {
    List<Slab> below = all(body);
    List<Block.Figure> figures = new ArrayList<>();
    List<Block> words = new ArrayList<>();
    for (Block b : body) {
      if (b instanceof Block.Figure f) {
        figures.add(f);
      } else {
        words.add(b);
      }
    }
    double room = figures.size() == 1 ? width - figures.get(0).drawing().width() - GUTTER : 0;
    if (room < LEAST_COLUMN || words.isEmpty()) {
      return below;
    }
    Slab left = Slab.stacked(new Typesetter(room, fonts).all(words));
    Slab right = Slab.stacked(figure(figures.get(0))).moved(room + GUTTER);
    double high = Math.max(left.height(), right.height());
    if (high > MUCH_SHORTER * Slab.stacked(below).height()) {
      return below;
    }
    List<Mark> marks = new ArrayList<>(left.marks());
    marks.addAll(right.marks());
    return List.of(Slab.of(left.before(), high, marks));
  }

  @Override
  public List<Slab> caution(Block.Caution caution) {
    List<Slab> body = new ArrayList<>();
    body.addAll(Lines.set(List.of(Span.strong(caution.title())), BookStyle.MEASURE - 6, fonts, 0));
    body.addAll(
        narrowed(6).paragraph(caution.text()).stream()
            .map(s -> s.after(Math.min(s.before(), 0.4)))
            .toList());
    Slab inside = Slab.stacked(body).moved(6);
    List<Mark> marks = new ArrayList<>();
    double high = inside.height() + 1;
    marks.add(new Mark.Fill(Path.rectangle(0, -high, 1.1, 0), Look.ACCENT));
    marks.addAll(inside.marks());
    return List.of(Slab.of(5, high, marks));
  }

  @Override
  public List<Slab> together(Block.Together together) {
    return Slab.together(all(together.blocks()));
  }

  @Override
  public List<Slab> gap(Block.Gap gap) {
    // No height, only room above: it vanishes at the top of a page.
    return List.of(Slab.of(gap.height(), 0, List.of()));
  }

  @Override
  public List<Slab> newPage(Block.NewPage newPage) {
    return List.of(Slab.pageBreak());
  }
}
