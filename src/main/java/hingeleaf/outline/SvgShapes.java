package hingeleaf.outline;

import hingeleaf.geom.Vec2;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javax.xml.stream.Location;
import javax.xml.stream.XMLStreamReader;

/** Draws the elements of an SVG file as they are met, with what they inherit. */
final class SvgShapes {
  /** Told of things that are left out. */
  @FunctionalInterface
  interface Notes {
    void add(Location at, String kind, String message);
  }

  /** What an element hands down to those inside it. */
  private record State(Affine toRoot, boolean evenOdd, boolean filled, boolean skipped) {}

  private final Notes notes;
  private final Deque<State> states = new ArrayDeque<>();
  private final List<Drawing.Element> elements = new ArrayList<>();
  private double mmX = SvgValues.MM_PER_PX;
  private double mmY = SvgValues.MM_PER_PX;
  private int drawn;

  SvgShapes(Notes notes) {
    this.notes = notes;
  }

  Drawing drawing() {
    return new Drawing(elements, mmX, mmY);
  }

  void shut() {
    states.pop();
  }

  void open(XMLStreamReader xml) throws Refusal {
    String tag = xml.getLocalName();
    State outer = states.peek();
    if (outer == null) {
      states.push(root(xml, tag));
      return;
    }
    boolean foreign =
        xml.getNamespaceURI() != null
            && !xml.getNamespaceURI().equals("http://www.w3.org/2000/svg");
    if (outer.skipped() || foreign || SvgTags.hidden(tag) || SvgTags.notShown(xml)) {
      states.push(new State(Affine.IDENTITY, false, true, true));
      return;
    }
    SvgTags.refuse(tag);
    if (SvgTags.leftOut(tag)) {
      notes.add(xml.getLocation(), "left-out", SvgTags.why(tag));
      states.push(new State(Affine.IDENTITY, false, true, true));
      return;
    }
    State inner = inner(xml, outer);
    states.push(inner);
    draw(xml, tag, inner);
  }

  private State root(XMLStreamReader xml, String tag) throws Refusal {
    if (!tag.equals("svg")) {
      throw new Refusal("not-svg", "this is not an SVG file; its first element is `" + tag + "`");
    }
    List<Double> view = SvgValues.numbers(SvgTags.attribute(xml, "viewBox"));
    if (!view.isEmpty()) {
      scale(xml, view);
    }
    return inner(xml, new State(Affine.IDENTITY, false, true, false));
  }

  /** How large one unit of the view box is drawn: SVG 1.1 sections 7.7 and 7.8. */
  private void scale(XMLStreamReader xml, List<Double> view) throws Refusal {
    if (view.size() != 4 || !(view.get(2) > 0) || !(view.get(3) > 0)) {
      throw new Refusal("bad-drawing", "the viewBox needs four numbers, the last two more than 0");
    }
    double px = size(SvgTags.attribute(xml, "width")) / view.get(2);
    double py = size(SvgTags.attribute(xml, "height")) / view.get(3);
    px = Double.isNaN(px) ? (Double.isNaN(py) ? 1 : py) : px;
    py = Double.isNaN(py) ? px : py;
    String ratio = SvgTags.attribute(xml, "preserveAspectRatio");
    if (!ratio.startsWith("none")) {
      px = ratio.endsWith("slice") ? Math.max(px, py) : Math.min(px, py);
      py = px;
    }
    mmX = px * SvgValues.MM_PER_PX;
    mmY = py * SvgValues.MM_PER_PX;
  }

  /** A width or height in px; NaN where it is left out or a share of a page. */
  private static double size(String attribute) throws Refusal {
    if (attribute.isBlank()
        || attribute.strip().endsWith("%")
        || attribute.strip().equals("auto")) {
      return Double.NaN;
    }
    double px = SvgValues.length(attribute, Double.NaN);
    if (!(px > 0)) {
      throw new Refusal("bad-drawing", "the drawing's width and height must be more than 0");
    }
    return px;
  }

  private State inner(XMLStreamReader xml, State outer) throws Refusal {
    Affine own = SvgValues.transform(SvgTags.attribute(xml, "transform"));
    String rule = SvgTags.style(xml, "fill-rule");
    String fill = SvgTags.style(xml, "fill");
    return new State(
        outer.toRoot().times(own),
        inherits(rule) ? outer.evenOdd() : rule.equals("evenodd"),
        inherits(fill) ? outer.filled() : !fill.equals("none"),
        false);
  }

  private static boolean inherits(String value) {
    return value.isEmpty() || value.equals("inherit");
  }

  private void draw(XMLStreamReader xml, String tag, State state) throws Refusal {
    Pen pen = new Pen(drawn);
    SvgTags.draw(xml, tag, pen);
    drawn = pen.drawn();
    List<Subpath> subpaths =
        pen.lifted().stream()
            .map(s -> s.map(Affine.scale(mmX, mmY).times(state.toRoot())))
            .toList();
    if (!subpaths.isEmpty()) {
      Location at = xml.getLocation();
      elements.add(
          new Drawing.Element(
              tag,
              subpaths,
              state.evenOdd(),
              state.filled(),
              at.getLineNumber(),
              at.getColumnNumber()));
    }
    for (Subpath s : subpaths) {
      checkFinite(s.start());
      for (Subpath.Segment seg : s.segments()) {
        checkFinite(seg.end());
      }
    }
  }

  private static void checkFinite(Vec2 p) throws Refusal {
    if (!(Math.abs(p.x()) < 1e9) || !(Math.abs(p.y()) < 1e9)) {
      throw new Refusal("bad-drawing", "this drawing reaches out of any page");
    }
  }
}
