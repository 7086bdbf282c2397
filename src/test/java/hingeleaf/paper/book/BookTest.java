package hingeleaf.paper.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.PaperSize;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.Samples;
import hingeleaf.paper.Wrapping;
import hingeleaf.paper.book.Block.Caution;
import hingeleaf.paper.book.Block.Column;
import hingeleaf.paper.book.Block.Figure;
import hingeleaf.paper.book.Block.Heading;
import hingeleaf.paper.book.Block.Items;
import hingeleaf.paper.book.Block.NewPage;
import hingeleaf.paper.book.Block.Numbered;
import hingeleaf.paper.book.Block.Pair;
import hingeleaf.paper.book.Block.Paragraph;
import hingeleaf.paper.book.Block.Table;
import hingeleaf.paper.book.Block.Together;
import hingeleaf.paper.pdf.PdfWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BookTest {
  private static final Fonts FONTS = Samples.FONTS;
  private static final BookStyle A4 = new BookStyle(PaperSize.A4, "Fair winds", FONTS);

  private static List<Drawing> pages(Block... blocks) {
    return Book.pages(List.of(blocks), A4);
  }

  private static List<Mark.Words> words(Drawing page) {
    List<Mark.Words> words = new ArrayList<>();
    for (Mark m : page.layers().get(0).marks()) {
      if (m instanceof Mark.Words w) {
        words.add(w);
      }
    }
    return words;
  }

  private static double end(Mark.Words w) {
    double length = FONTS.width(w.text(), w.weight(), w.size());
    return w.at().x() + (w.anchor() == Mark.Anchor.START ? length : 0);
  }

  private static String text(Drawing page) {
    return words(page).stream().map(Mark.Words::text).collect(Collectors.joining(" "));
  }

  private static String prose(int words, long seed) {
    Random random = new Random(seed);
    String[] stock =
        "card score side fold tab frame glue edge mountain valley a the of at".split(" ");
    List<String> all = new ArrayList<>();
    for (int i = 0; i < words; i++) {
      all.add(stock[random.nextInt(stock.length)]);
    }
    return String.join(" ", all);
  }

  @Test
  void pages_nothing_isOneEmptyPage() {
    List<Drawing> pages = pages();
    assertThat(pages).hasSize(1);
    assertThat(text(pages.get(0))).isEqualTo("Fair winds 1");
  }

  @Test
  void paragraph_linesAreNoLongerThanTheMeasure_andLoseNoWord() {
    String prose = prose(900, 3);
    List<Drawing> pages = pages(Paragraph.of(prose));
    String set = pages.stream().map(p -> text(p)).collect(Collectors.joining(" "));
    assertThat(
            set.replace("Fair winds 1", "")
                .replace("Fair winds 2", "")
                .replaceAll(" +", " ")
                .strip())
        .isEqualTo(prose);
    for (Drawing page : pages) {
      for (Mark.Words w : words(page)) {
        double end = end(w);
        if (w.size() == Look.BODY) {
          assertThat(end).isLessThanOrEqualTo(BookStyle.SIDE + BookStyle.MEASURE + 1e-6);
          assertThat(w.at().x()).isGreaterThanOrEqualTo(BookStyle.SIDE - 1e-6);
        }
      }
    }
  }

  @Test
  void everyMark_ofAFullBook_liesOnThePage() {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      blocks.add(new Heading(1 + i % 3, prose(1 + i, i)));
      blocks.add(Paragraph.of(prose(40 + 7 * i, i)).and(prose(9, i), Span.Voice.STRONG));
      blocks.add(Items.of(List.of(prose(5, i), prose(60, i))));
      blocks.add(new Numbered(i, List.of(Paragraph.of(prose(30, i)))));
      blocks.add(new Caution(prose(3, i), Paragraph.of(prose(35, i))));
    }
    List<Drawing> pages = Book.pages(blocks, A4);
    assertThat(pages.size()).isGreaterThan(10);
    for (Drawing page : pages) {
      for (Mark.Words w : words(page)) {
        assertThat(w.at().y()).isBetween(10.0, 297.0 - BookStyle.TOP);
        double end = end(w);
        assertThat(end).isLessThanOrEqualTo(210 - BookStyle.SIDE + 1e-6);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 44, 46, 48, 50, 52})
  void heading_neverEndsAPage(int lines) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      blocks.add(Paragraph.of("line " + i));
    }
    blocks.add(new Heading(2, "Chapter"));
    blocks.add(Paragraph.of("Its first words"));
    for (Drawing page : Book.pages(blocks, A4)) {
      if (text(page).contains("Chapter")) {
        assertThat(text(page)).contains("Its first words");
        return;
      }
    }
    throw new AssertionError("the heading was lost");
  }

  @Test
  void step_isNeverTornApart() {
    List<Block> blocks = new ArrayList<>();
    for (int i = 1; i <= 40; i++) {
      String mark = "no" + i + "x";
      blocks.add(
          new Numbered(
              i, List.of(Paragraph.of(mark + " " + prose(50, i)), Paragraph.note("end" + mark))));
    }
    List<Drawing> pages = Book.pages(blocks, A4);
    assertThat(pages.size()).isGreaterThan(3);
    for (int i = 1; i <= 40; i++) {
      String mark = "no" + i + "x";
      long with = pages.stream().filter(p -> text(p).contains(mark)).count();
      assertThat(with).isEqualTo(1);
    }
  }

  @Test
  void together_tallerThanAPage_isBrokenNotLost() {
    List<Block> many = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      many.add(Paragraph.of("row" + i + "x"));
    }
    List<Drawing> pages = pages(new Together(many));
    assertThat(pages.size()).isBetween(3, 4);
    String all = pages.stream().map(BookTest::text).collect(Collectors.joining(" "));
    for (int i = 0; i < 100; i++) {
      assertThat(all).contains("row" + i + "x");
    }
  }

  @Test
  void table_repeatsItsHeadOnEveryPage() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      rows.add(List.of("piece " + i, "" + i));
    }
    List<Drawing> pages =
        pages(new Table(List.of(Column.name("Piece"), Column.number("Width")), rows));
    assertThat(pages.size()).isGreaterThan(2);
    assertThat(pages).allSatisfy(p -> assertThat(text(p)).contains("Piece Width"));
  }

  @Test
  void table_numbersShareALine() {
    Table table =
        new Table(
            List.of(Column.number("Width")),
            List.of(List.of("9 11/16"), List.of("12.5"), List.of("150"), List.of("7½")));
    List<Double> ends = new ArrayList<>();
    for (Mark.Words w : words(pages(table).get(0))) {
      if (Character.isDigit(w.text().charAt(0)) && w.at().y() > 20) {
        String whole = w.text().replaceAll("[^0-9].*", "").replaceAll("[¹½].*", "");
        ends.add(w.at().x() + FONTS.width(whole, w.weight(), w.size()));
      }
    }
    assertThat(ends).hasSize(4);
    assertThat(ends).allSatisfy(e -> assertThat(e).isCloseTo(ends.get(0), within(1e-6)));
  }

  @Test
  void table_widerThanThePage_wrapsItsText() {
    String text = prose(60, 5);
    Table table =
        new Table(
            List.of(
                Column.name("Piece"), Column.text("What"), Column.text("Why"), Column.number("n")),
            List.of(List.of("near", text, text, "12")));
    for (Mark.Words w : words(pages(table).get(0))) {
      double end = end(w);
      assertThat(end).isLessThanOrEqualTo(210 - BookStyle.SIDE + 1e-6);
    }
  }

  @Test
  void table_unevenRow_isRefused() {
    assertThatThrownBy(() -> new Table(List.of(Column.text("a")), List.of(List.of("1", "2"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2 cells for 1 columns");
  }

  @Test
  void pair_standsSideBySide() {
    Drawing page =
        pages(new Pair(List.of(Paragraph.of("links")), List.of(Paragraph.of("rechts")), 0.5))
            .get(0);
    Mark.Words left = words(page).get(0);
    Mark.Words right = words(page).get(1);
    assertThat(left.text()).isEqualTo("links");
    assertThat(right.at().y()).isEqualTo(left.at().y());
    // Half of 170 - 8, and the gutter of 8.
    assertThat(right.at().x() - left.at().x()).isCloseTo(89, within(1e-9));
  }

  @Test
  void figure_keepsItsSize_andItsCaption() {
    Mark square = new Mark.Stroke(Path.rectangle(0, 0, 50, 40), Pen.CUT);
    Drawing figure = Drawing.plain(50, 40, "square", List.of(square));
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < 33; i++) {
      blocks.add(Paragraph.of("line"));
    }
    blocks.add(new Figure(figure, "A square"));
    List<Drawing> pages = Book.pages(blocks, A4);
    Drawing page = pages.get(pages.size() - 1);
    assertThat(text(page)).contains("A square");
    Mark.Group set =
        page.layers().get(0).marks().stream()
            .filter(Mark.Group.class::isInstance)
            .map(Mark.Group.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(set.marks()).containsExactly(square);
    assertThat(set.by().x()).isEqualTo(BookStyle.SIDE);
    double top = page.height() - BookStyle.TOP;
    assertThat(set.by().y()).isBetween(page.height() - top, top - 40);
  }

  @Test
  void newPage_turnsOnce() {
    List<Drawing> pages =
        pages(new NewPage(), Paragraph.of("one"), new NewPage(), Paragraph.of("two"));
    assertThat(pages).hasSize(2);
    assertThat(text(pages.get(1))).startsWith("two");
  }

  @Test
  void anyUnicode_isSetAndWritten() throws Exception {
    Random random = new Random(17);
    StringBuilder wild = new StringBuilder();
    for (int i = 0; i < 3000; i++) {
      int cp = random.nextInt(i % 3 == 0 ? 0x110000 : 0x3000);
      wild.appendCodePoint(cp);
      if (i % 9 == 0) {
        wild.append(' ');
      }
    }
    byte[] file =
        PdfWriter.write(
            pages(new Heading(1, "Ähre 7 1/2"), Paragraph.of(wild.toString())),
            wild.substring(0, 40),
            "en",
            PdfWriter.Layers.FLAT,
            FONTS);
    try (var document = Loader.loadPDF(file)) {
      assertThat(new PDFTextStripper().getText(document)).contains("Ähre 7½");
    }
  }

  @Test
  void wrapping_longWord_isBroken() {
    List<String> lines = Wrapping.lines("x".repeat(400), Weight.REGULAR, 4, 60, FONTS);
    assertThat(String.join("", lines)).isEqualTo("x".repeat(400));
    assertThat(lines)
        .allSatisfy(l -> assertThat(FONTS.width(l, Weight.REGULAR, 4)).isLessThanOrEqualTo(60));
  }

  @Test
  void shortened_fits() {
    String s = Wrapping.shortened("a very long running title", Weight.REGULAR, 4, 20, FONTS);
    assertThat(s).startsWith("a very").endsWith("…");
    assertThat(FONTS.width(s, Weight.REGULAR, 4)).isLessThanOrEqualTo(20);
  }
}
