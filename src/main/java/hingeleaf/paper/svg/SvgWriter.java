package hingeleaf.paper.svg;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Numerals;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A drawing as SVG: one group for each layer, named by its ISO 19593-1 step; sizes in mm by {@code
 * width}, {@code height} and {@code viewBox} (CSS Values and Units: 1 in = 25.4 mm = 96 px).
 */
public final class SvgWriter implements Mark.Painter {
  private final StringBuilder out = new StringBuilder();
  private final double height;
  private int windows;

  /** Where the origin of the group that is being painted lies. */
  private Vec2 at = Vec2.ZERO;

  private SvgWriter(double height) {
    this.height = height;
  }

  /**
   * The file's text.
   *
   * @param description read aloud after the title; empty for none
   */
  public static String write(Drawing drawing, String description) {
    SvgWriter w = new SvgWriter(drawing.height());
    w.head(drawing, description);
    for (Drawing.Layer layer : drawing.layers()) {
      w.out.append("<g id=\"").append(layer.step().id()).append("\">\n");
      layer.marks().forEach(m -> m.paint(w));
      w.out.append("</g>\n");
    }
    return w.out.append("</svg>\n").toString();
  }

  private void head(Drawing d, String description) {
    String w = Numerals.of(d.width());
    String h = Numerals.of(d.height());
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(w);
    out.append("mm\" height=\"").append(h).append("mm\" viewBox=\"0 0 ");
    out.append(w).append(' ').append(h).append("\" role=\"img\" overflow=\"visible\">\n");
    out.append("<title>").append(escaped(d.title())).append("</title>\n");
    if (!description.isEmpty()) {
      out.append("<desc>").append(escaped(description)).append("</desc>\n");
    }
  }

  @Override
  public void stroke(Mark.Stroke s) {
    Pen pen = s.pen();
    out.append("<path d=\"").append(data(s.path())).append("\" fill=\"none\" stroke=\"");
    out.append(pen.colour()).append("\" stroke-width=\"").append(Numerals.of(pen.width()));
    if (!pen.dash().isEmpty()) {
      out.append("\" stroke-dasharray=\"").append(numbers(pen.dash()));
    }
    if (pen.round()) {
      out.append("\" stroke-linecap=\"round\" stroke-linejoin=\"round");
    }
    out.append("\"/>\n");
  }

  @Override
  public void fill(Mark.Fill f) {
    out.append("<path d=\"").append(data(f.path())).append("\" fill=\"").append(f.colour());
    out.append("\" fill-rule=\"evenodd\"/>\n");
  }

  @Override
  public void words(Mark.Words t) {
    String x = Numerals.of(at.x() + t.at().x());
    String y = Numerals.of(height - (at.y() + t.at().y()));
    out.append("<text x=\"").append(x).append("\" y=\"").append(y);
    out.append("\" font-family=\"Source Sans 3, Helvetica, Arial, sans-serif\" font-size=\"");
    out.append(Numerals.of(t.size())).append("\" fill=\"").append(t.colour());
    out.append(style(t.weight())).append(anchor(t.anchor()));
    if (t.turn() != 0) {
      String turn = Numerals.of(-Math.toDegrees(t.turn()));
      out.append("\" transform=\"rotate(").append(turn);
      out.append(' ').append(x).append(' ').append(y).append(')');
    }
    out.append("\">").append(escaped(t.text())).append("</text>\n");
  }

  @Override
  public void window(Mark.Window w) {
    Box b = w.box();
    String id = "window" + ++windows;
    String ring = data(Path.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()));
    out.append("<clipPath id=\"").append(id).append("\"><path d=\"").append(ring);
    out.append("\"/></clipPath>\n<g clip-path=\"url(#").append(id).append(")\">\n");
    w.marks().forEach(m -> m.paint(this));
    out.append("</g>\n");
  }

  @Override
  public void group(Mark.Group group) {
    Vec2 before = at;
    at = at.plus(group.by());
    group.marks().forEach(m -> m.paint(this));
    at = before;
  }

  private String data(Path path) {
    StringBuilder d = new StringBuilder();
    for (List<Vec2> line : path.lines()) {
      char command = 'M';
      for (Vec2 p : line) {
        d.append(command).append(Numerals.of(at.x() + p.x())).append(' ');
        d.append(Numerals.of(height - (at.y() + p.y())));
        command = 'L';
      }
      if (path.closed()) {
        d.append('Z');
      }
    }
    return d.toString();
  }

  private static String numbers(List<Double> values) {
    return values.stream().map(Numerals::of).collect(Collectors.joining(" "));
  }

  private static String style(Mark.Weight weight) {
    return switch (weight) {
      case REGULAR -> "";
      case SEMIBOLD -> "\" font-weight=\"600";
      case ITALIC -> "\" font-style=\"italic";
    };
  }

  private static String anchor(Mark.Anchor anchor) {
    return switch (anchor) {
      case START -> "";
      case MIDDLE -> "\" text-anchor=\"middle";
      case END -> "\" text-anchor=\"end";
    };
  }

  /** Text for XML 1.0: its five signs escaped, characters that it forbids left out. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .filter(SvgWriter::allowed)
        .forEach(
            cp -> {
              switch (cp) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(cp);
              }
            });
    return safe.toString();
  }

  /** Char of XML 1.0 (fifth edition), 2.2. */
  private static boolean allowed(int cp) {
    return cp == 9
        || cp == 10
        || cp == 13
        || (cp >= 0x20 && cp <= 0xD7FF)
        || (cp >= 0xE000 && cp <= 0xFFFD)
        || cp >= 0x10000;
  }
}
