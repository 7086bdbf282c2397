package hingeleaf.paper.pdf;

import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Pages as one PDF file. */
public final class PdfWriter {
  /** Points to the millimetre (ISO 32000-1, 8.3.2.3: a unit is 1/72 in). */
  static final double POINTS = 72 / 25.4;

  /** Whether the layers of the drawings become layers of the file. */
  public enum Layers {
    /** An ordinary document: everything is ink. */
    FLAT,
    /** One optional content group for each processing step, in spot colours that overprint. */
    STEPS
  }

  private PdfWriter() {}

  /**
   * The file's bytes; the same input gives the same bytes.
   *
   * @param pages at least one, each at its own size
   * @param language of the words, such as {@code en}
   */
  public static byte[] write(
      List<Drawing> pages, String title, String language, Layers layers, Fonts fonts) {
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("a document needs a page");
    }
    try (PDDocument document = new PDDocument()) {
      PdfFaces faces = new PdfFaces(document, fonts);
      PdfSteps steps = new PdfSteps(document);
      for (Drawing page : pages) {
        add(document, page, layers, faces, steps);
      }
      describe(document, title, language);
      document.setDocumentId(identity(pages, title));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out, CompressParameters.NO_COMPRESSION);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void add(
      PDDocument document, Drawing page, Layers layers, PdfFaces faces, PdfSteps steps)
      throws IOException {
    PDPage pdf =
        new PDPage(
            new PDRectangle((float) (page.width() * POINTS), (float) (page.height() * POINTS)));
    document.addPage(pdf);
    try (PdfPainter painter = new PdfPainter(document, pdf, faces)) {
      for (Drawing.Layer layer : page.layers()) {
        if (layers == Layers.STEPS && !layer.step().group().isEmpty()) {
          painter.step(layer, steps);
        } else {
          layer.marks().forEach(m -> m.paint(painter));
        }
      }
    }
  }

  private static void describe(PDDocument document, String title, String language) {
    PDDocumentInformation info = new PDDocumentInformation();
    info.setTitle(title);
    info.setProducer("Hingeleaf");
    document.setDocumentInformation(info);
    document.getDocumentCatalog().setLanguage(language);
    PDViewerPreferences wishes = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    wishes.setDisplayDocTitle(true);
    wishes.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(wishes);
  }

  /** A number that follows from the content, in the place of the time that is usual. */
  private static long identity(List<Drawing> pages, String title) {
    CRC32 crc = new CRC32();
    crc.update(title.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    for (Drawing page : pages) {
      crc.update(
          Long.toString(Double.doubleToLongBits(page.width() + 3 * page.height()))
              .getBytes(java.nio.charset.StandardCharsets.UTF_8));
      page.layers().forEach(l -> crc.update(l.marks().size()));
    }
    return crc.getValue();
  }
}
