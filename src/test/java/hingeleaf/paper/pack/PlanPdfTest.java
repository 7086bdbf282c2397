package hingeleaf.paper.pack;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.HouseFonts;
import hingeleaf.paper.pdf.DrawnPage;
import hingeleaf.paper.pdf.PdfWriter;
import hingeleaf.plan.Step;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The plan read back from its file as a stranger's printer and ruler would. */
class PlanPdfTest {
  private static final double MM = 25.4 / 72;
  private static final Fonts FONTS = HouseFonts.read();
  private static Pack pack;
  private static PDDocument pdf;
  private static PDDocument letter;

  @BeforeAll
  static void makePlans() throws IOException {
    pack = SamplePacks.example("fair-winds.yaml");
    pdf = plan(pack);
    letter = plan(SamplePacks.example("harvest-supper.yaml"));
  }

  @AfterAll
  static void close() throws IOException {
    pdf.close();
    letter.close();
  }

  private static PDDocument plan(Pack pack) throws IOException {
    PlanBook book = new PlanBook(pack, FONTS);
    book.steps().fork();
    book.around().forEach(ForkJoinTask::fork);
    byte[] bytes = PdfWriter.write(book.pages(), pack.title(), "en", PdfWriter.Layers.FLAT, FONTS);
    return Loader.loadPDF(bytes);
  }

  private static String text(PDDocument doc, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(doc);
  }

  private static List<DrawnPage.Line> lines(PDDocument doc, int page) throws IOException {
    return DrawnPage.read(doc.getPage(page - 1)).lines();
  }

  @Test
  void pagesAreA4OrLetter() {
    // ISO 216: A4 is 210 x 297 mm; ANSI/ASME Y14.1: size A is 8 1/2 x 11 in.
    for (var page : pdf.getPages()) {
      assertThat(page.getMediaBox().getWidth() * MM).isEqualTo(210, Offset.offset(0.01));
      assertThat(page.getMediaBox().getHeight() * MM).isEqualTo(297, Offset.offset(0.01));
    }
    for (var page : letter.getPages()) {
      assertThat(page.getMediaBox().getWidth() / 72.0).isEqualTo(8.5, Offset.offset(1e-4));
      assertThat(page.getMediaBox().getHeight() / 72.0).isEqualTo(11, Offset.offset(1e-4));
    }
  }

  @Test
  void firstPageHoldsCheckBarChartsAndKey_andTheSheetsComeNext() throws IOException {
    for (PDDocument doc : List.of(pdf, letter)) {
      assertThat(text(doc, 1))
          .contains("100 %", "100 mm", "4 in", "Cut and score", "Openings", "mountain fold");
      assertThat(text(doc, 2)).contains("Sheets");
    }
  }

  @Test
  void checkBarsAreAHundredMillimetresAndFourInches() throws IOException {
    // The inch is 25.4 mm (International Yard and Pound Agreement, 1959).
    List<Double> long1 =
        lines(pdf, 1).stream()
            .filter(l -> l.closed() && Math.abs(l.box().height() - 2.4) < 0.01)
            .map(l -> l.box().width())
            .toList();
    assertThat(long1).anyMatch(w -> Math.abs(w - 100) < 0.01);
    assertThat(long1).anyMatch(w -> Math.abs(w - 101.6) < 0.01);
  }

  @Test
  void mountainScoresHaveTheLineOfTheNotation() throws IOException {
    // Yoshizawa-Randlett as Western books draw it: dash, dot, dot (from Lang); widths of line and
    // element in ISO 128-2: 0.35 mm wide, gaps of 3 widths.
    List<DrawnPage.Line> scores = lines(pdf, 1).stream().filter(l -> l.dash().size() == 6).toList();
    assertThat(scores).hasSizeGreaterThanOrEqualTo(5);
    for (DrawnPage.Line l : scores) {
      assertThat(l.width()).isEqualTo(0.35, Offset.offset(0.005));
      double dash = l.dash().get(0);
      double dot = l.dash().get(2);
      assertThat(dash).isGreaterThan(4 * dot);
      assertThat(l.dash().get(4)).isEqualTo(dot, Offset.offset(0.005));
      for (int gap : new int[] {1, 3, 5}) {
        assertThat(l.dash().get(gap)).isEqualTo(3 * 0.35, Offset.offset(0.005));
      }
    }
  }

  @Test
  void everyStepIsWrittenWithItsNumber() throws IOException {
    StringBuilder all = new StringBuilder();
    for (int p = 1; p <= pdf.getNumberOfPages(); p++) {
      all.append(text(pdf, p));
    }
    String flowing = all.toString().replaceAll("\\s+", " ");
    for (Step s : pack.work().steps()) {
      assertThat(flowing).contains(s.title() + ".");
    }
    assertThat(flowing)
        .contains("Gluing masks", "Fold flat and post", "Price", "When it goes wrong", "Take care")
        .contains("will not flatten", "leans to one side", "splits at the fold")
        .contains("gap at a corner", "off centre", "bows", "a tab shows");
  }

