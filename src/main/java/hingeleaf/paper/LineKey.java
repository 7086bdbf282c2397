package hingeleaf.paper;

import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What the lines mean; printed wherever lines with a meaning are. */
public final class LineKey {
  public static final double ROW = 5.4;
  private static final double SAMPLE = 20;

  /** A line of the key. */
  public enum Entry {
    CUT("cut"),
    MOUNTAIN("mountain fold: bend away from you"),
    VALLEY("valley fold: bend towards you"),
    FLAT("scored, stays flat"),
    EMBOSS("embossed within this line, before scoring"),
    GLUE("glue on this face"),
    JOIN("lay the next sheet's marks on these");

    private final String words;

    Entry(String words) {
      this.words = words;
    }
  }

  private LineKey() {}

  /** The key as a drawing of its own. */
  public static Drawing figure(Collection<Entry> entries, Fonts fonts) {
    double widest = 0;
    for (Entry e : entries) {
      widest = Math.max(widest, fonts.width(e.words, Weight.REGULAR, Look.SMALL));
    }
    double high = ROW * entries.size();
    return Drawing.plain(SAMPLE + 3 + widest, high, "key", at(new Vec2(0, high), entries));
  }

  /** The marks of some rows, the first on top; {@code at} is the upper left corner. */
  public static List<Mark> at(Vec2 at, Collection<Entry> entries) {
    List<Mark> marks = new ArrayList<>();
    double y = at.y() - ROW / 2;
    for (Entry e : entries) {
      marks.addAll(sample(e, at.x(), y));
      Vec2 words = new Vec2(at.x() + SAMPLE + 3, y - 1);
      marks.add(
          new Mark.Words(e.words, words, Look.SMALL, Weight.REGULAR, Anchor.START, Look.INK, 0));
      y -= ROW;
    }
    return marks;
  }

  private static List<Mark> sample(Entry entry, double x, double y) {
    Path line = Path.line(new Vec2(x, y), new Vec2(x + SAMPLE, y));
    return switch (entry) {
      case CUT -> List.of(new Mark.Stroke(line, Pen.CUT));
      case MOUNTAIN -> List.of(new Mark.Stroke(line, Pen.MOUNTAIN));
      case VALLEY -> List.of(new Mark.Stroke(line, Pen.VALLEY));
      case FLAT -> List.of(new Mark.Stroke(line, Pen.FLAT));
      case EMBOSS -> List.of(new Mark.Stroke(line, Pen.PRESSED));
      case JOIN -> Target.at(new Vec2(x + SAMPLE / 2, y), 2);
      case GLUE -> {
        Ring box = Ring.rectangle(x, y - 1.6, x + SAMPLE, y + 1.6);
        yield List.of(
            new Mark.Stroke(Hatch.of(Region.of(box), 2), Pen.GLUE),
            new Mark.Stroke(Path.of(box), Pen.GLUE));
      }
    };
  }
}
