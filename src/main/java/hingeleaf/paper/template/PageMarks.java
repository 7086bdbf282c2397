package hingeleaf.paper.template;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Drawing.Layer;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Step;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A template page while it fills: marks by step, in the order in which steps are painted. */
final class PageMarks {
  static final double MARGIN = 8;
  static final double HEADER = 9;

  private final TemplateStyle style;
  private final Map<Step, List<Mark>> marks = new EnumMap<>(Step.class);

  PageMarks(TemplateStyle style) {
    this.style = style;
  }

  /** Where pieces may lie. */
  Box area() {
    return new Box(
        MARGIN, MARGIN, style.paper().width() - MARGIN, style.paper().height() - MARGIN - HEADER);
  }

  void add(Step step, List<Mark> more) {
    if (!more.isEmpty()) {
      marks.computeIfAbsent(step, s -> new ArrayList<>()).addAll(more);
    }
  }

  void add(List<Layer> layers, Vec2 by) {
    for (Layer layer : layers) {
      add(layer.step(), layer.marks().stream().map(m -> m.moved(by)).toList());
    }
  }

  void words(String text, Vec2 at, double size, Weight weight, Anchor anchor, String colour) {
    add(Step.LEGEND, List.of(new Mark.Words(text, at, size, weight, anchor, colour, 0)));
  }

  /** The finished page, number {@code page} of {@code pages}. */
  Drawing drawing(int page, int pages) {
    double y = style.paper().height() - MARGIN - 4;
    double right = style.paper().width() - MARGIN;
    String number = "page " + page + " of " + pages;
    double room = right - MARGIN - 50;
    String name =
        hingeleaf.paper.Wrapping.shortened(
            style.title(), Weight.SEMIBOLD, Look.BODY, room, style.fonts());
    words(name, new Vec2(MARGIN, y), Look.BODY, Weight.SEMIBOLD, Anchor.START, Look.INK);
    String what = style.seen() == hingeleaf.card.Face.FRONT ? "front up" : "back up, mirrored";
    words(
        "true size, " + what + "   ·   " + number,
        new Vec2(right, y),
        Look.SMALL,
        Weight.REGULAR,
        Anchor.END,
        Look.QUIET);
    List<Layer> layers = new ArrayList<>();
    marks.forEach((step, list) -> layers.add(new Layer(step, list)));
    return new Drawing(
        style.paper().width(), style.paper().height(), style.title() + ", " + number, layers);
  }
}