  /** A page's words with line ends as blanks, so that no number is parted from its unit. */
  private static String flowing(PDDocument doc) throws IOException {
    return new PDFTextStripper().getText(doc).replaceAll("\\s+", " ");
  }

  @Test
  void planInInchesHasNoMillimetres_andThePlanInMillimetresNoInches() throws IOException {
    // The check bars show both; nothing else may.
    String inches = flowing(letter);
    assertThat(inches).contains("100 mm").contains(" in");
    assertThat(inches.replaceFirst("100 mm", ""))
        .doesNotContainPattern("\\bmm\\b|\\bcm²?|\\d g\\b(?!/)");
    String metric = flowing(pdf);
    assertThat(metric).contains("4 in").contains(" mm");
    assertThat(metric.replaceFirst("4 in", "")).doesNotContainPattern("\\d in\\b(?! )|\\boz\\b|⁄");
  }

  @Test
  void runSheetAndClassSheetAreInTheMakersUnits() throws IOException {
    Pack inches = SamplePacks.example("harvest-supper.yaml", 50, 12);
    for (var pages : List.of(RunBook.pages(inches, FONTS), ClassBook.pages(inches, FONTS))) {
      byte[] bytes = PdfWriter.write(pages, "sheet", "en", PdfWriter.Layers.FLAT, FONTS);
      try (PDDocument doc = Loader.loadPDF(bytes)) {
        assertThat(flowing(doc)).contains(" in").doesNotContainPattern("\\bmm\\b|\\bcm²?|\\d m\\b");
      }
    }
  }

  @Test
  void whatWasFoundStandsBeforeTheFirstCut() throws IOException {
    // The opening of 130 is wider than the panel less its two tabs of 12: they show by 2 mm (case
    // A).
    Pack found =
        SamplePacks.of(
            SamplePacks.stack("").replace("square: 126", "square: 130"),
            hingeleaf.stock.BuiltInBench.metric(),
            1);
    try (PDDocument doc = plan(found)) {
      String text = flowing(doc);
      int begin = text.indexOf("Before you begin");
      int warned = text.indexOf("show 2 mm inside its opening");
      int stands = text.indexOf("needs a stay");
      int first = text.indexOf("Cut the frames.");
      assertThat(begin).isPositive();
      assertThat(warned).isBetween(begin, first);
      assertThat(stands).isBetween(begin, first);
      assertThat(text.substring(begin, first)).contains("scoring", "PVA glue", "Take care");
    }
  }

  @Test
  void leftHandsMeasureFromTheOtherEdge() throws IOException {
    byte[] bytes =
        PdfWriter.write(
            ClassBook.pages(SamplePacks.example("fair-winds.yaml", 1, 12), FONTS),
            "class",
            "en",
            PdfWriter.Layers.FLAT,
            FONTS);
    try (PDDocument doc = Loader.loadPDF(bytes)) {
      // 198 wide: scores at 12, 24, 174, 186 from the left are 186, 174, 24, 12 from the right;
      // the opening of 106 in the middle begins (198 - 106) / 2 = 46 from either edge.
      assertThat(flowing(doc))
          .contains("Left-handed learners", "expect 1 of 12")
          .contains("from the right edge, which lies against a stop 12 mm, 24 mm, 174 mm, 186 mm")
          .contains("from the right edge 46 mm")
          .contains("glue the right tab first");
    }
  }

  @Test
  void masksAreTrueToSizeAndTheirPricksLieUnderTheParts() throws IOException {
    List<DrawnPage.Line> mask = new ArrayList<>();
    for (int p = 1; p <= pdf.getNumberOfPages(); p++) {
      if (text(pdf, p).contains("Mask for back, good face up")) {
        mask.addAll(lines(pdf, p));
      }
    }
    DrawnPage.Line panel =
        mask.stream()
            .filter(l -> l.closed() && Math.abs(l.box().width() - 150) < 0.01)
            .findFirst()
            .orElseThrow();
    assertThat(panel.box().height()).isEqualTo(150, Offset.offset(0.01));
    // The mat is 124 x 148, 13 from the left and 1 from below (drawn by hand); pricks 2 inside.
    List<DrawnPage.Line> rings =
        mask.stream().filter(l -> l.closed() && Math.abs(l.box().width() - 2.2) < 0.02).toList();
    assertThat(rings).hasSize(4);
    for (DrawnPage.Line ring : rings) {
      double x = ring.box().centre().x() - panel.box().minX();
      double y = ring.box().centre().y() - panel.box().minY();
      assertThat(Math.min(Math.abs(x - 15), Math.abs(x - 135))).isLessThan(0.02);
      assertThat(Math.min(Math.abs(y - 3), Math.abs(y - 147))).isLessThan(0.02);
    }
  }

  @Test
  void typeIsLegibleWhenThePageIsHalved() {
    // A4 to A5 is 1 to the square root of 2 (ISO 216); held at 400 mm capitals of 10 minutes of arc
    // are still read by nine in ten (Smith 1979): 1.164 mm.
    double capital = 0.66 * hingeleaf.paper.Look.SMALL / Math.sqrt(2);
    assertThat(capital).isGreaterThan(1.164);
  }
}
