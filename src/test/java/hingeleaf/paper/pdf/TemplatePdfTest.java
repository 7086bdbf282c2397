package hingeleaf.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Embossing;
import hingeleaf.card.Face;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Lengths;
import hingeleaf.paper.PaperSize;
import hingeleaf.paper.Samples;
import hingeleaf.paper.pdf.DrawnPage.Line;
import hingeleaf.paper.template.Template;
import hingeleaf.paper.template.TemplateBook;
import hingeleaf.paper.template.TemplateStyle;
import hingeleaf.stock.EmbossingFolder;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The template file is read back and measured: what is printed at 100 % is what is cut. */
class TemplatePdfTest {
  /** A hundredth of a millimetre: a fiftieth of what a careful hand cuts to. */
  private static final double TRUE = 0.01;

  private static final Piece NEAR = Samples.frame("near", 150, 150, 12, 12, 120);
  private static final Piece GRAND = Samples.frame("grand", 300, 320, 20, 15, 200);

  private static byte[] file(PaperSize paper, Face face, Piece... pieces) {
    List<Template> templates = new ArrayList<>();
    for (Piece p : pieces) {
      templates.add(new Template(p, 1, Samples.tabs(p, p.scores().get(0).at().from().x())));
    }
    return PdfWriter.write(
        TemplateBook.pages(
            templates, new TemplateStyle("Fair winds", paper, face, Lengths.MM, Samples.FONTS)),
        "Fair winds",
        "en",
        PdfWriter.Layers.STEPS,
        Samples.FONTS);
  }

