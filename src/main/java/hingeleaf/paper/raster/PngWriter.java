package hingeleaf.paper.raster;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;

/** A drawing as a PNG picture, antialiased, on a background of one colour. */
public final class PngWriter implements Mark.Painter {
  /** More than this is no picture for a screen: 100 million pixels. */
  private static final double MOST_PIXELS = 1e8;

  private final Graphics2D g;
  private final Fonts fonts;

  private PngWriter(Graphics2D g, Fonts fonts) {
    this.g = g;
    this.fonts = fonts;
  }

  /**
   * The file's bytes.
   *
   * @param pixels width of the picture; the height follows
   * @param background {@code #rrggbb}
   * @throws IllegalArgumentException where the picture would have no pixel or too many
   */
  public static byte[] write(Drawing drawing, int pixels, String background, Fonts fonts) {
    ImageIO.setUseCache(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(paint(drawing, pixels, background, fonts), "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  static BufferedImage paint(Drawing drawing, int pixels, String background, Fonts fonts) {
    double scale = pixels / drawing.width();
    double high = Math.max(1, Math.rint(drawing.height() * scale));
    if (pixels < 1 || pixels * high > MOST_PIXELS) {
      throw new IllegalArgumentException("a picture of " + pixels + " x " + high + " pixels");
    }
    BufferedImage image = new BufferedImage(pixels, (int) high, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Color.decode(background));
    g.fillRect(0, 0, pixels, (int) high);
    g.transform(new AffineTransform(scale, 0, 0, -scale, 0, drawing.height() * scale));
    PngWriter writer = new PngWriter(g, fonts);
    drawing.layers().forEach(l -> l.marks().forEach(m -> m.paint(writer)));
    g.dispose();
    return image;
  }

  @Override
  public void stroke(Mark.Stroke s) {
    g.setColor(Color.decode(s.pen().colour()));
    g.setStroke(stroke(s.pen()));
    g.draw(shape(s.path()));
  }

  @Override
  public void fill(Mark.Fill f) {
    g.setColor(Color.decode(f.colour()));
    g.fill(shape(f.path()));
  }

  @Override
  public void words(Mark.Words t) {
    double length = fonts.width(t.text(), t.weight(), t.size());
    double back =
        switch (t.anchor()) {
          case START -> 0;
          case MIDDLE -> length / 2;
          case END -> length;
        };
    AffineTransform place = AffineTransform.getTranslateInstance(t.at().x(), t.at().y());
    place.rotate(t.turn());
    place.translate(-back, 0);
    place.scale(t.size(), t.size());
    g.setColor(Color.decode(t.colour()));
    g.fill(place.createTransformedShape(fonts.outline(t.text(), t.weight())));
  }

  @Override
  public void window(Mark.Window w) {
    Shape before = g.getClip();
    Box b = w.box();
    g.clip(new Rectangle2D.Double(b.minX(), b.minY(), b.width(), b.height()));
    w.marks().forEach(m -> m.paint(this));
    g.setClip(before);
  }

  @Override
  public void group(Mark.Group group) {
    AffineTransform before = g.getTransform();
    g.translate(group.by().x(), group.by().y());
    group.marks().forEach(m -> m.paint(this));
    g.setTransform(before);
  }

  private static BasicStroke stroke(Pen pen) {
    int cap = pen.round() ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
    int join = pen.round() ? BasicStroke.JOIN_ROUND : BasicStroke.JOIN_MITER;
    float width = (float) pen.width();
    if (pen.dash().isEmpty()) {
      return new BasicStroke(width, cap, join, 10);
    }
    float[] dash = new float[pen.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = pen.dash().get(i).floatValue();
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, join, 10, dash, 0);
  }

  private static Path2D shape(Path path) {
    Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    for (List<Vec2> line : path.lines()) {
      shape.moveTo(line.get(0).x(), line.get(0).y());
      line.stream().skip(1).forEach(p -> shape.lineTo(p.x(), p.y()));
      if (path.closed()) {
        shape.closePath();
      }
    }
    return shape;
  }
}
