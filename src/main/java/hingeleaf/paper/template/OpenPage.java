package hingeleaf.paper.template;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import java.util.List;

/** A page that takes pieces in rows from the top; a row is as deep as its deepest piece. */
final class OpenPage {
  private static final double GAP = 6;

  private final PageMarks marks;
  private final Box area;
  private double left;
  private double top;
  private double deep;

  /**
   * @param used how much of the top is taken already, mm
   */
  OpenPage(PageMarks marks, double used) {
    this.marks = marks;
    this.area = marks.area();
    this.left = area.minX();
    this.top = area.maxY() - used;
  }

  PageMarks marks() {
    return marks;
  }

  /** Lays a piece in the open row or in a new one, the first of its ways that fits; or does not. */
  boolean put(List<Way> ways, TemplateStyle style) {
    for (Way way : ways) {
      if (put(way, left, top, style)) {
        return true;
      }
    }
    double below = top - (deep > 0 ? deep + GAP : 0);
    for (Way way : ways) {
      if (deep > 0 && put(way, area.minX(), below, style)) {
        return true;
      }
    }
    return false;
  }

  private boolean put(Way way, double x, double y, TemplateStyle style) {
    double wide = Caption.cell(way.piece());
    double high = way.height();
    if (x + wide > area.maxX() + 1e-6 || y - high < area.minY() - 1e-6) {
      return false;
    }
    if (y < top) {
      top = y;
      deep = 0;
    }
    way.caption().write(marks, new Vec2(x, y));
    marks.add(TemplateBook.layers(way.piece(), style), new Vec2(x, y - high));
    left = x + wide + GAP;
    deep = Math.max(deep, high);
    return true;
  }
}
