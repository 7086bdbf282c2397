package hingeleaf.paper.pdf;

import hingeleaf.paper.Look;
import hingeleaf.paper.Step;
import java.awt.Color;
import java.io.IOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.function.PDFunctionType2;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/**
 * The processing steps of one document by ISO 19593-1:2018: one optional content group for each
 * step in use, told apart by a {@code GTS_Metadata} dictionary on the group, and a spot colour of
 * the same name that overprints.
 */
final class PdfSteps {
  private static final COSName METADATA = COSName.getPDFName("GTS_Metadata");
  private static final COSName GROUP = COSName.getPDFName("GTS_ProcStepsGroup");
  private static final COSName TYPE = COSName.getPDFName("GTS_ProcStepsType");

  private final PDDocument document;
  private final Map<Step, PDOptionalContentGroup> groups = new EnumMap<>(Step.class);
  private final Map<String, PDSeparation> colours = new HashMap<>();
  private final PDExtendedGraphicsState overprint = new PDExtendedGraphicsState();

  PdfSteps(PDDocument document) {
    this.document = document;
    overprint.setStrokingOverprintControl(true);
    overprint.setNonStrokingOverprintControl(true);
    overprint.setOverprintMode(1);
  }

  PDExtendedGraphicsState overprint() {
    return overprint;
  }

  PDOptionalContentGroup group(Step step) {
    return groups.computeIfAbsent(step, this::made);
  }

  private PDOptionalContentGroup made(Step step) {
    PDOptionalContentGroup group = new PDOptionalContentGroup(step.title());
    COSDictionary metadata = new COSDictionary();
    metadata.setName(GROUP, step.group());
    if (!step.type().isEmpty()) {
      metadata.setName(TYPE, step.type());
    }
    group.getCOSObject().setItem(METADATA, metadata);
    properties().addGroup(group);
    return group;
  }

  private PDOptionalContentProperties properties() {
    var catalog = document.getDocumentCatalog();
    PDOptionalContentProperties properties = catalog.getOCProperties();
    if (properties == null) {
      properties = new PDOptionalContentProperties();
      catalog.setOCProperties(properties);
    }
    return properties;
  }

  /**
   * The spot colour of a step; full tint looks like the step's colour on a screen. A key shows
   * lines of other steps in their colour, but must not be mistaken for them: it has a second spot
   * colour.
   */
  PDSeparation colour(Step step, boolean accent) throws IOException {
    String name = accent ? step.id() + "Accent" : step.id();
    PDSeparation colour = colours.get(name);
    if (colour == null) {
      colour = new PDSeparation();
      colour.setColorantName(name);
      colour.setAlternateColorSpace(PDDeviceRGB.INSTANCE);
      colour.setTintTransform(
          new PDFunctionType2(tint(Color.decode(accent ? Look.ACCENT : step.colour()))));
      colours.put(name, colour);
    }
    return colour;
  }

  /** White at 0 to the colour at 1, straight (ISO 32000-1, 7.10.3, exponent 1). */
  private static COSDictionary tint(Color full) {
    COSDictionary f = new COSDictionary();
    f.setInt(COSName.FUNCTION_TYPE, 2);
    f.setItem(COSName.DOMAIN, numbers(0, 1));
    f.setItem(COSName.C0, numbers(1, 1, 1));
    f.setItem(
        COSName.C1, numbers(full.getRed() / 255f, full.getGreen() / 255f, full.getBlue() / 255f));
    f.setItem(COSName.N, COSInteger.ONE);
    return f;
  }

  private static COSArray numbers(float... values) {
    COSArray array = new COSArray();
    for (float v : values) {
      array.add(new COSFloat(Math.round(v * 10_000) / 10_000f));
    }
    return array;
  }
}
