package hingeleaf.paper.book;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Mark;
import java.util.ArrayList;
import java.util.List;

/**
 * A strip across the column that no page break cuts: origin at its upper left corner, y up, so its
 * marks lie below 0.
 *
 * @param before room above it, mm; none at the top of a page
 * @param height mm
 * @param stays whether the next slab must be on the same page
 * @param head what is set again above it where it starts a page; empty for nothing
 * @param breaks whether it starts a page
 */
record Slab(
    double before,
    double height,
    List<Mark> marks,
    boolean stays,
    List<Slab> head,
    boolean breaks) {
  Slab {
    marks = List.copyOf(marks);
    head = List.copyOf(head);
  }

  static Slab of(double before, double height, List<Mark> marks) {
    return new Slab(before, height, marks, false, List.of(), false);
  }

  static Slab pageBreak() {
    return new Slab(0, 0, List.of(), false, List.of(), true);
  }

  Slab staying(boolean now) {
    return new Slab(before, height, marks, now, head, breaks);
  }

  Slab headed(List<Slab> again) {
    return new Slab(before, height, marks, stays, again, breaks);
  }

  Slab moved(double right) {
    return new Slab(
        before,
        height,
        marks.stream().map(m -> m.moved(new Vec2(right, 0))).toList(),
        stays,
        head.stream().map(h -> h.moved(right)).toList(),
        breaks);
  }

  Slab after(double room) {
    return new Slab(room, height, marks, stays, head, breaks);
  }

  /** All on one page: every slab but the last stays with the next. */
  static List<Slab> together(List<Slab> slabs) {
    List<Slab> joined = new ArrayList<>();
    for (int i = 0; i < slabs.size(); i++) {
      joined.add(slabs.get(i).staying(i + 1 < slabs.size()));
    }
    return joined;
  }

  /** One slab that shows all of these, with the room above the first kept apart. */
  static Slab stacked(List<Slab> slabs) {
    List<Mark> marks = new ArrayList<>();
    double y = 0;
    boolean first = true;
    for (Slab s : slabs) {
      y -= first ? 0 : s.before();
      first = false;
      Vec2 by = new Vec2(0, y);
      s.marks().forEach(m -> marks.add(m.moved(by)));
      y -= s.height();
    }
    return of(slabs.isEmpty() ? 0 : slabs.get(0).before(), -y, marks);
  }
}