  private static List<DrawnPage> read(byte[] file) throws IOException {
    List<DrawnPage> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file)) {
      for (var page : document.getPages()) {
        pages.add(DrawnPage.read(page));
      }
    }
    return pages;
  }

  private static Line largest(List<Line> lines) {
    return lines.stream()
        .filter(Line::closed)
        .max((a, b) -> Double.compare(a.box().width(), b.box().width()))
        .orElseThrow();
  }

  // Case A of the trade notes: W 150, H 150, side 12, tabs 12: a piece of 198 x 150, scored at 12,
  // 24, 174 and 186.
  @Test
  void pieceOfCaseA_onLetter_hasItsTrueSizes() throws IOException {
    DrawnPage page = read(file(PaperSize.US_LETTER, Face.FRONT, NEAR)).get(0);
    Box outline = largest(page.lines("Cutting")).box();
    assertThat(outline.width()).isCloseTo(198, within(TRUE));
    assertThat(outline.height()).isCloseTo(150, within(TRUE));
    List<Double> scores =
        page.lines("Creasing").stream()
            .map(l -> l.points().get(0).x() - outline.minX())
            .sorted()
            .toList();
    assertThat(scores).hasSize(4);
    double[] expected = {12, 24, 174, 186};
    for (int i = 0; i < expected.length; i++) {
      assertThat(scores.get(i)).isCloseTo(expected[i], within(TRUE));
    }
    assertThat(page.lines("Creasing"))
        .allSatisfy(l -> assertThat(l.length()).isCloseTo(150, within(TRUE)));
  }

  @Test
  void aperture_isRoundAndCentred() throws IOException {
    DrawnPage page = read(file(PaperSize.US_LETTER, Face.FRONT, NEAR)).get(0);
    Box outline = largest(page.lines("Cutting")).box();
    Line hole =
        page.lines("Cutting").stream()
            .filter(l -> l.points().size() > 50)
            .findFirst()
            .orElseThrow();
    assertThat(hole.points())
        .allSatisfy(p -> assertThat(p.distance(outline.centre())).isCloseTo(60, within(TRUE)));
  }

  @Test
  void pieceWiderThanA4_isTurnedNotScaled() throws IOException {
    DrawnPage page = read(file(PaperSize.A4, Face.FRONT, NEAR)).get(0);
    Box outline = largest(page.lines("Cutting")).box();
    assertThat(outline.width()).isCloseTo(150, within(TRUE));
    assertThat(outline.height()).isCloseTo(198, within(TRUE));
  }

  // 1 in = 25.4 mm exactly (CSS Values and Units; international inch), so 4 in = 101.6 mm.
  @ParameterizedTest
  @EnumSource(Face.class)
  void checkBars_areA100mmAnd4in(Face face) throws IOException {
    DrawnPage page = read(file(PaperSize.A4, face, NEAR)).get(0);
    List<Double> bars =
        page.lines("Dimensions").stream()
            .filter(Line::closed)
            .map(l -> l.box().width())
            .sorted()
            .toList();
    assertThat(bars).hasSize(2);
    assertThat(bars.get(0)).isCloseTo(100, within(TRUE));
    assertThat(bars.get(1)).isCloseTo(101.6, within(TRUE));
  }

  // ISO 216: A4 is 210 x 297 mm; ANSI/ASME Y14.1: size A is 8.5 x 11 in.
  @Test
  void pages_haveTheSizeOfThePaper() throws IOException {
    try (PDDocument a4 = Loader.loadPDF(file(PaperSize.A4, Face.FRONT, NEAR));
        PDDocument letter = Loader.loadPDF(file(PaperSize.US_LETTER, Face.FRONT, NEAR))) {
      assertThat(a4.getPage(0).getMediaBox().getWidth() * 25.4 / 72).isCloseTo(210, within(1e-4));
      assertThat(a4.getPage(0).getMediaBox().getHeight() * 25.4 / 72).isCloseTo(297, within(1e-4));
      assertThat(letter.getPage(0).getMediaBox().getWidth() / 72.0).isCloseTo(8.5, within(1e-5));
      assertThat(letter.getPage(0).getMediaBox().getHeight() / 72.0).isCloseTo(11, within(1e-5));
    }
  }

  @Test
  void back_isMirroredAndItsMountainsAreValleys() throws IOException {
    Piece wedge = Samples.crooked();
    Line front = largest(read(file(PaperSize.A4, Face.FRONT, wedge)).get(0).lines("Cutting"));
    DrawnPage backPage = read(file(PaperSize.A4, Face.BACK, wedge)).get(0);
    Line back = largest(backPage.lines("Cutting"));
    // The corner at the upper right of the front is 31.75 high, at the upper left 30.
    assertThat(heightAtRight(front)).isCloseTo(31.75, within(TRUE));
    assertThat(heightAtRight(back)).isCloseTo(30, within(TRUE));
    // The front has a valley 20 long; on the back that is a mountain, scored on the seen face.
    assertThat(backPage.lines("Creasing"))
        .anySatisfy(l -> assertThat(l.length()).isCloseTo(20, within(TRUE)));
    assertThat(backPage.lines("ReverseCreasing"))
        .singleElement()
        .satisfies(l -> assertThat(l.length()).isCloseTo(38.9, within(TRUE)));
  }

  private static double heightAtRight(Line line) {
    Box box = line.box();
    return line.points().stream()
            .filter(p -> box.maxX() - p.x() < TRUE)
            .mapToDouble(p -> p.y())
            .max()
            .orElseThrow()
        - box.minY();
  }

  @Test
  void largePiece_isTiled_andTheTilesTogetherAreThePiece() throws IOException {
    List<DrawnPage> pages = read(file(PaperSize.A4, Face.FRONT, GRAND));
    assertThat(pages).hasSize(5);
    for (DrawnPage page : pages.subList(1, 5)) {
      Box outline = largest(page.lines("Cutting")).box();
      assertThat(outline.width()).isCloseTo(370, within(TRUE));
      assertThat(outline.height()).isCloseTo(320, within(TRUE));
    }
    // Targets of A1 and B1 lie at the same places of the piece.
    List<Box> left = targets(pages.get(1));
    List<Box> right = targets(pages.get(2));
    long shared =
        left.stream()
            .filter(a -> right.stream().anyMatch(b -> a.centre().distance(b.centre()) < TRUE))
            .count();
    assertThat(shared).isEqualTo(3);
  }

  /** Rings of the targets, in coordinates of the piece. */
  private static List<Box> targets(DrawnPage page) {
    Box outline = largest(page.lines("Cutting")).box();
    return page.lines("Legend").stream()
        .filter(l -> l.closed() && l.points().size() == 36)
        .map(l -> l.box())
        .map(
            b ->
                new Box(
                    b.minX() - outline.minX(),
                    b.minY() - outline.minY(),
                    b.maxX() - outline.minX(),
                    b.maxY() - outline.minY()))
        .toList();
  }

  // ISO 19593-1:2018: group required; type required for Structural, absent for Dimensions and
  // Legend; the names are those of its list of 23 structural types.
  @Test
  void layers_areTheProcessingStepsOfIso19593() throws IOException {
    Set<String> structural = Set.of("Cutting", "Creasing", "ReverseCreasing", "Gluing");
    Set<String> seen = new TreeSet<>();
    try (PDDocument document =
        Loader.loadPDF(file(PaperSize.A4, Face.FRONT, NEAR, Samples.crooked()))) {
      var groups = document.getDocumentCatalog().getOCProperties().getOptionalContentGroups();
      for (var group : groups) {
        COSDictionary meta =
            group.getCOSObject().getCOSDictionary(COSName.getPDFName("GTS_Metadata"));
        String family = meta.getNameAsString("GTS_ProcStepsGroup");
        String type = meta.getNameAsString("GTS_ProcStepsType");
        assertThat(family).isIn("Structural", "Dimensions", "Legend");
        if (family.equals("Structural")) {
          assertThat(structural).contains(type);
        } else {
          assertThat(type).isNull();
        }
        assertThat(group.getCOSObject().containsKey("GTS_ProcStepsGroup")).isFalse();
        assertThat(seen.add(family + "/" + type)).as("one group for each step").isTrue();
      }
      assertThat(seen).hasSize(6);
    }
  }

  // The same list: what is pressed is Embossing, at its true size. 105 x 148 mm is ISO A6.
  @Test
  void pattern_isAnEmbossingLayer_atItsTrueSize() throws IOException {
    Piece plain = Samples.frame("near", 150, 150, 12, 12, 60);
    var folder = new EmbossingFolder("a6", "A6", 105, 148, 0.8);
    Box plates = new Box(46.5, 1, 151.5, 149);
    Piece pressed = plain.embossed(new Embossing(folder, "panel", plates, "frames/0"));
    assertThat(read(file(PaperSize.A4, Face.FRONT, plain)).get(0).lines("Embossing")).isEmpty();
    Box drawn =
        largest(read(file(PaperSize.A4, Face.FRONT, pressed)).get(0).lines("Embossing")).box();
    // The piece is 198 wide and lies turned on A4.
    assertThat(Math.min(drawn.width(), drawn.height())).isCloseTo(105, within(1e-3));
    assertThat(Math.max(drawn.width(), drawn.height())).isCloseTo(148, within(1e-3));
  }

  @Test
  void everyLine_isInALayer_inASpotColourThatOverprints() throws IOException {
    Set<String> forbidden = Set.of("All", "None", "Cyan", "Magenta", "Yellow", "Black", "");
    for (DrawnPage page : read(file(PaperSize.A4, Face.FRONT, NEAR, GRAND, Samples.crooked()))) {
      assertThat(page.images()).isZero();
      assertThat(page.loose()).isZero();
      assertThat(page.lines()).isNotEmpty();
      assertThat(page.lines())
          .allSatisfy(
              l -> {
                assertThat(l.layer()).isNotEmpty();
                assertThat(forbidden).doesNotContain(l.spot());
                assertThat(l.overprint()).isTrue();
                if (!l.layer().equals("Legend")) {
                  assertThat(l.spot()).isEqualTo(l.layer());
                }
              });
    }
  }

  // ISO 128-2:2020: line 02 is 12 widths drawn, 3 open; widths 0.35 and 0.5. Yoshizawa-Randlett:
  // a valley is a row of dashes, a mountain dash, dot, dot (Lang, Origami Design Secrets).
  @Test
  void folds_haveTheirLinePatterns() throws IOException {
    DrawnPage page = read(file(PaperSize.A4, Face.FRONT, Samples.crooked())).get(0);
    Line valley = page.lines("ReverseCreasing").get(0);
    assertThat(valley.width()).isCloseTo(0.35, within(1e-4));
    assertThat(valley.dash()).hasSize(2);
    assertThat(valley.dash().get(0) / valley.width()).isCloseTo(12, within(0.01));
    assertThat(valley.dash().get(1) / valley.width()).isCloseTo(3, within(0.01));
    Line mountain =
        page.lines("Creasing").stream().filter(l -> l.length() > 38).findFirst().orElseThrow();
    List<Double> dash = mountain.dash();
    assertThat(dash).hasSize(6);
    assertThat(dash.get(0)).isGreaterThan(5 * dash.get(2));
    assertThat(dash.get(2)).isEqualTo(dash.get(4));
    assertThat(page.lines("Cutting"))
        .allSatisfy(
            l -> {
              assertThat(l.dash()).isEmpty();
              assertThat(l.width()).isCloseTo(0.5, within(1e-4));
            });
  }

  @Test
  void words_canBeReadBack() throws IOException {
    try (PDDocument document = Loader.loadPDF(file(PaperSize.A4, Face.BACK, NEAR))) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text)
          .contains(
              "Print at 100 %", "near frame", "198 × 150 mm", "left tab", "back up, mirrored");
    }
  }

  @Test
  void sameInput_sameBytes() {
    byte[] once = file(PaperSize.A4, Face.FRONT, NEAR, Samples.crooked());
    byte[] twice = file(PaperSize.A4, Face.FRONT, NEAR, Samples.crooked());
    assertThat(twice).isEqualTo(once);
  }

  @Test
  void file_asksForNoScaling_andHasNoDate() throws IOException {
    try (PDDocument document = Loader.loadPDF(file(PaperSize.A4, Face.FRONT, NEAR))) {
      assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo("None");
      assertThat(document.getDocumentInformation().getCreationDate()).isNull();
      assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Fair winds");
    }
  }

  @Test
  void pieceOfTenMetres_isRefusedInWords() {
    Piece huge = Samples.frame("huge", 10_000, 10_000, 12, 12, 120);
    assertThatThrownBy(() -> file(PaperSize.A4, Face.FRONT, huge))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("too many pages");
  }

  @Test
  void longName_isCutShort() throws IOException {
    Piece plain = Samples.crooked();
    Piece named =
        Piece.flat(
            "x",
            "boat ".repeat(2000),
            plain.stock(),
            plain.grain(),
            plain.shape(),
            plain.labels().get(0),
            "x");
    byte[] file =
        PdfWriter.write(
            TemplateBook.pages(
                List.of(new Template(named, 1, List.of())),
                new TemplateStyle(
                    "long ".repeat(300), PaperSize.A4, Face.FRONT, Lengths.MM, Samples.FONTS)),
            "long",
            "en",
            PdfWriter.Layers.STEPS,
            Samples.FONTS);
    assertThat(read(file)).hasSize(1);
  }

  @Test
  void manyPieces_shareAPage() {
    Piece[] pieces = new Piece[8];
    java.util.Arrays.fill(pieces, Samples.crooked());
    List<Template> templates = new ArrayList<>();
    for (Piece p : pieces) {
      templates.add(new Template(p, 1, List.of()));
    }
    List<Drawing> pages =
        TemplateBook.pages(
            templates,
            new TemplateStyle("Eight", PaperSize.A4, Face.FRONT, Lengths.MM, Samples.FONTS));
    assertThat(pages).hasSize(1);
  }
}
