package hingeleaf.paper.pdf;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.Step;
import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/** Marks onto one page; mm become points here and nowhere else. */
final class PdfPainter implements Mark.Painter, AutoCloseable {
  private final PDPageContentStream to;
  private final PdfFaces faces;
  private @Nullable Ink ink;

  /** Where the origin of the group that is being painted lies. */
  private Vec2 at = Vec2.ZERO;

  /** What the page is set to, so that it is told only what changes; null where it is not known. */
  private @Nullable Pen pen;

  private @Nullable String fill;

  /** The spot colours of the layer that is being painted. */
  private record Ink(Step step, double darkest, PDSeparation main, PDSeparation accent) {
    PDColor of(String hex) {
      if (hex.equals(Look.ACCENT) && !step.colour().equals(Look.ACCENT)) {
        return new PDColor(new float[] {1}, accent);
      }
      double tint = Math.min(1, darkness(hex) / darkest);
      return new PDColor(new float[] {(float) (Math.rint(tint * 100) / 100)}, main);
    }
  }

  PdfPainter(PDDocument document, PDPage page, PdfFaces faces) throws IOException {
    this.to = new PDPageContentStream(document, page);
    this.faces = faces;
  }

  /** A whole layer inside its group, in its spot colour. */
  void step(Drawing.Layer layer, PdfSteps steps) throws IOException {
    Step step = layer.step();
    ink =
        new Ink(step, darkness(step.colour()), steps.colour(step, false), steps.colour(step, true));
    to.beginMarkedContent(COSName.OC, steps.group(step));
    to.saveGraphicsState();
    forget();
    to.setGraphicsStateParameters(steps.overprint());
    layer.marks().forEach(m -> m.paint(this));
    to.restoreGraphicsState();
    forget();
    to.endMarkedContent();
    ink = null;
  }

  @Override
  public void stroke(Mark.Stroke s) {
    write(
        () -> {
          take(s.pen());
          lay(s.path());
          to.stroke();
        });
  }

  private void take(Pen next) throws IOException {
    Pen last = pen;
    if (last == next) {
      return;
    }
    if (last == null || !last.colour().equals(next.colour())) {
      to.setStrokingColor(colour(next.colour()));
    }
    if (last == null || last.width() != next.width()) {
      to.setLineWidth(pt(next.width()));
    }
    if (last == null || last.round() != next.round() || !last.dash().equals(next.dash())) {
      to.setLineCapStyle(next.round() && next.dash().isEmpty() ? 1 : 0);
      to.setLineJoinStyle(next.round() ? 1 : 0);
      to.setLineDashPattern(dash(next), 0);
    }
    pen = next;
  }

  private void dip(String colour) throws IOException {
    if (!colour.equals(fill)) {
      to.setNonStrokingColor(colour(colour));
      fill = colour;
    }
  }

  private void forget() {
    pen = null;
    fill = null;
  }

  @Override
  public void fill(Mark.Fill f) {
    write(
        () -> {
          dip(f.colour());
          lay(f.path());
          to.fillEvenOdd();
        });
  }

  @Override
  public void words(Mark.Words t) {
    String set = faces.fonts().set(t.text());
    if (set.isBlank()) {
      return;
    }
    double length = faces.fonts().width(set, t.weight(), t.size());
    double back =
        switch (t.anchor()) {
          case START -> 0;
          case MIDDLE -> length / 2;
          case END -> length;
        };
    double x = at.x() + t.at().x() - back * Math.cos(t.turn());
    double y = at.y() + t.at().y() - back * Math.sin(t.turn());
    write(
        () -> {
          dip(t.colour());
          to.beginText();
          to.setFont(faces.face(t.weight()), pt(t.size()));
          to.setTextMatrix(Matrix.getRotateInstance(t.turn(), place(x), place(y)));
          to.showText(set);
          to.endText();
        });
  }

  @Override
  public void window(Mark.Window w) {
    Box b = w.box();
    write(
        () -> {
          to.saveGraphicsState();
          to.addRect(pt(at.x() + b.minX()), pt(at.y() + b.minY()), pt(b.width()), pt(b.height()));
          to.clip();
          w.marks().forEach(m -> m.paint(this));
          to.restoreGraphicsState();
          forget();
        });
  }

  @Override
  public void group(Mark.Group group) {
    Vec2 before = at;
    at = at.plus(group.by());
    group.marks().forEach(m -> m.paint(this));
    at = before;
  }

  private void lay(Path path) throws IOException {
    for (List<Vec2> line : path.lines()) {
      to.moveTo(place(at.x() + line.get(0).x()), place(at.y() + line.get(0).y()));
      for (Vec2 p : line.subList(1, line.size())) {
        to.lineTo(place(at.x() + p.x()), place(at.y() + p.y()));
      }
      if (path.closed()) {
        to.closePath();
      }
    }
  }

  private PDColor colour(String hex) {
    Ink spots = ink;
    if (spots != null) {
      return spots.of(hex);
    }
    Color c = Color.decode(hex);
    return new PDColor(
        new float[] {c.getRed() / 255f, c.getGreen() / 255f, c.getBlue() / 255f},
        org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB.INSTANCE);
  }

  /** 0 for white, 1 for black (weights of ITU-R BT.601). */
  private static double darkness(String hex) {
    Color c = Color.decode(hex);
    return 1 - (0.299 * c.getRed() + 0.587 * c.getGreen() + 0.114 * c.getBlue()) / 255;
  }

  private static float[] dash(Pen pen) {
    float[] dash = new float[pen.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = pt(pen.dash().get(i));
    }
    return dash;
  }

  private static float pt(double mm) {
    return (float) (mm * PdfWriter.POINTS);
  }

  /** A place to a thousandth of a point, a third of a micrometre: more only fills the file. */
  private static float place(double mm) {
    return Math.round(mm * PdfWriter.POINTS * 1000) / 1000f;
  }

  private interface Writing {
    void run() throws IOException;
  }

  private static void write(Writing writing) {
    try {
      writing.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() throws IOException {
    to.close();
  }
}
