package hingeleaf.paper.pdf;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Reads a page's content stream back into lines in mm, each with its layer, pen and colour. */
public final class DrawnPage extends PDFGraphicsStreamEngine {
  private static final double MM = 25.4 / 72;

  /** A subpath as drawn. */
  public record Line(
      String layer,
      String spot,
      List<Vec2> points,
      boolean closed,
      double width,
      List<Double> dash,
      boolean overprint) {
    public Box box() {
      return Box.around(points);
    }

    public double length() {
      return points.get(0).distance(points.get(points.size() - 1));
    }
  }

  private final List<Line> lines = new ArrayList<>();
  private final Deque<String> layers = new ArrayDeque<>();
  private final List<List<Vec2>> open = new ArrayList<>();
  private boolean closed;
  private int images;
  private int loose;

  private DrawnPage(PDPage page) {
    super(page);
  }

  public static DrawnPage read(PDPage page) throws IOException {
    DrawnPage drawn = new DrawnPage(page);
    drawn.processPage(page);
    return drawn;
  }

  public List<Line> lines() {
    return lines;
  }

  public List<Line> lines(String layer) {
    return lines.stream().filter(l -> l.layer().equals(layer)).toList();
  }

  /** How many fills and signs lie in no layer, or in no spot colour. */
  public int loose() {
    return loose;
  }

  private void painted() {
    boolean spot = getGraphicsState().getNonStrokingColor().getColorSpace() instanceof PDSeparation;
    if (!spot || layers.isEmpty() || layers.peek().isEmpty()) {
      loose++;
    }
  }

  @Override
  protected void showGlyph(Matrix at, PDFont font, int code, Vector displacement) {
    painted();
  }

  public int images() {
    return images;
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    String name = "";
    PDPropertyList list = properties == null ? null : PDPropertyList.create(properties);
    if (COSName.OC.equals(tag) && list != null) {
      COSDictionary meta = list.getCOSObject().getCOSDictionary(COSName.getPDFName("GTS_Metadata"));
      String type = meta.getNameAsString("GTS_ProcStepsType");
      name = type == null ? meta.getNameAsString("GTS_ProcStepsGroup") : type;
    }
    layers.push(name);
  }

  @Override
  public void endMarkedContentSequence() {
    layers.pop();
  }

  @Override
  public void moveTo(float x, float y) {
    open.add(new ArrayList<>(List.of(new Vec2(x * MM, y * MM))));
  }

  @Override
  public void lineTo(float x, float y) {
    open.get(open.size() - 1).add(new Vec2(x * MM, y * MM));
  }

  @Override
  public void closePath() {
    closed = true;
  }

  @Override
  public void strokePath() throws IOException {
    var state = getGraphicsState();
    PDColor colour = state.getStrokingColor();
    String spot = colour.getColorSpace() instanceof PDSeparation s ? s.getColorantName() : "";
    List<Double> dash = new ArrayList<>();
    for (float d : state.getLineDashPattern().getDashArray()) {
      dash.add(d * MM);
    }
    String layer = layers.isEmpty() ? "" : layers.peek();
    for (List<Vec2> points : open) {
      lines.add(
          new Line(
              layer,
              spot,
              List.copyOf(points),
              closed,
              state.getLineWidth() * MM,
              dash,
              state.isOverprint()));
    }
    endPath();
  }

  @Override
  public void endPath() {
    open.clear();
    closed = false;
  }

  @Override
  public void fillPath(int windingRule) {
    painted();
    endPath();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    endPath();
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

  @Override
  public void drawImage(PDImage image) {
    images++;
  }

  @Override
  public void clip(int windingRule) {}

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    throw new AssertionError("no curves are drawn");
  }

  @Override
  public Point2D getCurrentPoint() {
    return new Point2D.Double();
  }

  @Override
  public void shadingFill(COSName shadingName) {
    images++;
  }
}
