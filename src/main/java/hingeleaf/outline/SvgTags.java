package hingeleaf.outline;

import hingeleaf.geom.Vec2;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;

/** Which elements of SVG draw what (SVG 1.1 chapters 8 and 9), and which are passed over. */
final class SvgTags {
  private static final Set<String> HIDDEN =
      Set.of(
          "defs",
          "symbol",
          "clipPath",
          "mask",
          "pattern",
          "marker",
          "linearGradient",
          "radialGradient",
          "filter",
          "title",
          "desc",
          "metadata",
          "cursor",
          "view",
          "font",
          "animate",
          "animateTransform",
          "animateMotion",
          "set");
  private static final Set<String> LEFT_OUT =
      Set.of("text", "image", "script", "style", "foreignObject", "video", "audio", "iframe");

  private SvgTags() {}

  /** Definitions and remarks, which draw nothing where they stand. */
  static boolean hidden(String tag) {
    return HIDDEN.contains(tag);
  }

  static boolean leftOut(String tag) {
    return LEFT_OUT.contains(tag);
  }

  static String why(String tag) {
    return switch (tag) {
      case "text" -> "lettering is left out; turn it into outlines first";
      case "image" -> "a picture, or a reference to one, is left out; only outlines are read";
      case "style" -> "a style sheet is left out; only styles written in the elements are read";
      default -> "`" + tag + "` is left out; only outlines are read";
    };
  }

  static void refuse(String tag) throws Refusal {
    if (tag.equals("use")) {
      throw new Refusal(
          "external",
          "this drawing repeats or borrows parts with `use`; save it with copies instead");
    }
    if (tag.equals("svg")) {
      throw new Refusal("bad-drawing", "a drawing within the drawing cannot be read; ungroup it");
    }
  }

  /** Whether an element says of itself that it is not to be seen. */
  static boolean notShown(XMLStreamReader xml) {
    return style(xml, "display").equals("none");
  }

  /** An attribute outside any namespace; empty where there is none. */
  static String attribute(XMLStreamReader xml, String name) {
    String value = xml.getAttributeValue(null, name);
    return value == null ? "" : value;
  }

  /** A property from the {@code style} attribute, or else from one of its own name. */
  static String style(XMLStreamReader xml, String property) {
    for (String part : attribute(xml, "style").split(";", -1)) {
      int colon = part.indexOf(':');
      if (colon > 0 && part.substring(0, colon).strip().equals(property)) {
        return part.substring(colon + 1).replace("!important", "").strip();
      }
    }
    return attribute(xml, property).strip();
  }

  static void draw(XMLStreamReader xml, String tag, Pen pen) throws Refusal {
    switch (tag) {
      case "path" -> new PathData(attribute(xml, "d"), pen).draw();
      case "rect" -> rectangle(xml, pen);
      case "circle" -> {
        double r = size(xml, "r");
        ellipse(xml, r, r, pen);
      }
      case "ellipse" -> ellipse(xml, size(xml, "rx"), size(xml, "ry"), pen);
      case "polygon" -> polygon(xml, pen, true);
      case "polyline" -> polygon(xml, pen, false);
      case "line" -> {
        pen.move(new Vec2(length(xml, "x1"), length(xml, "y1")));
        pen.line(new Vec2(length(xml, "x2"), length(xml, "y2")));
      }
      default -> {
        // groups draw nothing themselves
      }
    }
  }

  private static double length(XMLStreamReader xml, String name) throws Refusal {
    return SvgValues.length(attribute(xml, name), 0);
  }

  private static double size(XMLStreamReader xml, String name) throws Refusal {
    double size = length(xml, name);
    if (size < 0) {
      throw new Refusal("bad-drawing", "`" + name + "` is less than 0");
    }
    return size;
  }

  /** SVG 1.1 section 9.2, where a missing corner radius takes the other's value. */
  private static void rectangle(XMLStreamReader xml, Pen pen) throws Refusal {
    double x = length(xml, "x");
    double y = length(xml, "y");
    double w = size(xml, "width");
    double h = size(xml, "height");
    if (w == 0 || h == 0) {
      return;
    }
    double rx = SvgValues.length(attribute(xml, "rx"), Double.NaN);
    double ry = SvgValues.length(attribute(xml, "ry"), Double.NaN);
    rx = Math.min(Double.isNaN(rx) ? (Double.isNaN(ry) ? 0 : ry) : rx, w / 2);
    ry = Math.min(Double.isNaN(ry) ? rx : ry, h / 2);
    if (!(rx > 0) || !(ry > 0)) {
      rx = 0;
      ry = 0;
    }
    pen.move(new Vec2(x + rx, y));
    pen.line(new Vec2(x + w - rx, y));
    corner(pen, rx, ry, new Vec2(x + w, y + ry));
    pen.line(new Vec2(x + w, y + h - ry));
    corner(pen, rx, ry, new Vec2(x + w - rx, y + h));
    pen.line(new Vec2(x + rx, y + h));
    corner(pen, rx, ry, new Vec2(x, y + h - ry));
    pen.line(new Vec2(x, y + ry));
    corner(pen, rx, ry, new Vec2(x + rx, y));
    pen.close();
  }

  private static void corner(Pen pen, double rx, double ry, Vec2 to) throws Refusal {
    if (rx > 0) {
      pen.arc(rx, ry, 0, false, true, to);
    }
  }

  private static void ellipse(XMLStreamReader xml, double rx, double ry, Pen pen) throws Refusal {
    if (rx == 0 || ry == 0) {
      return;
    }
    Vec2 c = new Vec2(length(xml, "cx"), length(xml, "cy"));
    Vec2 right = c.plus(new Vec2(rx, 0));
    Vec2 left = c.minus(new Vec2(rx, 0));
    pen.move(right);
    pen.arc(rx, ry, 0, false, true, left);
    pen.arc(rx, ry, 0, false, true, right);
    pen.close();
  }

  private static void polygon(XMLStreamReader xml, Pen pen, boolean close) throws Refusal {
    List<Double> n = SvgValues.numbers(attribute(xml, "points"));
    if (n.size() % 2 != 0) {
      throw new Refusal("bad-drawing", "the points of this shape are an odd number of numbers");
    }
    for (int i = 0; i < n.size(); i += 2) {
      Vec2 p = new Vec2(n.get(i), n.get(i + 1));
      if (i == 0) {
        pen.move(p);
      } else {
        pen.line(p);
      }
    }
    if (close) {
      pen.close();
    }
  }
}
