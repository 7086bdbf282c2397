package hingeleaf.paper.pdf;

import hingeleaf.paper.Fonts;
import hingeleaf.paper.Mark.Weight;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The text face inside one document: a cut is embedded, as far as it is used, on its first use. */
final class PdfFaces {
  private final PDDocument document;
  private final Fonts fonts;
  private final Map<Weight, PDFont> embedded = new EnumMap<>(Weight.class);

  PdfFaces(PDDocument document, Fonts fonts) {
    this.document = document;
    this.fonts = fonts;
  }

  PDFont face(Weight weight) throws IOException {
    PDFont face = embedded.get(weight);
    if (face == null) {
      face = PDType0Font.load(document, fonts.file(weight), true);
      embedded.put(weight, face);
    }
    return face;
  }

  Fonts fonts() {
    return fonts;
  }
}
